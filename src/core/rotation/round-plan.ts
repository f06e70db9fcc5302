import type { RoundBook } from './round-book.ts';

/** The best plan met, by round its visits, and what is known of every other. */
export interface PlanFound {
  readonly rounds: readonly (readonly number[])[] | null;
  readonly bound: number;
  readonly isExhausted: boolean;
  readonly stepsLeft: number;
}

/** By visit: long visits of busy groups and tables first, more and more by chance. */
export function likingOf(
  book: RoundBook,
  random: { readonly even: () => number },
  turn: number,
): Float64Array {
  const weight = (visit: number): number =>
    (book.weighsOn[visit] as readonly number[]).reduce((sum, index) => {
      const bearer = book.bearers[index] as RoundBook['bearers'][number];
      return sum + bearer.visits.length / bearer.capacity;
    }, 0);
  const chance = turn === 0 ? 0 : 1 + (turn % 7);
  return Float64Array.from(book.groupOf, (_, visit) => {
    const order = (book.tails[visit] as number) / ((book.lengths[0] as number) || 1);
    return weight(visit) + order - 2 * (book.levelOf[visit] as number) + chance * random.even();
  });
}

/** A plan as a chart: by round and group the table, or -1. */
export function chartOf(
  book: RoundBook,
  rounds: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  return rounds.map((visits) => {
    const places = new Array<number>(book.problem.groups).fill(-1);
    for (const visit of visits) places[book.groupOf[visit] as number] = book.tableOf[visit] as number;
    return places;
  });
}

/**
 * How many cells of two charts differ, group by group and round by round; a round that one of them has not
 * holds nobody.
 *
 * @example changesBetween([[0, 1], [1, 0]], [[0, 1]], 2) // => 2
 */
export function changesBetween(
  chart: readonly (readonly number[])[],
  other: readonly (readonly number[])[],
  groups: number,
): number {
  let changes = 0;
  for (let round = 0; round < Math.max(chart.length, other.length); round += 1)
    for (let group = 0; group < groups; group += 1)
      if ((chart[round]?.[group] ?? -1) !== (other[round]?.[group] ?? -1)) changes += 1;
  return changes;
}

/** A limit between what is ruled out and what is known: the least, the most, and the middle in turn. */
export function limitBetween(turn: number, lower: number, upper: number): number {
  if (turn % 3 === 0 || upper <= lower) return lower;
  if (turn % 3 === 1 || upper === Infinity) return upper;
  return Math.floor((lower + upper) / 2);
}
