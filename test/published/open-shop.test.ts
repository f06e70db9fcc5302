import { expect, test } from 'vitest';
import { solveShop } from '../../src/core/rotation/shop-solve.ts';
import { knownShops } from '../reference/open-shop.ts';
import { openShop } from '../shops/chance-shops.ts';
import { faultsOf } from '../shops/every-schedule.ts';
import { taillardRows } from '../shops/taillard.ts';
import { record } from './record.ts';

test.each(knownShops)(
  '$id ends at $soonest, and it is proved that nothing ends sooner',
  ({ id, rows, soonest, basis, source, unit }) => {
    const shop = openShop(rows);
    const answer = solveShop(shop, { seed: 1, steps: 100_000 });
    if (answer.kind !== 'schedule') throw new Error(`${id} has no schedule`);
    const { starts, end, bound, proof } = answer;
    const quantity = 'soonest end, proved';
    record({
      topic: 'open-shop',
      id,
      basis,
      source,
      quantity,
      expected: soonest,
      got: end,
      unit,
      tolerance: 0,
    });
    expect({ end, bound, faults: faultsOf(shop, starts), isProved: proof !== 'none' }).toEqual({
      end: soonest,
      bound: soonest,
      faults: [],
      isProved: true,
    });
    const last = starts.reduce((most, start, n) => Math.max(most, start + (shop.lengths[n] as number)), 0);
    expect(last).toBe(end);
  },
);

test("the rows of every shop of Taillard's are those that the published generator makes of its seeds", () => {
  const made = knownShops.flatMap(({ id, seeds, rows }) => (seeds === null ? [] : [{ id, seeds, rows }]));
  const same = made.filter(
    ({ seeds: { size, time, machine }, rows }) =>
      JSON.stringify(taillardRows(size, time, machine)) === JSON.stringify(rows),
  );
  record({
    topic: 'open-shop',
    id: 'taillard-generator',
    basis: 'published',
    source: 'E. Taillard, Benchmarks for basic scheduling problems, section 2',
    quantity: 'shops made anew from their seeds',
    expected: 36,
    got: same.length,
    unit: '1',
    tolerance: 0,
  });
  expect(same).toHaveLength(36);
  expect(same).toEqual(made);
});
