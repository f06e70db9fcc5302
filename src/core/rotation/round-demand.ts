import type { RoundBook } from './round-book.ts';
import { eachOwnBound } from './round-bound.ts';
import { endOfRounds } from './round-placing.ts';
import { boundByNeeded, leftOfProfile, type RoundSearch } from './round-state.ts';

/** So many of these visits, of this level or longer, have to be in the round. */
export interface Demand {
  readonly visits: readonly number[];
  readonly level: number;
  count: number;
}

/** No plan ends before this where the next round has this level and begins at `from`, and then the rest is needed. */
export function endAfter(search: RoundSearch, rest: readonly number[], level: number, from: number): number {
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
export function demandsOf(
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
export function demandsOfProfile(
  search: RoundSearch,
  profile: readonly number[],
  level: number,
): Demand[] | null {
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

/** What has to be in a round that ends at `to` at the earliest, lest a group or table alone ends past the limit, or misses its time. */
export function demandsOfBearers(search: RoundSearch, to: number): readonly Demand[] {
  const { book, left, limit } = search;
  const demands: Demand[] = [];
  const last = book.lengths.length - 1;
  eachOwnBound(book, left, to + book.problem.walk, (end, visits, count) => {
    if (end <= limit && end < Infinity) return;
    search.nextLimit = Math.min(search.nextLimit, end);
    demands.push({ visits: [...visits], level: last, count });
  });
  book.at.forEach((times, visit) => {
    if (left.open[visit] === 1 && times.some((time) => time < to + book.problem.walk))
      demands.push({ visits: [visit], level: last, count: 1 });
  });
  return demands;
}
