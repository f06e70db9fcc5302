import { quantileFrom, studentShare } from './probability.ts';

/** One input's share in a combined uncertainty, and how well that share itself is known. */
export interface ShareKnown {
  readonly u: number;
  /** Degrees of freedom; `null` where the share is known for sure. */
  readonly freedom: number | null;
}

/**
 * Effective degrees of freedom of a combined uncertainty (Welch and Satterthwaite; JCGM 100:2008, G.4.1);
 * `null` where every share is known for sure.
 *
 * @example effectiveFreedom([{ u: 1, freedom: 4 }, { u: 1, freedom: 4 }]) // => 8
 */
export function effectiveFreedom(shares: readonly ShareKnown[]): number | null {
  const variance = shares.reduce((sum, { u }) => sum + u * u, 0);
  const unsure = shares.reduce((sum, { u, freedom }) => sum + (freedom === null ? 0 : u ** 4 / freedom), 0);
  return unsure === 0 ? null : variance ** 2 / unsure;
}

/**
 * How many standard uncertainties on either side hold a share of the values, by t (JCGM 100, table G.2).
 * Broken degrees of freedom are cut to the next lower whole number (G.4.1, note 1).
 *
 * @example coverageFactor(16.7, 0.99) // => 2.9208
 */
export function coverageFactor(freedom: number, share: number): number {
  const whole = Math.max(1, Math.floor(freedom));
  return quantileFrom((t) => studentShare(t, whole), (1 + share) / 2, 0, 2);
}
