import { type Newtons, newtons, type Ratio, ratio } from '../quantities/brands.ts';

/**
 * A line over a turning sheave: the two sides do not pull alike, because the sheave drags.
 *
 *     drag = c + s (near + far) / 2
 *
 * with c the constant drag and s the share of the mean of the two tensions. The same law serves both
 * ways of turning, so for c = 0 each way passes on e = (1 - s/2) / (1 + s/2) of the larger tension.
 *
 * Source: own definition, after the efficiency of a sheave in the hoist tables. Holds for a slow,
 * steady line that does not slip in the groove. Neglects the wrap: a line that turns through less
 * than half a turn presses the pin less.
 */

/**
 * Tension on the hauled side while the line is hauled over a sheave; `near` is on the load's side.
 *
 * @example haulOver(newtons(1), ratio(0.1), newtons(0)) // => 1.105263157894737
 */
export const haulOver = (near: Newtons, share: number, constant: Newtons): Newtons =>
  newtons((near * (1 + share / 2) + constant) / (1 - share / 2));

/**
 * Tension on the hauled side while the line creeps back over a sheave. Negative: the line would have
 * to be pushed, so it does not come back.
 *
 * @example easeOver(newtons(1), ratio(0.1), newtons(0)) // => 0.9047619047619047
 */
export const easeOver = (near: Newtons, share: number, constant: Newtons): Newtons =>
  newtons((near * (1 - share / 2) - constant) / (1 + share / 2));

/**
 * Drag of a sheave between two tensions, either way.
 *
 * @example sheaveDrag(newtons(1), newtons(3), ratio(0.1), newtons(0.5)) // => 0.7
 */
export const sheaveDrag = (near: Newtons, far: Newtons, share: number, constant: Newtons): Newtons =>
  newtons(constant + (share * (near + far)) / 2);

/**
 * What a sheave passes on of the pull, from its drag share and with no constant drag.
 *
 * @example efficiencyFromShare(0) // => 1
 */
export const efficiencyFromShare = (share: number): Ratio => ratio((1 - share / 2) / (1 + share / 2));
