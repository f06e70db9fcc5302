import { seconds } from '../quantities/brands.ts';
import type { AskedPlan } from './asked-plan.ts';
import { copiesTaken } from './copies-taken.ts';
import type { FoundPlan } from './plan-search.ts';
import type { Rotation } from './rotation.ts';
import type { GroupAtTable } from './round-chart.ts';
import { standsFor } from './stands-for.ts';
import type { Stay, Timetable } from './timetable.ts';
import { waitsBetween } from './waits-between.ts';

/** What is already settled where a period is under way: visits that are over or run. */
export interface Settled {
  readonly stays: readonly Stay[];
  readonly rounds: Timetable['rounds'];
}

/** A plan that was found, with the copies numbered, the adults placed and the waits told. */
export function timetableOf(
  rotation: Rotation,
  asked: AskedPlan,
  plan: FoundPlan,
  leftOut: readonly GroupAtTable[],
  settled: Settled = { stays: [], rounds: [] },
): Timetable {
  const before = settled.rounds?.length ?? 0;
  const planned = plan.visits.map((visit) => ({
    group: rotation.groups[visit.group]?.label ?? '',
    table: rotation.tables[visit.table]?.mark ?? '',
    from: seconds(visit.from),
    to: seconds(visit.from + (asked.runs[visit.table] as number)),
    round: visit.round === null ? null : visit.round + 1 + before,
  }));
  const stays = [...settled.stays, ...copiesTaken(rotation, planned, settled.stays)].sort(
    (a, b) =>
      a.from - b.from ||
      groupAt(rotation, a.group) - groupAt(rotation, b.group) ||
      (a.round ?? 0) - (b.round ?? 0),
  );
  const rounds =
    plan.rounds === null
      ? null
      : [
          ...(settled.rounds ?? []),
          ...plan.rounds.map(({ from, to }) => ({ from: seconds(from), to: seconds(to) })),
        ];
  return {
    way: rotation.way,
    stays,
    rounds,
    waits: waitsBetween(rotation, stays),
    stands: standsFor(rotation, stays),
    leftOut: leftOut.map(({ group, table }) => ({
      group: rotation.groups[group]?.label ?? '',
      table: rotation.tables[table]?.mark ?? '',
    })),
    ends: seconds(plan.end),
    bound: seconds(plan.bound),
    proof: plan.proof,
  };
}

const groupAt = ({ groups }: Rotation, label: string): number =>
  groups.findIndex((group) => group.label === label);
