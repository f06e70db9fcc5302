import type { RoundBook } from './round-book.ts';
import { endOfRounds } from './round-placing.ts';
import { boundByNeeded, leftOfProfile, type RoundSearch } from './round-state.ts';
import { earliestRound } from './round-times.ts';

/** Goes on with a round that would begin at `from`; true ends the search. */
export type Fill = (filling: Filling, from: number) => boolean;

/** What a filled round is handed to; true ends the search. */
export type OnRound = (visits: readonly number[], from: number, to: number) => boolean;

/** So many visits of one bearer, of this level or longer, have to be in the round. */
export interface Demand {
  readonly visits: readonly number[];
  readonly level: number;
  count: number;
}

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
  };
  return fill(filling, from);
}

/** No plan ends before this where the next round has this level and begins at `from`, and then the rest is needed. */
function endAfter(search: RoundSearch, rest: readonly number[], level: number, from: number): number {
  const { book } = search;
  if (book.isFree)
    return boundByNeeded(
      search,
      rest.map((rounds, each) => rounds + Number(each >= level)),
      from,
    );
  const to = from + (book.lengths[level] as number);
  return rest.at(-1) === 0 ? to : endOfRounds(book, rest, to + book.problem.walk);
}

/** What has to be in the round lest one more round of some level be needed, where that would end past the limit. */
function demandsOf(
  search: RoundSearch,
  after: readonly number[],
  level: number,
  endWith: (rest: readonly number[]) => number,
): Demand[] {
  const { book, left } = search;
  const levels = book.lengths.length;
  const demands: Demand[] = [];
  for (let each = level; each < levels; each += 1) {
    const more = (after[each] as number) + 1;
    const end = endWith(after.map((rounds, other) => (other >= each ? Math.max(rounds, more) : rounds)));
    if (end <= search.limit) continue;
    search.nextLimit = Math.min(search.nextLimit, end);
    for (let bearer = 0; bearer < book.bearers.length; bearer += 1) {
      const { capacity, visits } = book.bearers[bearer] as RoundBook['bearers'][number];
      const count = (left.loads[bearer * levels + each] as number) - capacity * (after[each] as number);
      if (count > 0) demands.push({ visits, level: each, count });
    }
  }
  return demands;
}

/** What has to be in the round lest what is left no longer fits into the rounds of the profile. */
function demandsOfProfile(search: RoundSearch, profile: readonly number[], level: number): Demand[] | null {
  const { book, left, covers } = search;
  const levels = book.lengths.length;
  const after = leftOfProfile(search, profile);
  for (let each = level; each < levels; each += 1) after[each] = (after[each] as number) - 1;
  for (let each = level - 1; each >= 0; each -= 1)
    after[each] = Math.min(after[each] as number, after[each + 1] as number);
  if (after.some((rounds) => rounds < 0)) return null;
  const demands: Demand[] = [];
  for (let each = 0; each < levels; each += 1)
    for (let bearer = 0; bearer < book.bearers.length; bearer += 1) {
      const { capacity, visits } = book.bearers[bearer] as RoundBook['bearers'][number];
      const count = (left.loads[bearer * levels + each] as number) - capacity * (after[each] as number);
      if (count > 0) demands.push({ visits, level: each, count });
    }
  for (const { visits, holds } of covers) {
    let count = 0;
    for (const visit of visits) count += left.open[visit] as number;
    for (let each = 0; each < levels; each += 1)
      count -= ((after[each] as number) - (after[each - 1] ?? 0)) * (holds[each] as number);
    if (count > 0) demands.push({ visits, level: levels - 1, count });
  }
  return demands;
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
