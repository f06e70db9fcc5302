import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares } from './least-squares.ts';
import { inverseOfPositive, multiply, transpose } from './matrix.ts';
import { nonlinearFit } from './nonlinear-fit.ts';
import { randomFrom } from './random.ts';

const number = fc.double({ min: -5, max: 5, noNaN: true });
/** Ten readings at places that tell a straight line apart, and two weights. */
const line = [0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((x) => [1, x]);

describe('least squares', () => {
  it('finds a line that the readings lie on', () => {
    fc.assert(
      fc.property(number, number, (a, b) => {
        const fit = leastSquares(
          line,
          line.map(([, x = 0]) => a + b * x),
        );
        expect(fit?.parameters[0]).toBeCloseTo(a, 10);
        expect(fit?.parameters[1]).toBeCloseTo(b, 10);
        expect(fit?.deviation).toBeLessThan(1e-10);
      }),
      { seed: 206 },
    );
  });

  it('leaves over what has nothing to do with the factors, however the readings are weighted', () => {
    const readings = fc.array(number, { minLength: 10, maxLength: 10 });
    const weights = fc.array(fc.double({ min: 0.1, max: 10, noNaN: true }), { minLength: 10, maxLength: 10 });
    fc.assert(
      fc.property(readings, weights, (y, w) => {
        const fit = leastSquares(line, y, w);
        for (const k of [0, 1]) {
          const together = line.reduce(
            (sum, row, n) => sum + (row[k] ?? 0) * (w[n] ?? 0) * (fit?.residuals[n] ?? 9),
            0,
          );
          expect(Math.abs(together)).toBeLessThan(1e-9);
        }
      }),
      { seed: 207 },
    );
  });

  it('knows its parameters as well as the inverse of the weighted squares says', () => {
    const w = line.map((_, n) => 1 + n);
    const squares = multiply(
      transpose(line),
      line.map((row, n) => row.map((each) => each * (w[n] ?? 0))),
    );
    const inverse = inverseOfPositive(squares);
    const fit = leastSquares(
      line,
      line.map(() => 1),
      w,
    );
    for (const i of [0, 1])
      for (const j of [0, 1]) expect(fit?.unscaled[i]?.[j]).toBeCloseTo(inverse?.[i]?.[j] ?? 9, 12);
  });

  it('counts a reading of weight two as two readings', () => {
    const once = leastSquares([[1], [1]], [1, 4], [2, 1]);
    const twice = leastSquares([[1], [1], [1]], [1, 1, 4]);
    expect(once?.parameters[0]).toBeCloseTo(twice?.parameters[0] ?? 9, 12);
    expect(once?.unscaled[0]?.[0]).toBeCloseTo(twice?.unscaled[0]?.[0] ?? 9, 12);
  });

  it('has no answer where readings are too few or can not tell parameters apart', () => {
    expect(leastSquares([[1, 1]], [1])).toBeNull();
    expect(
      leastSquares(
        [
          [1, 2],
          [2, 4],
          [3, 6],
        ],
        [1, 2, 3],
      ),
    ).toBeNull();
    expect(
      leastSquares(
        [
          [1, 0],
          [2, 0],
          [3, 0],
        ],
        [1, 2, 3],
      ),
    ).toBeNull();
    expect(leastSquares([], [])).toBeNull();
  });
});

describe('a fit of a law that bends', () => {
  it('gives a straight law what least squares gives it, covariance and all', () => {
    const y = line.map(([, x = 0], n) => 2 + 0.5 * x + (n % 3) * 0.1);
    const straight = leastSquares(line, y);
    const bent = nonlinearFit({
      residuals: ([a = 0, b = 0]) => line.map(([, x = 0], n) => (y[n] ?? 0) - a - b * x),
      start: [10, -3],
    });
    for (const k of [0, 1]) {
      expect(bent?.parameters[k]).toBeCloseTo(straight?.parameters[k] ?? 9, 9);
      expect(bent?.covariance[k]?.[k]).toBeCloseTo(straight?.covariance[k]?.[k] ?? 9, 9);
    }
  });

  it('scatters over many tries as much as its covariance says', () => {
    const random = randomFrom(208);
    const tries = Array.from({ length: 400 }, () => {
      const y = line.map(([, x = 0]) => 3 * Math.exp(-0.2 * x) + 0.05 * random.normal());
      const fit = nonlinearFit({
        residuals: ([a = 0, b = 0]) =>
          line.map(([, x = 0], n) => ((y[n] ?? 0) - a * Math.exp(-b * x)) / 0.05),
        start: [1, 0.1],
      });
      if (fit === null) throw new Error('no fit');
      return { rate: fit.parameters[1] ?? 0, u: Math.sqrt(fit.unscaled[1]?.[1] ?? 0) };
    });
    const mean = tries.reduce((sum, { rate }) => sum + rate, 0) / tries.length;
    const deviation = Math.sqrt(
      tries.reduce((sum, { rate }) => sum + (rate - mean) ** 2, 0) / (tries.length - 1),
    );
    // A standard deviation from 400 tries is known to 3.5 %: five times that.
    expect(Math.abs(deviation / (tries[0]?.u ?? 0) - 1)).toBeLessThan(0.18);
    expect(Math.abs(mean - 0.2)).toBeLessThan((5 * deviation) / Math.sqrt(400));
  });

  it('takes a reading of a parameter itself as what is known of it beforehand', () => {
    const fit = nonlinearFit({ residuals: ([a = 0]) => [(4 - a) / 1, (2 - a) / 1], start: [0] });
    expect(fit?.parameters[0]).toBeCloseTo(3, 10);
    expect(fit?.unscaled[0]?.[0]).toBeCloseTo(0.5, 8);
  });

  it('walks around places where the law has no number', () => {
    const fit = nonlinearFit({
      residuals: ([a = 0]) => (a <= 0 ? null : [Math.log(5) - Math.log(a), Math.log(5) - Math.log(a)]),
      start: [100],
    });
    expect(fit?.parameters[0]).toBeCloseTo(5, 8);
  });

  it('has no answer where the law has no number at the start, or where nothing depends on a parameter', () => {
    expect(nonlinearFit({ residuals: () => null, start: [1] })).toBeNull();
    expect(nonlinearFit({ residuals: ([a = 0]) => [1 - a, 2 - a], start: [1, 1] })).toBeNull();
  });
});
