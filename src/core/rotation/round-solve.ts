import { type RoundBook, roundBook } from './round-book.ts';
import type { RoundAnswer, RoundProblem } from './round-chart.ts';
import { soonestCycle } from './round-cycle.ts';
import { nearestPlan } from './round-nearest.ts';
import { changesBetween, chartOf, type PlanFound } from './round-plan.ts';
import { type Root, rootOf } from './round-root.ts';
import { soonestPlan } from './round-soonest.ts';
import { timeRounds } from './round-times.ts';
import { shorterWalks } from './round-walks.ts';
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
 * Of plans that end as soon, one in which everybody moves on by one place is given where the bound allows it
 * (`isCyclic`), else one in which groups more often go to a table beside. Rounds are never empty: where all have to wait, the next one begins later. Two groups that are to be
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
      ? soonestAndSimplest(book, root, latest, effort)
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

/** Where everybody can move on by one and end as soon, that plan; else one in which groups walk to the table beside. */
function soonestAndSimplest(book: RoundBook, root: Root, latest: number, effort: SearchEffort): PlanFound {
  const cycle = effort.steps > 0 ? soonestCycle(book) : null;
  if (cycle !== null && cycle.end === root.bound)
    return { rounds: cycle.rounds, bound: cycle.end, isExhausted: true, stepsLeft: effort.steps };
  const found = soonestPlan(book, root, latest, effort, cycle);
  if (found.rounds === null || found.rounds === cycle?.rounds) return found;
  const end = timeRounds(book, found.rounds)?.to.at(-1);
  return end === undefined
    ? found
    : { ...found, rounds: shorterWalks(book, found.rounds, end, looksOf(effort)) };
}

/** Visits looked at for shorter walks: what a class of twenty groups needs, and a hundred groups wait seconds. */
const looksOf = ({ steps }: SearchEffort): number => Math.max(LEAST_LOOKS, LOOKS_PER_STEP * steps);

const LEAST_LOOKS = 1e6;
const LOOKS_PER_STEP = 250;

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
