import { type Measured, plus, times } from '../../src/core/uncertainty/measured.ts';

/**
 * Values that vary together, expressed as the house does it: each as a sum of independent unknowns
 * that they share (the lower triangle of Cholesky's factor of the correlations).
 */
export function correlated(
  values: readonly number[],
  us: readonly number[],
  correlations: readonly (readonly number[])[],
): readonly Measured[] {
  const unknowns = values.map(
    (_, n): Measured => ({
      value: 0,
      parts: [{ unknown: { id: `shared ${n + 1}`, u: 1, shape: 'normal', origin: 'stated' }, slope: 1 }],
    }),
  );
  const factor = triangleOf(correlations);
  return values.map((value, row) =>
    plus(
      { value, parts: [] },
      ...unknowns.map((each, column) => times(each, (us[row] ?? 0) * (factor[row]?.[column] ?? 0))),
    ),
  );
}

/** Means of columns that were read together, with the doubt of the means (JCGM 100, 4.2.3 and 5.2.3). */
export function meanWithDoubt(columns: readonly (readonly number[])[]): readonly Measured[] {
  const n = columns[0]?.length ?? 0;
  const means = columns.map((column) => column.reduce((sum, each) => sum + each, 0) / n);
  const scatter = (a: number, b: number): number =>
    (columns[a] ?? []).reduce(
      (sum, each, k) => sum + (each - (means[a] ?? 0)) * ((columns[b]?.[k] ?? 0) - (means[b] ?? 0)),
      0,
    ) /
    (n * (n - 1));
  const us = columns.map((_, a) => Math.sqrt(scatter(a, a)));
  const correlations = columns.map((_, a) =>
    columns.slice(0, a + 1).map((__, b) => scatter(a, b) / ((us[a] ?? 1) * (us[b] ?? 1))),
  );
  return correlated(means, us, correlations);
}

/** Lower triangle L with L Lᵀ = C, from the lower triangle of C. */
function triangleOf(correlations: readonly (readonly number[])[]): readonly (readonly number[])[] {
  const L: number[][] = [];
  correlations.forEach((row, i) => {
    const found: number[] = [];
    for (let j = 0; j <= i; j += 1) {
      let rest = row[j] ?? 0;
      for (let k = 0; k < j; k += 1) rest -= (found[k] ?? 0) * ((i === j ? found : L[j])?.[k] ?? 0);
      found.push(i === j ? Math.sqrt(Math.max(0, rest)) : rest / (L[j]?.[j] ?? 1));
    }
    L.push(found);
  });
  return L;
}
