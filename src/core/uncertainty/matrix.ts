/** Rows of numbers. */
export type Matrix = readonly (readonly number[])[];

/** The element of a row and a column; what a matrix does not have counts as 0. */
export const element = (m: Matrix, row: number, column: number): number => m[row]?.[column] ?? 0;

/** 1 on the diagonal. */
export const identity = (size: number): Matrix =>
  Array.from({ length: size }, (_, row) => Array.from({ length: size }, (__, column) => +(row === column)));

/** @example transpose([[1, 2], [3, 4]]) // => [[1, 3], [2, 4]] */
export const transpose = (m: Matrix): Matrix =>
  (m[0] ?? []).map((_, column) => m.map((row) => row[column] ?? 0));

/** @example multiply([[1, 2], [3, 4]], [[1], [1]]) // => [[3], [7]] */
export function multiply(a: Matrix, b: Matrix): Matrix {
  const columns = transpose(b);
  return a.map((row) =>
    columns.map((column) => row.reduce((sum, each, n) => sum + each * (column[n] ?? 0), 0)),
  );
}

/** @example times([[1, 2], [3, 4]], [1, 1]) // => [3, 7] */
export const times = (m: Matrix, vector: readonly number[]): readonly number[] =>
  m.map((row) => row.reduce((sum, each, n) => sum + each * (vector[n] ?? 0), 0));

/** A pivot smaller than this share of its own diagonal is rounding, not information. */
const ROUNDING = 1e-13;

/**
 * The lower triangle L with L Lᵀ = m, or `null` where m is not positive definite: a covariance in which
 * some unknowns are wholly fixed by others, or that is none.
 *
 * @example cholesky([[4, 2], [2, 5]]) // => [[2, 0], [1, 2]]
 * @example cholesky([[1, 2], [2, 1]]) // => null
 */
export function cholesky(m: Matrix): Matrix | null {
  const L: number[][] = m.map(() => m.map(() => 0));
  for (const [i, row] of L.entries()) {
    for (let j = 0; j <= i; j += 1) {
      let rest = element(m, i, j);
      for (let k = 0; k < j; k += 1) rest -= element(L, i, k) * element(L, j, k);
      if (i === j) {
        if (!(rest > ROUNDING * Math.abs(element(m, i, i)))) return null;
        row[j] = Math.sqrt(rest);
      } else row[j] = rest / element(L, j, j);
    }
  }
  return L;
}

/**
 * x with m x = b, or `null` where m has no inverse (Gauss with the largest pivot of each row's own size).
 *
 * @example solve([[2, 1], [1, 3]], [3, 4]) // => [1, 1]
 */
export function solve(m: Matrix, b: readonly number[]): readonly number[] | null {
  const size = m.length;
  const rows = m.map((row, n) => [...row, b[n] ?? 0]);
  const sizes = m.map((row) => Math.max(...row.map(Math.abs)));
  for (let column = 0; column < size; column += 1) {
    let pivot = column;
    for (let n = column + 1; n < size; n += 1)
      if (relative(rows, sizes, n, column) > relative(rows, sizes, pivot, column)) pivot = n;
    if (!(relative(rows, sizes, pivot, column) > ROUNDING)) return null;
    swap(rows, column, pivot);
    swap(sizes, column, pivot);
    for (let n = column + 1; n < size; n += 1) {
      const factor = element(rows, n, column) / element(rows, column, column);
      const row = rows[n] ?? [];
      for (let k = column; k <= size; k += 1) row[k] = (row[k] ?? 0) - factor * element(rows, column, k);
    }
  }
  const x = new Array<number>(size).fill(0);
  for (let n = size - 1; n >= 0; n -= 1) {
    let rest = element(rows, n, size);
    for (let k = n + 1; k < size; k += 1) rest -= element(rows, n, k) * (x[k] ?? 0);
    x[n] = rest / element(rows, n, n);
  }
  return x;
}

const relative = (rows: Matrix, sizes: readonly number[], row: number, column: number): number =>
  sizes[row] === 0 ? 0 : Math.abs(element(rows, row, column)) / (sizes[row] ?? 1);

function swap<T>(list: T[], a: number, b: number): void {
  const [first, second] = [list[a], list[b]];
  if (first === undefined || second === undefined) return;
  list[a] = second;
  list[b] = first;
}

/**
 * Inverse of a symmetric positive definite matrix, exactly symmetric again; `null` where it is none.
 *
 * @example inverseOfPositive([[2, 0], [0, 4]]) // => [[0.5, 0], [0, 0.25]]
 */
export function inverseOfPositive(m: Matrix): Matrix | null {
  const L = cholesky(m);
  if (L === null) return null;
  const inverse = inverseOfLower(L);
  return m.map((_, i) =>
    m.map((__, j) => {
      let sum = 0;
      for (let k = Math.max(i, j); k < m.length; k += 1)
        sum += element(inverse, k, i) * element(inverse, k, j);
      return sum;
    }),
  );
}

/** Inverse of a lower triangle, again one. */
function inverseOfLower(L: Matrix): Matrix {
  const found: number[][] = L.map(() => L.map(() => 0));
  for (const [i, row] of found.entries())
    for (let j = 0; j <= i; j += 1) {
      let rest = i === j ? 1 : 0;
      for (let k = j; k < i; k += 1) rest -= element(L, i, k) * element(found, k, j);
      row[j] = rest / element(L, i, i);
    }
  return found;
}
