import { gammaShare } from './probability.ts';
import { binomialShare } from './robust.ts';

/** Two things compared by several judges, each of whom says which is less. */
export interface SignTest {
  /** Judges for whom the first is less, for whom it is more, and who make no difference. */
  readonly less: number;
  readonly more: number;
  readonly same: number;
  /** How often chance alone is as one-sided, either way; 1 where nobody makes a difference. */
  readonly probability: number;
}

/**
 * Exact sign test of pairs (Dixon and Mood, 1946): only who found which less counts, not by how much, and a
 * pair without a difference says nothing. Two-sided, by the binomial law.
 *
 * @example signTest([[1, 2], [1, 2], [1, 2], [1, 2], [2, 1]]).probability // => 0.375
 */
export function signTest(pairs: readonly (readonly [number, number])[]): SignTest {
  const less = pairs.filter(([a, b]) => a < b).length;
  const more = pairs.filter(([a, b]) => a > b).length;
  const told = less + more;
  return {
    less,
    more,
    same: pairs.length - told,
    probability: Math.min(1, 2 * binomialShare(Math.min(less, more), told)),
  };
}

/** How far several judges agree about an order. */
export interface Concordance {
  /** Kendall's W: 0 none, 1 all say the same. */
  readonly w: number;
  readonly judges: number;
  /** Mean rank of each thing; the least is first. */
  readonly meanRanks: readonly number[];
  /** How often chance alone brings that much agreement. */
  readonly probability: number;
  /** Whether that is counted out over all orders, or by the χ² law for many judges. */
  readonly isExact: boolean;
}

/**
 * Places as ranks: equal ones share the mean of the places they take up.
 *
 * @example ranksOf([10, 30, 10]) // => [1.5, 3, 1.5]
 */
export const ranksOf = (values: readonly number[]): readonly number[] =>
  values.map((value) => {
    const below = values.filter((each) => each < value).length;
    const same = values.filter((each) => each === value).length;
    return below + (same + 1) / 2;
  });

/**
 * Kendall's coefficient of concordance with the correction for shared places (Kendall and Babington Smith,
 * 1939; Kendall 1948), W = (12 S) / (m²(k³ - k) - m Σ(t³ - t)), S the squared distances of the rank sums
 * from their mean. Its probability is counted out over all orders that each judge could have given (his own
 * shared places kept) while those are few; else m (k - 1) W follows χ² with k - 1 degrees of freedom
 * (Friedman, 1937). `null` for fewer than two judges or things, or where nobody makes a difference.
 *
 * @example concordance([[1, 2, 3], [1, 2, 3]])?.w // => 1
 */
export function concordance(orders: readonly (readonly number[])[]): Concordance | null {
  const things = orders[0]?.length ?? 0;
  const judges = orders.length;
  if (judges < 2 || things < 2) return null;
  const ranks = orders.map(ranksOf);
  const shared = ranks.reduce((sum, each) => sum + tiesOf(each), 0);
  const most = (judges ** 2 * (things ** 3 - things) - judges * shared) / 12;
  if (most <= 0) return null;
  const sums = ranks[0]?.map((_, n) => ranks.reduce((sum, each) => sum + (each[n] ?? 0), 0)) ?? [];
  const w = squaresOf(sums, judges) / most;
  const exact = exactProbability(ranks, squaresOf(sums, judges));
  return {
    w,
    judges,
    meanRanks: sums.map((each) => each / judges),
    probability: exact ?? 1 - gammaShare((things - 1) / 2, (judges * (things - 1) * w) / 2),
    isExact: exact !== null,
  };
}

const tiesOf = (ranks: readonly number[]): number =>
  [...new Set(ranks)].reduce((sum, rank) => {
    const t = ranks.filter((each) => each === rank).length;
    return sum + t ** 3 - t;
  }, 0);

function squaresOf(sums: readonly number[], judges: number): number {
  const mean = (judges * (sums.length + 1)) / 2;
  return sums.reduce((total, each) => total + (each - mean) ** 2, 0);
}

/** Rank sums that are kept apart while orders are counted: beyond this the χ² law is good enough. */
const MOST_SUMS = 20_000;
const MOST_THINGS = 5;

/** Counted judge by judge: how often each set of rank sums comes up, whose things change places at will. */
function exactProbability(ranks: readonly (readonly number[])[], found: number): number | null {
  if ((ranks[0]?.length ?? 0) > MOST_THINGS) return null;
  let sums = new Map<string, number>([[(ranks[0] ?? []).map(() => 0).join(' '), 1]]);
  for (const own of ranks) {
    const orders = ordersOf(own);
    const next = new Map<string, number>();
    for (const [key, share] of sums) {
      const before = key.split(' ').map(Number);
      for (const order of orders) {
        // Which thing has which sum doesn't matter: all orders of the next judge come up anyway.
        const after = before
          .map((each, n) => each + (order[n] ?? 0))
          .sort((a, b) => a - b)
          .join(' ');
        next.set(after, (next.get(after) ?? 0) + share / orders.length);
      }
    }
    if (next.size > MOST_SUMS) return null;
    sums = next;
  }
  let probability = 0;
  for (const [key, share] of sums)
    if (squaresOf(key.split(' ').map(Number), ranks.length) >= found - 1e-9) probability += share;
  return Math.min(1, probability);
}

/** All orders of some ranks; equal ones are told apart, so that each order has the same weight. */
function ordersOf(ranks: readonly number[]): readonly (readonly number[])[] {
  if (ranks.length <= 1) return [ranks];
  return ranks.flatMap((first, n) =>
    ordersOf([...ranks.slice(0, n), ...ranks.slice(n + 1)]).map((rest) => [first, ...rest]),
  );
}
