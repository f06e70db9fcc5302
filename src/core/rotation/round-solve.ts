import { type RoundBook, roundBook } from './round-book.ts';
import type { RoundAnswer, RoundProblem } from './round-chart.ts';
import { nearestPlan } from './round-nearest.ts';
import { changesBetween, chartOf, type PlanFound } from './round-plan.ts';
import { rootOf } from './round-root.ts';
import { soonestPlan } from './round-soonest.ts';
import { timeRounds } from './round-times.ts';
import type { SearchEffort } from './shop.ts';

/**
 * Who is at which table in which round, where all move on a signal: the plan that ends soonest, or, where a plan
 * stood before, the one with the fewest changes from it and then the soonest end.
 *
 * Without further rules this is the colouring of a bipartite graph with weights: as many rounds as the busiest
 * group or table has visits will do (König, from memory), and the longest tables are best put into the same rounds.
 * The bound counts, for each length, how many rounds have to be at least as long. An order of filling rounds is
 * searched until the bound is reached, or all else is ruled out, or the steps are spent.
 *
 * Rounds are never empty: where all have to wait, the next one begins later. Two groups that are to be
 * together are never at tables apart from each other; one of them may have nothing to do meanwhile.
 *
 * @example
 * const each = [0, 1, 2];
 * solveRounds(
 *   {
 *     groups: 3, tables: 3, lengths: [360, 300, 300], copies: [1, 1, 1], walk: 30, begins: 0, bell: null,
 *     visits: each.flatMap((group) => each.map((table) => ({ group, table }))),
 *     limits: [], before: [], ends: [], beside: [], apart: [], together: [], away: [], closed: [], at: [],
 *     breaks: [], standing: null,
 *   },
 *   { seed: 1, steps: 1000 },
 * ).end // => 1140
 */
export function solveRounds(problem: RoundProblem, effort: SearchEffort): RoundAnswer {
  const book = roundBook(problem);
  if (book === null) return { kind: 'impossible' };
  const root = rootOf(book);
  const latest = problem.bell ?? Infinity;
  if (root.bound > latest || root.bound === Infinity) return { kind: 'impossible' };
  const found =
    problem.standing === null
      ? soonestPlan(book, root, latest, effort)
      : nearestPlan(book, root.bound, latest, effort, (steps) =>
          soonestPlan({ ...book, problem: { ...problem, standing: null } }, root, latest, {
            ...effort,
            steps,
          }),
        );
  if (found.rounds === null)
    return found.isExhausted ? { kind: 'impossible' } : { kind: 'unknown', bound: found.bound };
  return answerOf(book, found, root.bound);
}

function answerOf(book: RoundBook, found: PlanFound, root: number): RoundAnswer {
  const { problem } = book;
  const rounds = found.rounds as readonly (readonly number[])[];
  const times = timeRounds(book, rounds) ?? { from: [], to: [] };
  const end = times.to.at(-1) ?? problem.begins;
  const chart = chartOf(book, rounds);
  const proof = end === root && found.isExhausted ? 'bound' : found.isExhausted ? 'search' : 'none';
  return {
    kind: 'rounds',
    chart,
    from: times.from,
    to: times.to,
    end,
    bound: found.isExhausted ? end : found.bound,
    changes: problem.standing === null ? 0 : changesBetween(chart, problem.standing, problem.groups),
    proof,
  };
}
