import { type Newtons, newtons } from '../quantities/brands.ts';
import type { Asked } from './balance.ts';

/**
 * The load at rest that would pull as hard as a hung load does while it speeds up upward:
 *
 *     W' = W + (W/g + m) a
 *
 * with a the acceleration of the load and m what rises with it. Source: second law of motion, OpenStax
 * College Physics 2e, 4.3 (section from memory). Neglects what turns or rises less than the load does.
 *
 * @example hungSpeedingUp({ load: 9.8, gravity: 9.8 }, 0, 0.5) // => 10.3
 */
export const hungSpeedingUp = (
  { load, gravity }: Pick<Asked, 'load' | 'gravity'>,
  deadMass: number,
  acceleration: number,
): Newtons => newtons(load + (load / gravity + deadMass) * acceleration);

/** What rides on a plane while it speeds up. */
export interface Riding {
  readonly deadMass: number;
  /** Plane above the level; 0 is the level floor. */
  readonly angle: number;
  /** Drag over pressing force. */
  readonly coefficient: number;
}

/**
 * The same for a load that rides up a plane or along the level: the pull grows by M a beside the plane,
 *
 *     P'/P = 1 + a/(g (sin s + C cos s)),   W' = W + (W/g + m) a/(sin s + C cos s)
 *
 * with s the slope, C the drag and m what the load rides on. On a level floor with wheels that is large:
 * with C = 0.03, 0.3 m/s² doubles the pull. `null` where nothing holds it back and any pull speeds it up.
 */
export function ridingSpeedingUp(
  { load, gravity }: Pick<Asked, 'load' | 'gravity'>,
  { deadMass, angle, coefficient }: Riding,
  acceleration: number,
): Newtons | null {
  const held = Math.sin(angle) + coefficient * Math.cos(angle);
  return held <= 0 ? null : newtons(load + ((load / gravity + deadMass) * acceleration) / held);
}
