import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classStatistics as reference } from '../../../test/reference/class-statistics.ts';
import { concordance, ranksOf, signTest } from './ordinal.ts';

const pairs = (less: number, more: number): [number, number][] => [
  ...Array.from({ length: less }, (): [number, number] => [1, 2]),
  ...Array.from({ length: more }, (): [number, number] => [2, 1]),
];

describe('the sign test', () => {
  it('has the probabilities of the binomial test of scipy', () => {
    for (const { less, more, p } of reference.signs)
      expect(signTest(pairs(less, more)).probability).toBeCloseTo(p, 12);
  });

  it('leaves out who makes no difference, and says how many', () => {
    expect(signTest([...pairs(4, 1), [2, 2]])).toEqual({ ...signTest(pairs(4, 1)), same: 1 });
    expect(signTest([[1, 1]]).probability).toBe(1);
  });
});

describe('agreement about an order', () => {
  it('has the W of scipy ranks and the probability of all orders counted out', () => {
    for (const { orders, w, exact } of reference.agreements) {
      const found = concordance(orders);
      expect(found?.w).toBeCloseTo(w, 12);
      expect(found?.isExact).toBe(true);
      expect(found?.probability).toBeCloseTo(exact, 12);
    }
  });

  it('has the probability of the Friedman test of scipy where there are many things', () => {
    const found = concordance(reference.friedman.orders);
    expect(found?.isExact).toBe(false);
    expect(found?.w).toBeCloseTo(reference.friedman.w, 10);
    expect(found?.probability).toBeCloseTo(reference.friedman.p, 8);
  });

  it('is not defined for one judge, or where nobody makes a difference', () => {
    expect(concordance([[1, 2, 3]])).toBeNull();
    expect(
      concordance([
        [1, 1, 1],
        [2, 2, 2],
      ]),
    ).toBeNull();
  });

  it('shares the places that are equal', () => {
    expect(ranksOf([5, 1, 5, 9])).toEqual([2.5, 1, 2.5, 4]);
  });

  it('lies between none and all, and does not ask in which order things are named', () => {
    const places = fc.array(fc.tuple(fc.nat(5), fc.nat(5), fc.nat(5)), { minLength: 2, maxLength: 6 });
    fc.assert(
      fc.property(places, (orders) => {
        const found = concordance(orders);
        const turned = concordance(orders.map(([a, b, c]) => [c, a, b]));
        expect(found?.w ?? 0).toBeGreaterThanOrEqual(0);
        expect(found?.w ?? 0).toBeLessThanOrEqual(1 + 1e-12);
        expect(turned?.probability ?? 0).toBeCloseTo(found?.probability ?? 0, 10);
      }),
      { seed: 7 },
    );
  });
});
