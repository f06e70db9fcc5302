import { type Metres, type Radians, radians } from '../../quantities/brands.ts';
import { resistance } from '../../statics/carriage.ts';
import { ridingSpeedingUp } from '../../statics/speeding-up.ts';
import { exactly, type Measured, plus, times } from '../../uncertainty/measured.ts';
import type { Machine, Reckoning, UsualMistake } from '../machine.ts';
import { angleOf, type InclinedPlane } from './station.ts';

/** Base rates are assumptions: common practice, no source. */
const PIN_OFF = 0.02;
const STRING_OFF = 0.03;
const READ_NEAR = 0.03;
const LEFT_EMPTY = 0.01;

/** What goes wrong at an inclined plane: the prop one pin off, the string not along the slope, read too late. */
export const mistakes: readonly UsualMistake<InclinedPlane>[] = [
  {
    code: 'incline.pin-too-high',
    baseRate: PIN_OFF / 2,
    persists: 'station',
    change: (plane) => movedPin(plane, 1),
  },
  {
    code: 'incline.pin-too-low',
    baseRate: PIN_OFF / 2,
    persists: 'station',
    change: (plane) => movedPin(plane, -1),
  },
  {
    code: 'incline.string-not-along',
    baseRate: STRING_OFF,
    persists: 'group',
    // Over a guide pulley the string runs as the pulley stands.
    change: (plane) => (plane.string === 'leans' && plane.guide === null ? leaning(plane) : null),
  },
  {
    code: 'incline.read-too-near',
    baseRate: READ_NEAR,
    persists: 'group',
    change: (plane) => (plane.string === 'comes from the pulley' ? nearer(plane) : null),
  },
  {
    code: 'incline.left-empty',
    baseRate: LEFT_EMPTY,
    persists: 'reading',
    leavesOff: true,
    change: (plane) => plane,
  },
];

export const speedingUp: NonNullable<Machine<InclinedPlane>['speedingUp']> = (
  plane,
  at,
  asked,
  acceleration,
) =>
  ridingSpeedingUp(
    asked,
    {
      deadMass: at(plane.inputs.deadMass),
      angle: angleOf(plane, at),
      coefficient: resistance(plane, at, asked.grip).coefficient,
    },
    acceleration,
  );

/** Run taken for slope or for rise, or the two sides upside down. */
export const reckonings: readonly Reckoning<InclinedPlane>[] = [
  // Cotangent instead of one over the sine.
  { code: 'incline.run-for-slope', ratio: (plane, at) => 1 / Math.tan(angleOf(plane, at)) },
  { code: 'incline.run-for-rise', ratio: (plane, at) => 1 / Math.cos(angleOf(plane, at)) },
  { code: 'incline.sides-upside-down', ratio: (plane, at) => Math.sin(angleOf(plane, at)) },
  {
    code: 'incline.whole-board-for-slope',
    ratio: (plane, at) =>
      plane.steep === 'measured' ? null : at(plane.inputs.boardLength) / at(plane.inputs.rise),
  },
];

const TEN_DEGREES: Measured<Radians> = exactly(radians(Math.PI / 18));

const leaning = <P extends InclinedPlane & { readonly string: 'leans' }>(plane: P): P => ({
  ...plane,
  inputs: { ...plane.inputs, lean: plus<Radians>(plane.inputs.lean, TEN_DEGREES) },
});

const nearer = <P extends InclinedPlane & { readonly string: 'comes from the pulley' }>(plane: P): P => ({
  ...plane,
  inputs: { ...plane.inputs, readAt: times<Metres>(plane.inputs.readAt, 0.5) },
});

/** The board on another pin; `null` where there is none, or where it would stand upright. */
function movedPin(plane: InclinedPlane, by: 1 | -1): InclinedPlane | null {
  if (plane.pin === null || plane.steep !== 'rise over length') return null;
  const pin = plane.pin + by;
  const rise = plane.pinHeights[pin - 1];
  if (rise === undefined || rise.value <= 0 || rise.value >= plane.inputs.slopeLength.value) return null;
  return propped(plane, pin, rise);
}

const propped = <P extends InclinedPlane & { readonly steep: 'rise over length' }>(
  plane: P,
  pin: number,
  rise: Measured<Metres>,
): P => ({ ...plane, pin, inputs: { ...plane.inputs, rise } });
