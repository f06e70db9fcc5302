import type { Shop } from '../../src/core/rotation/shop.ts';
import { randomFrom } from '../../src/core/uncertainty/random.ts';

/** A small shop with any rules, so small that every schedule can be tried. */
export function chanceShop(seed: number): Shop {
  const { even } = randomFrom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(even() * (to - from + 1));
  const happens = (chance: number): boolean => even() < chance;
  const many = <T>(count: number, make: (n: number) => T): T[] =>
    Array.from({ length: count }, (_, n) => make(n));
  const count = whole(2, 5);
  const some = (chance: number): number[] => many(count, (n) => n).filter(() => happens(chance));
  return {
    lengths: many(count, () => whole(happens(0.05) ? 0 : 1, 4)),
    resources: many(whole(1, 4), () => {
      const tasks = some(0.65);
      const capacity = happens(0.03) ? 0 : happens(0.6) ? 1 : whole(1, 3);
      return { capacity, tasks, after: tasks.map(() => (happens(0.5) ? 0 : whole(0, 2))) };
    }),
    before: many(happens(0.5) ? 0 : whole(1, 2), () => {
      const [first, then] = [whole(0, count - 1), whole(0, count - 1)];
      return { first, then, gap: happens(0.15) ? -1 : whole(0, 2) };
    }).filter(({ first, then }) => first !== then || happens(0.1)),
    earliest: happens(0.5) ? null : many(count, () => (happens(0.5) ? 0 : whole(0, 5))),
    latest: happens(0.5) ? null : many(count, () => (happens(0.6) ? Infinity : whole(3, 14))),
    blocked: many(happens(0.5) ? 0 : whole(1, 3), () => {
      const from = whole(-1, 10);
      return {
        from,
        to: happens(0.1) ? Infinity : from + whole(0, 4),
        tasks: happens(0.4) ? null : some(0.5),
      };
    }),
  };
}

/** A very small class: groups that differ in nothing, or one that is late, at tables with copies, adults, order and breaks. */
export function chanceClass(seed: number): Shop {
  const { even } = randomFrom(seed);
  const whole = (from: number, to: number): number => from + Math.floor(even() * (to - from + 1));
  const happens = (chance: number): boolean => even() < chance;
  const many = <T>(count: number, make: (n: number) => T): T[] =>
    Array.from({ length: count }, (_, n) => make(n));
  const [groups, tables] = happens(0.7) ? [3, 2] : [2, 3];
  const runs = many(tables, () => whole(1, 2));
  const resets = many(tables, () => (happens(0.5) ? 0 : 1));
  const walk = whole(0, 1);
  const task = (group: number, table: number): number => group * tables + table;
  const at = (table: number): number[] => many(groups, (group) => task(group, table));
  const adults = many(tables, (table) => table)
    .filter(() => happens(0.6))
    .flatMap(at);
  const isLate = happens(0.3);
  const before = !happens(0.4)
    ? []
    : many(groups, (group) => {
        const [first, then] = [task(group, 0), task(group, 1)];
        return { first, then, gap: walk };
      });
  const breaks = many(happens(0.6) ? whole(1, 2) : 0, () => {
    const from = whole(1, 8);
    return { from, to: from + whole(1, 3), tasks: happens(0.5) ? null : at(whole(0, tables - 1)) };
  });
  const all = many(groups * tables, (n) => n);
  return {
    lengths: all.map((n) => runs[n % tables] as number),
    resources: [
      ...many(groups, (group) => ({
        capacity: 1,
        tasks: many(tables, (table) => task(group, table)),
        after: many(tables, () => walk),
      })),
      ...many(tables, (table) => ({
        capacity: whole(1, 2),
        tasks: at(table),
        after: many(groups, () => resets[table] as number),
      })),
      { capacity: whole(1, 2), tasks: adults, after: adults.map((n) => resets[n % tables] as number) },
    ],
    before,
    earliest: isLate ? all.map((n) => (n < tables ? 2 : 0)) : null,
    latest: null,
    blocked: breaks,
  };
}

/** Rows of lengths as a shop: nobody is at two columns at once, and no column has two rows. */
export function openShop(rows: readonly (readonly number[])[]): Shop {
  const width = rows[0]?.length ?? 0;
  const one = (tasks: readonly number[]): Shop['resources'][number] => ({
    capacity: 1,
    tasks,
    after: tasks.map(() => 0),
  });
  return {
    lengths: rows.flat(),
    resources: [
      ...rows.map((row, n) => one(row.map((_, m) => n * width + m))),
      ...Array.from({ length: width }, (_, m) => one(rows.map((_row, n) => n * width + m))),
    ],
    before: [],
    earliest: null,
    latest: null,
    blocked: [],
  };
}
