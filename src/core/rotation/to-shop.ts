import type { AskedPlan } from './asked-plan.ts';
import type { GroupAtTable } from './round-chart.ts';
import type { Blocked, Precedence, Resource, Shop } from './shop.ts';
import { takenAtFirst } from './taken-at-first.ts';

/**
 * What is asked of a plan, as a shop in which tables free up one by one. A task is a visit, in the same order. A group is
 * taken for its walk after a visit, a table for its reset; so are the adults, who put it back.
 */
export function toShop(asked: AskedPlan, bell: number | null): Shop {
  const { visits, begins } = asked;
  const taken = takenAtFirst(asked);
  const held = taken.held.flatMap((some, bearer) => some.map((each) => ({ ...each, bearer })));
  const lasts = held.map(({ to }) => Math.max(0, to - begins));
  return {
    lengths: [...visits.map(({ table }) => asked.runs[table] as number), ...lasts],
    resources: resourcesOf(asked, held),
    before: [...ordersOf(asked), ...endsOf(asked)],
    earliest: [
      ...visits.map((visit, n) => Math.max(taken.earliest[n] as number, earliestOf(asked, visit))),
      ...held.map(() => begins),
    ],
    latest: [
      ...visits.map((visit) => latestOf(asked, visit, bell ?? Infinity)),
      ...lasts.map((length) => begins + length),
    ],
    blocked: blockedOf(asked),
  };
}

/** What is taken at first is a task too, after those of the visits. */
interface HeldTask {
  readonly bearer: number;
  readonly to: number;
  readonly until: number;
}

function resourcesOf(asked: AskedPlan, held: readonly HeldTask[]): readonly Resource[] {
  const { visits, resets, walk, begins, limits } = asked;
  const resource: MakeResource = (capacity, isOn, after) => {
    const tasks = visits.flatMap((visit, task) => (isOn(visit) ? [task] : []));
    return {
      capacity,
      tasks,
      after: tasks.map((task) => after ?? (resets[visits[task]?.table as number] as number)),
    };
  };
  const groups = Array.from({ length: asked.groups }, (_, group) =>
    resource(1, (visit) => visit.group === group, walk),
  );
  const tables = resets.map((_, table) =>
    resource(asked.copies[table] as number, (visit) => visit.table === table, null),
  );
  const adults = limits.map(({ tables: some, capacity }) =>
    resource(capacity, (visit) => some.includes(visit.table), null),
  );
  const shared = [...tables, ...adults].map((each, bearer) =>
    held.reduce<Resource>(
      (all, { to, until, bearer: whose }, n) =>
        whose !== bearer
          ? all
          : {
              capacity: all.capacity,
              tasks: all.tasks.concat(visits.length + n),
              after: all.after.concat(until - Math.max(begins, to)),
            },
      each,
    ),
  );
  return [...groups, ...shared, ...apartOf(asked, resource)].filter(({ tasks }) => tasks.length > 0);
}

type MakeResource = (
  capacity: number,
  isOn: (visit: GroupAtTable) => boolean,
  after: number | null,
) => Resource;

/** Two groups that are to be apart bear one of two visits at tables beside each other at a time, or at copies of one. */
function apartOf({ apart, beside, resets }: AskedPlan, resource: MakeResource): readonly Resource[] {
  const near = [
    ...resets.map((_, table) => [table, table] as const),
    ...beside.flatMap(([one, other]) => [[one, other] as const, [other, one] as const]),
  ];
  return apart
    .flatMap(([one, other]) =>
      near.map(([table, next]) =>
        resource(
          1,
          (visit) =>
            (visit.group === one && visit.table === table) || (visit.group === other && visit.table === next),
          0,
        ),
      ),
    )
    .filter(({ tasks }) => tasks.length > 1);
}

const inOrder = (first: number, next: number, gap: number): Precedence => {
  // biome-ignore lint/suspicious/noThenProperty: the contract's own word
  return { first, then: next, gap };
};

function ordersOf({ visits, before, walk }: AskedPlan): readonly Precedence[] {
  return before.flatMap(({ first, then, group }) =>
    visits.flatMap((visit, one): readonly Precedence[] => {
      if (visit.table !== first || (group !== null && visit.group !== group)) return [];
      const other = visits.findIndex((each) => each.group === visit.group && each.table === then);
      return other < 0 ? [] : [inOrder(one, other, walk)];
    }),
  );
}

function endsOf({ visits, ends, walk }: AskedPlan): readonly Precedence[] {
  return ends.flatMap(({ which, table, group }) =>
    visits.flatMap((visit, end) => {
      if (visit.table !== table || (group !== null && visit.group !== group)) return [];
      return visits.flatMap((each, other): readonly Precedence[] => {
        if (each.group !== visit.group || other === end) return [];
        return which === 'first' ? [inOrder(end, other, walk)] : [inOrder(other, end, walk)];
      });
    }),
  );
}

/** After the beginning, and after the times from the start on in which the group or the table is not there. */
function earliestOf(asked: AskedPlan, { group, table }: GroupAtTable): number {
  const { begins, away, closed, at, runs } = asked;
  const gone = [
    ...away.filter((each) => each.group === group),
    ...closed.filter((each) => each.table === table),
  ];
  const there = at.filter((each) => each.group === group && each.table === table);
  return Math.max(
    begins,
    ...gone.filter(({ from, to }) => from <= begins && to !== Infinity).map(({ to }) => to),
    ...there.map(({ time }) => time - (runs[table] as number) + 1),
  );
}

function latestOf(asked: AskedPlan, { group, table }: GroupAtTable, bell: number): number {
  const { away, closed, at, runs } = asked;
  const gone = [
    ...away.filter((each) => each.group === group),
    ...closed.filter((each) => each.table === table),
  ];
  const there = at.filter((each) => each.group === group && each.table === table);
  return Math.min(
    bell,
    ...gone.filter(({ to }) => to === Infinity).map(({ from }) => from),
    ...there.map(({ time }) => time + (runs[table] as number)),
  );
}

function blockedOf({ visits, away, closed, breaks, begins }: AskedPlan): readonly Blocked[] {
  const isInside = ({ from, to }: { from: number; to: number }): boolean =>
    from > begins && to !== Infinity && to > from;
  const tasksOf = (isOf: (visit: GroupAtTable) => boolean): readonly number[] =>
    visits.flatMap((visit, task) => (isOf(visit) ? [task] : []));
  return [
    ...breaks
      .filter(({ from, to }) => to > from && to > begins)
      .map(({ from, to }) => ({ from, to, tasks: tasksOf(() => true) })),
    ...away
      .filter(isInside)
      .map(({ group, from, to }) => ({ from, to, tasks: tasksOf((visit) => visit.group === group) })),
    ...closed
      .filter(isInside)
      .map(({ table, from, to }) => ({ from, to, tasks: tasksOf((visit) => visit.table === table) })),
  ];
}
