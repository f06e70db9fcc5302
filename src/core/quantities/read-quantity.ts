import type { Dimension } from './dimension.ts';
import { nearestName } from './nearest-name.ts';
import { type DecimalMark, significant } from './print-quantity.ts';
import type { Fault, ReadFault } from './read-fault.ts';
import { type Amount, scanAmount, skipSpaces, type UnknownUnit } from './scan-amount.ts';
import { match, notANumber } from './scan-number.ts';
import { inUnit, symbolsOf, toSi, type Unit, unitNamed, units } from './unit.ts';

/** A quantity as somebody wrote it, in SI, with what the way of writing says about its doubt. */
export interface Written {
  readonly kind: 'written';
  readonly value: number;
  /** Standard uncertainty in SI. */
  readonly u: number;
  readonly shape: 'normal' | 'even';
  readonly origin: 'stated' | 'bare';
  readonly dimension: Dimension;
  /** Symbol of the first unit that was written; empty for a bare ratio. */
  readonly unit: string;
  readonly text: string;
}

/** What a place in a file takes: one of some dimensions, with the file's decimal mark. */
export interface Wanted {
  readonly dimensions: readonly Dimension[];
  readonly decimal: DecimalMark;
}

/** The half-width that holds 19 of 20 under a normal law, in standard uncertainties. */
const HALF_WIDTH_95 = 1.96;

const TYPED_PLUS_MINUS = /±|\+\/?-/y;
const RANGE = /\.\.(?!\.)/y;
const HYPHEN = /[-–—](?=[ \t]*\d)/y;

/**
 * Reads one quantity as a person writes it: `300 g`, `2 1/4 in`, `3 ft 6 in`, `14.2 cm ± 0.1 cm`,
 * `14.2 ± 0.1 cm`, `2.5 N ± 2 %` (percent of the value), `20..30 g`. A ratio takes no unit, or `%`.
 *
 * `a ± b`: b holds 19 of 20, u = b/1.96, normal. `a..b`: anywhere between, u = width/√12 (JCGM
 * 100:2008, 4.3.7). A bare value: u = half its last written digit/√3; in `1/4 in` and `3 ft 6 in`
 * that digit is the quarter and the inch. A plain `0 mm` is none at all, exactly. What can't be read comes back as a fault; nothing is thrown
 * and nothing is guessed.
 *
 * @example readQuantity('300 g', { dimensions: ['mass'], decimal: 'point' }).value // => 0.3
 * @example readQuantity('300 g', { dimensions: ['force'], decimal: 'point' }).fault // => 'mass-for-force'
 */
export function readQuantity(text: string, wanted: Wanted): Written | ReadFault {
  // One character for one, so that spans stay true: typed minus, no-break and thin spaces.
  const plain = text.replace(/[\u00a0\u2009\u202f\r\n]/g, ' ').replace(/−/g, '-');
  const start = skipSpaces(plain, 0);
  if (start === plain.length) return fault('empty', {}, [0, text.length]);

  const first = scanAmount(plain, start, wanted.decimal);
  if (first.kind !== 'amount') return explained(first, wanted);
  const at = skipSpaces(plain, first.to);
  if (at === plain.length) return single(text, first, wanted);

  const plusMinus = match(TYPED_PLUS_MINUS, plain, at);
  const joint = plusMinus ?? match(RANGE, plain, at) ?? match(HYPHEN, plain, at);
  if (joint === null) return leftOver(plain, at);
  const second = scanAmount(plain, at + joint[0].length, wanted.decimal);
  if (second.kind !== 'amount') return explained(second, wanted);
  const end = skipSpaces(plain, second.to);
  if (end !== plain.length) return leftOver(plain, end);
  if (joint[0].length === 1 && plusMinus === null) return hyphen(plain, first, second);
  return plusMinus === null ? range(text, first, second, wanted) : withHalfWidth(text, first, second, wanted);
}

function single(text: string, amount: Amount, wanted: Wanted): Written | ReadFault {
  const dimension = dimensionOf(text, amount, amount.unit, wanted);
  if (typeof dimension !== 'string') return dimension;
  const value = amount.si(amount.unit);
  // A plain nought says that there is none of it; `0.0 mm` says how well that was measured.
  const isNone = value === 0 && amount.isWhole;
  const u = isNone ? 0 : amount.step(amount.unit) / 2 / Math.sqrt(3);
  return written(text, value, u, ['even', 'bare'], dimension, amount.unit);
}

function withHalfWidth(text: string, a: Amount, b: Amount, wanted: Wanted): Written | ReadFault {
  const takesRatio = wanted.dimensions.includes('ratio');
  if (a.unit === null && b.unit?.symbol === '%' && takesRatio)
    return fault('ambiguous-percent', { written: text.trim() }, [a.from, b.to]);
  const ofValue = b.unit?.symbol === '%' && a.unit?.dimension !== 'ratio';
  const unit = ofValue ? a.unit : (a.unit ?? b.unit);
  const dimension = dimensionOf(text, a, unit, wanted);
  if (typeof dimension !== 'string') return dimension;
  const mismatch = ofValue ? null : otherUnit(text, a, b, dimension, wanted);
  if (mismatch !== null) return mismatch;

  const value = a.si(unit);
  const half = ofValue ? Math.abs(value) * b.si(b.unit) : b.si(b.unit ?? unit);
  if (half < 0) return fault('negative-uncertainty', { written: slice(text, b) }, [b.from, b.to]);
  return written(text, value, half / HALF_WIDTH_95, ['normal', 'stated'], dimension, unit);
}

function range(text: string, a: Amount, b: Amount, wanted: Wanted): Written | ReadFault {
  const unit = a.unit ?? b.unit;
  const dimension = dimensionOf(text, a, unit, wanted);
  if (typeof dimension !== 'string') return dimension;
  const mismatch = otherUnit(text, a, b, dimension, wanted);
  if (mismatch !== null) return mismatch;

  const low = a.si(unit);
  const high = b.si(b.unit);
  if (low > high) {
    const sameUnit = a.unit === null && unit !== null ? ` ${unit.symbol}` : '';
    const instead = `${slice(text, b)}..${slice(text, a)}${sameUnit}`;
    return fault('empty-range', { written: text.trim(), instead }, [a.from, b.to]);
  }
  const value = low / 2 + high / 2;
  const u = (high - low) / Math.sqrt(12);
  return written(text, value, u, ['even', 'stated'], dimension, unit);
}

/** The second of two amounts must have a unit when the first has one, and of the same dimension. */
function otherUnit(
  text: string,
  a: Amount,
  b: Amount,
  dimension: Dimension,
  wanted: Wanted,
): ReadFault | null {
  if (a.unit !== null && b.unit === null) return noUnit(text, b, [dimension]);
  if (b.unit === null || b.unit.dimension === dimension) return null;
  const found = dimensionOf(text, b, b.unit, { ...wanted, dimensions: [dimension] });
  return typeof found === 'string' ? null : found;
}

/** What the amount is a number of, where that is wanted here. */
function dimensionOf(text: string, amount: Amount, unit: Unit | null, wanted: Wanted): Dimension | ReadFault {
  const { dimensions } = wanted;
  if (unit === null) return dimensions.includes('ratio') ? 'ratio' : noUnit(text, amount, dimensions);
  if (dimensions.includes(unit.dimension)) return unit.dimension;
  const span = [amount.from, amount.to] as const;
  const written = slice(text, amount);
  const si = amount.si(unit);
  if (!Number.isFinite(si)) return fault('too-large', { written }, span);
  if (unit.dimension === 'mass' && dimensions.includes('force'))
    return fault('mass-for-force', { written, ...asForce(si, unit, wanted.decimal) }, span);
  if (unit.dimension === 'force' && dimensions.includes('mass'))
    return fault('force-for-mass', { written, asMass: asMass(si, wanted.decimal) }, span);
  const facts = { written, is: unit.dimension, wanted: dimensions, units: dimensions.flatMap(symbolsOf) };
  return fault('wrong-dimension', facts, span);
}

/** The same number of grams as a force: a gram graduation is a fixed force. */
function asForce(kilograms: number, unit: Unit, mark: DecimalMark): { asForce: string; asNewtons: string } {
  const twin = ['kg', 'lb', 'oz'].includes(unit.symbol) ? unit.symbol : 'g';
  const newtons = toSi(kilograms, 'kgf');
  return {
    asForce: `${trimmed(inUnit(kilograms, twin), mark)} ${twin}f`,
    asNewtons: `${significant(newtons, 3, mark)} N`,
  };
}

const asMass = (newtons: number, mark: DecimalMark): string =>
  `${significant(inUnit(inUnit(newtons, 'kgf'), 'g'), 3, mark)} g`;

/** Six digits at most, without the zeros behind. */
const trimmed = (value: number, mark: DecimalMark): string =>
  significant(value, 6, mark).replace(/[.,]0+$|([.,]\d*?)0+$/, '$1');

function written(
  text: string,
  value: number,
  u: number,
  [shape, origin]: readonly [Written['shape'], Written['origin']],
  dimension: Dimension,
  unit: Unit | null,
): Written | ReadFault {
  if (!Number.isFinite(value) || !Number.isFinite(u))
    return fault('too-large', { written: text.trim() }, [0, text.length]);
  // `-0 N` is 0 N.
  return { kind: 'written', value: value + 0, u, shape, origin, dimension, unit: unit?.symbol ?? '', text };
}

/** Turns a scanner's finding into a fault with what could be meant. */
function explained(found: UnknownUnit | ReadFault, wanted: Wanted): ReadFault {
  if (found.kind === 'read-fault') return found;
  const { written } = found;
  const word = /^[^ ]+ +/.exec(written)?.[0] ?? '';
  if (unitNamed(word.trim()) !== undefined)
    return fault('left-over', { written: written.slice(word.length) }, [found.from + word.length, found.to]);
  const fitting = units.filter((unit) => wanted.dimensions.includes(unit.dimension));
  const names = (among: readonly Unit[]) => among.flatMap((unit) => [unit.symbol, ...unit.also]);
  const name = nearestName(written, names(fitting)) ?? nearestName(written, names(units));
  const nearest = units.find((unit) => unit.symbol === name || (name && unit.also.includes(name)))?.symbol;
  const facts = { written, wanted: wanted.dimensions, units: fitting.map((unit) => unit.symbol) };
  return { ...fault('unknown-unit', facts, [found.from, found.to]), ...(nearest ? { nearest } : {}) };
}

function noUnit(text: string, amount: Amount, dimensions: readonly Dimension[]): ReadFault {
  const facts = { written: slice(text, amount), wanted: dimensions, units: dimensions.flatMap(symbolsOf) };
  return fault('no-unit', facts, [amount.from, amount.to]);
}

function hyphen(text: string, a: Amount, b: Amount): ReadFault {
  const instead = `${slice(text, a)}..${slice(text, b)}`;
  return fault('hyphen-range', { written: text.trim(), instead }, [a.from, b.to]);
}

const leftOver = (text: string, at: number): ReadFault => ({ ...notANumber(text, at), fault: 'left-over' });

const slice = (text: string, amount: Amount): string => text.slice(amount.from, amount.to);

const fault = (name: Fault, facts: ReadFault['facts'], span: ReadFault['span']): ReadFault => ({
  kind: 'read-fault',
  fault: name,
  facts,
  span,
});
