import type { Metres } from '../../quantities/brands.ts';
import { plus, times } from '../../uncertainty/measured.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Reckoning, UsualMistake } from '../machine.ts';
import { lead, type Screw } from './station.ts';

/** Base rates are assumptions: common practice, no source. */
const TURN_MISCOUNTED = 0.03;
const HALF_TURNS = 0.02;
const NOT_FLUSH = 0.03;

/** What goes wrong at a screw: the count, the half turn of a wrist, a face that did not touch yet. */
export const mistakes: readonly UsualMistake<Screw>[] = [
  {
    code: 'screw.turn-more',
    baseRate: TURN_MISCOUNTED,
    persists: 'reading',
    change: (screw) => miscounted(screw, 1),
  },
  {
    code: 'screw.turn-less',
    baseRate: TURN_MISCOUNTED,
    persists: 'reading',
    change: (screw) => miscounted(screw, -1),
  },
  {
    code: 'screw.half-turns',
    baseRate: HALF_TURNS,
    persists: 'group',
    change: (screw) =>
      isCounted(screw) && screw.counting.perTurn === 1
        ? { ...screw, counting: { ...screw.counting, perTurn: 2 } }
        : null,
  },
  { code: 'screw.not-flush', baseRate: NOT_FLUSH, persists: 'reading', change: startedHalfATurnAway },
];

const isCounted = (screw: Screw): boolean => screw.turns !== null || screw.inputs.travel !== undefined;

/**
 * Counting towards a travel, one too many is written. Counting off a number of turns, one too many is
 * one turn of the screw too few.
 */
function miscounted(screw: Screw, counted: 1 | -1): Screw | null {
  if (!isCounted(screw)) return null;
  const by = screw.turns === null ? counted : -counted;
  const least = screw.turns ?? (screw.inputs.travel?.value ?? 0) / (screw.starts * screw.inputs.pitch.value);
  if (least + by <= 0) return null;
  return { ...screw, counting: { ...screw.counting, extra: screw.counting.extra + by } };
}

/** The face was half a turn short of touching when the count began. */
function startedHalfATurnAway(screw: Screw): Screw | null {
  if (!isCounted(screw)) return null;
  const half = times<Metres>(screw.inputs.pitch, screw.starts / 2);
  const startGap = plus(screw.inputs.startGap, half);
  return { ...screw, inputs: { ...screw.inputs, startGap } };
}

/** Arm for the whole circle, diameter for radius, pitch of one start for the lead of several. */
export const reckonings: readonly Reckoning<Screw>[] = [
  { code: 'screw.arm-over-pitch', ratio: (screw, at) => overLead(screw, at, 1) },
  { code: 'screw.arm-taken-for-diameter', ratio: (screw, at) => overLead(screw, at, Math.PI) },
  { code: 'screw.arm-taken-twice', ratio: (screw, at) => overLead(screw, at, 4 * Math.PI) },
  {
    code: 'screw.pitch-for-lead',
    ratio: (screw, at) => (screw.starts === 1 ? null : overLead(screw, at, 2 * Math.PI * screw.starts)),
  },
];

const overLead = (screw: Screw, at: At, arms: number): number | null =>
  screw.inputs.arm === undefined ? null : (arms * at(screw.inputs.arm)) / lead(screw, at);
