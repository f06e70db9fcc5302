import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Dimension } from '../quantities/dimension.ts';
import { toSi } from '../quantities/unit.ts';

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
  /** What the group reckoned itself, where the file has columns for it: as written. */
  readonly computed?: ComputedColumns;
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

export interface Told {
  readonly key: string;
  readonly facts: Facts;
}

/** A unit as pupils write it: on a scale "g" is a graduation, so a force. */
export interface ReadingUnit {
  readonly name: string;
  readonly dimension: Dimension;
  readonly si: number;
}

const readingUnit = (name: string, symbol: string, dimension: Dimension): ReadingUnit => ({
  name,
  dimension,
  si: toSi(1, symbol),
});

/** Units that are written for a pull, in the order they are tried; names as the sentences know them. */
export const pullUnits: readonly ReadingUnit[] = [
  readingUnit('newtons', 'N', 'force'),
  readingUnit('grams', 'gf', 'force'),
  readingUnit('kilograms', 'kgf', 'force'),
  readingUnit('ounces', 'ozf', 'force'),
  readingUnit('pounds', 'lbf', 'force'),
];

export const travelUnits: readonly ReadingUnit[] = [
  readingUnit('millimetres', 'mm', 'length'),
  readingUnit('centimetres', 'cm', 'length'),
  readingUnit('inches', 'in', 'length'),
  readingUnit('metres', 'm', 'length'),
];

export const turnUnits: readonly ReadingUnit[] = [{ name: 'turns', dimension: 'ratio', si: 1 }];

/** What groups write, in English and in Spanish: the page that they read may be in either. */
const WORDS: Readonly<Record<string, string>> = {
  n: 'newtons',
  newton: 'newtons',
  newtons: 'newtons',
  g: 'grams',
  gf: 'grams',
  gram: 'grams',
  grams: 'grams',
  kg: 'kilograms',
  kgf: 'kilograms',
  kilograms: 'kilograms',
  oz: 'ounces',
  ozf: 'ounces',
  ounce: 'ounces',
  ounces: 'ounces',
  lb: 'pounds',
  lbs: 'pounds',
  lbf: 'pounds',
  pounds: 'pounds',
  mm: 'millimetres',
  cm: 'centimetres',
  in: 'inches',
  inch: 'inches',
  inches: 'inches',
  m: 'metres',
  turn: 'turns',
  turns: 'turns',
  newtones: 'newtons',
  gramo: 'grams',
  gramos: 'grams',
  kilogramos: 'kilograms',
  onza: 'ounces',
  onzas: 'ounces',
  libras: 'pounds',
  pulgada: 'inches',
  pulgadas: 'inches',
  vuelta: 'turns',
  vueltas: 'turns',
};

const STOP_WORDS = /^(stop|at the stop|on (its|the) stop|0 at the stop|tope|en (su|el) tope|0 en el tope)$/i;
const OFF_WORDS =
  /^(off|off the scale|past the (end|last mark)|too (much|far)|fuera|fuera de la escala|demasiado)$/i;
/** A decimal number, or a number with a fraction as inches and ounces have it: `7/16`, `14 1/2`. */
const NUMBER = /^([-−]?(?:\d+(?:[.,]\d+)?|[.,]\d+))\s*([a-zA-Z]*)$/;
const FRACTION = /^(?:(\d+)\s+)?(\d+)\s*\/\s*([1-9]\d*)\s*([a-zA-Z]*)$/;

/**
 * The meaning of a written reading: a number with or without a unit, a point or a comma.
 *
 * @example readWritten('2,4 N', ['force']).number // => 2.4
 * @example readWritten('14 1/2 oz', ['force']).number // => 14.5
 * @example readWritten('3,5 vueltas', ['ratio']).number // => 3.5
 * @example readWritten('en el tope', ['force']).kind // => 'at the stop'
 */
export function readWritten(written: string, dimensions: readonly Dimension[]): Meaning {
  const text = written.trim();
  if (text === '' || /^[-–—]+$/.test(text)) return { kind: 'blank' };
  if (STOP_WORDS.test(text)) return { kind: 'at the stop' };
  if (OFF_WORDS.test(text)) return { kind: 'off the scale' };
  const read = numberIn(text);
  if (read === null) return { kind: 'unreadable', why: 'reading.not-a-number' };
  const { number, word } = read;
  if (word === '') return { kind: 'number', number, unit: null };
  const name = WORDS[word];
  const unit = [...pullUnits, ...travelUnits, ...turnUnits].find((each) => each.name === name);
  if (unit === undefined) return { kind: 'unreadable', why: 'reading.unknown-unit' };
  if (!dimensions.includes(unit.dimension)) return { kind: 'unreadable', why: 'reading.wrong-dimension' };
  return { kind: 'number', number, unit };
}

function numberIn(text: string): { readonly number: number; readonly word: string } | null {
  const decimal = NUMBER.exec(text);
  if (decimal !== null)
    return {
      number: Number((decimal[1] ?? '').replace(',', '.').replace('−', '-')),
      word: (decimal[2] ?? '').toLowerCase(),
    };
  const fraction = FRACTION.exec(text);
  if (fraction === null) return null;
  const [, whole = '0', over, under, word = ''] = fraction;
  return { number: Number(whole) + Number(over) / Number(under), word: word.toLowerCase() };
}
