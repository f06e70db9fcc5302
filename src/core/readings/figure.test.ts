import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { density, type Figure, figureOf, normalShare } from './figure.ts';

/** Sum of a density over ten spreads either side, by Simpson's rule. */
function areaUnder(figure: Figure): number {
  const [from, to, steps] = [figure.low - 10 * figure.u, figure.high + 10 * figure.u, 4000];
  const h = (to - from) / steps;
  let sum = 0;
  for (let n = 0; n <= steps; n += 1)
    sum += (n === 0 || n === steps ? 1 : n % 2 === 1 ? 4 : 2) * density(figure, from + n * h);
  return (sum * h) / 3;
}

describe('where readings of a setup are expected', () => {
  it('adds up to all readings, for a figure and for a band', () => {
    const figures = fc.record({
      low: fc.double({ min: 0, max: 5, noNaN: true }),
      width: fc.oneof(fc.constant(0), fc.double({ min: 0.01, max: 3, noNaN: true })),
      u: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
    });
    fc.assert(
      fc.property(figures, ({ low, width, u }) => {
        expect(areaUnder({ low, high: low + width, u })).toBeCloseTo(1, 4);
      }),
      { seed: 40 },
    );
  });

  it('is the normal law around a figure, and even between the ends of a wide band', () => {
    expect(density({ low: 1, high: 1, u: 0.1 }, 1)).toBeCloseTo(1 / (0.1 * Math.sqrt(2 * Math.PI)), 12);
    expect(density({ low: 1, high: 3, u: 0.01 }, 2)).toBeCloseTo(0.5, 6);
  });

  it('is nowhere where no number can have been read', () => {
    expect(figureOf({ kind: 'off the scale', wouldShow: 6, range: 5, overloads: false })).toBeNull();
    expect(figureOf({ kind: 'scale on the other side', force: 0.16 })).toBeNull();
  });
});

describe('the share of a normal law below a limit', () => {
  // NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.1 (from memory).
  it.each([
    [1, 0.84134],
    [1.96, 0.975],
    [-1.96, 0.025],
    [3, 0.99865],
  ])('at %f is %f', (z, share) => {
    expect(normalShare(z)).toBeCloseTo(share, 5);
  });
});
