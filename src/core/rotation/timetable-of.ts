import { seconds } from '../quantities/brands.ts';
import type { AskedPlan } from './asked-plan.ts';
import { copiesTaken } from './copies-taken.ts';
import type { FoundPlan } from './plan-search.ts';
import { plannedStays, roundsOf, staysInOrder } from './planned-stays.ts';
import type { Rotation } from './rotation.ts';
import type { GroupAtTable } from './round-chart.ts';
import { standsFor } from './stands-for.ts';
import type { Timetable } from './timetable.ts';
import { waitsBetween } from './waits-between.ts';

/** A plan that was found, with the copies numbered, the adults placed and the waits told. */
export function timetableOf(
  rotation: Rotation,
  asked: AskedPlan,
  plan: FoundPlan,
  leftOut: readonly GroupAtTable[],
): Timetable {
  const stays = staysInOrder(rotation, copiesTaken(rotation, plannedStays(rotation, asked, plan, 0), []));
  return {
    way: rotation.way,
    stays,
    rounds: roundsOf(plan),
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
