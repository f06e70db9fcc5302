import type { Graduations } from '../../core/instruments/graduations.ts';
import { nearestGraduation } from '../../core/instruments/graduations.ts';
import { type DecimalMark, decimalsFor, decimalText } from '../../core/quantities/print-quantity.ts';

/** Newtons beside grams: the marks a pull is printed in where the scale itself has the other ones. */
export const newtonMarks: Graduations = { step: 0.01, unit: 'N', unitSi: 1 };
export const gramMarks: Graduations = { step: 0.00980665, unit: 'gf', unitSi: 0.00980665 };

/**
 * A unit as it stands on the instrument: gram-force is marked "g" on every classroom scale.
 *
 * @example unitLabel('gf') // => 'g'
 */
export function unitLabel(unit: string): string {
  const onTheScale: Readonly<Record<string, string>> = { gf: 'g', kgf: 'kg', ozf: 'oz', lbf: 'lb' };
  return onTheScale[unit] ?? unit;
}

/**
 * Decimals that one graduation needs: 0.1 N needs one, 0.25 turns need two, 5 g need none.
 *
 * @example stepDecimals({ step: 0.05, unit: 'N', unitSi: 1 }) // => 2
 */
export function stepDecimals(marks: Graduations): number {
  const step = marks.step / marks.unitSi;
  for (let decimals = 0; decimals < 6; decimals += 1)
    if (Math.abs(step * 10 ** decimals - Math.round(step * 10 ** decimals)) < 1e-6 * 10 ** decimals * step)
      return decimals;
  return 6;
}

/**
 * A mark of the instrument as a number in its own unit: for the ends of a range.
 *
 * @example markText({ step: 0.05, unit: 'N', unitSi: 1 }, 1.5) // => '1.50'
 */
export const markText = (marks: Graduations, si: number, decimal: DecimalMark = 'point'): string =>
  decimalText(si / marks.unitSi, stepDecimals(marks), decimal);

/**
 * A value as a reading on the instrument: to its graduation, or coarser where its uncertainty allows
 * no more. Without the unit.
 *
 * @example readingText({ step: 0.05, unit: 'N', unitSi: 1 }, 1.6432, 0.03) // => '1.65'
 * @example readingText({ step: 0.05, unit: 'N', unitSi: 1 }, 1.6432, 0.3) // => '1.6'
 */
export function readingText(
  marks: Graduations,
  si: number,
  u: number,
  decimal: DecimalMark = 'point',
): string {
  const allowed = decimalsFor(u / marks.unitSi);
  return 10 ** -allowed > (marks.step / marks.unitSi) * 1.001
    ? decimalText(si / marks.unitSi, allowed, decimal)
    : markText(marks, nearestGraduation(marks, si), decimal);
}

/**
 * The decimals in which a value is printed in a unit that the instrument doesn't have: as fine as
 * the step of the instrument is in that unit, and no finer.
 *
 * @example otherDecimals({ step: 0.05, unit: 'N', unitSi: 1 }, gramMarks) // => 0
 */
export function otherDecimals(marks: Graduations, other: Graduations): number {
  const step = marks.step / other.unitSi;
  return Math.max(-Math.floor(Math.log10(step) + 1e-9), -3);
}
