import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { classStatistics as reference } from '../../../test/reference/class-statistics.ts';
import { binomialShare, medianInterval, medianOf, robustCentre } from './robust.ts';

describe('a robust centre', () => {
  it('has the median and the median deviation that scipy finds', () => {
    for (const { values, median, mad } of reference.centres) {
      const found = robustCentre(values);
      const factor = reference.few.find(({ n }) => n === values.length)?.factor ?? 0;
      expect(found?.centre).toBeCloseTo(median, 12);
      expect(found?.spread).toBeCloseTo(mad * factor, 3);
    }
  });

  it('uses the factors for few values that trials with numpy give', () => {
    for (const { n, factor, share, medianU } of reference.few) {
      const centre = robustCentre(Array.from({ length: n }, (_, k) => k));
      const apart = medianOf(Array.from({ length: n }, (_, k) => Math.abs(k - (n - 1) / 2))) ?? 0;
      expect(centre?.spread).toBeCloseTo(1.4826 * apart * factor, 1);
      expect((centre?.spreadU ?? 0) / (centre?.spread ?? 1)).toBeCloseTo(share, 2);
      // The factor of many values is never too small for few.
      expect((centre?.u ?? 0) / (centre?.spread ?? 1)).toBeGreaterThan(medianU * 0.99);
    }
  });

  it('says nothing of the scatter of two values', () => {
    expect(robustCentre([1, 2])).toBeNull();
    expect(medianOf([])).toBeNull();
  });

  it('is not moved far by one wild value', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 2, max: 3, noNaN: true }), { minLength: 4, maxLength: 12 }),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        (values, wild) => {
          const centre = robustCentre([...values, wild])?.centre ?? 0;
          expect(centre).toBeGreaterThanOrEqual(2);
          expect(centre).toBeLessThanOrEqual(3);
        },
      ),
      { seed: 7 },
    );
  });

  it('moves and stretches with its values', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 1000 }), { minLength: 3, maxLength: 15 }),
        fc.integer({ min: 1, max: 9 }),
        fc.integer({ min: -50, max: 50 }),
        (values, factor, shift) => {
          const plain = robustCentre(values);
          const moved = robustCentre(values.map((each) => factor * each + shift));
          expect(moved?.centre).toBeCloseTo(factor * (plain?.centre ?? 0) + shift, 8);
          expect(moved?.spread).toBeCloseTo(factor * (plain?.spread ?? 0), 8);
        },
      ),
      { seed: 7 },
    );
  });
});

describe('an interval of the median', () => {
  it('has the ends that scipy finds where so many values allow 19 of 20', () => {
    const enough = reference.intervals;
    expect(enough.length).toBeGreaterThan(1);
    for (const { values, from, to } of enough) {
      const found = medianInterval(values, 0.95);
      expect([found?.from, found?.to]).toEqual([from, to]);
      expect(found?.coverage).toBeGreaterThanOrEqual(0.95);
    }
  });

  it('says how little four values are sure of', () => {
    expect(medianInterval([4, 1, 3, 2], 0.95)).toEqual({ from: 1, to: 4, coverage: 0.875 });
    expect(medianInterval([], 0.95)).toBeNull();
  });

  it('adds up the heads of a fair coin', () => {
    expect(binomialShare(3, 3)).toBe(1);
    expect(binomialShare(-1, 3)).toBe(0);
    expect(binomialShare(5, 10)).toBeCloseTo(0.623046875, 12);
  });
});
