import { roundBook } from './round-book.ts';
import type { RoundAnswer, RoundProblem } from './round-chart.ts';
import { solveRounds } from './round-solve.ts';
import { boundOfRest, roundSearch } from './round-state.ts';
import type { SearchEffort } from './shop.ts';

/** Two tables done by a group in one round, one after the other, with the walk between; both are held all round. */
export interface PairedTables {
  readonly first: number;
  readonly second: number;
}

export interface Pairing {
  /** In the problem and its charts, a pair goes by its first table; nobody visits its other one. */
  readonly pairs: readonly PairedTables[];
  readonly problem: RoundProblem;
  readonly answer: RoundAnswer & { readonly kind: 'rounds' };
  /** How much sooner all are done than with every table in a round of its own; `null` where that can't be done at all. */
  readonly gained: number | null;
}

/** Pairs that promise most by their bound, and are worked out. */
const MOST_TRIED = 3;

/**
 * Which short tables are best done two in a round, one after the other by the same group; `null` where nothing is
 * gained. Only tables that the same groups do are paired; none that is wanted at a time of day, and none where
 * groups have to be together. A pair weighs on the adults of both tables all round, and two groups that are
 * to be apart are apart from both. Not looked into where a plan stood before.
 *
 * One pair is added after the other, each time the one that gains most: not every set of pairs is tried.
 *
 * @example
 * const each = [0, 1, 2];
 * const pairing = pairShortTables(
 *   {
 *     groups: 2, tables: 3, lengths: [600, 240, 300], copies: [1, 1, 1], walk: 30, begins: 0, bell: null,
 *     visits: [0, 1].flatMap((group) => each.map((table) => ({ group, table }))),
 *     limits: [], before: [], ends: [], beside: [], apart: [], together: [], away: [], closed: [], at: [],
 *     breaks: [], standing: null,
 *   },
 *   { seed: 1, steps: 1000 },
 * );
 * pairing.pairs // => [{ first: 1, second: 2 }]
 * pairing.gained // => 330
 */
export function pairShortTables(problem: RoundProblem, effort: SearchEffort): Pairing | null {
  if (problem.standing !== null || problem.together.length > 0) return null;
  const alone = solveRounds(problem, effort);
  const endAlone = alone.kind === 'rounds' ? alone.end : Infinity;
  if (alone.kind === 'unknown') return null;
  let best: Pairing | null = null;
  for (;;) {
    const next = bestPair(best?.problem ?? problem, best?.pairs ?? [], best?.answer.end ?? endAlone, effort);
    if (next === null) return best;
    best = { ...next, gained: endAlone === Infinity ? null : endAlone - next.answer.end };
  }
}

type OnePairMore = Omit<Pairing, 'gained'>;

/** The pair more with which all are done soonest, sooner than `end`. */
function bestPair(
  problem: RoundProblem,
  pairs: readonly PairedTables[],
  end: number,
  effort: SearchEffort,
): OnePairMore | null {
  let best: OnePairMore | null = null;
  for (const each of promising(problem, pairs, end).slice(0, MOST_TRIED)) {
    const answer = solveRounds(each.problem, effort);
    if (answer.kind !== 'rounds' || answer.end >= (best?.answer.end ?? end)) continue;
    best = { pairs: [...pairs, each.pair], problem: each.problem, answer };
  }
  return best;
}

interface Candidate {
  readonly pair: PairedTables;
  readonly problem: RoundProblem;
  readonly bound: number;
}

function promising(problem: RoundProblem, pairs: readonly PairedTables[], end: number): readonly Candidate[] {
  const taken = new Set(pairs.flatMap(({ first, second }) => [first, second]));
  const free = Array.from({ length: problem.tables }, (_, table) => table).filter(
    (table) => !taken.has(table) && problem.visits.some((visit) => visit.table === table),
  );
  const candidates: Candidate[] = [];
  for (const a of free)
    for (const b of free) {
      if (a >= b) continue;
      const paired = withPair(problem, a, b);
      const book = paired === null ? null : roundBook(paired.problem);
      if (paired === null || book === null) continue;
      const search = roundSearch(book, Infinity, Infinity, 0, new Float64Array());
      candidates.push({ ...paired, bound: boundOfRest(search, problem.begins) });
    }
  return candidates
    .filter(({ bound, problem: { bell } }) => bound < end && (bell === null || bound <= bell))
    .sort((x, y) => x.bound - y.bound);
}

/** The problem with two tables as one stop; `null` where they can't be one. */
function withPair(
  problem: RoundProblem,
  a: number,
  b: number,
): { readonly pair: PairedTables; readonly problem: RoundProblem } | null {
  if (groupsAt(problem, a) !== groupsAt(problem, b)) return null;
  if (problem.at.some((rule) => rule.table === a || rule.table === b)) return null;
  const isFirst = (x: number, y: number): boolean =>
    problem.before.some((rule) => rule.first === x && rule.then === y) ||
    problem.ends.some((rule) => (rule.which === 'first' ? rule.table === x : rule.table === y));
  if (isFirst(a, b) && isFirst(b, a)) return null;
  const [first, second] = isFirst(b, a) ? [b, a] : [a, b];
  const stop = (table: number): number => (table === second ? first : table);
  const { lengths, copies, walk } = problem;
  const length = (lengths[first] as number) + walk + (lengths[second] as number);
  const least = Math.min(copies[first] as number, copies[second] as number);
  const isPair = (x: number, y: number): boolean => stop(x) === stop(y);
  return {
    pair: { first, second },
    problem: {
      ...problem,
      visits: problem.visits.filter((visit) => visit.table !== second),
      lengths: lengths.with(first, length),
      copies: copies.with(first, least),
      limits: problem.limits.map((limit) => ({ ...limit, tables: [...new Set(limit.tables.map(stop))] })),
      before: problem.before
        .filter((rule) => !isPair(rule.first, rule.then))
        .map((rule) => beforeRule(stop(rule.first), stop(rule.then), rule.group)),
      ends: problem.ends.map((rule) => ({ ...rule, table: stop(rule.table) })),
      beside: problem.beside
        .filter(([x, y]) => !isPair(x, y))
        .map(([x, y]): readonly [number, number] => [stop(x), stop(y)]),
      closed: problem.closed.map((rule) => ({ ...rule, table: stop(rule.table) })),
    },
  };
}

function beforeRule(first: number, then: number, group: number | null): RoundProblem['before'][number] {
  return { first, then, group };
}

function groupsAt(problem: RoundProblem, table: number): string {
  const groups = problem.visits.filter((visit) => visit.table === table).map((visit) => visit.group);
  return [...new Set(groups)].sort((a, b) => a - b).join();
}
