import type { RoundProblem } from '../../src/core/rotation/round-chart.ts';
import { type RandomStream, randomFrom } from '../../src/core/uncertainty/random.ts';

/** A problem without rules: all groups at all tables. */
export function plainProblem(
  groups: number,
  lengths: readonly number[],
  more: Partial<RoundProblem> = {},
): RoundProblem {
  const visits = Array.from({ length: groups }, (_, group) =>
    lengths.map((_length, table) => ({ group, table })),
  ).flat();
  return {
    groups,
    tables: lengths.length,
    visits,
    lengths,
    copies: lengths.map(() => 1),
    limits: [],
    before: [],
    ends: [],
    beside: [],
    apart: [],
    together: [],
    away: [],
    closed: [],
    at: [],
    breaks: [],
    walk: 0,
    begins: 0,
    bell: null,
    standing: null,
    ...more,
  };
}

/** One table before another, for one group or each. */
export function oneBefore(first: number, then: number, group: number | null): RoundProblem['before'][number] {
  return { first, then, group };
}

/** A small problem by chance, each kind of rule in about one of three. */
export function chanceProblem(seed: number): RoundProblem {
  const random = randomFrom(seed);
  const draw = drawer(random);
  const groups = draw(2, 4);
  const tables = draw(2, 4);
  const all = Array.from({ length: groups * tables }, (_, each) => ({
    group: Math.floor(each / tables),
    table: each % tables,
  }));
  const visits = shuffled(all, random).slice(0, draw(2, 7));
  const some = <T>(make: () => T): T[] =>
    random.even() < 0.35 ? Array.from({ length: draw(1, 2) }, make) : [];
  const whom = (): number | null => (random.even() < 0.5 ? null : draw(0, groups - 1));
  const two = (count: number): [number, number] => {
    const first = draw(0, count - 1);
    return [first, (first + draw(1, count - 1)) % count];
  };
  const span = (): { from: number; to: number } => {
    const from = draw(0, 30);
    return { from, to: from + draw(1, 15) };
  };
  return {
    groups,
    tables,
    visits,
    lengths: Array.from({ length: tables }, () => draw(3, 9)),
    copies: Array.from({ length: tables }, () => (random.even() < 0.8 ? 1 : 2)),
    limits: some(() => ({ tables: two(tables), capacity: 1 })),
    before: some(() => {
      const [first, then] = two(tables);
      return { first, then, group: whom() };
    }),
    ends: some(() => ({
      which: random.even() < 0.5 ? ('first' as const) : ('last' as const),
      table: draw(0, tables - 1),
      group: whom(),
    })),
    beside: some(() => two(tables)),
    apart: some(() => two(groups)),
    together: some(() => two(groups)),
    away: some(() => ({ group: draw(0, groups - 1), ...span() })),
    closed: some(() => ({ table: draw(0, tables - 1), ...span() })),
    at: some(() => ({
      ...(visits[draw(0, visits.length - 1)] as { group: number; table: number }),
      time: draw(0, 40),
    })),
    breaks: random.even() < 0.35 ? [{ from: 10, to: draw(11, 16) }] : [],
    walk: draw(0, 2),
    begins: draw(0, 3),
    bell: random.even() < 0.4 ? draw(15, 45) : null,
    standing: null,
  };
}

/**
 * A period that is under way by chance: a plan stood, something happened, and what is left has to be planned again
 * with the fewest changes. The plan that stood is any chart of the visits, its order by chance, with a visit
 * more or less than there is now.
 */
export function chanceHistory(seed: number): RoundProblem {
  const problem = chanceProblem(seed);
  const random = randomFrom(seed + 1_000_000);
  const draw = drawer(random);
  const rounds = draw(1, 4);
  const standing = Array.from({ length: rounds }, () => new Array<number>(problem.groups).fill(-1));
  const stood = problem.visits.filter(() => random.even() < 0.85);
  if (random.even() < 0.4)
    stood.push({ group: draw(0, problem.groups - 1), table: draw(0, problem.tables - 1) });
  for (const visit of shuffled(stood, random)) {
    const open = standing.filter(
      (row) =>
        row[visit.group] === -1 &&
        row.filter((table) => table === visit.table).length < (problem.copies[visit.table] as number),
    );
    const row = open[draw(0, Math.max(0, open.length - 1))];
    if (row !== undefined) row[visit.group] = visit.table;
  }
  return { ...problem, standing };
}

function drawer(random: RandomStream): (least: number, most: number) => number {
  return (least, most) => least + Math.floor(random.even() * (most - least + 1));
}

function shuffled<T>(list: readonly T[], random: RandomStream): T[] {
  return list
    .map((each) => ({ each, by: random.even() }))
    .sort((a, b) => a.by - b.by)
    .map(({ each }) => each);
}
