import { randomFrom } from '../uncertainty/random.ts';
import type { RoundBook } from './round-book.ts';
import type { Cycle } from './round-cycle.ts';
import { bestOrder } from './round-placing.ts';
import { likingOf, limitBetween, type PlanFound } from './round-plan.ts';
import type { Root } from './round-root.ts';
import { searchRounds } from './round-search.ts';
import { timeRounds } from './round-times.ts';
import type { SearchEffort } from './shop.ts';

/**
 * Tries limits between what is ruled out and the best end so far, with ever more steps each. Every other time
 * the numbers of rounds by length are held to those that would end soonest, or to one round more.
 */
export function soonestPlan(
  book: RoundBook,
  root: Root,
  latest: number,
  effort: SearchEffort,
  known: Cycle | null = null,
): PlanFound {
  const random = randomFrom(effort.seed);
  let stepsLeft = effort.steps;
  let lower = root.bound;
  let best = known?.rounds ?? null;
  let bestEnd = known?.end ?? latest + 1;
  let slice = Math.max(200, book.groupOf.length * 20);
  for (let turn = 0; stepsLeft > 0 && lower < bestEnd; turn += 1) {
    const isProfile = turn % 2 === 0;
    const upper = best === null ? latest : bestEnd - 1;
    const limit = isProfile ? upper : limitBetween(turn >> 1, lower, upper);
    const profile = nearProfile(root.profiles, turn >> 1, random);
    const order = orderOf(book, profile, turn >> 1, random);
    const breadth = turn % 8 < 4 ? Infinity : 1 + ((turn >> 2) % 3);
    const hint = { profile: isProfile ? profile : null, order, breadth };
    const liking = likingOf(book, random, turn >> 1);
    const end = searchRounds(book, limit, Infinity, Math.min(slice, stepsLeft), liking, hint);
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

/** One of the profiles, and from the second time on every other time with a round more of some length. */
function nearProfile(
  profiles: Root['profiles'],
  turn: number,
  random: { readonly even: () => number },
): readonly number[] {
  const counts = profiles[turn % profiles.length]?.counts ?? [];
  if (turn < profiles.length || random.even() < 0.6) return counts;
  const level = Math.floor(random.even() * counts.length);
  return counts.map((rounds, each) => (each >= level ? rounds + 1 : rounds));
}

/** The levels of its rounds: as they suit the breaks best, and from the second time on every other time by chance. */
function orderOf(
  book: RoundBook,
  profile: readonly number[],
  turn: number,
  random: { readonly even: () => number },
): readonly number[] {
  if (book.isFree) return [];
  const counts = profile.map((rounds, level) => rounds - (profile[level - 1] ?? 0));
  const levels = bestOrder(book, counts, book.problem.begins);
  if (turn % 3 === 0) return levels;
  return levels
    .map((level) => ({ level, by: random.even() }))
    .sort((a, b) => a.by - b.by)
    .map(({ level }) => level);
}
