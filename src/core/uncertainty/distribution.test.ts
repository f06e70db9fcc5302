import { describe, expect, it } from 'vitest';
import {
  arcSine,
  type Distribution,
  exponential,
  gamma,
  gaussian,
  gaussians,
  inexactLimits,
  rectangular,
  student,
  trapezoidal,
  triangular,
} from './distribution.ts';
import { randomFrom } from './random.ts';

const DRAWS = 200_000;

function drawn(law: Distribution, seed = 1): Float64Array {
  const block = new Float64Array(DRAWS);
  law.fill([block], randomFrom(seed));
  return block;
}
const meanOf = (values: Float64Array): number => values.reduce((sum, each) => sum + each, 0) / values.length;
const central = (values: Float64Array, power: number): number => {
  const mean = meanOf(values);
  return meanOf(values.map((each) => (each - mean) ** power));
};

const laws: readonly (readonly [string, Distribution])[] = [
  ['between two limits', rectangular(-2, 5)],
  ['between limits that are not exact', inexactLimits(1, 3, 0.4)],
  ['trapezoidal', trapezoidal(-1, 4, 0.3)],
  ['triangular', triangular(2, 3)],
  ['swinging', arcSine(-3, 1)],
  ['normal', gaussian(7, 0.2)],
  ['of few repeats', student(3, 2, 9)],
  ['of a known mean', exponential(4)],
  ['of a count', gamma(3, 2)],
  ['of a count less than one', gamma(0.5, 2)],
];

describe('what is drawn', () => {
  it.each(laws)('%s has the mean and the standard uncertainty that go with the law', (_, law) => {
    const values = drawn(law);
    const [mean, u] = [law.mean ?? Number.NaN, law.u ?? Number.NaN];
    const variance = central(values, 2);
    // Five standard errors of a mean and of a variance, the latter from the fourth moment found.
    expect(Math.abs(meanOf(values) - mean)).toBeLessThan(5 * (u / Math.sqrt(DRAWS)));
    expect(Math.abs(variance - u * u)).toBeLessThan(
      5 * Math.sqrt((central(values, 4) - variance ** 2) / DRAWS),
    );
  });

  it('between limits never leaves them, and not quite exact ones only by as much', () => {
    const ends = (law: Distribution) => [
      drawn(law).reduce((a, b) => Math.min(a, b)),
      drawn(law).reduce((a, b) => Math.max(a, b)),
    ];
    for (const law of [rectangular(1, 2), triangular(1, 2), trapezoidal(1, 2, 0.5), arcSine(1, 2)]) {
      const [low = 0, high = 0] = ends(law);
      expect(low).toBeGreaterThanOrEqual(1);
      expect(high).toBeLessThanOrEqual(2);
    }
    const [low = 0, high = 0] = ends(inexactLimits(1, 2, 0.1));
    expect(low).toBeGreaterThanOrEqual(0.9);
    expect(low).toBeLessThan(1);
    expect(high).toBeLessThanOrEqual(2.1);
  });

  it('has no moments where the law has none', () => {
    expect([student(0, 1, 1).mean, student(0, 1, 1).u, student(0, 1, 2).u]).toEqual([null, null, null]);
  });

  it('is refused where the law makes no sense', () => {
    expect(() => rectangular(2, 1)).toThrow(RangeError);
    expect(() => inexactLimits(0, 1, 0.6)).toThrow(RangeError);
    expect(() => gaussian(0, -1)).toThrow(RangeError);
    expect(() => gamma(0, 1)).toThrow(RangeError);
    expect(() => trapezoidal(0, 1, 2)).toThrow(RangeError);
  });
});

describe('quantities drawn together', () => {
  const covariance = [
    [4, 1.8, -0.6],
    [1.8, 1, -0.2],
    [-0.6, -0.2, 0.25],
  ];

  it('vary together as their covariance says', () => {
    const law = gaussians([10, -5, 0], covariance);
    if (law === null) throw new Error('no law');
    const blocks = [0, 1, 2].map(() => new Float64Array(DRAWS));
    law.fill(blocks, randomFrom(2));
    const means = blocks.map(meanOf);
    for (const [i, a] of blocks.entries())
      for (const [j, b] of blocks.entries()) {
        const found = meanOf(a.map((each, n) => (each - (means[i] ?? 0)) * ((b[n] ?? 0) - (means[j] ?? 0))));
        const [wanted, varA, varB] = [
          covariance[i]?.[j] ?? 0,
          covariance[i]?.[i] ?? 0,
          covariance[j]?.[j] ?? 0,
        ];
        expect(Math.abs(found - wanted)).toBeLessThan(5 * Math.sqrt((varA * varB + wanted ** 2) / DRAWS));
      }
    expect(Math.abs((means[1] ?? 0) + 5)).toBeLessThan(5 / Math.sqrt(DRAWS));
  });

  it('are none where the covariance contradicts itself', () => {
    expect(
      gaussians(
        [0, 0],
        [
          [1, 2],
          [2, 1],
        ],
      ),
    ).toBeNull();
  });
});
