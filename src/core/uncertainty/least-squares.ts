import { type Matrix, multiply, transpose } from './matrix.ts';
import { exactSum } from './repeats.ts';

/** A fit: its parameters, how well they are known, and what is left over. */
export interface Fit {
  readonly parameters: readonly number[];
  /** (XᵀWX)⁻¹: the covariance where the weights are 1/u² of the readings. */
  readonly unscaled: Matrix;
  /** The same times the variance that is left over: the covariance where only the scatter tells u. */
  readonly covariance: Matrix;
  readonly residuals: readonly number[];
  /** Weighted sum of their squares. */
  readonly sumOfSquares: number;
  /** Readings less parameters. */
  readonly freedom: number;
  /** Standard deviation of a reading about the fit; 0 where no reading is left over to tell. */
  readonly deviation: number;
}

/**
 * Least squares (JCGM 100:2008, H.3) by Householder's reflections on columns of one size, so that nothing is
 * squared before it has to be. `rows` are the factors of the parameters, one row a reading; `weights` are
 * 1/u² of the readings, all alike if none are given. `null` where the readings can't tell the parameters
 * apart, or are fewer.
 *
 * @example leastSquares([[1, 0], [1, 1], [1, 2]], [1, 3, 5]).parameters // => [1, 2]
 * @example leastSquares([[1, 2], [1, 2]], [1, 3]) // => null
 */
export function leastSquares(rows: Matrix, y: readonly number[], weights?: readonly number[]): Fit | null {
  const roots = y.map((_, n) => Math.sqrt(weights?.[n] ?? 1));
  const weighted = rows.map((row, n) => row.map((each) => each * (roots[n] ?? 1)));
  const upper = triangleOf(weighted);
  if (upper === null) return null;
  let parameters = upper.solve(y.map((each, n) => each * (roots[n] ?? 1)));
  const residualsOf = (): readonly number[] =>
    y.map((each, n) =>
      exactSum([each, ...(rows[n] ?? []).map((factor, k) => -factor * (parameters[k] ?? 0))]),
    );
  // Once more on what is left over: it brings back the digits that the first pass rounded away.
  const correction = upper.solve(residualsOf().map((each, n) => each * (roots[n] ?? 1)));
  parameters = parameters.map((each, k) => each + (correction[k] ?? 0));
  const residuals = residualsOf();
  const sumOfSquares = exactSum(residuals.map((each, n) => (each * (roots[n] ?? 1)) ** 2));
  const freedom = y.length - parameters.length;
  const variance = freedom > 0 ? sumOfSquares / freedom : 0;
  const unscaled = upper.unscaled();
  return {
    parameters,
    unscaled,
    covariance: unscaled.map((row) => row.map((each) => each * variance)),
    residuals,
    sumOfSquares,
    freedom,
    deviation: Math.sqrt(variance),
  };
}

/** Less than this share of a column left after the others are taken out is rounding, not information. */
const ROUNDING = 1e-14;

interface Triangle {
  readonly solve: (y: readonly number[]) => readonly number[];
  readonly unscaled: () => Matrix;
}

/** The reflections that make the rows a triangle, ready to be used on one reading after the other. */
function triangleOf(rows: Matrix): Triangle | null {
  const columns = rows[0]?.length ?? 0;
  if (rows.length < columns || columns === 0) return null;
  const sizes = Array.from({ length: columns }, (_, k) => Math.hypot(...rows.map((row) => row[k] ?? 0)));
  if (sizes.some((size) => !(size > 0 && Number.isFinite(size)))) return null;
  const a = rows.map((row) => row.map((each, k) => each / (sizes[k] ?? 1)));
  const at = (row: number, column: number): number => a[row]?.[column] ?? 0;
  const mirrors: number[][] = [];
  const diagonal: number[] = [];
  for (let k = 0; k < columns; k += 1) {
    const below = a.slice(k).map((row) => row[k] ?? 0);
    const size = Math.hypot(...below);
    if (!(size > ROUNDING)) return null;
    const first = below[0] ?? 0;
    const end = first > 0 ? -size : size;
    const mirror = [first - end, ...below.slice(1)];
    mirrors.push(mirror);
    diagonal.push(end);
    for (let column = k + 1; column < columns; column += 1) {
      const share = reflection(
        mirror,
        a.slice(k).map((row) => row[column] ?? 0),
      );
      for (let n = k; n < a.length; n += 1) {
        const row = a[n];
        if (row !== undefined) row[column] = at(n, column) - share * (mirror[n - k] ?? 0);
      }
    }
  }
  const back = (b: readonly number[]): readonly number[] => {
    const x = new Array<number>(columns).fill(0);
    for (let k = columns - 1; k >= 0; k -= 1) {
      let rest = b[k] ?? 0;
      for (let n = k + 1; n < columns; n += 1) rest -= at(k, n) * (x[n] ?? 0);
      x[k] = rest / (diagonal[k] ?? 1);
    }
    return x.map((each, k) => each / (sizes[k] ?? 1));
  };
  return {
    solve: (y) => {
      const b = [...y];
      for (const [k, mirror] of mirrors.entries()) {
        const share = reflection(mirror, b.slice(k));
        for (let n = k; n < b.length; n += 1) b[n] = (b[n] ?? 0) - share * (mirror[n - k] ?? 0);
      }
      return back(b);
    },
    unscaled: () => {
      // Columns of R⁻¹; (XᵀX)⁻¹ = R⁻¹R⁻ᵀ.
      const inverse = transpose(sizes.map((_, k) => back(sizes.map((__, n) => (n === k ? 1 : 0)))));
      return multiply(inverse, transpose(inverse));
    },
  };
}

/** How much of the mirror a vector loses when it is reflected. */
function reflection(mirror: readonly number[], vector: readonly number[]): number {
  let [together, own] = [0, 0];
  for (const [n, each] of mirror.entries()) {
    together += each * (vector[n] ?? 0);
    own += each * each;
  }
  return (2 * together) / own;
}
