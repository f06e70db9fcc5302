import { seconds } from '../quantities/brands.ts';
import type { AskedPlan } from './asked-plan.ts';
import type { FoundPlan } from './plan-search.ts';
import type { Rotation } from './rotation.ts';
import type { Stay, Timetable } from './timetable.ts';

/** The visits of a plan by what groups and tables are called; `begun` rounds were before its first. */
export const plannedStays = (
  { groups, tables }: Pick<Rotation, 'groups' | 'tables'>,
  { runs }: AskedPlan,
  { visits }: FoundPlan,
  begun: number,
): readonly Omit<Stay, 'copy'>[] =>
  visits.map(({ group, table, from, round }) => ({
    group: groups[group]?.label ?? '',
    table: tables[table]?.mark ?? '',
    from: seconds(from),
    to: seconds(from + (runs[table] as number)),
    round: round === null ? null : round + 1 + begun,
  }));

/** The rounds of a plan; `null` where tables free up. */
export const roundsOf = ({ rounds }: FoundPlan): Timetable['rounds'] =>
  rounds === null ? null : rounds.map(({ from, to }) => ({ from: seconds(from), to: seconds(to) }));

/** In the order of time, then of the groups. */
export function staysInOrder({ groups }: Pick<Rotation, 'groups'>, stays: readonly Stay[]): readonly Stay[] {
  const place = (stay: Stay): number => groups.findIndex(({ label }) => label === stay.group);
  return [...stays].sort((a, b) => a.from - b.from || place(a) - place(b));
}
