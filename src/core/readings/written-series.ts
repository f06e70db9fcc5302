import type { ReadingUnit } from './reading-units.ts';
import { withoutHedge } from './reading-wording.ts';
import { amountWritten } from './written-amount.ts';

/** Several readings in one cell, or one from - to, before it is asked whether their unit fits. */
export interface WrittenSeries {
  readonly numbers: readonly number[];
  /** The units that are written; none where all numbers are bare. */
  readonly units: readonly ReadingUnit[];
  /** Pieces that are no number, as written. */
  readonly unread: readonly string[];
  readonly hedged: boolean;
}

/** What may stand between two readings, the surest first; a plain comma is as likely a decimal one. */
const MARKS: readonly RegExp[] = [
  / ?; ?/,
  / ?\/ ?/,
  /, /,
  / (?:and|y|und|et|then|luego|&) /i,
  / /,
  /,/,
  / ?- ?/,
];
const SURE = 0;
const SPACE = 4;
const DASH = 6;

/**
 * Readings one after the other: "2.2 2.3 2.2", "2,2/2,3", "225; 230".
 *
 * @example seriesWritten('2,2/2,3 N')?.numbers // => [2.2, 2.3]
 * @example seriesWritten('2,2,2,3') // => null
 */
export function seriesWritten(text: string): WrittenSeries | null {
  for (const [n, mark] of MARKS.entries()) {
    const joined = n === SPACE ? text.replace(/ (?=\p{L})/gu, '') : text;
    const pieces = joined.split(mark);
    if (pieces.length < (n === DASH ? 3 : 2)) continue;
    const found = seriesOf(pieces, n === SURE);
    if (found !== null && (n === SURE || isSeries(found.numbers, pieces))) return found;
  }
  return null;
}

/** Readings of one setup are alike; "2, 4" may be a decimal comma, and "14 1/2" is one number. */
function isSeries(numbers: readonly number[], pieces: readonly string[]): boolean {
  const isFine = pieces.every((piece) => /\d[.,]\d/.test(piece) || /\d\d/.test(piece));
  const least = Math.min(...numbers);
  return (
    isFine && least > 0 && Math.max(...numbers) <= 3 * least && !pieces.some((each) => each.includes('/'))
  );
}

/** All pieces as numbers; where the mark is sure, a piece may be blank, in doubt or unread. */
function seriesOf(pieces: readonly string[], isSure: boolean): WrittenSeries | null {
  const numbers: number[] = [];
  const units: ReadingUnit[] = [];
  const unread: string[] = [];
  let hedged = false;
  for (const piece of pieces) {
    if (isSure && /^[-–—]*$/.test(piece)) continue;
    const bare = isSure ? withoutHedge(piece) : { text: piece, hedged: false };
    const found = amountWritten(bare.text);
    const number = found?.kind === 'amount' ? found.numbers[0] : undefined;
    if (found?.kind === 'amount' && number !== undefined) {
      numbers.push(number);
      hedged ||= bare.hedged;
      if (found.unit !== null && !units.includes(found.unit)) units.push(found.unit);
    } else if (isSure) unread.push(piece);
    else return null;
  }
  // Where most is unread, the rest does not speak for it.
  return numbers.length <= unread.length ? null : { numbers, units, unread, hedged };
}

/**
 * The middle one: a slip in one of three does not touch it.
 *
 * @example middleOf([2.2, 9, 2.4]) // => 2.4
 */
export function middleOf(numbers: readonly number[]): number {
  const sorted = [...numbers].sort((a, b) => a - b);
  const upper = sorted[Math.floor(sorted.length / 2)] ?? 0;
  const lower = sorted[Math.ceil(sorted.length / 2) - 1] ?? upper;
  return lower === upper ? upper : lower + (upper - lower) / 2;
}

/** A middle and half a width. */
export interface WrittenRange {
  readonly middle: number;
  readonly halfWidth: number;
  readonly units: readonly ReadingUnit[];
}

const FROM_TO = /^(?:(?:from|de|desde|von) )?(.+?)(?: ?(?:-|–|—|\.{2,}|…) ?| (?:to|a|bis|à|hasta) )(.+)$/i;
const BETWEEN = /^(?:between|entre|zwischen) (.+) (?:and|y|und|et) (.+)$/i;
const PLUS_MINUS = /^(.+?) ?(?:±|\+\/?-|\+ -) ?(.+)$/;

/**
 * "2.2-2.4", "entre 2,2 y 2,4", "2.3 ± 0.1".
 *
 * @example rangeWritten('2.25 to 2.75 N')?.middle // => 2.5
 */
export function rangeWritten(text: string): WrittenRange | null {
  const about = PLUS_MINUS.exec(text);
  const found = about ?? BETWEEN.exec(text) ?? FROM_TO.exec(text);
  if (found === null) return null;
  const [one, two] = [amountWritten(found[1] ?? ''), amountWritten(found[2] ?? '')];
  if (one?.kind !== 'amount' || two?.kind !== 'amount') return null;
  const [a = 0, b = 0] = [one.numbers[0], two.numbers[0]];
  const units = [...new Set([one.unit, two.unit].flatMap((unit) => (unit === null ? [] : [unit])))];
  if (about !== null) return b < 0 ? null : { middle: a, halfWidth: b, units };
  // From one side of zero to the other is no reading that anybody takes.
  if (a * b < 0) return null;
  return { middle: a + (b - a) / 2, halfWidth: Math.abs(b - a) / 2, units };
}
