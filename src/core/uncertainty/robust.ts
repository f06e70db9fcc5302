import type { Interval } from './coverage-interval.ts';

/**
 * The middle one of some values; of an even count the mean of the middle two. `null` where there are none.
 *
 * @example medianOf([3, 1, 2]) // => 2
 * @example medianOf([1, 2, 3, 10]) // => 2.5
 */
export function medianOf(values: readonly number[]): number | null {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const [below, above] = [sorted[half - 1], sorted[half]];
  if (above === undefined) return null;
  return sorted.length % 2 === 1 || below === undefined ? above : (below + above) / 2;
}

/** Median and a spread that no single value can carry away. */
export interface RobustCentre {
  readonly count: number;
  readonly centre: number;
  /** Standard deviation of one value. */
  readonly spread: number;
  /** Standard uncertainty of that spread. */
  readonly spreadU: number;
  /** Standard uncertainty of the median from the scatter alone. */
  readonly u: number;
  /** Degrees of freedom of that uncertainty. */
  readonly freedom: number;
}

/** With fewer values nothing can be said about how far they scatter. */
export const LEAST_VALUES = 3;

/** 1 / (quantile of the normal law at 3/4): the median deviation of a normal law as its standard deviation. */
const TO_DEVIATION = 1.482602218505602;

/**
 * For 3 to 12 normal values: by what the scaled median deviation has to be multiplied so that its mean is
 * the standard deviation, and how far it then scatters as a share of itself. By trials with numpy, the
 * script and its result lie in test/reference (`class-statistics.py`); from 13 on the limits for many values:
 * 1 + 0.8/n, as in Croux and Rousseeuw (1992; from memory), and 1.167/√n.
 */
const FEW: readonly (readonly [factor: number, share: number])[] = [
  [1.488, 0.825],
  [1.36, 0.572],
  [1.216, 0.584],
  [1.19, 0.475],
  [1.137, 0.477],
  [1.127, 0.412],
  [1.101, 0.413],
  [1.096, 0.37],
  [1.08, 0.369],
  [1.076, 0.337],
];

/**
 * Median of some values with a spread from the median of their distances to it (MAD): s = 1.4826 b MAD,
 * u(median) = √(π/2) s/√n. The degrees of freedom follow from how well s itself is known (JCGM 100:2008,
 * E.4.3). Half of the values may be anything before the median leaves the others. `null` for fewer than 3.
 *
 * Holds for values that scatter about as a normal law; for few values the factor √(π/2) is a little much.
 *
 * @example robustCentre([1, 2, 3, 4, 100])?.centre // => 3
 * @example robustCentre([1, 2]) // => null
 */
export function robustCentre(values: readonly number[]): RobustCentre | null {
  const count = values.length;
  const centre = medianOf(values);
  if (centre === null || count < LEAST_VALUES) return null;
  const apart = medianOf(values.map((each) => Math.abs(each - centre))) ?? 0;
  const [factor, share] = FEW[count - LEAST_VALUES] ?? [1 + 0.8 / count, 1.167 / Math.sqrt(count)];
  const spread = TO_DEVIATION * factor * apart;
  return {
    count,
    centre,
    spread,
    spreadU: share * spread,
    u: (Math.sqrt(Math.PI / 2) * spread) / Math.sqrt(count),
    freedom: 1 / (2 * share * share),
  };
}

/** Two of the values between which the true median lies, and how sure that is. */
export interface MedianInterval extends Interval {
  readonly coverage: number;
}

/**
 * Interval of the true median from the order of the values alone, whatever law they follow: from the r-th
 * lowest to the r-th highest, with r as large as the wished coverage allows, else 1. Coverage is
 * 1 - 2 B(r - 1; n, 1/2) (Conover, Practical Nonparametric Statistics; from memory). `null` for no values.
 *
 * @example medianInterval([1, 2, 3, 4, 5, 6], 0.95)?.coverage // => 0.96875
 */
export function medianInterval(values: readonly number[], wished: number): MedianInterval | null {
  const sorted = [...values].sort((a, b) => a - b);
  const n = sorted.length;
  const coverage = (r: number): number => 1 - 2 * binomialShare(r - 1, n);
  let r = 1;
  while (2 * (r + 1) <= n + 1 && coverage(r + 1) >= wished) r += 1;
  const [from, to] = [sorted[r - 1], sorted[n - r]];
  return from === undefined || to === undefined ? null : { from, to, coverage: Math.max(0, coverage(r)) };
}

/**
 * Probability of at most `most` heads in `tosses` of a fair coin.
 *
 * @example binomialShare(1, 4) // => 0.3125
 */
export function binomialShare(most: number, tosses: number): number {
  let term = 0.5 ** tosses;
  let sum = 0;
  for (let k = 0; k <= Math.min(most, tosses); k += 1) {
    sum += term;
    term *= (tosses - k) / (k + 1);
  }
  return most < 0 ? 0 : Math.min(1, sum);
}
