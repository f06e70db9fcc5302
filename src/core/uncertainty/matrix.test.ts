import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  cholesky,
  element,
  identity,
  inverseOfPositive,
  type Matrix,
  multiply,
  solve,
  times,
  transpose,
} from './matrix.ts';

const entry = fc.double({ min: -3, max: 3, noNaN: true });
const square = (size: number) =>
  fc.array(fc.array(entry, { minLength: size, maxLength: size }), { minLength: size, maxLength: size });
/** M Mᵀ + 1/2: positive definite, and far enough from not being so. */
const positive = square(4).map(
  (m): Matrix => multiply(m, transpose(m)).map((row, i) => row.map((each, j) => each + (i === j ? 0.5 : 0))),
);

const worst = (a: Matrix, b: Matrix): number =>
  Math.max(...a.flatMap((row, i) => row.map((each, j) => Math.abs(each - element(b, i, j)))));

describe('a positive matrix', () => {
  it('is its triangle times the triangle turned over', () => {
    fc.assert(
      fc.property(positive, (m) => {
        const L = cholesky(m);
        if (L === null) throw new Error('has no triangle');
        expect(worst(multiply(L, transpose(L)), m)).toBeLessThan(1e-12 * 40);
      }),
      { seed: 201 },
    );
  });

  it('times its inverse is one, and the inverse is symmetric to the last bit', () => {
    fc.assert(
      fc.property(positive, (m) => {
        const inverse = inverseOfPositive(m);
        if (inverse === null) throw new Error('has no inverse');
        expect(worst(multiply(m, inverse), identity(4))).toBeLessThan(1e-10);
        expect(transpose(inverse)).toEqual(inverse);
      }),
      { seed: 202 },
    );
  });

  it('that is none has no triangle: correlations that contradict each other, or one unknown twice', () => {
    expect(
      cholesky([
        [1, 0.9, -0.9],
        [0.9, 1, 0.9],
        [-0.9, 0.9, 1],
      ]),
    ).toBeNull();
    expect(
      inverseOfPositive([
        [2, 2],
        [2, 2],
      ]),
    ).toBeNull();
    expect(cholesky([[Number.NaN]])).toBeNull();
  });
});

describe('equations', () => {
  it('are solved so that they hold again when the answer is put in', () => {
    fc.assert(
      fc.property(positive, fc.array(entry, { minLength: 4, maxLength: 4 }), (m, b) => {
        const x = solve(m, b);
        if (x === null) throw new Error('has no answer');
        expect(worst([times(m, x)], [b])).toBeLessThan(1e-10);
      }),
      { seed: 203 },
    );
  });

  it('with a 0 in the corner are solved too, and those of one and the same row are not', () => {
    expect(
      solve(
        [
          [0, 1],
          [1, 0],
        ],
        [2, 3],
      ),
    ).toEqual([3, 2]);
    expect(
      solve(
        [
          [1, 2],
          [2, 4],
        ],
        [1, 2],
      ),
    ).toBeNull();
  });
});
