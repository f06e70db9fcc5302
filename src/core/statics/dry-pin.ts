/**
 * A pull that turns a body on a dry pin, at the limit of turning.
 *
 *     E c = M + k |R|,   R = T - E as vectors,   k = ± mu r
 *
 * M is the moment against the turn without friction, c > 0 the arm of the pull, T the weight of all
 * that hangs on the pin, dy the upright part of the pull's direction, and mu r |R| the moment of the
 * pin's friction circle: k > 0 while the body is turned against the moment, k < 0 while it comes
 * back. R holds E, so the equation is squared and solved; nothing is iterated. The left side less
 * the right side grows with E as long as c > |k|, so there is exactly one such pull; `null` where the
 * line of pull passes through the friction circle and no pull can turn the body.
 *
 * Source: friction circle of a dry journal bearing (Meriam and Kraige, Statics, 6/6, from memory).
 * Holds for one pin, or two in line that share the load. Neglects seizing and lubrication.
 *
 * @example pullOnDryPin({ moment: 6, arm: 3, circle: 0, weight: 10, upright: -1 }) // => 2
 */
export function pullOnDryPin(asked: DryPin): number | null {
  const { moment: M, arm: c, circle: k, weight: T, upright: dy } = asked;
  const lead = c * c - k * k;
  if (lead <= 0) return null;
  const dx = Math.sqrt(Math.max(0, 1 - dy * dy));
  // The discriminant, written so that no two large numbers are subtracted in it.
  const root = Math.hypot(M - c * dy * T, Math.sqrt(lead) * dx * T);
  return (M * c - k * k * dy * T + k * root) / lead;
}

export interface DryPin {
  /** N·m, positive against the turn. */
  readonly moment: number;
  /** m */
  readonly arm: number;
  /** Radius of the friction circle, mu times the pin's radius, m; negative while coming back. */
  readonly circle: number;
  /** Weight of all that hangs on the pin, N. */
  readonly weight: number;
  /** Upright part of the pull's direction: -1 straight down, 0 level, 1 straight up. */
  readonly upright: number;
}

/**
 * Size of the force between pin and body.
 *
 * @example pinReaction(4, 3, 0) // => 5
 */
export const pinReaction = (weight: number, pull: number, upright: number): number =>
  Math.hypot(pull * Math.sqrt(Math.max(0, 1 - upright * upright)), weight - pull * upright);
