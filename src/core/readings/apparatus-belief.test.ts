import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Belief, beliefOf, takeIn, takeInMean, without } from './apparatus-belief.ts';

const seeded = { seed: 43, numRuns: 200 };
const figure = fc.double({ min: -2, max: 2, noNaN: true });
const positive = fc.double({ min: 0.05, max: 2, noNaN: true });
const between = fc.double({ min: -0.95, max: 0.95, noNaN: true });
/** Two setups with some of their doubt in common. */
const priors = fc.record({ a: positive, b: positive, r: between }).map(({ a, b, r }) => [
  [a * a, r * a * b],
  [r * a * b, b * b],
]);

const at = ({ mean, spread }: Belief): readonly number[] => [...mean, ...spread.flat()];
const closeTo = (found: Belief, expected: Belief): void => {
  for (const [n, each] of at(found).entries()) expect(each).toBeCloseTo(at(expected)[n] ?? Number.NaN, 8);
};

describe('what is believed of an apparatus', () => {
  it('is Bayes for normal laws: precisions add up, the mean is weighed by them', () => {
    fc.assert(
      fc.property(positive, positive, figure, (sd, noise, distance) => {
        const belief = beliefOf([[sd * sd]]);
        takeInMean(belief, 0, distance, 1 / noise ** 2);
        const precision = 1 / sd ** 2 + 1 / noise ** 2;
        expect(belief.spread[0]?.[0]).toBeCloseTo(1 / precision, 10);
        expect(belief.mean[0]).toBeCloseTo(distance / noise ** 2 / precision, 10);
      }),
      seeded,
    );
  });

  it('does not hang on the order of readings, nor on whether they are taken in one by one', () => {
    fc.assert(
      fc.property(priors, figure, figure, positive, positive, (prior, x, y, px, py) => {
        const [one, other, together] = [beliefOf(prior), beliefOf(prior), beliefOf(prior)];
        takeInMean(one, 0, x, px);
        takeInMean(one, 1, y, py);
        takeInMean(one, 0, y, py);
        takeInMean(other, 0, y, py);
        takeInMean(other, 1, y, py);
        takeInMean(other, 0, x, px);
        closeTo(one, other);
        takeInMean(together, 0, (px * x + py * y) / (px + py), px + py);
        takeInMean(together, 1, y, py);
        closeTo(together, one);
      }),
      seeded,
    );
  });

  it('with a reading taken out again is what it would have been without it', () => {
    fc.assert(
      fc.property(priors, figure, figure, positive, positive, (prior, x, y, px, py) => {
        const [all, rest] = [beliefOf(prior), beliefOf(prior)];
        takeInMean(all, 1, y, py);
        takeInMean(rest, 1, y, py);
        takeInMean(all, 0, x, px);
        const { shift, doubt } = without(all, 0, x, px);
        expect(shift).toBeCloseTo(rest.mean[0] ?? Number.NaN, 7);
        expect(doubt).toBeCloseTo(rest.spread[0]?.[0] ?? Number.NaN, 7);
      }),
      seeded,
    );
  });

  it('keeps mean and spread of a mixture: a reading that is good in half the cases', () => {
    fc.assert(
      fc.property(positive, positive, figure, between, (sd, noise, distance, half) => {
        const p = (half + 1) / 2;
        const S = sd ** 2 + noise ** 2;
        const belief = beliefOf([[sd ** 2]]);
        takeIn(belief, 0, (p * distance) / S, p * (distance / S) ** 2, p / S);
        // By hand: with probability p the updated law, else the one before.
        const [mean, narrow] = [(sd ** 2 * distance) / S, sd ** 2 - sd ** 4 / S];
        const variance = p * narrow + (1 - p) * sd ** 2 + p * (1 - p) * mean ** 2;
        expect(belief.mean[0]).toBeCloseTo(p * mean, 9);
        expect(belief.spread[0]?.[0]).toBeCloseTo(variance, 9);
      }),
      seeded,
    );
  });
});
