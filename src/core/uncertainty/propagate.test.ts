import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  between,
  covariance,
  exactly,
  type Measured,
  measured,
  minus,
  plus,
  product,
  standardUncertainty,
  times,
} from './measured.ts';
import { propagate, unknownsOf } from './propagate.ts';

const known = (id: string, value: number, u: number): Measured =>
  measured(value, { id, u, shape: 'normal', origin: 'stated' });
const anyNumber = fc.double({ min: -100, max: 100, noNaN: true });
const anyU = fc.double({ min: 0.001, max: 10, noNaN: true });

describe('values with doubt', () => {
  it('that are taken from themselves leave exactly nothing', () => {
    fc.assert(
      fc.property(anyNumber, anyU, (value, u) => {
        const x = known('x', value, u);
        expect(minus(x, x)).toEqual({ value: 0, parts: [] });
      }),
      { seed: 50 },
    );
  });

  it('add their doubts as squares where they share nothing, and straight where they share all', () => {
    expect(standardUncertainty(plus(known('x', 1, 3), known('y', 1, 4)))).toBeCloseTo(5, 12);
    expect(standardUncertainty(plus(known('x', 1, 3), known('x', 1, 3)))).toBeCloseTo(6, 12);
  });

  it('give a product the doubts of its factors as shares, to first order', () => {
    const area = product(known('length', 4, 0.04), known('width', 5, 0.05));
    expect(standardUncertainty(area) / area.value).toBeCloseTo(Math.hypot(0.01, 0.01), 12);
  });

  it('are alike as far as they share unknowns', () => {
    const [x, y, z] = [known('x', 1, 2), known('y', 1, 3), known('z', 1, 4)];
    expect(covariance(plus(x, y), plus(x, z))).toBeCloseTo(4, 12);
    expect(covariance(x, z)).toBe(0);
  });
});

describe('a law of such values', () => {
  it('that is a straight sum gives the same doubt as adding them', () => {
    fc.assert(
      fc.property(anyNumber, anyNumber, anyU, anyU, anyNumber, (a, b, ua, ub, k) => {
        const [x, y] = [known('x', a, ua), known('y', b, ub)];
        const law = propagate((at) => at(x) + k * at(y), [x, y]);
        const sum = plus(x, times(y, k));
        if (law === null) throw new Error('no value');
        expect(standardUncertainty(law)).toBeCloseTo(standardUncertainty(sum), 8);
        expect(covariance(law, x)).toBeCloseTo(covariance(sum, x), 8);
      }),
      { seed: 51 },
    );
  });

  it('keeps apart what is one unknown: the length of a bar counts once, wherever it stands', () => {
    const bar = known('bar', 2, 0.1);
    const half = times<number>(bar, 0.5);
    const law = propagate((at) => at(bar) - 2 * at(half), [bar, half]);
    if (law === null) throw new Error('no value');
    expect(standardUncertainty(law)).toBeLessThan(1e-15);
    expect(unknownsOf([bar, half])).toHaveLength(1);
  });

  it('that ends on one side is measured on the other', () => {
    const x = known('x', 0, 2);
    const law = propagate((at) => (at(x) < 0 ? null : 3 * at(x)), [x]);
    if (law === null) throw new Error('no value');
    expect(standardUncertainty(law)).toBeCloseTo(6, 12);
  });

  it('that has no number has none with doubt either', () => {
    expect(propagate(() => null, [between('x', 0, 1, 'stated')])).toBeNull();
  });

  it('of exact values has no doubt', () => {
    const law = propagate((at) => at(exactly(3)) ** 2, [exactly(3)]);
    expect(law).toEqual({ value: 9, parts: [] });
  });
});
