import { randomFrom } from '../uncertainty/random.ts';
import type { RoundBook } from './round-book.ts';
import { likingOf, limitBetween, type PlanFound } from './round-plan.ts';
import { searchRounds } from './round-search.ts';
import { timeRounds } from './round-times.ts';
import type { SearchEffort } from './shop.ts';

/** Tries limits between what is ruled out and the best end so far, with ever more steps each. */
export function soonestPlan(book: RoundBook, root: number, latest: number, effort: SearchEffort): PlanFound {
  const random = randomFrom(effort.seed);
  let stepsLeft = effort.steps;
  let lower = root;
  let best: readonly (readonly number[])[] | null = null;
  let bestEnd = latest + 1;
  let slice = Math.max(200, book.groupOf.length * 20);
  for (let turn = 0; stepsLeft > 0 && lower < bestEnd; turn += 1) {
    const limit = limitBetween(turn, lower, best === null ? latest : bestEnd - 1);
    const end = searchRounds(book, limit, Infinity, Math.min(slice, stepsLeft), likingOf(book, random, turn));
    stepsLeft -= Math.max(1, end.steps);
    if (end.rounds !== null) {
      best = end.rounds;
      bestEnd = timeRounds(book, best)?.to.at(-1) ?? bestEnd;
    } else if (end.isExhausted) lower = Math.max(lower, end.nextLimit);
    if (turn % 3 === 2) slice *= 1.5;
  }
  const isExhausted = lower >= bestEnd || lower > latest;
  return { rounds: best, bound: Math.min(lower, bestEnd), isExhausted, stepsLeft };
}
