import type { Drawing, Point, Shape } from '../../description/drawing.ts';
import type { Caution, Step } from '../../description/step.ts';
import { angleFact, lengthFact } from '../../diagnostics/facts.ts';
import { CARRIAGE_LENGTH, drawCarriage } from '../../parts/carriage-drawing.ts';
import { carriageSteps, pullSteps, unloaded } from '../../parts/carriage-paper.ts';
import { directionOf, drawPull } from '../../parts/guided-pull-drawing.ts';
import { type Radians, radians } from '../../quantities/brands.ts';
import { keyOf } from '../../statics/carriage.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { angleOf, type InclinedPlane } from './station.ts';

export {
  carriageDifferences as differences,
  carriageReading as reading,
} from '../../parts/carriage-paper.ts';

/** How the station is set up, one action a step. */
export const steps = (plane: InclinedPlane, isFelt = false): readonly Step[] => [
  ...slopeSteps(plane),
  ...carriageSteps(plane, 'incline', isFelt),
  ...pullSteps(plane, 'incline.step.pull-along', isFelt),
];

/** How steep: by an angle, by a height somewhere along the board, or by the place of the prop and its pin. */
function slopeSteps(plane: InclinedPlane): readonly Step[] {
  if (plane.steep === 'measured')
    return [{ key: 'incline.step.angle', facts: { angle: angleFact(plane.inputs.angle.value) } }];
  const { rise, slopeLength } = plane.inputs;
  const length = lengthFact(slopeLength.value);
  return plane.pin === null
    ? [{ key: 'incline.step.rise', facts: { rise: lengthFact(rise.value), length } }]
    : [{ key: 'incline.step.pin', facts: { hole: plane.pin, length } }];
}

/** What rode gives up its load to what rides next; the steps themselves begin where it starts. */
export const between = (from: InclinedPlane, to: InclinedPlane): readonly Step[] =>
  from.rides === to.rides ? [] : [unloaded(from)];

/** What rides comes down and is emptied; the board stays as steep as the next group needs it. */
export const reset = (plane: InclinedPlane, isFelt = false): readonly Step[] => [
  { key: `incline.reset.${keyOf(plane)}`, facts: {} },
  { key: isFelt ? 'incline.reset.load' : 'incline.reset.load-and-scale', facts: {} },
  slopeReset(plane),
];

function slopeReset(plane: InclinedPlane): Step {
  if (plane.steep === 'measured')
    return { key: 'incline.reset.angle', facts: { angle: angleFact(plane.inputs.angle.value) } };
  const { rise, slopeLength } = plane.inputs;
  if (plane.pin !== null) return { key: 'incline.reset.pin', facts: { hole: plane.pin } };
  return {
    key: 'incline.reset.rise',
    facts: { rise: lengthFact(rise.value), length: lengthFact(slopeLength.value) },
  };
}

export const cautions = (plane: InclinedPlane): readonly Caution[] => [
  { key: 'caution.falling-loads', facts: {}, source: 'falling loads' },
  ...(plane.rides === 'rollers' || plane.guide !== null
    ? [{ key: 'caution.fingers', facts: {}, source: 'fingers' }]
    : []),
];

/** Angle of the pull above the level, for a scale that is pulled along it. */
export const slope = (plane: InclinedPlane, at: At): Radians =>
  radians(directionOf(plane, at, angleOf(plane, at)));

/** How far a guide pulley stands beyond the upper end of the board: only the picture needs it. */
const BEYOND = 0.05;
/** With a guide pulley there is more room, so that prop, rise and hanging scale stand side by side. */
const BEYOND_WITH_PULLEY = 0.2;

/** The board to scale with its prop, the foot of the board at the origin. */
export const drawing = (plane: InclinedPlane, at: At): Drawing => drawn(plane, at, null);

/** As it is left: what rides on the board stands empty at its foot. */
export const start = (plane: InclinedPlane, at: At): readonly Drawing[] => [
  drawn(plane, at, CARRIAGE_LENGTH / 2),
];

/** With the carriage at work, or with its middle so far up the board. */
function drawn(plane: InclinedPlane, at: At, standsAt: number | null): Drawing {
  const a = angleOf(plane, at);
  const length = at(plane.inputs.boardLength);
  const thickness = Math.max(0.01, length / 60);
  const turned = (along: number, up: number): Point => [
    along * Math.cos(a) - up * Math.sin(a),
    along * Math.sin(a) + up * Math.cos(a),
  ];
  const end = turned(length, 0);
  const beyond = plane.guide === null ? BEYOND : BEYOND_WITH_PULLEY;
  // By hand the carriage stands low; from a pulley, where it is read.
  const readAt = plane.string === 'leans' ? null : at(plane.inputs.readAt) + CARRIAGE_LENGTH / 2;
  const works = readAt === null ? 0.35 * length : Math.max(CARRIAGE_LENGTH / 2, length + beyond - readAt);
  const middle = standsAt ?? works;
  const carriage = drawCarriage(plane, at, middle, a);
  const hookAlong = carriage.hook[0] * Math.cos(a) + carriage.hook[1] * Math.sin(a);
  return {
    shapes: [
      // A scale that hangs from a guide pulley hangs beyond the edge of the table.
      { shape: 'ground', from: [-0.05 * length, 0], to: [plane.guide === null ? 1.05 * length : end[0], 0] },
      ...propOf(plane, at, thickness),
      {
        shape: 'body',
        role: 'board',
        outline: [turned(0, -thickness), turned(length, -thickness), end, turned(0, 0)],
      },
      ...carriage.shapes,
      ...(standsAt === null ? carriage.load : []),
      ...drawPull(plane, at, carriage.hook, a, length + beyond - hookAlong),
      { shape: 'angle', at: [0, 0], from: 0, to: a, radius: 0.2 * length },
    ],
  };
}

/** The post with its pins and the two lengths that make the slope; nothing where only an angle is known. */
function propOf(plane: InclinedPlane, at: At, thickness: number): readonly Shape[] {
  if (plane.steep === 'measured') return [];
  const span = at(plane.inputs.slopeLength);
  const rise = at(plane.inputs.rise);
  const foot: Point = [Math.sqrt(span * span - rise * rise), 0];
  const heights = plane.pin === null ? [] : plane.pinHeights.map(at);
  return [
    { shape: 'line', path: [foot, [foot[0], Math.max(rise, ...heights)]] },
    ...heights.map(
      (height, n): Shape => ({
        shape: 'hole',
        centre: [foot[0], height],
        radius: thickness / 4,
        number: n + 1,
        ...(plane.pin === n + 1 ? { used: true } : {}),
      }),
    ),
    {
      shape: 'measure',
      from: foot,
      to: [foot[0], rise],
      offset: 1,
      metres: rise,
    },
    { shape: 'measure', from: [0, 0], to: [foot[0], rise], offset: 1, metres: span },
  ];
}
