import { type Metres, type Radians, radians } from '../../quantities/brands.ts';
import { resistance } from '../../statics/carriage.ts';
import { ridingSpeedingUp } from '../../statics/speeding-up.ts';
import { exactly, plus, times } from '../../uncertainty/measured.ts';
import type { Machine, UsualMistake } from '../machine.ts';
import type { Drag } from './station.ts';

/** Base rates are assumptions: common practice, no source. */
const STRING_OFF = 0.05;
const READ_NEAR = 0.03;
const LEFT_EMPTY = 0.01;
const FIFTEEN_DEGREES = exactly(radians(Math.PI / 12));

/** What goes wrong when a load is dragged: the hand stands higher than the hook, or it is read too late. */
export const mistakes: readonly UsualMistake<Drag>[] = [
  {
    code: 'drag.string-not-level',
    baseRate: STRING_OFF,
    persists: 'group',
    // Over a guide pulley the string runs as the pulley stands.
    change: (drag) => (drag.string === 'leans' && drag.guide === null ? leaning(drag) : null),
  },
  {
    code: 'drag.read-too-near',
    baseRate: READ_NEAR,
    persists: 'group',
    change: (drag) => (drag.string === 'comes from the pulley' ? nearer(drag) : null),
  },
  {
    code: 'drag.left-empty',
    baseRate: LEFT_EMPTY,
    persists: 'reading',
    leavesOff: true,
    change: (drag) => drag,
  },
];

export const speedingUp: NonNullable<Machine<Drag>['speedingUp']> = (drag, at, asked, acceleration) =>
  ridingSpeedingUp(
    asked,
    {
      deadMass: at(drag.inputs.deadMass),
      angle: 0,
      coefficient: resistance(drag, at, asked.grip).coefficient,
    },
    acceleration,
  );

const leaning = <D extends Drag & { readonly string: 'leans' }>(drag: D): D => ({
  ...drag,
  inputs: { ...drag.inputs, lean: plus<Radians>(drag.inputs.lean, FIFTEEN_DEGREES) },
});

const nearer = <D extends Drag & { readonly string: 'comes from the pulley' }>(drag: D): D => ({
  ...drag,
  inputs: { ...drag.inputs, readAt: times<Metres>(drag.inputs.readAt, 0.5) },
});
