import { normalDensity, normalShare, quantileFrom } from './probability.ts';

/** What is allowed; a side without a limit is `null`. */
export interface Limits {
  readonly low: number | null;
  readonly high: number | null;
}

/**
 * How probable it is that a measured value lies within limits (JCGM 106:2012, 7.2 to 7.4), with a normal law
 * about it.
 *
 * @example conformityOf(509.7, 8.6, { low: 490, high: null }) // => 0.989
 */
export function conformityOf(value: number, u: number, { low, high }: Limits): number {
  const below = high === null ? 1 : normalShare((high - value) / u);
  return below - (low === null ? 0 : normalShare((low - value) / u));
}

/** What is known of the things that are measured, before any is: between two ends, by its density. */
export interface Stock {
  readonly from: number;
  readonly to: number;
  readonly density: (x: number) => number;
}

/** Wrong decisions over a whole stock (JCGM 106, 9.5.2): taken though bad, refused though good. */
export interface Risks {
  readonly takenThoughBad: number;
  readonly refusedThoughGood: number;
}

/** Risks of taking what is measured within `taken`, when good means within `good`. */
export function risksOf(stock: Stock, u: number, good: Limits, taken: Limits): Risks {
  const isGood = (x: number): boolean =>
    (good.low === null || x >= good.low) && (good.high === null || x <= good.high);
  // The sum is taken piece by piece: between limits, where it is smooth, and by itself where it turns.
  const turns = [taken.low, taken.high].flatMap((each) =>
    each === null ? [] : [each - 8 * u, each + 8 * u],
  );
  const inside = [good.low, good.high, ...turns].flatMap((each) =>
    each !== null && each > stock.from && each < stock.to ? [each] : [],
  );
  const ends = [stock.from, ...inside.sort((a, b) => a - b), stock.to];
  const pieces = ends.slice(1).map((to, n) => ({ from: ends[n] ?? to, to }));
  let [takenThoughBad, refusedThoughGood] = [0, 0];
  for (const { from, to } of pieces) {
    const take = (x: number): number => conformityOf(x, u, taken);
    if (isGood((from + to) / 2))
      refusedThoughGood += integral((x) => stock.density(x) * (1 - take(x)), from, to);
    else takenThoughBad += integral((x) => stock.density(x) * take(x), from, to);
  }
  return { takenThoughBad, refusedThoughGood };
}

/** How far inside an upper limit one must stay, so that no more than a share is taken though bad. */
export function guardBand(stock: Stock, u: number, high: number, share: number): number {
  const good = { low: null, high };
  const risk = (guard: number): number =>
    risksOf(stock, u, good, { low: null, high: high - guard }).takenThoughBad;
  return quantileFrom((guard) => -risk(guard), -share, 0, u);
}

/** A normal stock, as far as nine standard deviations. */
export const normalStock = (mean: number, deviation: number): Stock => ({
  from: mean - 9 * deviation,
  to: mean + 9 * deviation,
  density: (x) => normalDensity((x - mean) / deviation) / deviation,
});

const PIECES = 2000;

/** Simpson's rule. */
function integral(of: (x: number) => number, from: number, to: number): number {
  const step = (to - from) / PIECES;
  let sum = of(from) + of(to);
  for (let n = 1; n < PIECES; n += 1) sum += of(from + n * step) * (n % 2 === 1 ? 4 : 2);
  return (sum * step) / 3;
}
