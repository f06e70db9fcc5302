import { randomFrom } from '../uncertainty/random.ts';
import type { RoundBook } from './round-book.ts';
import { likingOf, limitBetween, type PlanFound } from './round-plan.ts';
import type { Root } from './round-root.ts';
import { searchRounds } from './round-search.ts';
import { timeRounds } from './round-times.ts';
import type { SearchEffort } from './shop.ts';

/**
 * Tries limits between what is ruled out and the best end so far, with ever more steps each. Every other time
 * the numbers of rounds by length are held to those that would end soonest, or to one round more.
 */
export function soonestPlan(book: RoundBook, root: Root, latest: number, effort: SearchEffort): PlanFound {
  const random = randomFrom(effort.seed);
  let stepsLeft = effort.steps;
  let lower = root.bound;
  let best: readonly (readonly number[])[] | null = null;
  let bestEnd = latest + 1;
  let slice = Math.max(200, book.groupOf.length * 20);
  for (let turn = 0; stepsLeft > 0 && lower < bestEnd; turn += 1) {
    const isProfile = turn % 2 === 0;
    const upper = best === null ? latest : bestEnd - 1;
    const limit = isProfile ? upper : limitBetween(turn >> 1, lower, upper);
    const profile = isProfile ? nearProfile(root.profile.counts, turn >> 1, random) : null;
    const liking = likingOf(book, random, turn >> 1);
    const end = searchRounds(book, limit, Infinity, Math.min(slice, stepsLeft), liking, profile);
    stepsLeft -= Math.max(1, end.steps);
    if (end.rounds !== null) {
      best = end.rounds;
      bestEnd = timeRounds(book, best)?.to.at(-1) ?? bestEnd;
    } else if (end.isExhausted && !isProfile) lower = Math.max(lower, end.nextLimit);
    if (turn % 6 === 5) slice *= 1.5;
  }
  const isExhausted = lower >= bestEnd || lower > latest;
  return { rounds: best, bound: Math.min(lower, bestEnd), isExhausted, stepsLeft };
}

/** The profile itself, and from the second time on every other time with a round more of some length. */
function nearProfile(
  counts: readonly number[],
  turn: number,
  random: { readonly even: () => number },
): readonly number[] {
  if (turn % 2 === 0) return counts;
  const level = Math.floor(random.even() * counts.length);
  return counts.map((rounds, each) => (each >= level ? rounds + 1 : rounds));
}
