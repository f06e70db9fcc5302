import type { RoundBook } from './round-book.ts';
import { type Cover, coversOf } from './round-covers.ts';
import { endOfRounds } from './round-placing.ts';

/** How many rounds are at least as long as each level, at best. */
export interface Profile {
  /** By level: rounds at least as long. */
  readonly counts: readonly number[];
  readonly end: number;
}

/** Ways to choose how many rounds of each length are looked through up to this number. */
const MOST_NODES = 4000;

/**
 * The numbers of rounds by length that end soonest of all that could hold every visit, by counting: each group, table and
 * limit by threshold of length, and each set of tables, needs rounds that can hold its visits. No plan ends
 * before it. Where all groups do all tables and there is no other rule there is a plan that ends with it (the equitable
 * colourings of de Werra, from memory); elsewhere it is a bound.
 */
export function bestProfile(book: RoundBook, fewestRounds: number): Profile {
  const covers = coversOf(book);
  const levels = book.lengths.length;
  let best: Profile | null = null;
  let nodes = 0;
  const counts = new Array<number>(levels).fill(0);
  const lacking = (before: readonly number[], level: number, more: number): readonly number[] =>
    before.map((lack, index) => lack - more * ((covers[index] as Cover).holds[level] as number));
  const go = (level: number, lack: readonly number[]): void => {
    nodes += 1;
    if (level === levels) {
      const end = endOfRounds(book, counts, book.problem.begins);
      if (best === null || end < best.end) best = { counts: [...counts], end };
      return;
    }
    const before = counts[level - 1] ?? 0;
    const { least, most } = rangeAt(covers, lack, level);
    for (let more = least; more <= Math.max(least, most); more += 1) {
      if (nodes > MOST_NODES) return;
      counts[level] = before + more;
      const rest = more === 0 ? lack : lacking(lack, level, more);
      if (
        best !== null &&
        endOfRounds(book, atLeast(book, covers, rest, counts, level, fewestRounds), book.problem.begins) >=
          best.end
      )
        continue;
      if (level === levels - 1) counts[level] = Math.max(before + more, fewestRounds);
      go(level + 1, rest);
    }
  };
  const all = covers.map((cover) => cover.visits.length);
  go(0, all);
  const known = best as Profile | null;
  if (nodes <= MOST_NODES && known !== null) return known;
  const least = atLeast(book, covers, all, [], -1, fewestRounds);
  return { counts: least, end: endOfRounds(book, least, book.problem.begins) };
}

/** How many rounds of a level there have to be, since nothing shorter will do, and how many are enough for all. */
function rangeAt(
  covers: readonly Cover[],
  lack: readonly number[],
  level: number,
): { readonly least: number; readonly most: number } {
  let least = 0;
  let most = 0;
  covers.forEach((cover, index) => {
    const holds = cover.holds[level] as number;
    if ((lack[index] as number) <= 0 || holds === 0) return;
    const rounds = Math.ceil((lack[index] as number) / holds);
    most = Math.max(most, rounds);
    if ((cover.holds[level + 1] ?? 0) === 0) least = Math.max(least, rounds);
  });
  return { least, most };
}

/** Rounds by level at least, where those down to `level` are settled. */
function atLeast(
  book: RoundBook,
  covers: readonly Cover[],
  lack: readonly number[],
  counts: readonly number[],
  level: number,
  fewestRounds: number,
): readonly number[] {
  const settled = counts[level] ?? 0;
  const needed = book.lengths.map((_, each) => (each <= level ? (counts[each] as number) : settled));
  covers.forEach((cover, index) => {
    const holds = cover.holds[level + 1] ?? 0;
    if ((lack[index] as number) <= 0 || holds === 0) return;
    const rounds = settled + Math.ceil((lack[index] as number) / holds);
    if (rounds > (needed[cover.shortest] as number)) needed[cover.shortest] = rounds;
  });
  const last = needed.length - 1;
  needed[last] = Math.max(needed[last] as number, fewestRounds);
  for (let each = 1; each < needed.length; each += 1)
    needed[each] = Math.max(needed[each] as number, needed[each - 1] as number);
  return needed;
}
