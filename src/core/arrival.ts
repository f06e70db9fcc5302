import { asPacked } from './calibration/rekey.ts';
import { followedSpan } from './calibration/rekey-table.ts';
import { trialWithUnit } from './files/trials-on-arrival.ts';
import type { Prepared, PreparedTable } from './prepare.ts';
import { arrivalReading } from './readings/arrival-reading.ts';
import { setupNamed } from './review.ts';
import type { Predicted } from './setups/difference.ts';

/** A reading that was taken on arrival, with its table as packed; or why nothing can follow from it. */
export type Trial =
  | {
      readonly kind: 'taken';
      readonly table: PreparedTable;
      readonly at: Predicted;
      /** SI. */
      readonly reading: number;
    }
  | { readonly kind: 'no such setup' }
  | { readonly kind: 'no one figure'; readonly setup: string }
  | { readonly kind: 'no reading'; readonly setup: string };

/** What somebody wrote down on arrival -> its table, its setup and its figure. A number alone is in the instrument's own marks. */
export function trialOnArrival(prepared: Prepared, mark: string, written: string): Trial {
  const named = setupNamed(prepared, mark);
  const table = prepared.tables.find(({ setups }) => named !== null && setups.includes(named));
  if (named === null || table === undefined) return { kind: 'no such setup' };
  const at = asPacked(named);
  if (followedSpan(at) === null) return { kind: 'no one figure', setup: named.setup.mark };
  const reading = arrivalReading(at, trialWithUnit(at, written));
  return reading === null
    ? { kind: 'no reading', setup: named.setup.mark }
    : { kind: 'taken', table, at, reading };
}
