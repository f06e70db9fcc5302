import fc from 'fast-check';
import { expect, it } from 'vitest';
import { coarserOdds, type ReadingOdds, sumOdds } from './reading-odds.ts';

const anyOdds: fc.Arbitrary<ReadingOdds> = fc
  .record({
    step: fc.constantFrom(0.01, 0.1, 1),
    low: fc.nat(5000),
    weights: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 1, maxLength: 900 }),
  })
  .map(({ step, low, weights }) => {
    const all = weights.reduce((sum, each) => sum + each, 0);
    return { step, low, shares: Float64Array.from(weights, (each) => each / all) };
  });

const momentsOf = ({ step, low, shares }: ReadingOdds) => {
  const at = (n: number): number => (low + n) * step;
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const mean = shares.reduce((sum, share, n) => sum + share * at(n), 0);
  return { whole, mean, variance: shares.reduce((sum, share, n) => sum + share * (at(n) - mean) ** 2, 0) };
};

it('on coarser marks the whole and the mean stay, and the variance grows by a quarter step squared at most', () => {
  fc.assert(
    fc.property(anyOdds, fc.integer({ min: 1, max: 12 }), (odds, times) => {
      const [before, after] = [momentsOf(odds), momentsOf(coarserOdds(odds, times))];
      expect(after.whole).toBeCloseTo(before.whole, 6);
      expect(Math.abs(after.mean - before.mean)).toBeLessThan(1e-6 * (1 + before.mean));
      const more = after.variance - before.variance;
      expect(more).toBeGreaterThan(-1e-6 * (1 + before.mean) ** 2);
      expect(more).toBeLessThan((odds.step * times) ** 2 / 4 + 1e-6 * (1 + before.mean) ** 2);
    }),
    { seed: 40, numRuns: 200 },
  );
});

it('many marks are made some two hundred and fifty, and sums of them hold to whole and mean', () => {
  const shares = new Float64Array(4001).fill(1 / 4001);
  const coarse = coarserOdds({ step: 0.01, low: 100, shares });
  expect(coarse.shares.length).toBeLessThanOrEqual(258);
  const { whole, mean } = momentsOf(sumOdds(coarse, coarse));
  expect(whole).toBeCloseTo(1, 9);
  expect(mean).toBeCloseTo(42, 9);
});
