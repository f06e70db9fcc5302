import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { conformityOf, guardBand, normalStock, risksOf } from './conformity.ts';
import { coverageFactor, effectiveFreedom } from './coverage-factor.ts';
import {
  fisherShare,
  gammaDensity,
  gammaShare,
  logGamma,
  normalShare,
  quantileFrom,
  studentShare,
} from './probability.ts';

describe('shares of the usual laws', () => {
  it('of a normal law are those of the tables, on both sides', () => {
    for (const [z, below] of [
      [0, 0.5],
      [1, 0.8413447460685429],
      [1.959963984540054, 0.975],
      [3, 0.9986501019683699],
    ] as const) {
      expect(normalShare(z)).toBeCloseTo(below, 13);
      expect(normalShare(-z)).toBeCloseTo(1 - below, 13);
    }
  });

  it('rest on a gamma function that gives the factorials', () => {
    let factorial = 1;
    for (let n = 1; n < 20; n += 1) {
      expect(Math.abs(logGamma(n) - Math.log(factorial))).toBeLessThan(
        1e-12 * Math.max(1, Math.log(factorial)),
      );
      factorial *= n;
    }
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
  });

  it('grow with the value and reach from 0 to 1', () => {
    const shares = [
      (x: number) => studentShare(x, 3),
      (x: number) => gammaShare(2.5, Math.max(0, x)),
      (x: number) => fisherShare(Math.max(0, x), 4, 7),
    ];
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), fc.constantFrom(...shares), (x, share) => {
        expect(share(x)).toBeGreaterThanOrEqual(0);
        expect(share(x)).toBeLessThanOrEqual(1);
        expect(share(x + 0.5)).toBeGreaterThanOrEqual(share(x));
      }),
      { seed: 209 },
    );
  });

  it('of t with many degrees of freedom are those of a normal law, and F of one is t squared', () => {
    expect(studentShare(1.96, 1e7)).toBeCloseTo(normalShare(1.96), 6);
    expect(fisherShare(1.7 ** 2, 1, 9)).toBeCloseTo(2 * studentShare(1.7, 9) - 1, 12);
  });

  it('of a gamma law are the area under its height', () => {
    const step = 1e-4;
    let area = 0;
    for (let x = step / 2; x < 2; x += step) area += gammaDensity(3.5, x) * step;
    expect(gammaShare(3.5, 2)).toBeCloseTo(area, 7);
  });

  it('are turned round by halving', () => {
    expect(quantileFrom((x) => gammaShare(1, x), 0.95, 0, 1)).toBeCloseTo(-Math.log(0.05), 12);
  });
});

describe('degrees of freedom', () => {
  it('of one share alone are its own, and none where all is known for sure', () => {
    expect(
      effectiveFreedom([
        { u: 2, freedom: 7 },
        { u: 0, freedom: 1 },
      ]),
    ).toBeCloseTo(7, 12);
    expect(effectiveFreedom([{ u: 2, freedom: null }])).toBeNull();
  });

  it('that are broken count as the next lower whole number', () => {
    expect(coverageFactor(16.9, 0.99)).toBe(coverageFactor(16, 0.99));
  });
});

describe('conformity', () => {
  it('is even chance at a limit, and sure far inside', () => {
    expect(conformityOf(5, 0.1, { low: null, high: 5 })).toBeCloseTo(0.5, 12);
    expect(conformityOf(5, 0.1, { low: 4, high: 6 })).toBeCloseTo(1, 12);
  });

  it('risks as little as the doubt is small, and a guard band makes the risk what was asked', () => {
    const stock = normalStock(0, 1);
    const good = { low: null, high: 1 };
    // To first order in u: height of the stock at the limit times u times the mean of a half normal law.
    const first = (Math.exp(-0.5) / Math.sqrt(2 * Math.PI)) * (1e-4 / Math.sqrt(2 * Math.PI));
    expect(risksOf(stock, 1e-4, good, good).takenThoughBad / first).toBeCloseTo(1, 3);
    const guard = guardBand(stock, 0.3, 1, 0.005);
    expect(risksOf(stock, 0.3, good, { low: null, high: 1 - guard }).takenThoughBad).toBeCloseTo(0.005, 9);
  });
});
