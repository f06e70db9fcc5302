import { randomFrom } from '../uncertainty/random.ts';
import type { RoundBook } from './round-book.ts';
import { changesBetween, chartOf, likingOf, limitBetween, type PlanFound } from './round-plan.ts';
import { searchRounds } from './round-search.ts';
import { fewestChanges } from './round-standing.ts';
import { roundSearch } from './round-state.ts';
import { timeRounds } from './round-times.ts';
import type { SearchEffort } from './shop.ts';

/**
 * The plan with the fewest changes from the one that stood, and of those the one that ends soonest: numbers of
 * changes are tried from below and from above until they meet; then ends with that number. Every fourth time an
 * end sooner with no more changes is looked for before they have met.
 */
export function nearestPlan(
  book: RoundBook,
  root: number,
  latest: number,
  effort: SearchEffort,
  anyPlan: (steps: number) => PlanFound,
): PlanFound {
  const random = randomFrom(effort.seed);
  const { problem } = book;
  const changesOf = (rounds: readonly (readonly number[])[]): number =>
    changesBetween(chartOf(book, rounds), problem.standing ?? [], problem.groups);
  const endOf = (rounds: readonly (readonly number[])[]): number =>
    timeRounds(book, rounds)?.to.at(-1) ?? problem.begins;
  let stepsLeft = effort.steps;
  let fewest = fewestChanges(roundSearch(book, latest, 0, 0, new Float64Array()), 0);
  let soonest = root;
  let best: { rounds: readonly (readonly number[])[]; changes: number; end: number } | null = null;
  let slice = Math.max(500, book.groupOf.length * 40);
  let isExhausted = false;
  for (let turn = 0; stepsLeft > 0 && !isExhausted; turn += 1) {
    const known: number = best === null ? Infinity : best.changes;
    const isSettled = known <= fewest;
    const isForEnd = best !== null && (isSettled || turn % 4 === 3);
    const most: number = isForEnd ? known : limitBetween(turn, fewest, known - 1);
    const limit: number =
      isForEnd && best !== null ? limitBetween(isSettled ? turn : turn >> 2, soonest, best.end - 1) : latest;
    const end = searchRounds(book, limit, most, Math.min(slice, stepsLeft), likingOf(book, random, turn));
    stepsLeft -= Math.max(1, end.steps);
    if (end.rounds !== null)
      best = { rounds: end.rounds, changes: changesOf(end.rounds), end: endOf(end.rounds) };
    else if (end.isExhausted && isSettled) soonest = end.nextLimit;
    else if (end.isExhausted && !isForEnd) fewest = end.nextChanges;
    else if (turn === 1 && best === null) {
      const any = anyPlan(Math.floor(stepsLeft / 4));
      stepsLeft -= Math.floor(stepsLeft / 4) - any.stepsLeft;
      if (any.rounds === null && any.isExhausted) return any;
      if (any.rounds !== null)
        best = { rounds: any.rounds, changes: changesOf(any.rounds), end: endOf(any.rounds) };
    }
    if (turn % 3 === 2) slice *= 1.5;
    isExhausted = best === null ? fewest === Infinity : best.changes <= fewest && best.end <= soonest;
  }
  return { rounds: best === null ? null : best.rounds, bound: soonest, isExhausted, stepsLeft };
}
