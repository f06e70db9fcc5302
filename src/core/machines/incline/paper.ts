import type { Drawing, Point, Shape } from '../../description/drawing.ts';
import type { Caution, Step } from '../../description/step.ts';
import { angleFact, lengthFact } from '../../diagnostics/facts.ts';
import { drawCarriage } from '../../parts/carriage-drawing.ts';
import { carriageSteps } from '../../parts/carriage-paper.ts';
import { directionOf, drawPull } from '../../parts/guided-pull-drawing.ts';
import { type Radians, radians } from '../../quantities/brands.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { angleOf, type InclinedPlane } from './station.ts';

export { carriageDifferences as differences } from '../../parts/carriage-paper.ts';

/** How the station is set up, one action a step. */
export const steps = (plane: InclinedPlane): readonly Step[] => [
  slopeStep(plane),
  ...carriageSteps(plane),
  { key: plane.guide === null ? 'incline.step.pull-along' : 'incline.step.pull-on', facts: {} },
];

function slopeStep(plane: InclinedPlane): Step {
  if (plane.steep === 'measured')
    return { key: 'incline.step.angle', facts: { angle: angleFact(plane.inputs.angle.value) } };
  const { rise, slopeLength } = plane.inputs;
  if (plane.pin !== null) return { key: 'incline.step.pin', facts: { hole: plane.pin } };
  return {
    key: 'incline.step.rise',
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

/** The board to scale with its prop, the foot of the board at the origin; the carriage is halfway up. */
export function drawing(plane: InclinedPlane, at: At): Drawing {
  const a = angleOf(plane, at);
  const length = at(plane.inputs.boardLength);
  const thickness = Math.max(0.01, length / 60);
  const turned = (along: number, up: number): Point => [
    along * Math.cos(a) - up * Math.sin(a),
    along * Math.sin(a) + up * Math.cos(a),
  ];
  const span = plane.steep === 'measured' ? length : at(plane.inputs.slopeLength);
  const propFoot: Point = [span * Math.cos(a), 0];
  const propTop: Point = [span * Math.cos(a), span * Math.sin(a)];
  const carriage = drawCarriage(plane, at, length / 2, a);
  const hookAlong = carriage.hook[0] * Math.cos(a) + carriage.hook[1] * Math.sin(a);
  const pins = plane.pinHeights.map(
    (height, n): Shape => ({
      shape: 'hole',
      centre: [propFoot[0], at(height)],
      radius: thickness / 4,
      number: n + 1,
      ...(plane.pin === n + 1 ? { used: true } : {}),
    }),
  );
  return {
    shapes: [
      { shape: 'ground', from: [-0.1 * length, 0], to: [1.15 * length, 0] },
      { shape: 'line', path: [propFoot, propTop] },
      ...pins,
      {
        shape: 'body',
        role: 'board',
        outline: [turned(0, -thickness), turned(length, -thickness), turned(length, 0), turned(0, 0)],
      },
      ...carriage.shapes,
      ...drawPull(plane, at, carriage.hook, a, length - hookAlong),
      { shape: 'angle', at: [0, 0], from: 0, to: a, radius: 0.2 * length },
      { shape: 'measure', from: propFoot, to: propTop, offset: 1, metres: span * Math.sin(a) },
      { shape: 'measure', from: [0, 0], to: propTop, offset: -1, metres: span },
    ],
  };
}
