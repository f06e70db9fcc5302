import type { Adult, RotationTable } from './rotation.ts';
import type { RoundLimit } from './round-chart.ts';

/**
 * How many groups at once there can be at which tables, so that every one of those tables can have an adult of
 * its own: of any tables no more than the adults who may stand at one of them (Hall 1935, the marriage theorem, from
 * memory). Only limits that bind are told: not those that the copies keep anyway or that follow from two others.
 * Tables by their place in the list.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = (mark) => ({ mark, run: exactly(360), reset: exactly(60), copies: 1, needsAdult: true, mayDo: false, beside: [] });
 * hallLimits([table('1'), table('2'), table('3')], [{ label: 'P', at: ['1', '2'] }, { label: 'Q', at: null }], [1, 1, 1]) // => [{ tables: [0, 1, 2], capacity: 2 }]
 */
export function hallLimits(
  tables: readonly RotationTable[],
  adults: readonly Adult[],
  copies: readonly number[],
): readonly RoundLimit[] {
  const mayStand = (table: RotationTable): string =>
    adults.map(({ at }) => (at === null || at.includes(table.mark) ? '1' : '0')).join('');
  const needing = tables.flatMap((table, index) =>
    table.needsAdult ? [{ index, who: mayStand(table) }] : [],
  );
  const kinds = [...new Set(needing.map(({ who }) => who))];
  const limits = new Map<string, HallLimit>();
  for (let chosen = 1; chosen < 2 ** kinds.length; chosen += 1) {
    const who = union(kinds.filter((_, kind) => Math.floor(chosen / 2 ** kind) % 2 === 1));
    const within = needing.filter((each) => isWithin(each.who, who)).map(({ index }) => index);
    limits.set(who, { who, tables: within, capacity: [...who].filter((one) => one === '1').length });
  }
  const all = [...limits.values()].filter(({ tables: within, capacity }) => {
    const most = within.reduce((sum, table) => sum + (copies[table] as number), 0);
    return capacity < most;
  });
  return all
    .filter((limit) => !followsFromParts(limit, all))
    .sort((a, b) => a.tables.length - b.tables.length || (a.tables[0] as number) - (b.tables[0] as number))
    .map(({ tables: within, capacity }) => ({ tables: within, capacity }));
}

interface HallLimit extends RoundLimit {
  /** A letter an adult: `1` for those who may stand at one of the tables. */
  readonly who: string;
}

const union = (sets: readonly string[]): string =>
  [...(sets[0] ?? '')].map((_, one) => (sets.some((set) => set[one] === '1') ? '1' : '0')).join('');

const isWithin = (set: string, other: string): boolean =>
  [...set].every((one, index) => one === '0' || other[index] === '1');

/** Two limits of tables that share no adult say together what this one says. */
const followsFromParts = (limit: HallLimit, all: readonly HallLimit[]): boolean =>
  all.some(
    (one) =>
      one !== limit &&
      all.some(
        (other) =>
          other !== limit &&
          one !== other &&
          one.capacity + other.capacity <= limit.capacity &&
          limit.tables.every((table) => one.tables.includes(table) || other.tables.includes(table)),
      ),
  );
