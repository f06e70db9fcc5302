import type { Outcome } from '../setups/prediction.ts';

/** Where readings of a setup are expected: around one figure, or spread over a band. SI. */
export interface Figure {
  readonly low: number;
  readonly high: number;
  readonly u: number;
}

/**
 * The figure that an outcome leads to; `null` where the group can't have read a number.
 *
 * @example figureOf({ kind: 'on its stop', wouldShow: -0.1, stop: 0 }) // => null
 */
export function figureOf(outcome: Outcome): Figure | null {
  switch (outcome.kind) {
    case 'reading':
      return { low: outcome.expected, high: outcome.expected, u: outcome.u };
    case 'band':
      return { low: outcome.lower, high: outcome.upper, u: outcome.u };
    case 'moves under the scale':
      return { low: outcome.shows, high: outcome.shows, u: outcome.u };
    default:
      return null;
  }
}

/**
 * Density of a reading: normal around a figure; for a band, evenly spread between its ends and
 * blurred by the same normal law.
 */
export const density = ({ low, high, u }: Figure, value: number): number =>
  densityBetween(low, high, u, value);

/** The same with the figure taken apart: a class asks for it some ten thousand times. */
export function densityBetween(low: number, high: number, u: number, value: number): number {
  if (u === 0) return value === low ? Number.MAX_VALUE : 0;
  if (high - low < u / 100) {
    const z = (value - (low + high) / 2) / u;
    return Math.exp(-0.5 * z * z) / (u * Math.sqrt(2 * Math.PI));
  }
  return (normalShare((value - low) / u) - normalShare((value - high) / u)) / (high - low);
}

/**
 * Share of a normal law below z: Abramowitz and Stegun 7.1.26 for erf, |error| < 1.5e-7 (from memory).
 *
 * @example normalShare(0) // => 0.5
 */
export function normalShare(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  if (x === 0) return 0.5;
  const t = 1 / (1 + 0.3275911 * x);
  const series =
    t * (0.254829592 + t * (-0.284496736 + t * (1.421413741 + t * (-1.453152027 + t * 1.061405429))));
  const below = 0.5 * series * Math.exp(-x * x);
  return z < 0 ? below : 1 - below;
}
