import { isAmong } from './among.ts';
import type { AskedPlan } from './asked-plan.ts';
import { withVisits } from './leave-out.ts';
import type { NearestFound, NearestPlan } from './nearest-rounds.ts';
import { type FoundPlan, type PlanAnswer, searchPlan } from './plan-search.ts';
import type { GroupAtTable } from './round-chart.ts';
import { routeChanges, routesWith } from './routes.ts';
import type { SearchEffort } from './shop.ts';
import type { StillToDo } from './still-to-do.ts';

/**
 * Of all ways to leave out one of these sets, where tables free up: the plan whose ways round the tables have the
 * fewest changes from those that stood, then the one that ends soonest. Numbers of changes are tried upwards; for each,
 * every choice of ways with so many, held in their order, is searched for a plan.
 */
export function nearestRoutes(
  still: StillToDo,
  sets: readonly (readonly GroupAtTable[])[],
  effort: SearchEffort,
): NearestFound {
  const cases = sets.map((leftOut) => lossCase(still, leftOut)).sort((a, b) => a.least - b.least);
  const search: RouteSearch = { still, effort, best: null, isSure: true, tries: triesFor(still) };
  const most = Math.max(0, ...cases.map(({ visits, least }) => least + visits.length));
  for (let changes = cases[0]?.least ?? 0; changes <= most; changes += 1) {
    for (const each of cases)
      if (each.least <= changes) tryMoves(search, each, changes - each.least, changes);
    if (search.best !== null || search.tries <= 0) break;
  }
  const isSure = search.isSure && search.tries > 0;
  return search.best === null
    ? { kind: 'none', isSure }
    : { kind: 'nearest', nearest: { ...search.best, isSure } };
}

/** Choices of ways that are searched for a plan at most: fewer where each takes longer. */
const triesFor = ({ asked }: StillToDo): number =>
  Math.max(20, Math.min(1500, Math.floor(60_000 / Math.max(1, asked.visits.length) ** 2)));
/** Ways of one group with so many moved, and what an unanswered search counts for among the tries. */
const MOST_ROUTES = 400;
const OPEN_TRIES = 20;

interface LossCase {
  readonly leftOut: readonly GroupAtTable[];
  readonly visits: readonly GroupAtTable[];
  /** Changes for what is gone and what is new, whatever the order. */
  readonly least: number;
}

interface RouteSearch {
  readonly still: StillToDo;
  readonly effort: SearchEffort;
  best: NearestPlan | null;
  isSure: boolean;
  tries: number;
}

function lossCase({ asked, routes }: StillToDo, leftOut: readonly GroupAtTable[]): LossCase {
  const visits = asked.visits.filter((visit) => !isAmong(leftOut, visit));
  const least = routes.reduce((sum, stood, group) => {
    const tables = tablesOf(visits, group);
    const kept = stood.filter((table) => tables.includes(table)).length;
    return sum + stood.length + tables.length - 2 * kept;
  }, 0);
  return { leftOut, visits, least };
}

const tablesOf = (visits: readonly GroupAtTable[], group: number): readonly number[] =>
  visits.filter((visit) => visit.group === group).map(({ table }) => table);

/** Every choice of ways with so many tables moved in all. */
function tryMoves(search: RouteSearch, { leftOut, visits }: LossCase, moves: number, changes: number): void {
  const { routes } = search.still;
  const choose = (group: number, left: number, chosen: readonly (readonly number[])[]): void => {
    if (search.tries <= 0) return;
    const stood = routes[group];
    if (stood === undefined) {
      if (left === 0) tryRoutes(search, leftOut, visits, chosen, changes);
      return;
    }
    const tables = tablesOf(visits, group);
    const isLast = group === routes.length - 1;
    for (let moved = isLast ? left : 0; moved <= left; moved += 1) {
      const some = routesWith(stood, tables, moved, MOST_ROUTES);
      if (some.length >= MOST_ROUTES) search.isSure = false;
      for (const route of some) choose(group + 1, left - moved, [...chosen, route]);
    }
  };
  choose(0, moves, []);
}

function tryRoutes(
  search: RouteSearch,
  leftOut: readonly GroupAtTable[],
  visits: readonly GroupAtTable[],
  routes: readonly (readonly number[])[],
  changes: number,
): void {
  const { asked } = search.still;
  search.tries -= 1;
  const { best } = search;
  if (best !== null && best.plan.proof === 'bound' && best.changes === changes && isAtFloor(search)) return;
  const bell = best === null ? asked.bell : best.plan.end - 1;
  const answer = planInOrder(search, visits, routes, bell);
  if (answer.kind === 'unknown') {
    search.isSure = false;
    search.tries -= OPEN_TRIES;
  }
  if (answer.kind !== 'plan') return;
  if (answer.proof === 'none') search.isSure = false;
  search.best = { plan: answer, leftOut, changes, isSure: true };
}

/** Nothing ends before what runs already does. */
const isAtFloor = ({ best, still }: RouteSearch): boolean =>
  best !== null && best.plan.end <= still.asked.begins;

function planInOrder(
  { still, effort }: Pick<RouteSearch, 'still' | 'effort'>,
  visits: readonly GroupAtTable[],
  routes: readonly (readonly number[])[],
  bell: number | null,
): PlanAnswer {
  const asked = { ...still.asked, before: [...still.asked.before, ...routes.flatMap(chain)] };
  return searchPlan(withVisits(asked, visits), { bell, standing: null }, effort);
}

const chain = (route: readonly number[], group: number): AskedPlan['before'] =>
  route.slice(1).map((table, n) => {
    // biome-ignore lint/suspicious/noThenProperty: the contract's own word
    return { first: route[n] as number, then: table, group };
  });

/**
 * A plan with nothing but these left out, with as many groups on their own way as can be, one after the other: where the
 * fewest changes were too many choices to look for.
 */
export function anyRoutes(
  still: StillToDo,
  leftOut: readonly GroupAtTable[],
  effort: SearchEffort,
): NearestPlan | null {
  const { asked, routes } = still;
  const visits = asked.visits.filter((visit) => !isAmong(leftOut, visit));
  const own = routes.map((stood, group) => stood.filter((table) => tablesOf(visits, group).includes(table)));
  const aim = { still, effort };
  let found = planInOrder(aim, visits, own, asked.bell);
  if (found.kind !== 'plan') {
    let held = routes.map((): readonly number[] => []);
    found = planInOrder(aim, visits, held, asked.bell);
    for (const group of found.kind === 'plan' ? routes.keys() : []) {
      const more = held.map((route, other) => (other === group ? (own[group] as readonly number[]) : route));
      const answer = planInOrder(aim, visits, more, asked.bell);
      if (answer.kind === 'plan') [held, found] = [more, answer];
    }
  }
  return found.kind === 'plan'
    ? { plan: found, leftOut, changes: changesOf(still, found), isSure: false }
    : null;
}

function changesOf({ routes }: StillToDo, { visits }: FoundPlan): number {
  return routes.reduce((sum, stood, group) => {
    const route = visits
      .filter((visit) => visit.group === group)
      .sort((a, b) => a.from - b.from)
      .map(({ table }) => table);
    return sum + routeChanges(stood, route);
  }, 0);
}
