import type { RoundBook } from './round-book.ts';
import { endIfKept } from './round-rules.ts';

/**
 * Whether everybody moves on by one place each round, round one circle of tables (and places with nothing to do):
 * a chart that can be run by word of mouth. It then has as many rounds as the circle has places.
 *
 * @example isCyclic([[0, 1, 2], [1, 2, 0], [2, 0, 1]]) // => true
 * @example isCyclic([[0, 1, 2], [2, 0, 1], [1, 2, 0]]) // => true
 * @example isCyclic([[0, 1, 2, 3], [1, 0, 3, 2], [2, 3, 0, 1], [3, 2, 1, 0]]) // => false
 */
export function isCyclic(chart: readonly (readonly number[])[]): boolean {
  const places = chart.length;
  const circle = chart.map((row) => row[0] as number);
  const groups = chart[0]?.length ?? 0;
  return Array.from({ length: groups }, (_, group) => group).every((group) =>
    circle.some((__, shift) => chart.every((row, round) => row[group] === circle[(round + shift) % places])),
  );
}

/** A plan in which everybody moves on by one, by round its visits, and when it ends. */
export interface Cycle {
  readonly rounds: readonly (readonly number[])[];
  readonly end: number;
}

/**
 * The plan that ends soonest of those in which everybody moves on by one; `null` where none keeps the rules, as where not
 * every group does every table. Tried are the tables as they stand and by their length, both ways round, from each place.
 */
export function soonestCycle(book: RoundBook): Cycle | null {
  const used = [...new Set(book.tableOf)].sort((a, b) => a - b);
  const groups = [...new Set(book.groupOf)].sort((a, b) => a - b);
  if (used.length === 0 || book.groupOf.length !== used.length * groups.length) return null;
  const { copies, lengths } = book.problem;
  const together = Math.min(...used.map((table) => copies[table] as number));
  const byLength = [...used].sort((a, b) => (lengths[b] as number) - (lengths[a] as number));
  const places = Math.max(used.length, Math.ceil(groups.length / together));
  let best: Cycle | null = null;
  for (const order of [used, [...used].reverse(), byLength])
    for (let start = 0; start < places; start += 1) {
      const rounds = circleRounds(book, withRests(order, places), groups, start);
      const end = endIfKept(book, rounds);
      if (end !== null && (best === null || end < best.end)) best = { rounds, end };
    }
  return best;
}

/** The circle with places to rest as evenly between the tables as they go; -1 is a rest. */
function withRests(order: readonly number[], places: number): readonly number[] {
  const circle = new Array<number>(places).fill(-1);
  order.forEach((table, index) => {
    circle[Math.floor((index * places) / order.length)] = table;
  });
  return circle;
}

/** Groups one after the other round the circle, and round it again where there are more groups than places. */
function circleRounds(
  book: RoundBook,
  circle: readonly number[],
  groups: readonly number[],
  start: number,
): readonly (readonly number[])[] {
  const places = circle.length;
  const visitOf = new Map(
    book.groupOf.map((group, visit) => [
      group * book.problem.tables + (book.tableOf[visit] as number),
      visit,
    ]),
  );
  return circle.map((_, round) =>
    groups.flatMap((group, index) => {
      const table = circle[(index + round + start) % places] as number;
      const visit = visitOf.get(group * book.problem.tables + table);
      return table < 0 || visit === undefined ? [] : [visit];
    }),
  );
}
