// Shops to measure with: Taillard's, balanced ones, and whole classes.
import { readFileSync } from 'node:fs';
import { randomFrom } from '../../build/core/uncertainty/random.js';

const reference = new URL('../../test/reference/open-shop.json', import.meta.url);

/** Taillard (1993), those that the reference holds of a size, with their optima. */
export const taillard = (size) =>
  JSON.parse(readFileSync(reference, 'utf8'))
    .cases.filter(({ kind, inputs }) => kind === 'instance' && inputs.n === size)
    .map(({ id, inputs, expected }) => ({
      id,
      rows: inputs.p_job_machine,
      shop: openShop(inputs.p_job_machine),
      optimum: expected.optimum.value,
    }));

export function openShop(rows) {
  const width = rows[0].length;
  const one = (tasks) => ({ capacity: 1, tasks, after: tasks.map(() => 0) });
  return {
    lengths: rows.flat(),
    resources: [
      ...rows.map((row, n) => one(row.map((_, m) => n * width + m))),
      ...rows[0].map((_, m) => one(rows.map((_row, n) => n * width + m))),
    ],
    before: [],
    earliest: null,
    latest: null,
    blocked: [],
  };
}

const chance = (seed) => {
  const { even } = randomFrom(seed);
  const whole = (from, to) => from + Math.floor(even() * (to - from + 1));
  return {
    even,
    whole,
    happens: (share) => even() < share,
    many: (count, make) => Array.from({ length: count }, (_, n) => make(n)),
  };
};

/** All rows and columns add up to 1000: few permutations weighed and added, or lengths by chance made even. */
export function balanced(size, seed) {
  const { whole, happens, many, even } = chance(seed);
  const rows = many(size, () => many(size, () => 0));
  if (happens(0.5)) {
    const count = whole(size, 2 * size);
    let left = 1000;
    for (let n = count; n > 0 && left > 0; n -= 1) {
      const weight = n === 1 ? left : Math.max(1, Math.floor((2 * left * even()) / n));
      const order = many(size, (m) => m);
      for (let m = size - 1; m > 0; m -= 1) {
        const other = whole(0, m);
        [order[m], order[other]] = [order[other], order[m]];
      }
      for (let m = 0; m < size; m += 1) rows[m][order[m]] += weight;
      left -= weight;
    }
    return rows;
  }
  const mean = 1000 / size;
  for (const row of rows) for (let m = 0; m < size; m += 1) row[m] = whole(1, Math.floor(2 * mean) - 1);
  return evened(rows, whole);
}

/** One unit at a time to where it is missing. */
function evened(rows, whole) {
  const size = rows.length;
  const sumOfRow = (n) => rows[n].reduce((sum, each) => sum + each, 0);
  const sumOfColumn = (m) => rows.reduce((sum, row) => sum + row[m], 0);
  for (;;) {
    const high = rows.findIndex((_, n) => sumOfRow(n) > 1000);
    const low = rows.findIndex((_, n) => sumOfRow(n) < 1000);
    if (high < 0 && low < 0) break;
    const column = whole(0, size - 1);
    if (high >= 0 && rows[high][column] > 1) rows[high][column] -= 1;
    if (low >= 0) rows[low][column] += 1;
  }
  for (;;) {
    const high = rows.findIndex((_, m) => sumOfColumn(m) > 1000);
    const low = rows.findIndex((_, m) => sumOfColumn(m) < 1000);
    if (high < 0) return rows;
    const row = whole(0, size - 1);
    if (rows[row][high] === 1) continue;
    rows[row][high] -= 1;
    rows[row][low] += 1;
  }
}

/**
 * A class as the period makes one: groups at tables of 4 to 10 minutes with reset, some twice, some closed for a
 * while, adults who are too few, an order of tables, a break, a late group. In seconds.
 */
export function classShop(seed, groups, tables) {
  const { whole, happens, many } = chance(seed);
  const walk = 30 * whole(0, 2);
  const runs = many(tables, () => 60 * whole(4, 10));
  const resets = many(tables, () => 30 * whole(0, 4));
  const task = (group, table) => group * tables + table;
  const at = (table) => many(groups, (group) => task(group, table));
  const copies = many(tables, () => (happens(0.3) ? 2 : 1));
  const withAdult = many(tables, (table) => table).filter(() => happens(0.45));
  const adults = whole(1, 3);
  const held = (capacity, tasks, after) => ({ capacity, tasks, after: tasks.map(after) });
  const blocked = [];
  if (happens(0.5)) {
    const from = 60 * whole(0, 30);
    blocked.push({ from, to: from + 60 * whole(5, 25), tasks: at(whole(0, tables - 1)) });
  }
  if (happens(0.3)) {
    const from = 60 * whole(20, 40);
    blocked.push({ from, to: from + 900, tasks: null });
  }
  const before = many(whole(0, 2), () => [whole(0, tables - 1), whole(0, tables - 1)])
    .filter(([one, other]) => one < other)
    .flatMap(([one, other]) => many(groups, (group) => arc(task(group, one), task(group, other), walk)));
  const late = happens(0.3) ? whole(0, groups - 1) : -1;
  const rules = [
    copies.some((count) => count > 1) ? 'copies' : null,
    withAdult.length > 0 ? `${adults} adult${adults === 1 ? '' : 's'} at ${withAdult.length}` : null,
    before.length > 0 ? 'order' : null,
    ...blocked.map(({ tasks }) => (tasks === null ? 'break' : 'closed')),
    late >= 0 ? 'late' : null,
  ].filter((rule) => rule !== null);
  const shop = {
    lengths: many(groups * tables, (n) => runs[n % tables]),
    resources: [
      ...many(groups, (group) =>
        held(
          1,
          many(tables, (table) => task(group, table)),
          () => walk,
        ),
      ),
      ...many(tables, (table) => held(copies[table], at(table), () => resets[table])),
      held(adults, withAdult.flatMap(at), (n) => resets[n % tables]),
    ],
    before,
    earliest: late >= 0 ? many(groups * tables, (n) => (Math.floor(n / tables) === late ? 600 : 0)) : null,
    latest: null,
    blocked,
  };
  return { shop, rules: rules.join(', ') };
}

const arc = (first, next, gap) =>
  Object.fromEntries([
    ['first', first],
    ['then', next],
    ['gap', gap],
  ]);
