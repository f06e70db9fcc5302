import { inUnit } from './unit.ts';

/** Which sign stands before the decimals. */
export type DecimalMark = 'point' | 'comma';

/**
 * A number as plain decimal text, rounded to some decimals (negative: to tens, hundreds), half away
 * from zero. What is rounded is the number's decimal form to 15 significant digits, not its binary
 * form: 2.675 prints as 2.68, although the nearest binary number lies a hair below 2.675, and
 * 14.2 × 1.1 = 15.620000000000001 doesn't tip over either. A zero never has a sign.
 * NaN and infinity are no numbers to print: a RangeError, since a value that can't be said must
 * have been caught before.
 *
 * @example decimalText(2.675, 2) // => '2.68'
 * @example decimalText(-0.04, 1) // => '0.0'
 * @example decimalText(1250, -2) // => '1300'
 */
export function decimalText(value: number, decimals: number, mark: DecimalMark = 'point'): string {
  if (!Number.isFinite(value)) throw new RangeError(`no number to print: ${value}`);
  const [mantissa = '0', power = '0'] = Math.abs(value).toExponential(14).split('e');
  const digits = mantissa.replace('.', '');
  const kept = Number(power) + 1 + decimals;
  const whole = kept < 0 ? 0n : BigInt(`0${digits.slice(0, kept).padEnd(kept, '0')}`);
  const rounded = kept >= 0 && (digits[kept] ?? '0') >= '5' ? whole + 1n : whole;
  const sign = value < 0 && rounded !== 0n ? '-' : '';
  if (decimals <= 0) return rounded === 0n ? '0' : `${sign}${rounded}${'0'.repeat(-decimals)}`;
  const text = rounded.toString().padStart(decimals + 1, '0');
  const point = text.length - decimals;
  return `${sign}${text.slice(0, point)}${mark === 'point' ? '.' : ','}${text.slice(point)}`;
}

/**
 * An SI number with its unit as it is read aloud; a ratio takes no unit or `%`. The degree sign stands close.
 *
 * @example printQuantity(0.142, 'cm', 1) // => '14.2 cm'
 * @example printQuantity(1.5, 'N', 1, 'comma') // => '1,5 N'
 */
export function printQuantity(
  si: number,
  unit: string,
  decimals: number,
  mark: DecimalMark = 'point',
): string {
  const text = decimalText(inUnit(si, unit), decimals, mark);
  if (unit === '') return text;
  return unit === '°' ? `${text}°` : `${text} ${unit}`;
}

/**
 * A number with so many significant digits, without an exponent from a hundred-millionth to a
 * thousand million million; beyond that with one.
 *
 * @example significant(9.80665, 3) // => '9.81'
 * @example significant(9.996, 3) // => '10.0'
 * @example significant(123456, 3) // => '123000'
 */
export function significant(value: number, digits: number, mark: DecimalMark = 'point'): string {
  if (value === 0) return '0';
  const power = powerOfTen(value);
  if (power < -8 || power >= 15) {
    const [mantissa = '', exponent = ''] = value.toExponential(digits - 1).split('e');
    return `${mark === 'point' ? mantissa : mantissa.replace('.', ',')}e${exponent.replace('+', '')}`;
  }
  const decimals = digits - 1 - power;
  const text = decimalText(value, decimals, mark);
  // 9.996 to three digits carries into a new place: one decimal less.
  const carried = Number(text.replace(',', '.'));
  return powerOfTen(carried) > power ? decimalText(value, decimals - 1, mark) : text;
}

/**
 * How many decimals a number may be printed with when its standard uncertainty, in the same unit,
 * is `u`: down to the first significant digit of u, or the second when that first digit is a 1.
 * Negative means tens and hundreds. An exact number gets `most`.
 *
 * Source: JCGM 100:2008, 7.2.6 (at most two significant digits of u, the estimate rounded to agree);
 * one digit except after a 1 is common practice, no source.
 *
 * @example decimalsFor(0.034) // => 2
 * @example decimalsFor(0.012) // => 3
 */
export function decimalsFor(u: number, most = 6): number {
  if (!(u > 0) || !Number.isFinite(u)) return most;
  const power = powerOfTen(Number(significant(u, 2)));
  const startsWithOne = significant(u, 2)
    .replace(/^[0.]+/, '')
    .startsWith('1');
  return Math.min(most, (startsWithOne ? 1 : 0) - power);
}

/** Power of ten of the first digit, by the same 15 digits that are printed. */
const powerOfTen = (value: number): number => Number(Math.abs(value).toExponential(14).split('e')[1] ?? '0');
