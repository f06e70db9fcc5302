import type { ClosedTable } from './class-period.ts';
import { type GroupFinding, groupFindings, sizesOf } from './groups-of.ts';
import type { Rotation } from './rotation.ts';

/**
 * What there is to know of the groups of a period: whether they have a place at an open table, a duty each, and
 * tables enough for everybody to pull. Nothing where nobody says how many pupils come, or some groups have none.
 *
 * @example
 * const table = { mark: '1', run: { value: 300, u: null }, reset: { value: 30, u: null }, copies: 1, needsAdult: false, mayDo: false, beside: [] };
 * const group = (label) => ({ label, pupils: 5, arrives: 0 });
 * groupsFound(10, null, { groups: [group('A'), group('B')], tables: [table] }, []) // => [{ kind: 'more groups than places', groups: 2, places: 1 }, { kind: 'not all pull', pupils: 4, tables: 1 }]
 */
export function groupsFound(
  pupils: number | null,
  size: number | null,
  { groups, tables }: Pick<Rotation, 'groups' | 'tables'>,
  closed: readonly ClosedTable[],
): readonly GroupFinding[] {
  if (pupils === null || pupils < groups.length) return [];
  const open = tables.filter(
    ({ mark }) => !closed.some(({ table, during }) => table === mark && during === null),
  );
  const places = open.reduce((sum, { copies }) => sum + copies, 0);
  return groupFindings(
    { pupils, size, groups: groups.length, places, tables: open.length },
    sizesOf(pupils, groups.length),
  );
}
