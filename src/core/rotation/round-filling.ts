import { type Demand, demandsOf, demandsOfBearers, demandsOfProfile, endAfter } from './round-demand.ts';
import type { RoundSearch } from './round-state.ts';
import { earliestRound } from './round-times.ts';

/** Goes on with a round that would begin at `from`; true ends the search. */
export type Fill = (filling: Filling, from: number) => boolean;

/** What a filled round is handed to; true ends the search. */
export type OnRound = (visits: readonly number[], from: number, to: number) => boolean;

/** A round while it is filled. */
export interface Filling {
  readonly search: RoundSearch;
  readonly ready: number;
  readonly length: number;
  readonly candidates: readonly number[];
  readonly demands: readonly Demand[];
  readonly chosen: number[];
  /** By visit. */
  readonly banned: Uint8Array;
  /** By bearer. */
  readonly room: Int32Array;
  /** By group: where it is in this round, or -1. */
  readonly place: Int32Array;
  readonly onRound: OnRound;
  /** How often it was full. */
  times: number;
}

/** What is left and has nothing left that has to be before it. */
export function ripeVisits(search: RoundSearch): readonly number[] {
  const { book, left } = search;
  const isRipe = (visit: number): boolean =>
    left.open[visit] === 1 && (book.after[visit] as readonly number[]).every((each) => left.open[each] === 0);
  return book.groupOf.flatMap((_, visit) => (isRipe(visit) ? [visit] : []));
}

/**
 * The rounds that begin no sooner than `ready` and last as long as the visits of a level, filled by `fill`. Nothing
 * is tried where all that is left can't end by the limit.
 */
export function fillToLevel(
  search: RoundSearch,
  ready: number,
  needed: readonly number[],
  ripe: readonly number[],
  level: number,
  onRound: OnRound,
  fill: Fill,
): boolean {
  const { book } = search;
  const length = book.lengths[level] as number;
  const from = book.isFree ? ready : earliestRound(book, [], length, ready);
  if (from === null) return false;
  const after = needed.map((rounds, each) =>
    each < level ? rounds : Math.max(rounds - 1, needed[level - 1] ?? 0),
  );
  const endWith = (rest: readonly number[]): number => endAfter(search, rest, level, from);
  const base = endWith(after);
  if (base > search.limit) {
    search.nextLimit = Math.min(search.nextLimit, base);
    return false;
  }
  const candidates = ripe
    .filter((visit) => {
      if ((book.levelOf[visit] as number) < level) return false;
      if (!book.isTimed) return true;
      const start = earliestRound(book, [visit], length, ready);
      if (start === null || start + length <= search.limit) return start !== null;
      search.nextLimit = Math.min(search.nextLimit, start + length);
      return false;
    })
    .sort((a, b) => (search.liking[b] as number) - (search.liking[a] as number) || a - b);
  const demands =
    search.profile === null
      ? demandsOf(search, after, level, endWith)
      : demandsOfProfile(search, search.profile, level);
  if (demands === null) return false;
  if (!book.isFree) demands.push(...demandsOfBearers(search, from + length));
  demands.push({ visits: candidates.filter((visit) => book.levelOf[visit] === level), level, count: 1 });
  const filling: Filling = {
    search,
    ready,
    length,
    candidates,
    demands,
    chosen: [],
    banned: new Uint8Array(book.groupOf.length),
    room: Int32Array.from(book.bearers, (bearer) => bearer.capacity),
    place: new Int32Array(book.problem.groups).fill(-1),
    onRound,
    times: 0,
  };
  return fill(filling, from);
}

/** Whether a visit may still go into the round. */
export function hasRoom(filling: Filling, visit: number): boolean {
  return filling.banned[visit] === 0 && fits(filling, visit);
}

export function fits(filling: Filling, visit: number): boolean {
  const { room, search, place: places } = filling;
  const { book } = search;
  for (const bearer of book.weighsOn[visit] as readonly number[])
    if ((room[bearer] as number) < 1) return false;
  const group = book.groupOf[visit] as number;
  const near = book.near[book.tableOf[visit] as number] as readonly boolean[];
  for (const other of book.apart[group] as readonly number[]) {
    const table = places[other] as number;
    if (table >= 0 && near[table]) return false;
  }
  for (const other of book.together[group] as readonly number[]) {
    const table = places[other] as number;
    if (table >= 0 && !near[table]) return false;
  }
  return true;
}

/** Puts a visit into the round, goes on, and takes it out again. */
export function place(filling: Filling, visit: number, from: number, fill: Fill): boolean {
  const { search, chosen, demands, room, place: places } = filling;
  const { book } = search;
  chosen.push(visit);
  const start = book.isTimed ? earliestRound(book, chosen, filling.length, filling.ready) : from;
  if (start === null || (!book.isFree && start + filling.length > search.limit)) {
    if (start !== null) search.nextLimit = Math.min(search.nextLimit, start + filling.length);
    chosen.pop();
    return false;
  }
  const group = book.groupOf[visit] as number;
  places[group] = book.tableOf[visit] as number;
  const met = demands.filter(
    (demand) => demand.visits.includes(visit) && (book.levelOf[visit] as number) <= demand.level,
  );
  for (const demand of met) demand.count -= 1;
  for (const bearer of book.weighsOn[visit] as readonly number[]) room[bearer] = (room[bearer] as number) - 1;
  const isDone = fill(filling, start);
  for (const bearer of book.weighsOn[visit] as readonly number[]) room[bearer] = (room[bearer] as number) + 1;
  for (const demand of met) demand.count += 1;
  places[group] = -1;
  chosen.pop();
  return isDone;
}
