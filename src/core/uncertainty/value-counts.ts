import type { Interval } from './coverage-interval.ts';

/** As many bins as a hundredth of a standard deviation needs eight times over; the memory of any run. */
const BINS = 1 << 14;
/** The grid reaches this many times the spread of the first block beyond that spread, on either side. */
const REACH = 1;
/** Shares of the first block between which its spread is taken: stray values don't widen the grid. */
const SPREAD = { from: 0.0005, to: 0.9995 } as const;

/**
 * Counts of values in a fixed memory: a grid that the first block lays out, with the least and the
 * greatest value of every bin kept, so that a result of few distinct values (rounded to graduations)
 * comes back exactly. Bins are about a thousandth of a standard deviation wide.
 */
export interface ValueCounts {
  readonly add: (block: Float64Array) => void;
  readonly count: () => number;
  /** The value below which a share lies. */
  readonly quantile: (share: number) => number;
  readonly shortest: (coverage: number) => Interval;
}

/** Counts on a grid laid out by a first block of sorted values, which itself is not counted yet. */
export function valueCounts(sortedFirst: Float64Array): ValueCounts {
  const at = (share: number): number =>
    sortedFirst[Math.min(sortedFirst.length - 1, Math.floor(share * sortedFirst.length))] ?? 0;
  const spread = at(SPREAD.to) - at(SPREAD.from);
  const low = at(SPREAD.from) - REACH * spread;
  const scale = spread > 0 ? BINS / ((1 + 2 * REACH) * spread) : 0;
  const counts = new Float64Array(BINS);
  const least = new Float64Array(BINS).fill(Number.POSITIVE_INFINITY);
  const most = new Float64Array(BINS).fill(Number.NEGATIVE_INFINITY);
  let total = 0;
  const add = (block: Float64Array): void => {
    for (let n = 0; n < block.length; n += 1) {
      const value = block[n] as number;
      const place = (value - low) * scale;
      // What lies beyond the grid falls into its outermost bins.
      const bin = place < 0 ? 0 : place >= BINS ? BINS - 1 : place | 0;
      counts[bin] = (counts[bin] as number) + 1;
      if (value < (least[bin] as number)) least[bin] = value;
      if (value > (most[bin] as number)) most[bin] = value;
    }
    total += block.length;
  };
  /** The r-th value (from 0, also between two) of a bin of which `before` values lie below. */
  const within = (bin: number, r: number, before: number): number => {
    const [from, to] = [least[bin] as number, most[bin] as number];
    const inBin = counts[bin] as number;
    return inBin <= 1 ? from : from + Math.min(Math.max((r - before) / (inBin - 1), 0), 1) * (to - from);
  };
  const quantile = (share: number): number => {
    const r = Math.min(Math.max(share * total - 0.5, 0), total - 1);
    let before = 0;
    let last = 0;
    for (let bin = 0; bin < BINS; bin += 1) {
      const inBin = counts[bin] as number;
      if (inBin === 0) continue;
      if (before + inBin > r) return within(bin, r, before);
      before += inBin;
      last = bin;
    }
    return most[last] as number;
  };
  /** Two pointers, one at the start of a bin and one a coverage later. */
  const shortest = (coverage: number): Interval => {
    const span = Math.min(Math.floor(coverage * total + 0.5), total - 1);
    let best: Interval | null = null;
    let startBefore = 0;
    let end = 0;
    let endBefore = 0;
    for (let start = 0; start < BINS; start += 1) {
      const inBin = counts[start] as number;
      if (inBin === 0) continue;
      const r = startBefore + span;
      if (r > total - 1) break;
      while (end < BINS - 1 && endBefore + (counts[end] as number) <= r) {
        endBefore += counts[end] as number;
        end += 1;
      }
      const found = { from: least[start] as number, to: within(end, r, endBefore) };
      if (best === null || found.to - found.from < best.to - best.from) best = found;
      startBefore += inBin;
    }
    return best ?? { from: quantile(0), to: quantile(1) };
  };
  return { add, count: () => total, quantile, shortest };
}
