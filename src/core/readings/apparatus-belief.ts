/**
 * What is believed of a table's apparatus while its readings come in: how far each good figure is off its
 * best value, with the covariance of those distances. Mutable inside one weighing, never outside.
 */
export interface Belief {
  readonly mean: number[];
  readonly spread: number[][];
}

export const beliefOf = (spread: readonly (readonly number[])[], mean?: readonly number[]): Belief => ({
  mean: mean === undefined ? spread.map(() => 0) : [...mean],
  spread: spread.map((row) => [...row]),
});

/**
 * Takes in one reading at setup `s` that is one of several things: explanation e, with probability p,
 * would move the figure by a = gain x surprise / S and narrow it by b = gain² / S. The mixture is held to its mean
 * and covariance (assumed-density filtering; for one explanation it is Kalman's step).
 */
export function takeIn(belief: Belief, s: number, a: number, aSquared: number, b: number): void {
  const column = belief.spread.map((row) => row[s] ?? 0);
  const narrower = aSquared - a * a - b;
  for (let i = 0; i < column.length; i += 1) {
    const ci = column[i] ?? 0;
    belief.mean[i] = (belief.mean[i] ?? 0) + ci * a;
    const row = belief.spread[i];
    if (row !== undefined)
      for (let j = 0; j < column.length; j += 1) row[j] = (row[j] ?? 0) + ci * (column[j] ?? 0) * narrower;
  }
}

/** Takes in the readings of setup `s` together: their mean distance, and the precision of that mean. */
export function takeInMean(belief: Belief, s: number, distance: number, precision: number): void {
  if (precision <= 0) return;
  const total = (belief.spread[s]?.[s] ?? 0) + 1 / precision;
  const surprise = distance - (belief.mean[s] ?? 0);
  takeIn(belief, s, surprise / total, (surprise / total) ** 2, 1 / total);
}

/** The belief about setup `s` with one reading of it (its distance and precision) taken out again. */
export function without(
  belief: Belief,
  s: number,
  distance: number,
  precision: number,
): { readonly shift: number; readonly doubt: number } {
  const doubt = belief.spread[s]?.[s] ?? 0;
  const shift = belief.mean[s] ?? 0;
  const rest = 1 - precision * doubt;
  if (precision <= 0 || rest <= 1e-9) return { shift, doubt };
  return { shift: (shift - precision * doubt * distance) / rest, doubt: doubt / rest };
}
