import { isNotDefined } from '../description/not-defined.ts';
import { nearestGraduation } from '../instruments/graduations.ts';
import { ownWeight, type SpringScale } from '../instruments/spring-scale.ts';
import { type Draws, gaussian, rectangular } from '../uncertainty/distribution.ts';
import type { Unknown } from '../uncertainty/measured.ts';
import { type At, unknownsOf } from '../uncertainty/propagate.ts';
import { balanceFor, balanceOf, inputsOf, leastPull } from './pull.ts';
import type { Setup } from './setup.ts';
import { type Sense, senseOf, shiftOf } from './shown.ts';

/** What becomes of one trial: a figure between the marks, or why not. */
export type Fate =
  | 'reading'
  | 'on its stop'
  | 'off the scale'
  | 'moves under the scale'
  | 'scale on the other side'
  | 'does not come back'
  | 'no balance';

/** Which pull of a band is read: where a group happens to hold it, or one of its ends. */
export type PlaceInBand = 'anywhere' | 'lower end' | 'upper end';

/** One group at one copy of the table: what it would write, and what became of it. */
export interface ReadingByChance {
  readonly fate: Fate;
  /** What the group writes, SI, on a graduation; `null` where there is nothing to write. */
  readonly written: number | null;
}

/** Everything by chance that one reading needs, and the reading that comes of it. */
export interface ReadingChance {
  readonly inputs: readonly Draws[];
  /** From one draw of each input, in their order. */
  readonly read: (draws: ArrayLike<number>) => ReadingByChance;
}

/** What every reading adds to the apparatus, in front of its unknowns: lag of the tube, place, hand. */
const OF_THE_READING: readonly Draws[] = [rectangular(0, 1), rectangular(0, 1), gaussian(0, 1)];

/**
 * One honest reading of a setup from draws of all that is not known of it: every unknown once, wherever it
 * stands, normal or even as it was written; then the law, the pull, the scale with its tube, stop and end,
 * the hand, and the eye that rounds to a graduation. Unlike the linear law each trial decides for itself
 * whether the scale's weight moves the machine, whether it comes back, and whether the pointer leaves its
 * stop. On its stop a group writes the figure of the stop.
 */
export function readingChance(setup: Setup, place: PlaceInBand): ReadingChance {
  const unknowns = unknownsOf(inputsOf(setup));
  const first = OF_THE_READING.length;
  const places = new Map(unknowns.map(({ id }, n) => [id, first + n]));
  return {
    inputs: [...OF_THE_READING, ...unknowns.map(drawsOf)],
    read: (draws) => {
      const at: At = (value) => {
        let drawn: number = value.value;
        for (const { unknown, slope } of value.parts)
          drawn += slope * (draws[places.get(unknown.id) ?? -1] ?? 0);
        return drawn as typeof value.value;
      };
      const chance = { lag: draws[0] ?? 0, place: draws[1] ?? 0, hand: draws[2] ?? 0 };
      return setup.watched === 'pull' ? readPull(setup, at, chance, place) : readTally(setup, at);
    },
  };
}

/** What an unknown is off by: normal, or anywhere within √3 standard uncertainties. */
function drawsOf({ u, shape }: Unknown): Draws {
  const half = u * Math.sqrt(3);
  return shape === 'even' ? rectangular(-half, half) : gaussian(0, u);
}

/** Draws of one reading: two evenly from 0 to 1, one normal. */
interface Chance {
  readonly lag: number;
  readonly place: number;
  readonly hand: number;
}

function readPull(setup: Setup, at: At, chance: Chance, place: PlaceInBand): ReadingByChance {
  const { scale } = setup;
  if (scale === null) return nothing('no balance');
  const pull = pullByChance(
    setup,
    scale,
    at,
    place === 'anywhere' ? chance.place : place === 'lower end' ? 0 : 1,
  );
  if (typeof pull === 'string') return nothing(pull);
  const lag = setup.tapped ? 0 : lagByChance(pull.sense, chance.lag);
  const shown =
    pull.force - shiftOf(setup, scale, at) + at(scale.inputs.accuracy) - lag * at(scale.inputs.tubeFriction);
  if (shown > scale.range) return nothing('off the scale');
  if (shown < scale.stop) return { fate: 'on its stop', written: scale.stop };
  const seen = shown + setup.reader.scatter * Math.abs(shown) * chance.hand;
  const written = Math.min(Math.max(nearestGraduation(scale.graduations, seen), scale.stop), scale.range);
  return { fate: pull.moves ? 'moves under the scale' : 'reading', written };
}

/** What is counted or measured along: no hand scatter, only the eye. */
function readTally({ machine, station, marks }: Setup, at: At): ReadingByChance {
  const tally = machine.tally?.(station, at);
  if (tally === undefined || marks === null || isNotDefined(tally)) return nothing('no balance');
  if (!Number.isFinite(tally.value)) return nothing('no balance');
  return { fate: 'reading', written: Math.max(0, nearestGraduation(marks, tally.value)) };
}

export interface PullByChance {
  readonly force: number;
  readonly sense: Sense;
  readonly moves: boolean;
}

/** The force at the hook for one state of the unknowns: the same four ways as in `pullOf`. */
export function pullByChance(setup: Setup, scale: SpringScale, at: At, place: number): PullByChance | Fate {
  const least = leastPull(setup, at);
  const raise = balanceFor(setup, at, setup.way === 'lower' ? 'raise' : setup.way);
  if (isNotDefined(raise)) return 'no balance';
  if (raise.effort < 0) return 'scale on the other side';
  if (least > 0 && raise.effort < least)
    return { force: ownWeight(scale, at, at(setup.gravity)), sense: 'resting', moves: true };
  const sense = senseOf(setup);
  switch (setup.way) {
    case 'raise':
    case 'start':
      return { force: raise.effort, sense, moves: false };
    case 'lower': {
      const back = balanceOf(setup, at, 'lower', 'moving');
      if (isNotDefined(back)) return 'no balance';
      return back.effort < 0
        ? 'does not come back'
        : { force: Math.max(back.effort, least), sense, moves: false };
    }
    case 'held': {
      const back = balanceOf(setup, at, 'lower', 'starting');
      const lowest = Math.max(isNotDefined(back) ? 0 : back.effort, least, 0);
      return { force: lowest + place * (raise.effort - lowest), sense, moves: false };
    }
  }
}

/** The share of the tube's rubbing that this reading carries, from an even draw between 0 and 1. */
function lagByChance(sense: Sense, drawn: number): number {
  switch (sense) {
    case 'pulling more':
      return drawn;
    case 'letting off':
      return -drawn;
    case 'resting':
      return 2 * drawn - 1;
  }
}

const nothing = (fate: Fate): ReadingByChance => ({ fate, written: null });
