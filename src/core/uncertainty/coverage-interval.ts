/** Two ends between which a value lies with a stated probability. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

/**
 * The value below which a share of a sorted sample lies, drawn straight between its neighbours
 * (JCGM 101:2008, 7.5 and D.4: the r-th of M values stands for the share (r - 1/2)/M).
 *
 * @example quantileOf([1, 2, 3, 4], 0.5) // => 2.5
 */
export function quantileOf(sorted: ArrayLike<number>, share: number): number {
  const place = share * sorted.length - 0.5;
  const below = Math.min(Math.max(Math.floor(place), 0), sorted.length - 1);
  const above = Math.min(below + 1, sorted.length - 1);
  const [low, high] = [sorted[below] as number, sorted[above] as number];
  return low + Math.min(Math.max(place - below, 0), 1) * (high - low);
}

/**
 * As much left out on the one side as on the other (JCGM 101, 7.7.2).
 *
 * @example symmetricInterval([1, 2, 3, 4, 5, 6, 7, 8, 9, 10], 0.8) // => { from: 1.5, to: 9.5 }
 */
export const symmetricInterval = (sorted: ArrayLike<number>, coverage: number): Interval => ({
  from: quantileOf(sorted, (1 - coverage) / 2),
  to: quantileOf(sorted, (1 + coverage) / 2),
});

/**
 * The shortest that holds the share (JCGM 101, 7.7.4 and 5.3.4): for a skew result it leaves out more on
 * the side that thins out.
 *
 * @example shortestInterval([0, 1, 2, 3, 4, 5, 6, 7, 8, 100], 0.8) // => { from: 0, to: 8 }
 */
export function shortestInterval(sorted: ArrayLike<number>, coverage: number): Interval {
  const span = Math.min(Math.floor(coverage * sorted.length + 0.5), sorted.length - 1);
  let best = 0;
  const length = (start: number): number => (sorted[start + span] as number) - (sorted[start] as number);
  for (let start = 1; start + span < sorted.length; start += 1)
    if (length(start) < length(best)) best = start;
  return { from: sorted[best] as number, to: sorted[best + span] as number };
}
