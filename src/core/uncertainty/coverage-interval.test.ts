import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { quantileOf, shortestInterval, symmetricInterval } from './coverage-interval.ts';

const sample = fc
  .array(fc.double({ min: -50, max: 50, noNaN: true }), { minLength: 20, maxLength: 80 })
  .map((values) => values.sort((a, b) => a - b));

describe('intervals of a sample', () => {
  it('hold at least their share, and the shortest is never longer than the one that leaves out evenly', () => {
    fc.assert(
      fc.property(sample, fc.constantFrom(0.5, 0.8, 0.95), (sorted, share) => {
        const shortest = shortestInterval(sorted, share);
        const held = sorted.filter((each) => each >= shortest.from && each <= shortest.to).length;
        expect(held).toBeGreaterThanOrEqual(Math.floor(share * sorted.length));
        const even = symmetricInterval(sorted, share);
        // Both stand on values of a sample: they may differ by one value at either end.
        const wider = shortestInterval(sorted, Math.max(0, share - 2 / sorted.length));
        expect(wider.to - wider.from).toBeLessThanOrEqual(even.to - even.from + 1e-9);
      }),
      { seed: 204 },
    );
  });

  it('lean to the thick side of a skew one: the shortest begins where it is thickest', () => {
    const skew = Array.from({ length: 1000 }, (_, n) => -Math.log(1 - (n + 0.5) / 1000));
    const shortest = shortestInterval(skew, 0.95);
    expect(shortest.from).toBe(skew[0]);
    expect(shortest.to).toBeLessThan(symmetricInterval(skew, 0.95).to);
  });

  it('of a single value are that value', () => {
    expect(symmetricInterval([3], 0.95)).toEqual({ from: 3, to: 3 });
    expect(shortestInterval([3], 0.95)).toEqual({ from: 3, to: 3 });
  });

  it('grow with the share', () => {
    fc.assert(
      fc.property(sample, fc.double({ min: 0, max: 1, noNaN: true }), (sorted, share) => {
        expect(quantileOf(sorted, share)).toBeLessThanOrEqual(quantileOf(sorted, Math.min(1, share + 0.1)));
      }),
      { seed: 205 },
    );
  });
});
