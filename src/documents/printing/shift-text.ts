import type { Graduations } from '../../core/instruments/graduations.ts';
import { decimalText } from '../../core/quantities/print-quantity.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { otherDecimals } from './reading-text.ts';

/**
 * How many decimals a scale's own weight and shift have on paper: a fifth of a mark or finer, in the
 * scale's own unit or in another. Tag, chart, key and guide print the same digits.
 *
 * @example shiftDecimals({ step: 0.1, unit: 'N', unitSi: 1 }) // => 2
 */
export const shiftDecimals = (marks: Graduations, unit: Graduations = marks): number =>
  Math.max(0, otherDecimals({ ...marks, step: marks.step / 5 }, unit));

/**
 * A shift of a scale as it is printed, without sign and unit.
 *
 * @example shiftText('en', 0.216, { step: 0.1, unit: 'N', unitSi: 1 }) // => '0.22'
 */
export const shiftText = (
  language: Language,
  shift: number,
  marks: Graduations,
  unit: Graduations = marks,
): string =>
  decimalText(Math.abs(shift) / unit.unitSi, shiftDecimals(marks, unit), languagePack(language).decimal);
