import type { AskedPlan } from './asked-plan.ts';
import type { GroupAtTable } from './round-chart.ts';
import type { Blocked, Precedence, Resource, Shop } from './shop.ts';

/**
 * What is asked of a plan, as a shop in which tables free up one by one. A task is a visit, in the same order. A group is
 * taken for its walk after a visit, a table for its reset; so are the adults, who put it back.
 */
export function toShop(asked: AskedPlan, bell: number | null): Shop {
  const { visits } = asked;
  return {
    lengths: visits.map(({ table }) => asked.runs[table] as number),
    resources: resourcesOf(asked),
    before: [...ordersOf(asked), ...endsOf(asked)],
    earliest: visits.map((visit) => earliestOf(asked, visit)),
    latest: visits.map((visit) => latestOf(asked, visit, bell ?? Infinity)),
    blocked: blockedOf(asked),
  };
}

function resourcesOf(asked: AskedPlan): readonly Resource[] {
  const { visits, resets, walk } = asked;
  const resource = (
    capacity: number,
    isOn: (visit: GroupAtTable) => boolean,
    after: number | null,
  ): Resource => {
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
  const adults = asked.limits.map(({ tables: some, capacity }) =>
    resource(capacity, (visit) => some.includes(visit.table), null),
  );
  return [...groups, ...tables, ...adults, ...apartOf(asked, resource)].filter(
    ({ tasks }) => tasks.length > 0,
  );
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
      .map(({ from, to }) => ({ from, to, tasks: null })),
    ...away
      .filter(isInside)
      .map(({ group, from, to }) => ({ from, to, tasks: tasksOf((visit) => visit.group === group) })),
    ...closed
      .filter(isInside)
      .map(({ table, from, to }) => ({ from, to, tasks: tasksOf((visit) => visit.table === table) })),
  ];
}
