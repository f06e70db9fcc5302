import type { DecimalMark } from './print-quantity.ts';
import { decimalsFor, printQuantity } from './print-quantity.ts';
import { isReadFault } from './read-fault.ts';
import { readQuantity } from './read-quantity.ts';
import { inUnit } from './unit.ts';

/** The half-width that holds 19 of 20 under a normal law, in standard uncertainties. */
const HALF_WIDTH_95 = 1.96;

/**
 * A length that is made up of so many equal ones, as it was written, to one of them as it would be written: its doubt is
 * shared among them as well (JCGM 100:2008, 5.1.2), which is why one measures from the first to the last. `null` where it is no
 * length, or there are no shares.
 *
 * @example evenShare('60 cm', 12) // => '5.00 cm ± 0.05 cm'
 * @example evenShare('50,0 cm ± 0,1 cm', 10, 'comma') // => '5,000 cm ± 0,010 cm'
 * @example evenShare('a lot', 10) // => null
 */
export function evenShare(text: string, shares: number, decimal: DecimalMark = 'point'): string | null {
  const whole = readQuantity(text, { dimensions: ['length'], decimal });
  if (isReadFault(whole) || !(shares >= 1) || !(whole.value > 0)) return null;
  const [one, half] = [whole.value / shares, (HALF_WIDTH_95 * whole.u) / shares];
  const decimals = Math.max(0, decimalsFor(Math.abs(inUnit(half, whole.unit))));
  const written = (si: number): string => printQuantity(si, whole.unit, decimals, decimal);
  return half === 0 ? written(one) : `${written(one)} ± ${written(half)}`;
}
