import type { RoundProblem } from './round-chart.ts';

/** What a round problem asks, looked up by visit: what the search over rounds reads on every step. */
export interface RoundBook {
  readonly problem: RoundProblem;
  /** By visit. A pair that is named twice is one visit. */
  readonly groupOf: readonly number[];
  readonly tableOf: readonly number[];
  readonly lengthOf: readonly number[];
  /** The lengths that occur, longest first. */
  readonly lengths: readonly number[];
  /** By visit: the place of its length among the lengths. */
  readonly levelOf: readonly number[];
  /** What bears only so many visits a round: first each group, then each table, then each limit. */
  readonly bearers: readonly Bearer[];
  /** By visit: the bearers it weighs on. */
  readonly weighsOn: readonly (readonly number[])[];
  /** By visit: visits that have to be in an earlier round. */
  readonly after: readonly (readonly number[])[];
  /** By visit: how long the group still is in rounds and on its way, at least, once this one is done. */
  readonly tails: readonly number[];
  /** By visit: how long it is, at least, from the first round until this one begins. */
  readonly heads: readonly number[];
  /** By visit: times at which it can't be, breaks apart. */
  readonly shut: readonly (readonly Span[])[];
  /** By bearer: its visits, those with the most to come after them first. */
  readonly byTail: readonly (readonly number[])[];
  /**
   * By bearer: breaks and times at which none of its visits, with the walk after it, can be; empty where only
   * the breaks are.
   */
  readonly shutOf: readonly (readonly Span[])[];
  /** By visit: times at which it has to be. */
  readonly at: readonly (readonly number[])[];
  /** In the order of time. */
  readonly breaks: readonly Span[];
  /** By group: others who may not be near it, and others who have to be. */
  readonly apart: readonly (readonly number[])[];
  readonly together: readonly (readonly number[])[];
  /** By table and table: beside each other, or the same. */
  readonly near: readonly (readonly boolean[])[];
  /** By round: how many cells of the plan that stood, from it on, are too many for a table or a limit. */
  readonly crowded: readonly number[];
  /** Whether a rule hangs on the time of day, breaks apart. */
  readonly isTimed: boolean;
  /** Whether rounds may change places without breaking a rule. */
  readonly isFree: boolean;
  /** What was found out about rounds laid out between breaks, by when the first can begin. */
  readonly layouts: Map<number, Map<string, { readonly end: number; readonly last: number }>>;
}

export interface Bearer {
  readonly capacity: number;
  readonly visits: readonly number[];
}

export interface Span {
  readonly from: number;
  readonly to: number;
}

/** Everything of a round problem by visit; `null` where a rule can't be kept whatever the rounds are. */
export function roundBook(problem: RoundProblem): RoundBook | null {
  const visits = distinctVisits(problem);
  const numberOf = new Map(visits.map((visit, index) => [visit.group * problem.tables + visit.table, index]));
  const find = (group: number, table: number): number => numberOf.get(group * problem.tables + table) ?? -1;
  const groupOf = visits.map((visit) => visit.group);
  const tableOf = visits.map((visit) => visit.table);
  const lengthOf = tableOf.map((table) => problem.lengths[table] as number);
  const lengths = [...new Set(lengthOf)].sort((a, b) => b - a);
  const bearers = bearersOf(problem, tableOf, groupOf);
  if (bearers.some((bearer) => bearer.capacity < 1 && bearer.visits.length > 0)) return null;
  if (problem.at.some((rule) => find(rule.group, rule.table) < 0)) return null;
  const after = closure(orderRules(problem, groupOf, tableOf, find));
  if (after.some((before, visit) => before.includes(visit))) return null;
  const needs = (list: readonly number[]): number =>
    list.reduce((sum, visit) => sum + (lengthOf[visit] as number) + problem.walk, 0);
  const at: number[][] = visits.map(() => []);
  for (const rule of problem.at) at[find(rule.group, rule.table)]?.push(rule.time);
  const shut = visits.map((visit) =>
    inOrder([
      ...problem.away.filter((rule) => rule.group === visit.group),
      ...problem.closed.filter((rule) => rule.table === visit.table),
    ]),
  );
  const tails = visits.map((_, visit) =>
    needs(visits.flatMap((__, later) => (after[later]?.includes(visit) ? [later] : []))),
  );
  const isTimed = shut.some((spans) => spans.length > 0) || problem.at.length > 0;
  return {
    problem,
    groupOf,
    tableOf,
    lengthOf,
    lengths,
    levelOf: lengthOf.map((length) => lengths.indexOf(length)),
    bearers,
    weighsOn: visits.map((_, visit) =>
      bearers.flatMap((bearer, index) => (bearer.visits.includes(visit) ? [index] : [])),
    ),
    after,
    tails,
    heads: after.map(needs),
    shut,
    byTail: bearers.map((bearer) =>
      [...bearer.visits].sort((a, b) => (tails[b] as number) - (tails[a] as number)),
    ),
    shutOf: bearers.map((_, index) => shutSpans(problem, index)),
    at,
    breaks: inOrder(problem.breaks),
    apart: othersOf(problem.apart, problem.groups),
    together: othersOf(problem.together, problem.groups),
    near: nearness(problem),
    crowded: crowdedCells(problem),
    isTimed,
    layouts: new Map(),
    isFree: !isTimed && problem.standing === null && after.every((list) => list.length === 0),
  };
}

function shutSpans(problem: RoundProblem, bearer: number): readonly Span[] {
  const own = [
    ...problem.away.filter((rule) => rule.group === bearer),
    ...problem.closed.filter((rule) => rule.table + problem.groups === bearer),
  ];
  if (own.length === 0) return [];
  return inOrder([...own, ...problem.breaks].map(({ from, to }) => ({ from: from + problem.walk, to })));
}

function distinctVisits(problem: RoundProblem): RoundProblem['visits'] {
  const seen = new Set<number>();
  return problem.visits.filter((visit) => {
    const key = visit.group * problem.tables + visit.table;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function bearersOf(
  problem: RoundProblem,
  tableOf: readonly number[],
  groupOf: readonly number[],
): readonly Bearer[] {
  const where = (list: readonly number[], is: (value: number) => boolean): number[] =>
    list.flatMap((value, visit) => (is(value) ? [visit] : []));
  return [
    ...Array.from({ length: problem.groups }, (_, group) => ({
      capacity: 1,
      visits: where(groupOf, (value) => value === group),
    })),
    ...Array.from({ length: problem.tables }, (_, table) => ({
      capacity: problem.copies[table] as number,
      visits: where(tableOf, (value) => value === table),
    })),
    ...problem.limits.map((limit) => ({
      capacity: limit.capacity,
      visits: where(tableOf, (value) => limit.tables.includes(value)),
    })),
  ];
}

/** First, last and before, as visits that have to be in an earlier round than another of the same group. */
function orderRules(
  problem: RoundProblem,
  groupOf: readonly number[],
  tableOf: readonly number[],
  find: (group: number, table: number) => number,
): readonly ReadonlySet<number>[] {
  const after = groupOf.map(() => new Set<number>());
  const order = (first: number, then: number): void => {
    if (first >= 0 && then >= 0) after[then]?.add(first);
  };
  const whom = (group: number | null): readonly number[] =>
    group === null ? Array.from({ length: problem.groups }, (_, each) => each) : [group];
  for (const rule of problem.before)
    for (const group of whom(rule.group)) order(find(group, rule.first), find(group, rule.then));
  for (const rule of problem.ends)
    for (const group of whom(rule.group)) {
      const end = find(group, rule.table);
      for (let other = 0; other < groupOf.length; other += 1) {
        if (groupOf[other] !== group || tableOf[other] === rule.table) continue;
        if (rule.which === 'first') order(end, other);
        else order(other, end);
      }
    }
  return after;
}

function closure(after: readonly ReadonlySet<number>[]): readonly (readonly number[])[] {
  return after.map((direct) => {
    const seen = new Set<number>();
    const open = [...direct];
    for (let visit = open.pop(); visit !== undefined; visit = open.pop()) {
      if (seen.has(visit)) continue;
      seen.add(visit);
      open.push(...(after[visit] ?? []));
    }
    return [...seen];
  });
}

function othersOf(pairs: readonly (readonly [number, number])[], groups: number): readonly number[][] {
  const others: number[][] = Array.from({ length: groups }, () => []);
  for (const [a, b] of pairs) {
    others[a]?.push(b);
    others[b]?.push(a);
  }
  return others;
}

function crowdedCells(problem: RoundProblem): readonly number[] {
  const tooMany = (problem.standing ?? []).map((row) => {
    const at = (is: (table: number) => boolean): number =>
      row.filter((table) => table >= 0 && is(table)).length;
    return Math.max(
      0,
      ...problem.copies.map((copies, table) => at((each) => each === table) - copies),
      ...problem.limits.map(({ tables, capacity }) => at((each) => tables.includes(each)) - capacity),
    );
  });
  return tooMany.map((_, round) => tooMany.slice(round).reduce((sum, each) => sum + each, 0));
}

function nearness(problem: RoundProblem): readonly (readonly boolean[])[] {
  const near = Array.from({ length: problem.tables }, (_, a) =>
    Array.from({ length: problem.tables }, (__, b) => a === b),
  );
  for (const [a, b] of problem.beside) {
    (near[a] as boolean[])[b] = true;
    (near[b] as boolean[])[a] = true;
  }
  return near;
}

/** Spans that hold no time are none. */
export function inOrder(spans: readonly Span[]): readonly Span[] {
  return spans
    .filter((span) => span.to > span.from)
    .map(({ from, to }) => ({ from, to }))
    .sort((a, b) => a.from - b.from);
}
