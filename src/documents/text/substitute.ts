import { significant } from '../../core/quantities/print-quantity.ts';
import { trimmed } from '../printing/quantity-text.ts';

/** Figures that a line of working is printed with, so that anyone can recompute it. */
export const FIGURES = 6;

/** Words of the formula grammar that are no names of values. */
const WORDS = new Set([
  'pi',
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan',
  'sqrt',
  'exp',
  'ln',
  'abs',
  'min',
  'max',
  'hypot',
  'floor',
  'ceil',
]);

/**
 * A number with six significant figures and no zeros that say nothing.
 *
 * @example sixFigures(1.9613300001) // => '1.96133'
 */
export const sixFigures = (value: number): string => trimmed(significant(value, FIGURES));

/**
 * A formula with its numbers put in, at six significant figures; a negative number stands in
 * brackets. What is printed is arithmetic again and can be worked out by anybody. A name without a
 * value throws: the line would not show where it comes from.
 *
 * @example substitute('(W*a + k)/c', { W: 1.96133, a: 0.2, k: -0.0015, c: 0.3 }) // => '(1.96133*0.2 + (-0.0015))/0.3'
 */
export function substitute(formula: string, values: Readonly<Record<string, number>>): string {
  return formula.replace(/\d+(?:\.\d+)?(?:e[+-]?\d+)?|[\p{L}_][\p{L}\p{N}_']*/giu, (token) => {
    if (/^\d/.test(token)) return token;
    const value = Object.hasOwn(values, token) ? values[token] : undefined;
    if (value !== undefined) return value < 0 ? `(${sixFigures(value)})` : sixFigures(value);
    if (WORDS.has(token)) return token;
    throw new RangeError(`no value for "${token}" in the formula ${formula}`);
  });
}
