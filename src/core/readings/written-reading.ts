import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Dimension } from '../quantities/dimension.ts';
import { pullUnits, type ReadingUnit, travelUnits, turnUnits } from './reading-units.ts';
import {
  cleanText,
  spreadsheetWriting,
  withoutHedge,
  withoutMisspelling,
  withoutRemark,
} from './reading-wording.ts';
import { amountWritten } from './written-amount.ts';
import {
  middleOf,
  rangeWritten,
  seriesWritten,
  type WrittenRange,
  type WrittenSeries,
} from './written-series.ts';

export { pullUnits, type ReadingUnit, travelUnits, turnUnits };

/** A reading as a group wrote it down, with the place it stands at; nothing in it is ever changed. */
export interface WrittenReading {
  readonly group: string;
  readonly setup: string;
  /** As written; several cells of one reading stand one after the other, `; ` between them. */
  readonly written: string;
  readonly note: string;
  /** Line in the readings file; `null` where it was typed at the table. */
  readonly line: number | null;
  /** How easy it felt, where the file has a column for it: as written. */
  readonly ease?: string;
  /** What the group guessed before it pulled, where the file has a column for it: as written. */
  readonly guess?: string;
  /** What the group reckoned itself, where the file has columns for it: as written. */
  readonly computed?: ComputedColumns;
  /** The unit in the heading above it or in a cell of its own: what a bare number is in. */
  readonly unitAbove?: string;
  /** Cells of columns that mean nothing here, kept as they stand. */
  readonly others?: readonly { readonly heading: string; readonly text: string }[];
}

/** Figures that a group reckoned from its readings, as written. */
export interface ComputedColumns {
  readonly advantage?: string;
  readonly workIn?: string;
  readonly workOut?: string;
}

/**
 * What a written reading means. An unreadable one stays unreadable and never becomes 0; a blank is
 * "no reading", which is not 0 either; "less than 0.2" is a bound and no number.
 */
export type Meaning =
  | NumberMeaning
  | {
      readonly kind: 'bound';
      readonly side: 'below' | 'above';
      readonly number: number;
      readonly unit: ReadingUnit | null;
    }
  | { readonly kind: 'at the stop' }
  | { readonly kind: 'off the scale' }
  | { readonly kind: 'blank' }
  | { readonly kind: 'unreadable'; readonly why: string; readonly facts?: Facts };

export interface NumberMeaning {
  readonly kind: 'number';
  /** In `unit`; of a range its middle, of several readings the middle one. */
  readonly number: number;
  readonly unit: ReadingUnit | null;
  /** "about 2", "2?": the group was not sure, and that is kept. */
  readonly hedged?: true;
  /** Half the width of a range or what stands behind ±, in `unit`. */
  readonly halfWidth?: number;
  /** All of several readings, in the order they were written, in `unit`. */
  readonly repeats?: readonly number[];
  /** The other meaning of a text that has two, in `unit`. */
  readonly otherwise?: number;
  /** What had to be decided to read it, as sentence keys with facts. */
  readonly told?: readonly Told[];
}

/** Something that had to be decided, as a sentence key with facts. */
export interface Told {
  readonly key: string;
  readonly facts: Facts;
}

const BLANK =
  /^(?:[-–—]+|\.{2,}|…|n\/?a\.?|none|nothing|no reading|nada|ninguna|sin (?:lectura|datos?)|s\/d|k\. ?a\.)$/i;
const STOP_WORDS =
  /^(?:0 )?(?:stop|at (?:the|its) stop|on (?:its|the) stop|tope|en (?:su|el) tope|am anschlag|anschlag)$/i;
const OFF_WORDS =
  /^(?:off|off the scale|past the (?:end|last mark)|too (?:much|far)|fuera|fuera de la escala|demasiado)$/i;
/** Longer than any reading; what is in it is for a person to read. */
const LONGEST = 120;

/**
 * The meaning of a written reading: a number with or without a unit, a point or a comma.
 *
 * @example readWritten('2,4 N', ['force']).number // => 2.4
 * @example readWritten('14 1/2 oz', ['force']).number // => 14.5
 * @example readWritten('3,5 vueltas', ['ratio']).number // => 3.5
 * @example readWritten('about 2', ['force']).hedged // => true
 * @example readWritten('2.2 2.4 2.3', ['force']).number // => 2.3
 * @example readWritten('en el tope', ['force']).kind // => 'at the stop'
 */
export function readWritten(written: string, dimensions: readonly Dimension[]): Meaning {
  const [first, second] = meaningsWritten(written, dimensions);
  if (first === undefined) return unreadable('reading.not-a-number');
  return first.kind === 'number' && second !== undefined ? withOther(first, second) : first;
}

/** The first of two meanings, told with the other one beside it. */
export const withOther = (used: NumberMeaning, other: NumberMeaning): NumberMeaning => ({
  ...used,
  otherwise: other.number,
  told: [
    ...(used.told ?? []),
    { key: 'reading.two-meanings', facts: { used: String(used.number), otherwise: String(other.number) } },
  ],
});

type Meanings = readonly [Meaning] | readonly [NumberMeaning, NumberMeaning];

/** All that the text can mean, the likelier meaning first; two only where both are numbers. */
export function meaningsWritten(written: string, dimensions: readonly Dimension[]): Meanings {
  const text = cleanText(written);
  if (text === '' || BLANK.test(text)) return [{ kind: 'blank' }];
  if (text.length > LONGEST) return [unreadable('reading.not-a-number')];
  if (STOP_WORDS.test(text)) return [{ kind: 'at the stop' }];
  if (OFF_WORDS.test(text)) return [{ kind: 'off the scale' }];
  const bySpreadsheet = spreadsheetWriting(text);
  if (bySpreadsheet !== null) return [unreadable(bySpreadsheet)];
  const plain = meaningsOf(text, dimensions);
  if (plain[0].kind !== 'unreadable') return plain;
  const spelt = withoutMisspelling(text);
  if (spelt === text) return plain;
  const found = meaningsOf(spelt, dimensions);
  return found[0].kind === 'unreadable'
    ? plain
    : also(found, { key: 'reading.misspelt-digit', facts: { read: spelt } });
}

/** A reading with its remark and its doubt, if it has any. */
function meaningsOf(text: string, dimensions: readonly Dimension[]): Meanings {
  const { text: bare, remark } = withoutRemark(text);
  const { text: rest, hedged } = withoutHedge(bare);
  const found = boundWritten(rest, dimensions) ?? figuresWritten(rest, dimensions);
  const sure = remark === '' ? found : also(found, { key: 'reading.remark', facts: { remark } });
  return hedged
    ? (sure.map((each) => (each.kind === 'number' ? { ...each, hedged } : each)) as unknown as Meanings)
    : sure;
}

const BELOW = /^(?:<=?|≤|less than|under|below|menos de|menor que|weniger als|unter|moins de) ?(.+)$/i;
const ABOVE = /^(?:>=?|≥|more than|over|above|más de|mas de|mayor que|mehr als|über|plus de) ?(.+)$/i;

/** "<0.2", "more than 5", "5+": a bound, and no number. */
function boundWritten(text: string, dimensions: readonly Dimension[]): Meanings | null {
  const below = BELOW.exec(text)?.[1];
  const above = ABOVE.exec(text)?.[1] ?? /^(.*\d) ?\+$/.exec(text)?.[1];
  const limit = below ?? above;
  if (limit === undefined) return null;
  const [found] = figuresWritten(limit, dimensions);
  if (found.kind !== 'number') return [found];
  const side = below === undefined ? 'above' : 'below';
  return [{ kind: 'bound', side, number: found.number, unit: found.unit }];
}

/** One figure, one from - to, or several one after the other: whichever the whole text is. */
function figuresWritten(text: string, dimensions: readonly Dimension[]): Meanings {
  const one = amountWritten(text);
  if (one?.kind === 'amount') {
    const [first = 0, second] = one.numbers;
    const units = one.unit === null ? [] : [one.unit];
    const found = inUnit(units, dimensions, { number: first });
    if (found.kind !== 'number') return [found];
    if (second !== undefined) return [found, { ...found, number: second }];
    // "4/5" without a unit is four fifths, or 4 and 5.
    if (units.length === 0 && /^\d+ ?\/ ?\d+$/.test(text)) {
      const pair = text.split('/').map(Number);
      const isAlike = Math.max(...pair) <= 2 * Math.min(...pair) && !/[68]$/.test(text);
      return isAlike ? [found, { ...found, number: middleOf(pair), repeats: pair }] : [found];
    }
    // "225,230,228" is hardly 225 millions.
    const several = /^\d{3}(?:,\d{3}){2,}$/.test(text) ? seriesWritten(text) : null;
    const other = several === null ? null : meaningOfSeries(several, dimensions);
    return other?.kind === 'number' ? [other, found] : [found];
  }
  const range = rangeWritten(text);
  if (range !== null) return [meaningOfRange(range, dimensions)];
  const series = seriesWritten(text);
  if (series !== null) return [meaningOfSeries(series, dimensions)];
  if (one === null)
    return [
      unreadable(
        /^[\d.,;/ -]*\d[\d.,;/ -]*$/.test(text) ? 'reading.unclear-figures' : 'reading.not-a-number',
      ),
    ];
  return [
    one.word === '%' ? unreadable('reading.percent') : unreadable('reading.unknown-unit', { unit: one.word }),
  ];
}

const meaningOfRange = (
  { middle, halfWidth, units }: WrittenRange,
  dimensions: readonly Dimension[],
): Meaning => inUnit(units, dimensions, { number: middle, halfWidth });

function meaningOfSeries(series: WrittenSeries, dimensions: readonly Dimension[]): Meaning {
  const { numbers, units, unread, hedged } = series;
  const middle = middleOf(numbers);
  return inUnit(units, dimensions, {
    number: middle,
    ...(numbers.length === 1 ? {} : { repeats: numbers }),
    ...(hedged ? { hedged } : {}),
    ...(unread.length === 0
      ? {}
      : { told: [{ key: 'reading.partly-unread', facts: { written: unread.join('; ') } }] }),
  });
}

/** A number in the unit that is written with it, if that can be read at this setup. */
function inUnit(
  units: readonly ReadingUnit[],
  dimensions: readonly Dimension[],
  found: Omit<NumberMeaning, 'kind' | 'unit'>,
): Meaning {
  if (units.length > 1) return unreadable('reading.mixed-units');
  const [unit = null] = units;
  if (unit !== null && !dimensions.includes(unit.dimension)) return unreadable('reading.wrong-dimension');
  return { kind: 'number', unit, ...found };
}

const also = (found: Meanings, told: Told): Meanings =>
  found.map((each) =>
    each.kind === 'number' ? { ...each, told: [...(each.told ?? []), told] } : each,
  ) as unknown as Meanings;

const unreadable = (why: string, facts?: Facts): Meaning => ({
  kind: 'unreadable',
  why,
  ...(facts === undefined ? {} : { facts }),
});
