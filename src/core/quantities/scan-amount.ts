import type { DecimalMark } from './print-quantity.ts';
import type { ReadFault } from './read-fault.ts';
import { match, notANumber, scanNumber } from './scan-number.ts';
import { toSi, type Unit, unitNamed } from './unit.ts';

/** A signed number with its unit, where it has one: `300 g`, `−2`, `3 ft 6 in`. */
export interface Amount {
  readonly kind: 'amount';
  /** In the written unit; a mixed amount in its first unit's SI. */
  readonly si: (unit: Unit | null) => number;
  /** Size of the last written digit, likewise. */
  readonly step: (unit: Unit | null) => number;
  readonly unit: Unit | null;
  /** Written without a fraction or decimals. */
  readonly isWhole: boolean;
  readonly from: number;
  readonly to: number;
}

/** A unit name that nobody knows, for the reader to turn into a fault with a suggestion. */
export interface UnknownUnit {
  readonly kind: 'unknown-unit';
  readonly written: string;
  readonly from: number;
  readonly to: number;
}

/** What may follow what in a mixed amount, as people say it. */
const SMALLER: Readonly<Record<string, string>> = {
  ft: 'in',
  yd: 'ft',
  lb: 'oz',
  lbf: 'ozf',
  h: 'min',
  min: 's',
};

const SPACES = /[ \t]*/y;
const UNIT = /["″'′]|m\/s(?:\^?2|²)|[\p{L}°%](?:[\p{L}/²°%^]|[- ](?=\p{L}))*/uy;

/**
 * The amount at a place of a text. Units are not checked against what is wanted here.
 *
 * @example scanAmount('300 g', 0, 'point').unit.symbol // => 'g'
 */
export function scanAmount(text: string, start: number, mark: DecimalMark): Amount | UnknownUnit | ReadFault {
  const from = skipSpaces(text, start);
  const sign = text[from] === '-' ? -1 : 1;
  const number = scanNumber(text, sign < 0 ? from + 1 : from, mark);
  if (number.kind === 'read-fault') return number;

  const first = scanUnit(text, number.to);
  if (first !== null && first.kind === 'unknown-unit') return first;
  if (first === null)
    return amount(
      null,
      from,
      number.to,
      (unit) => sign * inSi(number.value, unit),
      number.step,
      number.isWhole,
    );

  const next = skipSpaces(text, first.to);
  const smaller = SMALLER[first.unit.symbol];
  if (smaller === undefined || !number.isWhole || !/\d/.test(text[next] ?? ''))
    return amount(
      first.unit,
      from,
      first.to,
      (unit) => sign * inSi(number.value, unit),
      number.step,
      number.isWhole,
    );

  const rest = scanNumber(text, next, mark);
  if (rest.kind === 'read-fault') return rest;
  const second = scanUnit(text, rest.to);
  if (second !== null && second.kind === 'unknown-unit') return second;
  if (second === null) return noUnit(text.slice(next, rest.to), first.unit, smaller, [next, rest.to]);
  if (second.unit.symbol !== smaller) return { ...notANumber(text, next), fault: 'left-over' };
  const value = sign * (toSi(number.value, first.unit.symbol) + toSi(rest.value, smaller));
  return {
    kind: 'amount',
    si: () => value,
    step: () => toSi(rest.step, smaller),
    unit: first.unit,
    isWhole: rest.isWhole,
    from,
    to: second.to,
  };
}

export const skipSpaces = (text: string, from: number): number =>
  from + (match(SPACES, text, from)?.[0].length ?? 0);

/** `3 ft 6`: the second number must say what it counts. */
function noUnit(written: string, unit: Unit, smaller: string, span: ReadFault['span']): ReadFault {
  const facts = { written, wanted: [unit.dimension], units: [smaller] };
  return { kind: 'read-fault', fault: 'no-unit', facts, span };
}

function amount(
  unit: Unit | null,
  from: number,
  to: number,
  si: Amount['si'],
  step: number,
  isWhole: boolean,
): Amount {
  return { kind: 'amount', si, step: (asked) => inSi(step, asked), unit, isWhole, from, to };
}

function scanUnit(
  text: string,
  start: number,
): { readonly kind: 'unit'; readonly unit: Unit; readonly to: number } | UnknownUnit | null {
  const from = skipSpaces(text, start);
  const written = match(UNIT, text, from)?.[0];
  if (written === undefined) return null;
  const to = from + written.length;
  const unit = unitNamed(written);
  return unit === undefined ? { kind: 'unknown-unit', written, from, to } : { kind: 'unit', unit, to };
}

const inSi = (value: number, unit: Unit | null): number => (unit === null ? value : toSi(value, unit.symbol));
