import { type NotDefined, notDefined } from '../description/not-defined.ts';
import { type Direction, signOf } from './balance.ts';

/** A load on a plane, pulled by a string: angles in radians, forces in newtons. */
export interface OnSlope {
  /** Everything that rides, load and carriage. */
  readonly weight: number;
  /** Plane above the level; 0 is the level floor. */
  readonly angle: number;
  /** String above the plane, away from it positive. */
  readonly lean: number;
  /** Drag over pressing force. */
  readonly coefficient: number;
  readonly direction: Direction;
}

export interface HeldOnSlope {
  /** Tension in the string at the load. */
  readonly pull: number;
  /** Force between plane and carriage, square to the plane. */
  readonly normal: number;
}

/**
 * The pull that just drags a load up a slope, or just lets it come back.
 *
 *     along the plane    P cos d = W sin a + k N        k = +C up, -C down
 *     square to it       N = W cos a - P sin d
 *     so                 N = W cos(a + d)/(cos d + k sin d)
 *
 * Source: dry friction on a slope, OpenStax College Physics 2e, 5.1; the pull at an angle, Bansal,
 * Engineering Mechanics, examples 8.3 and 8.12. Holds for a stiff flat plane that the load stays on:
 * from a + d = 90 degrees the string lifts it off. Neglects tipping.
 *
 * @example heldOnSlope({ weight: 10, angle: 0, lean: 0, coefficient: 0.25, direction: 'raise' }).pull // => 2.5
 */
export function heldOnSlope(state: OnSlope): HeldOnSlope | NotDefined {
  const { weight: W, angle: a, lean: d } = state;
  const k = signOf(state.direction) * state.coefficient;
  const grasp = Math.cos(d) + k * Math.sin(d);
  if (grasp <= 0)
    return notDefined('slope.jams', {
      lean: { si: d, dimension: 'angle' },
      drag: state.coefficient,
    });
  const normal = (W * Math.cos(a + d)) / grasp;
  if (normal < 0) return notDefined('slope.lifts-off', { lean: { si: d, dimension: 'angle' } });
  return { normal, pull: (W * Math.sin(a) + k * normal) / Math.cos(d) };
}

/** Lean of the string at which the least pull does: the friction angle above the plane. */
export const bestLean = (coefficient: number): number => Math.atan(coefficient);

/**
 * The angle at which a load just starts to slide or roll down by itself, tan a = C.
 * Source: OpenStax College Physics 2e, 5.1.
 *
 * @example slipAngle(1) // => 0.7853981633974483
 */
export const slipAngle = (coefficient: number): number => Math.atan(coefficient);
