import fc from 'fast-check';
import { expect, test } from 'vitest';
import { chanceClass, chanceShop, openShop } from '../../../test/shops/chance-shops.ts';
import { faultsOf, soonestOfAll } from '../../../test/shops/every-schedule.ts';
import { taillardRows } from '../../../test/shops/taillard.ts';
import type { Shop } from './shop.ts';
import { solveShop } from './shop-solve.ts';

const effort = { seed: 1, steps: 100_000 };

/** The answer, with what its schedule breaks in place of the schedule. */
function judged(shop: Shop): object {
  const answer = solveShop(shop, effort);
  if (answer.kind !== 'schedule') return answer;
  const { starts, end, bound, proof } = answer;
  const last = starts.reduce(
    (most, start, task) => Math.max(most, start + (shop.lengths[task] as number)),
    0,
  );
  return { end, bound, faults: faultsOf(shop, starts), isProved: proof !== 'none', endsAsSaid: last === end };
}

const proved = (end: number): object => ({ end, bound: end, faults: [], isProved: true, endsAsSaid: true });

test('a small shop with any rules ends as soon as the soonest of every schedule, or is impossible as it is', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const shop = chanceShop(seed);
      const soonest = soonestOfAll(shop);
      expect(judged(shop)).toEqual(soonest === null ? { kind: 'impossible' } : proved(soonest));
    }),
    { numRuns: 300, seed: 5 },
  );
});

test('a small open shop, which is as good backwards, ends as soon as the soonest of every schedule', () => {
  const length = fc.integer({ min: 1, max: 5 });
  fc.assert(
    fc.property(
      fc.array(fc.tuple(length, length), { minLength: 2, maxLength: 3 }),
      fc.nat(1),
      (rows, rest) => {
        const shop = openShop(rows);
        const resources = shop.resources.map((each) => ({ ...each, after: each.after.map(() => rest) }));
        const { end } = judged({ ...shop, resources }) as { readonly end: number };
        expect(judged({ ...shop, resources })).toEqual(proved(end));
        expect(soonestOfAll({ ...shop, resources }, end - 1)).toBeNull();
      },
    ),
    { numRuns: 60, seed: 9 },
  );
});

test('a small class of groups that are alike ends as soon as the soonest of every schedule', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const shop = chanceClass(seed);
      const answer = judged(shop);
      const end = (answer as { readonly end: number }).end;
      expect(answer).toEqual(proved(end));
      expect(soonestOfAll(shop, end - 1)).toBeNull();
    }),
    { numRuns: 200, seed: 7 },
  );
});

test('where the bell is a unit before the soonest end nothing is possible, and at that end there is a schedule', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const shop = chanceClass(seed);
      const { end } = judged(shop) as { readonly end: number };
      const until = (bell: number): Shop => ({ ...shop, latest: shop.lengths.map(() => bell) });
      expect(judged(until(end))).toEqual(proved(end));
      expect(judged(until(end - 1))).toEqual({ kind: 'impossible' });
    }),
    { numRuns: 200, seed: 8 },
  );
});

test('a task of no length that holds a resource can begin at the very end', () => {
  const order = (first: number, then: number, gap: number): Shop['before'][number] => ({ first, then, gap });
  expect(
    judged({
      lengths: [0, 1, 1],
      resources: [{ capacity: 2, tasks: [0, 1, 2], after: [2, 0, 2] }],
      before: [order(2, 1, 0), order(1, 0, 1)],
      earliest: [0, 4, 0],
      latest: null,
      blocked: [],
    }),
  ).toEqual(proved(6));
});

test('whatever is spent, the schedule keeps all rules and its end is no sooner than the bound', () => {
  fc.assert(
    fc.property(
      fc.array(fc.array(fc.integer({ min: 1, max: 30 }), { minLength: 5, maxLength: 5 }), {
        minLength: 5,
        maxLength: 5,
      }),
      fc.nat(20),
      (rows, steps) => {
        const shop = openShop(rows);
        const answer = solveShop(shop, { seed: 3, steps });
        if (answer.kind !== 'schedule')
          throw new Error(`an open shop always has a schedule, not ${answer.kind}`);
        expect(faultsOf(shop, answer.starts)).toEqual([]);
        expect(answer.end).toBeGreaterThanOrEqual(answer.bound);
        expect(answer.proof !== 'none').toBe(answer.end === answer.bound);
      },
    ),
    { numRuns: 100, seed: 6 },
  );
});

test('the same seed and steps give the same schedule', () => {
  const shop = openShop(taillardRows(7, 1840686215, 1827454623));
  expect(solveShop(shop, { seed: 9, steps: 50 })).toEqual(solveShop(shop, { seed: 9, steps: 50 }));
});

test('a time between units is refused', () => {
  expect(() => solveShop(openShop([[1.5]]), effort)).toThrow(RangeError);
});
