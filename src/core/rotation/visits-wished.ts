import { finder } from './asked-plan.ts';
import type { Rotation } from './rotation.ts';
import type { GroupAtTable } from './round-chart.ts';
import type { Wish } from './wish.ts';
import { isShut } from './wishes-said.ts';

/**
 * Every visit that is wanted where there is time for all: each group at each table that is open, but for those
 * that it skips. Groups and tables by their place in the rotation.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = (mark) => ({ mark, run: exactly(seconds(360)), reset: exactly(seconds(60)), copies: 1, needsAdult: false, mayDo: false, beside: [] });
 * const rotation = { groups: [{ label: 'A', pupils: 4, arrives: seconds(0) }], tables: [table('1'), table('2')], adults: [], walk: seconds(30),
 *   begins: seconds(0), bell: seconds(2400), breaks: [], way: 'signal', wishes: [{ kind: 'skips', group: 'A', table: '1', id: 'A skips 1', path: null }] };
 * wantedVisits(rotation) // => [{ group: 0, table: 1 }]
 */
export function wantedVisits(rotation: Rotation): readonly GroupAtTable[] {
  const { groups, tables, wishes } = rotation;
  return groups.flatMap(({ label }, group) =>
    tables.flatMap(({ mark }, table) => {
      const isSkipped = wishes.some(
        (wish) => wish.kind === 'skips' && wish.group === label && wish.table === mark,
      );
      return isSkipped || isShut(rotation, mark) ? [] : [{ group, table }];
    }),
  );
}

/**
 * The visits without which some of these wishes can't be kept: a table that a group is to do, do first or last, or
 * be at at a time. `alsoOrders`: the tables of an order too, and first and last of every group, among the visits
 * that are wanted anyway; where the time is short they may be left out, and the order then asks for nothing.
 */
export function visitsOf(
  rotation: Rotation,
  wishes: readonly Wish[],
  wanted: readonly GroupAtTable[],
  alsoOrders: boolean,
): readonly GroupAtTable[] {
  const find = finder(rotation);
  const among = (table: string, group: string | null): readonly GroupAtTable[] =>
    wanted.filter(
      (visit) => visit.table === find.table(table) && (group === null || visit.group === find.group(group)),
    );
  const both = (first: string, then: string, group: string | null): readonly GroupAtTable[] =>
    among(first, group).flatMap((visit) => {
      const other = among(then, group).find((each) => each.group === visit.group);
      return other === undefined ? [] : [visit, other];
    });
  const exactly = (table: string, group: string): readonly GroupAtTable[] => {
    const visit = { table: find.table(table), group: find.group(group) };
    return visit.table < 0 || visit.group < 0 ? [] : [visit];
  };
  const every = (table: string): readonly GroupAtTable[] =>
    rotation.groups.flatMap(({ label }) => exactly(table, label));
  const asked = wishes.flatMap((wish): readonly GroupAtTable[] => {
    switch (wish.kind) {
      case 'does':
        if (wish.group !== null) return exactly(wish.table, wish.group);
        return wish.path === null ? among(wish.table, null) : every(wish.table);
      case 'at':
        return exactly(wish.table, wish.group);
      case 'first':
      case 'last':
        if (wish.group !== null) return exactly(wish.table, wish.group);
        return alsoOrders ? among(wish.table, null) : [];
      case 'before':
        return alsoOrders ? both(wish.first, wish.then, wish.group) : [];
      default:
        return [];
    }
  });
  return distinct(asked);
}

/** Each visit once, in the order of groups and tables. */
export function distinct(visits: readonly GroupAtTable[]): readonly GroupAtTable[] {
  const isFirst = ({ group, table }: GroupAtTable, index: number): boolean =>
    visits.findIndex((other) => other.group === group && other.table === table) === index;
  return visits.filter(isFirst).sort((a, b) => a.group - b.group || a.table - b.table);
}
