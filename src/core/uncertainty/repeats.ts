/** What repeats of one measurement say (JCGM 100:2008, 4.2). */
export interface Repeats {
  readonly count: number;
  readonly mean: number;
  /** Standard deviation of one reading, n - 1; 0 for a single one. */
  readonly deviation: number;
  /** Standard uncertainty of the mean. */
  readonly u: number;
}

/**
 * Mean and scatter of repeats (JCGM 100, 4.2.1 to 4.2.3), in two passes with the rounding carried along, so
 * that a small scatter of large values keeps its digits. Nothing is known of the scatter from one reading.
 *
 * @example repeatsOf([2.4, 2.6]).mean // => 2.5
 * @example repeatsOf([]) // => null
 */
export function repeatsOf(values: readonly number[]): Repeats | null {
  const count = values.length;
  if (count === 0) return null;
  const mean = exactSum(values) / count;
  const apart = values.map((each) => each - mean);
  // The second term takes back what the rounding of the mean added.
  const squares = exactSum(apart.map((each) => each * each)) - exactSum(apart) ** 2 / count;
  const deviation = count > 1 ? Math.sqrt(Math.max(0, squares) / (count - 1)) : 0;
  return { count, mean, deviation, u: deviation / Math.sqrt(count) };
}

/** How much a reading is like the one before it, -1 to 1; `null` where all are the same. */
export function serialCorrelation(values: readonly number[]): number | null {
  const mean = repeatsOf(values)?.mean ?? 0;
  const apart = values.map((each) => each - mean);
  const squares = exactSum(apart.map((each) => each * each));
  if (squares === 0) return null;
  return exactSum(apart.slice(1).map((each, n) => each * (apart[n] ?? 0))) / squares;
}

/**
 * A sum that carries its rounding along (Neumaier, 1974).
 *
 * @example exactSum([1e16, 1, -1e16]) // => 1
 */
export function exactSum(values: readonly number[]): number {
  let sum = 0;
  let lost = 0;
  for (const each of values) {
    const next = sum + each;
    lost += Math.abs(sum) >= Math.abs(each) ? sum - next + each : each - next + sum;
    sum = next;
  }
  return sum + lost;
}
