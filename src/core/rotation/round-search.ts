import type { RoundBook } from './round-book.ts';
import { roundsNeeded } from './round-bound.ts';
import { bestOrder } from './round-placing.ts';
import { fillShortest } from './round-shortest.ts';
import { fewestChanges, fillNearStanding, stoodAt } from './round-standing.ts';
import {
  boundOfRest,
  keyOfLeft,
  leftOfProfile,
  markDone,
  NO_HINT,
  type RoundHint,
  type RoundSearch,
  roundSearch,
  wasSeen,
} from './round-state.ts';

/** What a search for a plan within a limit came to. */
export interface SearchEnd {
  /** By round its visits; `null` where none was found. */
  readonly rounds: readonly (readonly number[])[] | null;
  /** Whether everything within the limit was ruled out or found; else the steps ran out. */
  readonly isExhausted: boolean;
  /** Nothing beyond the limit ends before this, and has fewer changes than these, where all within was ruled out. */
  readonly nextLimit: number;
  readonly nextChanges: number;
  readonly steps: number;
}

/** Looks for a plan that ends by `limit` with at most so many changes; the first one it meets will do. */
export function searchRounds(
  book: RoundBook,
  limit: number,
  mostChanges: number,
  steps: number,
  liking: Float64Array,
  hint: RoundHint = NO_HINT,
): SearchEnd {
  const search = roundSearch(book, limit, mostChanges, steps, liking, hint);
  const isStopped = goOn(search, book.problem.begins, 0);
  const isFound = isStopped && search.left.count === 0;
  return {
    rounds: isFound ? inBestOrder(book, search.rounds) : null,
    isExhausted: isFound || (!isStopped && !search.isCut),
    nextLimit: search.nextLimit,
    nextChanges: search.nextChanges,
    steps: steps - Math.max(0, search.stepsLeft),
  };
}

/** Where rounds may change places: in the order in which they suit the breaks best. */
function inBestOrder(book: RoundBook, rounds: readonly number[][]): readonly (readonly number[])[] {
  if (!book.isFree || book.breaks.length === 0) return rounds;
  const left = rounds.map((visits) => ({
    visits,
    level: Math.min(...visits.map((visit) => book.levelOf[visit] as number)),
  }));
  const counts = book.lengths.map((_, level) => left.filter((round) => round.level === level).length);
  return bestOrder(book, counts, book.problem.begins).map(
    (level) =>
      left.splice(
        left.findIndex((round) => round.level === level),
        1,
      )[0]?.visits ?? [],
  );
}

/** Fills the next round and those after it; true where a plan was found or the steps ran out. */
function goOn(search: RoundSearch, ready: number, changes: number): boolean {
  const { book, left, rounds } = search;
  if (left.count === 0) return true;
  if (search.stepsLeft < 0) return true;
  const isStanding = book.problem.standing !== null;
  if (hasMissedTime(search, ready)) return false;
  const bound = boundOfRest(search, ready);
  if (bound > search.limit || bound === Infinity) {
    search.nextLimit = Math.min(search.nextLimit, bound);
    return false;
  }
  if (isStanding) {
    const fewest = changes + fewestChanges(search, rounds.length);
    if (fewest > search.mostChanges) {
      search.nextChanges = Math.min(search.nextChanges, fewest);
      return false;
    }
  }
  if (!fitsProfile(search)) return false;
  if (wasSeen(search, keyOf(search), ready, changes)) return false;
  const onRound = (visits: readonly number[], _from: number, to: number): boolean => {
    const more = isStanding ? changesIn(search, visits) : 0;
    rounds.push([...visits]);
    markDone(search, visits, true);
    const isStopped = goOnAfter(search, to, changes + more);
    if (isStopped) return true;
    markDone(search, visits, false);
    rounds.pop();
    return false;
  };
  return isStanding
    ? fillNearStanding(search, ready, changes, onRound)
    : fillShortest(search, ready, onRound);
}

function fitsProfile(search: RoundSearch): boolean {
  if (search.profile === null) return true;
  const rest = leftOfProfile(search, search.profile);
  return roundsNeeded(search.book, search.left).every((needed, level) => needed <= (rest[level] as number));
}

/** What the rest of the search hangs on, times and changes apart. */
function keyOf(search: RoundSearch): string {
  const { book, filled, left, profile, rounds } = search;
  if (book.problem.standing !== null) return `${rounds.length}:${keyOfLeft(left.open)}`;
  const isCounted = profile !== null || (book.isFree && book.breaks.length > 0);
  return isCounted ? `${filled.join()}:${keyOfLeft(left.open)}` : keyOfLeft(left.open);
}

/** A plan is complete only if its changes are, those of the rounds that stood and are no longer held too. */
function goOnAfter(search: RoundSearch, to: number, changes: number): boolean {
  if (search.left.count > 0) return goOn(search, to + search.book.problem.walk, changes);
  if (search.book.problem.standing === null) return true;
  const all = changes + fewestChanges(search, search.rounds.length);
  if (all <= search.mostChanges) return true;
  search.nextChanges = Math.min(search.nextChanges, all);
  return false;
}

function hasMissedTime(search: RoundSearch, ready: number): boolean {
  if (search.book.problem.at.length === 0) return false;
  return search.book.at.some(
    (times, visit) => search.left.open[visit] === 1 && times.some((time) => time < ready),
  );
}

function changesIn(search: RoundSearch, visits: readonly number[]): number {
  const { book, rounds } = search;
  const tables = new Map(
    visits.map((visit) => [book.groupOf[visit] as number, book.tableOf[visit] as number]),
  );
  let changes = 0;
  for (let group = 0; group < book.problem.groups; group += 1)
    if ((tables.get(group) ?? -1) !== stoodAt(search, rounds.length, group)) changes += 1;
  return changes;
}
