import type { AskedPlan } from './asked-plan.ts';
import type { GroupAtTable } from './round-chart.ts';

/** What visits that are over or run still take of a shop when the others can begin. */
export interface TakenAtFirst {
  /** By visit: it can't begin before. */
  readonly earliest: readonly number[];
  /** By table, then by limit: where several can be had, how long some are taken. */
  readonly held: readonly (readonly HeldAtFirst[])[];
}

export interface HeldAtFirst {
  /** The group is done. */
  readonly to: number;
  /** What it held is free again. */
  readonly until: number;
}

/**
 * What is taken at first where a period is under way. A group walks on from its last table; a table of which there
 * is one is put back. Where more is taken than there is, because somebody or something is gone, nobody else begins
 * before that is over.
 */
export function takenAtFirst(asked: AskedPlan): TakenAtFirst {
  const { visits, underWay, begins, copies, limits, runs } = asked;
  const ready = ({ table, to }: GroupAtTable & { readonly to: number }): number =>
    to + (asked.resets[table] as number);
  const bearers = [
    ...runs.map((_, table) => ({ tables: [table], capacity: copies[table] as number })),
    ...limits,
  ].map(({ tables, capacity }) => {
    const taken = underWay
      .filter((visit) => tables.includes(visit.table) && ready(visit) > begins)
      .map((visit) => ({ to: visit.to, until: ready(visit) }))
      .sort((a, b) => a.until - b.until);
    const over = Math.max(0, taken.length - Math.max(0, capacity));
    const isOne = capacity === 1;
    const waits = isOne ? taken.length : over;
    return {
      tables,
      earliest: Math.max(begins, ...taken.slice(0, waits).map(({ until }) => until)),
      held: taken.slice(waits),
    };
  });
  return {
    earliest: visits.map((visit) =>
      Math.max(
        begins,
        ...underWay.filter(({ group }) => group === visit.group).map(({ to }) => to + asked.walk),
        ...bearers.filter(({ tables }) => tables.includes(visit.table)).map(({ earliest }) => earliest),
        ...underWay.filter((other) => mustBeApart(asked, visit, other)).map(({ to }) => to),
      ),
    ),
    held: bearers.map(({ held }) => held),
  };
}

function mustBeApart({ apart, beside }: AskedPlan, one: GroupAtTable, other: GroupAtTable): boolean {
  const isPair = ([a, b]: readonly [number, number], x: number, y: number): boolean =>
    (a === x && b === y) || (a === y && b === x);
  return (
    apart.some((pair) => isPair(pair, one.group, other.group)) &&
    (one.table === other.table || beside.some((pair) => isPair(pair, one.table, other.table)))
  );
}
