import type { QuantityFact } from '../../core/diagnostics/diagnostic.ts';
import {
  type DecimalMark,
  decimalsFor,
  printQuantity,
  significant,
} from '../../core/quantities/print-quantity.ts';
import { inUnit } from '../../core/quantities/unit.ts';

/** Digits where nothing says how well a quantity is known: a school ruler or balance has about three. */
const DIGITS = 3;

/**
 * A quantity in a unit that fits its size: forces in newtons, masses in grams and kilograms, lengths
 * in millimetres, centimetres and metres, angles in degrees. Digits follow its uncertainty, three
 * where there is none.
 *
 * @example quantityText({ si: 0.142, dimension: 'length' }) // => '14.2 cm'
 * @example quantityText({ si: 1.61803, dimension: 'force', u: 0.04 }) // => '1.62 N'
 */
export function quantityText(fact: QuantityFact, mark: DecimalMark = 'point'): string {
  const unit = fact.unit ?? fittingUnit(fact);
  if (fact.u !== undefined && fact.u > 0)
    return printQuantity(fact.si, unit, decimalsFor(Math.abs(inUnit(fact.u, unit)), DIGITS), mark);
  const text = trimmed(significant(inUnit(fact.si, unit), DIGITS, mark));
  if (unit === '') return text;
  return unit === '°' ? `${text}°` : `${text} ${unit}`;
}

/**
 * A number without the zeros that say nothing: for values that are as they were written.
 *
 * @example trimmed('30.0') // => '30'
 */
export const trimmed = (text: string): string =>
  text.replace(/([.,]\d*?)0+(?=$|e)/, '$1').replace(/[.,](?=$|e)/, '');

function fittingUnit({ si, dimension }: QuantityFact): string {
  const size = Math.abs(si);
  switch (dimension) {
    case 'length':
      if (size === 0) return 'cm';
      return size < 0.00995 ? 'mm' : size < 1.995 ? 'cm' : 'm';
    case 'mass':
      return size < 0.9995 ? 'g' : 'kg';
    case 'force':
      return size < 9995 ? 'N' : 'kN';
    case 'angle':
      return '°';
    case 'time':
      return size < 90 ? 's' : 'min';
    case 'stiffness':
      return 'N/m';
    case 'acceleration':
      return 'm/s²';
    case 'ratio':
      return '';
  }
}
