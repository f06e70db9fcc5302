import type { Point, ScaleHang, Shape } from '../description/drawing.ts';
import { leanOf, type StringPull } from '../statics/guided-pull.ts';
import type { At } from '../uncertainty/propagate.ts';

/** Sizes that only the picture needs: radius of the guide pulley, string between it and the scale. */
const PULLEY_RADIUS = 0.015;
const TAIL = 0.08;

/**
 * The string from the hook to the scale. Towards a guide pulley it runs to above the board's end
 * (`reach` metres on along the plane); pulled by hand it is as long, so that scale and hand stand clear
 * of board and prop: the length of a string changes no force.
 */
export function drawPull(
  pull: StringPull,
  at: At,
  hook: Point,
  plane: number,
  reach: number,
): readonly Shape[] {
  const direction = directionOf(pull, at, plane);
  if (pull.guide === null) {
    const end = step(hook, direction, Math.max(0, reach));
    return [
      { shape: 'line', path: [hook, end] },
      { shape: 'effort', from: end, direction, newtons: 0, scale: hangOf(pull, direction) },
    ];
  }
  const run = pull.string === 'leans' ? reach : at(pull.inputs.readAt);
  const length = run / Math.cos(leanOf(pull, at));
  const toward = plane + leanOf(pull, at);
  const arrives = step(hook, toward, length);
  // The pulley stands on the side that the string turns to.
  const side = direction > toward ? Math.PI / 2 : -Math.PI / 2;
  const centre = step(arrives, toward + side, PULLEY_RADIUS);
  const leaves = step(centre, direction - side, PULLEY_RADIUS);
  const end = step(leaves, direction, TAIL);
  return [
    { shape: 'wheel', centre, radius: PULLEY_RADIUS, role: 'sheave' },
    { shape: 'line', path: [hook, arrives] },
    { shape: 'line', path: [leaves, end] },
    { shape: 'effort', from: end, direction, newtons: 0, scale: hangOf(pull, direction) },
  ];
}

/** Where the hand pulls, as an angle above the level. */
export const directionOf = (pull: StringPull, at: At, plane: number): number =>
  pull.guide === null ? plane + leanOf(pull, at) : pull.guide.angle;

const step = ([x, y]: Point, direction: number, length: number): Point => [
  x + length * Math.cos(direction),
  y + length * Math.sin(direction),
];

function hangOf(pull: StringPull, direction: number): ScaleHang {
  switch (pull.guide?.leaves) {
    case 'down':
      return 'upside down';
    case 'up':
      return 'hook down';
    case 'level':
      return 'level';
    default:
      return Math.abs(direction) < 1e-9 ? 'level' : 'along the slope';
  }
}
