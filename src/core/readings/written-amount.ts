import { type ReadingUnit, unitWritten } from './reading-units.ts';
import { numbersWritten } from './written-number.ts';

/** A number with or without its unit, as it may be meant; or the word that is no unit. */
export type WrittenAmount =
  | { readonly kind: 'amount'; readonly numbers: readonly number[]; readonly unit: ReadingUnit | null }
  | { readonly kind: 'unknown unit'; readonly word: string };

/** What a number can be made of; digits of a fraction or a thousand may stand behind a space. */
const NUMBER = String.raw`[-+]?(?:\d[\d.,]*(?:[eE][-+]?\d+)?|[.,]\d+)(?:[ -]\d+ ?\/ ?\d+| ?\/ ?\d+|(?: \d{3})+(?:[.,]\d+)?)?`;
const AMOUNT = new RegExp(`^(${NUMBER})\\s*((?:[^\\d\\s]|\\s(?!\\d))*)$`);
const UNIT_FIRST = new RegExp(`^([^\\d\\s.,+-]+)\\s*(${NUMBER})$`);
const TWO_PARTS = /^(\d+)\s*([^\d\s]+)\s+(\d[\d.,]*)\s*([^\d\s]+)$/;
/** Larger unit, smaller unit, how many of it make the larger one. */
const PAIRS = [
  ['pounds', 'ounces', 16],
  ['kilograms', 'grams', 1000],
  ['metres', 'centimetres', 100],
] as const;

/**
 * @example amountWritten('2,4 kilos')?.kind // => 'amount'
 */
export function amountWritten(text: string): WrittenAmount | null {
  const found = AMOUNT.exec(text);
  if (found !== null) {
    const [, number = '', word = ''] = found;
    const numbers = numbersWritten(number);
    if (numbers.length === 0) return null;
    if (word === '') return { kind: 'amount', numbers, unit: null };
    const unit = unitWritten(word);
    return unit === null ? { kind: 'unknown unit', word } : { kind: 'amount', numbers, unit };
  }
  return unitFirst(text) ?? twoParts(text);
}

/** "N 2.4", as on a form that has the unit printed. */
function unitFirst(text: string): WrittenAmount | null {
  const [, word = '', number = ''] = UNIT_FIRST.exec(text) ?? [];
  const unit = unitWritten(word);
  const numbers = numbersWritten(number);
  return unit === null || numbers.length === 0 ? null : { kind: 'amount', numbers, unit };
}

/** "2 lb 3 oz" in pounds. */
function twoParts(text: string): WrittenAmount | null {
  const [, large = '', first = '', small = '', second = ''] = TWO_PARTS.exec(text) ?? [];
  const unit = unitWritten(first);
  const pair = PAIRS.find(([one, other]) => unit?.name === one && unitWritten(second)?.name === other);
  const [rest] = numbersWritten(small);
  if (unit === null || pair === undefined || rest === undefined) return null;
  const number = Number(large) + rest / pair[2];
  return Number.isFinite(number) ? { kind: 'amount', numbers: [number], unit } : null;
}
