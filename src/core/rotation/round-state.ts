import type { RoundBook } from './round-book.ts';
import { allLeft, boundOfBearers, type RoundsLeft, roundsNeeded } from './round-bound.ts';
import { type Cover, intervalCovers } from './round-covers.ts';
import { endOfRounds } from './round-placing.ts';

/** A search for a plan that ends by `limit`, as it runs: what is left, what it may still spend, what it saw. */
export interface RoundSearch {
  readonly book: RoundBook;
  readonly left: { open: Uint8Array; loads: Int32Array; count: number };
  /** The rounds so far, each its visits. */
  readonly rounds: number[][];
  /** By level: how many of the rounds so far are at least as long. */
  readonly filled: number[];
  /** By level: how many rounds there may be at least as long; `null` where only the limit counts. */
  readonly profile: readonly number[] | null;
  /** The levels of the rounds that are tried first, in their order. */
  readonly order: readonly number[];
  /** So many fillings of a round of one length are tried at most; `Infinity` where all else has to be ruled out. */
  readonly breadth: number;
  readonly covers: readonly Cover[];
  readonly limit: number;
  /** Changes from the plan that stood, at most. */
  readonly mostChanges: number;
  /** By visit: those with more are tried first. */
  readonly liking: Float64Array;
  stepsLeft: number;
  /** Whether something was left out for breadth. */
  isCut: boolean;
  /** The least end, and the least number of changes, of what was left out for being beyond the limit. */
  nextLimit: number;
  nextChanges: number;
  readonly seen: Map<string, readonly (readonly [number, number])[]>;
}

/** Which rounds a search holds itself to, and which it tries first. */
export type RoundHint = Pick<RoundSearch, 'profile' | 'order' | 'breadth'>;

export const NO_HINT: RoundHint = { profile: null, order: [], breadth: Infinity };

export function roundSearch(
  book: RoundBook,
  limit: number,
  mostChanges: number,
  steps: number,
  liking: Float64Array,
  { profile, order, breadth }: RoundHint = NO_HINT,
): RoundSearch {
  const left: RoundsLeft = allLeft(book);
  return {
    book,
    left: { open: left.open, loads: left.loads, count: left.count },
    rounds: [],
    filled: book.lengths.map(() => 0),
    profile,
    order,
    breadth,
    isCut: false,
    covers: profile === null ? [] : intervalCovers(book),
    limit,
    mostChanges,
    liking,
    stepsLeft: steps,
    nextLimit: Infinity,
    nextChanges: Infinity,
    seen: new Map(),
  };
}

/**
 * No plan of what is left ends before this, where its first round can begin at `ready`: each threshold of length
 * asks for so many rounds at least as long (a Latin-square bound in layers), and each bearer for its own time.
 */
export function boundOfRest(search: RoundSearch, ready: number): number {
  const { book, left } = search;
  return Math.max(boundByNeeded(search, roundsNeeded(book, left), ready), boundOfBearers(book, left, ready));
}

/** The same by the rounds that are still needed alone. Where rounds may change places, those filled count anew with them. */
export function boundByNeeded(search: RoundSearch, needed: readonly number[], ready: number): number {
  const { book, filled } = search;
  if (!book.isFree) return endOfRounds(book, needed, ready);
  const all = needed.map((rounds, level) => rounds + (filled[level] as number));
  return endOfRounds(book, all, book.problem.begins);
}

/** By level: how many rounds at least as long may still come, by the profile; all that lie under a shorter level too. */
export function leftOfProfile(search: RoundSearch, profile: readonly number[]): number[] {
  const rest = profile.map((rounds, level) => rounds - (search.filled[level] as number));
  for (let level = rest.length - 2; level >= 0; level -= 1)
    rest[level] = Math.min(rest[level] as number, rest[level + 1] as number);
  return rest;
}

/** Marks the visits of a round as done, or takes that back. */
export function markDone(search: RoundSearch, visits: readonly number[], isDone: boolean): void {
  const { book, left } = search;
  const levels = book.lengths.length;
  const change = isDone ? -1 : 1;
  const longest = Math.min(...visits.map((visit) => book.levelOf[visit] as number));
  for (let level = longest; level < levels; level += 1)
    search.filled[level] = (search.filled[level] as number) - change;
  for (const visit of visits) {
    left.open[visit] = isDone ? 0 : 1;
    left.count += change;
    for (const bearer of book.weighsOn[visit] as readonly number[])
      for (let level = book.levelOf[visit] as number; level < levels; level += 1)
        left.loads[bearer * levels + level] = (left.loads[bearer * levels + level] as number) + change;
  }
}

/**
 * Whether the same visits were left before, no later and with no more changes, and led to nothing. Where they
 * were not, it is noted that they are now.
 */
export function wasSeen(search: RoundSearch, key: string, ready: number, changes: number): boolean {
  const before = search.seen.get(key) ?? [];
  if (before.some(([then, had]) => then <= ready && had <= changes)) return true;
  if (search.seen.size < MOST_SEEN || before.length > 0)
    search.seen.set(key, [
      ...before.filter(([then, had]) => then < ready || had < changes),
      [ready, changes],
    ]);
  return false;
}

const MOST_SEEN = 300_000;

/** The visits that are left, as text; sixteen to a letter. */
export function keyOfLeft(open: Uint8Array): string {
  let key = '';
  for (let from = 0; from < open.length; from += 16) {
    let code = 0;
    for (let bit = 0; bit < 16 && from + bit < open.length; bit += 1)
      code |= (open[from + bit] as number) << bit;
    key += String.fromCharCode(code);
  }
  return key;
}
