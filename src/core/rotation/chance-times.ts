import type { Seconds } from '../quantities/brands.ts';
import { type Measured, standardUncertainty } from '../uncertainty/measured.ts';
import { normalShare } from '../uncertainty/probability.ts';

/** A time that is never less than nothing, with a long tail to the late side: ln t is normal. */
export interface LogNormal {
  readonly median: number;
  /** Standard deviation of ln t. */
  readonly sigma: number;
}

/**
 * What makes a stay long, as shares of the variance of ln t that add up to 1: the table as it stands today (all
 * groups are slow at it), the group (slow at every table), and the rest.
 */
export interface TimeSplit {
  readonly table: number;
  readonly group: number;
  readonly rest: number;
}

/** Common practice, no source: a result that rests on it says so. */
export const ASSUMED_SPLIT: TimeSplit = { table: 0.25, group: 0.25, rest: 0.5 };

/**
 * A group's time as a log-normal law. The value is its median, "as often sooner as later", which is what somebody
 * means who writes "6 min"; its standard deviation is u. With w = e^(σ²), u² = median² w (w - 1), so that
 * w = (1 + √(1 + 4 (u/median)²))/2. Of a range only u is taken, not its ends.
 *
 * @example
 * const time = { value: 240, parts: [{ slope: 1, unknown: { id: 'x', u: 36, shape: 'normal', origin: 'stated' } }] };
 * logNormalOf(time).sigma // => 0.1476
 */
export function logNormalOf(time: Measured<Seconds>): LogNormal {
  const u = standardUncertainty(time);
  if (time.value <= 0 || u === 0) return { median: Math.max(0, time.value), sigma: 0 };
  return { median: time.value, sigma: Math.sqrt(Math.log(wideningOf(u / time.value))) };
}

const wideningOf = (share: number): number => (1 + Math.sqrt(1 + 4 * share * share)) / 2;

/**
 * Standard deviation of a time with this median: the way back of `logNormalOf`.
 *
 * @example deviationOf({ median: 240, sigma: 0 }) // => 0
 */
export function deviationOf({ median, sigma }: LogNormal): number {
  const w = Math.exp(sigma * sigma);
  return median * Math.sqrt(w * (w - 1));
}

/**
 * Share of the groups that are done within a time.
 *
 * @example doneWithin({ median: 240, sigma: 0.15 }, 240) // => 0.5
 */
export function doneWithin({ median, sigma }: LogNormal, time: number): number {
  if (sigma === 0) return time >= median ? 1 : 0;
  return time <= 0 ? 0 : normalShare(Math.log(time / median) / sigma);
}
