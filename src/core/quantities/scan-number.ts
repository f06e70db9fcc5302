import type { DecimalMark } from './print-quantity.ts';
import type { ReadFault } from './read-fault.ts';

/** A number as it stands in a text, with the size of its last written digit. */
export interface ScannedNumber {
  readonly kind: 'number';
  readonly value: number;
  /** What one step of the last digit is: 0.1 of `14.2`, 1/4 of `2 1/4`. */
  readonly step: number;
  readonly isWhole: boolean;
  readonly from: number;
  readonly to: number;
}

const MIXED = /(\d+)(?:[ \t]+|-)(\d+)\/(\d+)/y;
const FRACTION = /(\d+)\/(\d+)/y;
const SIGN = /(\d*)[ \t]*([½¼¾⅛⅜⅝⅞])/y;
/** Fractions that have a sign of their own, in eighths. */
const EIGHTHS: Readonly<Record<string, readonly [above: number, below: number]>> = {
  '½': [1, 2],
  '¼': [1, 4],
  '¾': [3, 4],
  '⅛': [1, 8],
  '⅜': [3, 8],
  '⅝': [5, 8],
  '⅞': [7, 8],
};
const WITH_POINT = /\d+(?:\.\d+)?|\.\d+/y;
const WITH_COMMA = /\d+(?:,\d+)?|,\d+/y;
const OTHER_MARK_IS_COMMA = /\d*(?:,\d+)+/y;
const OTHER_MARK_IS_POINT = /\d*(?:\.\d+)+/y;
const EXPONENT = /[eE][+-]?\d/y;

/**
 * The unsigned number at a place of a text: `14.2`, `.5`, `1/4`, `2 1/4`, `2-1/4`, `2¼`, and `1,5` where the
 * decimal mark is a comma. Latin digits only; no exponent, no thousands mark.
 *
 * @example scanNumber('2 1/4 in', 0, 'point').value // => 2.25
 */
export function scanNumber(text: string, from: number, mark: DecimalMark): ScannedNumber | ReadFault {
  const parts = match(MIXED, text, from) ?? match(FRACTION, text, from);
  if (parts !== null) return fractionOf(parts, from);
  const sign = match(SIGN, text, from);
  if (sign !== null) return signOf(sign, from);

  const other = match(mark === 'point' ? OTHER_MARK_IS_COMMA : OTHER_MARK_IS_POINT, text, from);
  if (other !== null) return otherMark(other[0], from, mark);
  const plain = match(mark === 'point' ? WITH_POINT : WITH_COMMA, text, from);
  const to = from + (plain?.[0].length ?? 0);
  if (plain === null || match(EXPONENT, text, to) !== null) return notANumber(text, from);

  const [whole = '', decimals = ''] = plain[0].replace(',', '.').split('.');
  const value = Number(`${whole}.${decimals}0`);
  const step = Number(`1e-${decimals.length}`);
  return { kind: 'number', value, step, isWhole: decimals === '', from, to };
}

/** `not-a-number`, with the word that stands there instead. */
export function notANumber(text: string, from: number): ReadFault {
  const word = /\S+(?: \S+)*/y;
  const written = match(word, text, from)?.[0] ?? '';
  return {
    kind: 'read-fault',
    fault: 'not-a-number',
    facts: { written },
    span: [from, Math.max(from, from + written.length)],
  };
}

function fractionOf(parts: RegExpExecArray, from: number): ScannedNumber | ReadFault {
  const numbers = parts.slice(1).map(Number);
  const [whole, above, below] = numbers.length === 3 ? numbers : [0, ...numbers];
  if (whole === undefined || above === undefined || below === undefined || below === 0)
    return notANumber(parts.input, from);
  const to = from + parts[0].length;
  return { kind: 'number', value: whole + above / below, step: 1 / below, isWhole: false, from, to };
}

/** `1½` or `½`. */
function signOf([all, whole = '', sign = '']: RegExpExecArray, from: number): ScannedNumber {
  const [above, below] = EIGHTHS[sign] ?? [0, 1];
  const to = from + all.length;
  return { kind: 'number', value: Number(whole) + above / below, step: 1 / below, isWhole: false, from, to };
}

function otherMark(written: string, from: number, mark: DecimalMark): ReadFault {
  const [wrong, right] = mark === 'point' ? [',', '.'] : ['.', ','];
  const groups = written.split(wrong);
  const thousands = /^\d{1,3}$/.test(groups[0] ?? '') && groups.slice(1).every((group) => group.length === 3);
  return {
    kind: 'read-fault',
    fault: mark === 'point' ? 'decimal-comma' : 'decimal-point',
    facts: {
      written,
      ...(groups.length === 2 ? { instead: `${groups[0] || '0'}${right}${groups[1]}` } : {}),
      ...(thousands ? { thousands: groups.join('') } : {}),
    },
    span: [from, from + written.length],
  };
}

export function match(pattern: RegExp, text: string, from: number): RegExpExecArray | null {
  pattern.lastIndex = from;
  return pattern.exec(text);
}
