import type { RoundBook } from './round-book.ts';
import { endIfKept } from './round-rules.ts';

type Rounds = readonly (readonly number[])[];

/** Times that all exchanges are gone through at most. */
const MOST_PASSES = 8;

/**
 * A plan that ends as soon, in which groups go to a table beside the one they come from more often: what two rounds
 * hold is exchanged, whole or along paths of groups and tables, for as long as that gains
 * and so many visits have not been looked at. Not the best of all.
 */
export function shorterWalks(book: RoundBook, rounds: Rounds, end: number, looks: number): Rounds {
  if (book.problem.beside.length === 0) return rounds;
  let best = rounds;
  let short = shortWalks(book, best);
  let left = looks;
  for (let pass = 0; pass < MOST_PASSES; pass += 1) {
    const before = short;
    for (let a = 0; a < best.length; a += 1)
      for (let b = a + 1; b < best.length; b += 1)
        for (const group of [-1, ...groupsIn(book, best, a, b)]) {
          left -= book.groupOf.length;
          if (left < 0) return best;
          const next = exchanged(book, best, a, b, group);
          const gained = shortWalks(book, next);
          const nextEnd = gained > short ? endIfKept(book, next) : null;
          if (nextEnd === null || nextEnd > end) continue;
          best = next;
          short = gained;
        }
    if (short === before) break;
  }
  return best;
}

/** How often a group goes from a table to one beside it. */
function shortWalks(book: RoundBook, rounds: Rounds): number {
  const at = new Array<number>(book.problem.groups).fill(-1);
  let short = 0;
  for (const visits of rounds)
    for (const visit of visits) {
      const group = book.groupOf[visit] as number;
      const table = book.tableOf[visit] as number;
      if (book.near[at[group] as number]?.[table]) short += 1;
      at[group] = table;
    }
  return short;
}

function groupsIn(book: RoundBook, rounds: Rounds, a: number, b: number): readonly number[] {
  const both = [...(rounds[a] ?? []), ...(rounds[b] ?? [])];
  return [...new Set(both.map((visit) => book.groupOf[visit] as number))];
}

/** Two rounds exchanged: for all groups (-1), or for one and whoever else has to change lest a table hold too many. */
function exchanged(book: RoundBook, rounds: Rounds, a: number, b: number, group: number): Rounds {
  const [left, right] = [rounds[a] ?? [], rounds[b] ?? []];
  const moving = group < 0 ? new Set(groupsIn(book, rounds, a, b)) : movingWith(book, left, right, group);
  const moves = (visit: number): boolean => moving.has(book.groupOf[visit] as number);
  const stays = (visit: number): boolean => !moves(visit);
  return rounds.map((visits, round) => {
    if (round === a) return [...left.filter(stays), ...right.filter(moves)];
    return round === b ? [...right.filter(stays), ...left.filter(moves)] : visits;
  });
}

function movingWith(
  book: RoundBook,
  left: readonly number[],
  right: readonly number[],
  group: number,
): ReadonlySet<number> {
  const moving = new Set([group]);
  const crowd = (stay: readonly number[], come: readonly number[]): number | undefined =>
    stay.find((visit) => {
      const table = book.tableOf[visit] as number;
      if (moving.has(book.groupOf[visit] as number)) return false;
      const isHere = (each: number, isMoving: boolean): boolean =>
        book.tableOf[each] === table && moving.has(book.groupOf[each] as number) === isMoving;
      const count =
        stay.filter((each) => isHere(each, false)).length + come.filter((each) => isHere(each, true)).length;
      const comes = come.some((each) => isHere(each, true));
      return comes && count > (book.problem.copies[table] as number);
    });
  for (;;) {
    const next = crowd(left, right) ?? crowd(right, left);
    if (next === undefined) return moving;
    moving.add(book.groupOf[next] as number);
  }
}
