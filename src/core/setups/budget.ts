import { type Measured, standardUncertainty } from '../uncertainty/measured.ts';
import type { BudgetRow, GoodRange, Narrowing } from './prediction.ts';

/** Uncertainty budget of a reading, largest share first (JCGM 100, 5.1.2 and table 1). */
export function budgetOf(read: Measured): readonly BudgetRow[] {
  const variance = standardUncertainty(read) ** 2;
  return read.parts
    .map(({ unknown, slope }): BudgetRow => {
      const contribution = Math.abs(slope) * unknown.u;
      return {
        unknown: unknown.id,
        origin: unknown.origin,
        ...(unknown.source === undefined ? {} : { source: unknown.source }),
        sensitivity: slope,
        u: unknown.u,
        contribution,
        share: variance === 0 ? 0 : contribution ** 2 / variance,
      };
    })
    .sort((a, b) => b.contribution - a.contribution || (a.unknown < b.unknown ? -1 : 1));
}

/** Less than this share of the doubt is not worth a measurement. */
const WORTH_MEASURING = 0.1;

/**
 * The one thing that could be measured and would narrow the range most. What belongs to the reading
 * itself (hand scatter, graduation, tube friction of this reading) can't be measured away.
 */
export function narrowingOf(
  budget: readonly BudgetRow[],
  before: GoodRange,
  rangeWithout: (unknown: string) => GoodRange,
): Narrowing | null {
  const largest = budget.find((row) => !isOfTheReading(row.unknown) && row.share >= WORTH_MEASURING);
  if (largest === undefined) return null;
  return { unknown: largest.unknown, before, after: rangeWithout(largest.unknown) };
}

/** Hand scatter, graduation and the like belong to one reading and not to the apparatus. */
const isOfTheReading = (unknown: string): boolean => unknown.startsWith('reading/');

/** A value as if one of its unknowns were known. */
export const without = (value: Measured, unknown: string): Measured => ({
  value: value.value,
  parts: value.parts.filter((part) => part.unknown.id !== unknown),
});

/** Assumptions behind a value: shown as *assumed*. */
export const assumedIn = (
  values: readonly (Measured | null)[],
): readonly { readonly unknown: string; readonly source: string }[] => {
  const found = new Map<string, string>();
  for (const value of values)
    for (const { unknown } of value?.parts ?? [])
      if (unknown.origin === 'assumed' && !isOfTheReading(unknown.id))
        found.set(unknown.id, unknown.source ?? '');
  return [...found].map(([unknown, source]) => ({ unknown, source }));
};
