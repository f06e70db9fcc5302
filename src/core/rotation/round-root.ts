import { inOrder, type RoundBook } from './round-book.ts';
import { bestProfile, type Profile } from './round-profile.ts';
import { boundOfRest, roundSearch } from './round-state.ts';

/** What is known before anything is searched. */
export interface Root {
  /** No plan ends before this. */
  readonly bound: number;
  /** Numbers of rounds by length that may do, the most promising first. */
  readonly profiles: readonly Profile[];
}

/** The bound of a round problem by counting rounds by length, by order rules and by the times that shut a group or table. */
export function rootOf(book: RoundBook): Root {
  const fewest = fewestRounds(book);
  const profile = bestProfile(book, fewest);
  const search = roundSearch(book, Infinity, Infinity, 0, new Float64Array());
  const bound = Math.max(
    profile.end,
    boundOfRest(search, book.problem.begins),
    chainBound(book),
    ...shutBounds(book, fewest, profile.end),
  );
  if (!book.isTimed) return { bound, profiles: [profile] };
  const rounds = profile.counts.at(-1) ?? 0;
  return { bound, profiles: [profile, bestProfile(book, rounds + 1), bestProfile(book, rounds + 2)] };
}

/** While a group is away or a table closed there is no round, or there is a round without it: one more than it needs. */
function shutBounds(book: RoundBook, fewest: number, end: number): readonly number[] {
  const { away, closed, groups } = book.problem;
  const shut = [
    ...away.map((rule) => ({ ...rule, bearer: rule.group })),
    ...closed.map((rule) => ({ ...rule, bearer: groups + rule.table })),
  ];
  return shut.map(({ from, to, bearer }) => {
    const { capacity, visits } = book.bearers[bearer] as RoundBook['bearers'][number];
    const rounds = Math.ceil(visits.length / capacity) + 1;
    if (visits.length === 0 || rounds <= fewest) return end;
    const breaks = inOrder([...book.breaks, { from, to }]);
    const without = bestProfile({ ...book, breaks, layouts: new Map() }, fewest);
    return without.end <= end ? end : Math.min(without.end, bestProfile(book, rounds).end);
  });
}

/** Visits of one bearer with something before each and something after each: rounds before, its own, and after. */
function chainBound(book: RoundBook): number {
  const { walk, begins } = book.problem;
  return chains(book, book.heads, book.tails, (visits, capacity) => {
    const lengths = visits.map((visit) => book.lengthOf[visit] as number);
    const rounds = Math.ceil(visits.length / capacity);
    const work =
      capacity === 1 ? lengths.reduce((sum, each) => sum + each, 0) : rounds * Math.min(...lengths);
    return begins + work + (rounds - 1) * walk;
  });
}

function fewestRounds(book: RoundBook): number {
  const before = book.after.map((list) => list.length);
  const behind = book.after.map((_, visit) => book.after.filter((list) => list.includes(visit)).length);
  return chains(book, before, behind, (visits, capacity) => Math.ceil(visits.length / capacity));
}

function chains(
  book: RoundBook,
  heads: readonly number[],
  tails: readonly number[],
  own: (visits: readonly number[], capacity: number) => number,
): number {
  let most = 0;
  for (const bearer of book.bearers) {
    const headsHere = new Set(bearer.visits.map((visit) => heads[visit] as number));
    const tailsHere = new Set(bearer.visits.map((visit) => tails[visit] as number));
    for (const head of headsHere)
      for (const tail of tailsHere) {
        const within = bearer.visits.filter(
          (visit) => (heads[visit] as number) >= head && (tails[visit] as number) >= tail,
        );
        if (within.length > 0) most = Math.max(most, head + own(within, bearer.capacity) + tail);
      }
  }
  return most;
}
