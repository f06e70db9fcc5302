import type { RoundBook } from './round-book.ts';
import { timeRounds } from './round-times.ts';

/** When a plan ends that keeps every rule, `null` where it breaks one. Visits are taken to be all there, once each. */
export function endIfKept(book: RoundBook, rounds: readonly (readonly number[])[]): number | null {
  if (rounds.some((visits) => visits.length === 0 || !holds(book, visits))) return null;
  const roundOf = new Array<number>(book.groupOf.length).fill(-1);
  rounds.forEach((visits, round) => {
    for (const visit of visits) roundOf[visit] = round;
  });
  const isInOrder = book.after.every((before, visit) =>
    before.every((each) => (roundOf[each] as number) < (roundOf[visit] as number)),
  );
  if (!isInOrder) return null;
  const end = timeRounds(book, rounds)?.to.at(-1) ?? null;
  return end === null || (book.problem.bell !== null && end > book.problem.bell) ? null : end;
}

/** Whether these can be one round: nothing bears too many, and groups are as near as they have to be. */
function holds(book: RoundBook, visits: readonly number[]): boolean {
  const room = book.bearers.map((bearer) => bearer.capacity);
  const tables = new Array<number>(book.problem.groups).fill(-1);
  for (const visit of visits) {
    tables[book.groupOf[visit] as number] = book.tableOf[visit] as number;
    for (const bearer of book.weighsOn[visit] as readonly number[]) {
      room[bearer] = (room[bearer] as number) - 1;
      if ((room[bearer] as number) < 0) return false;
    }
  }
  const agrees = (others: readonly (readonly number[])[], isNear: boolean): boolean =>
    others.every((list, group) =>
      list.every((other) => {
        const [here, there] = [tables[group] as number, tables[other] as number];
        return here < 0 || there < 0 || (book.near[here]?.[there] ?? false) === isNear;
      }),
    );
  return agrees(book.apart, false) && agrees(book.together, true);
}
