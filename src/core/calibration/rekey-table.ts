import type { QuantityFact } from '../diagnostics/diagnostic.ts';
import { forceFact, lengthFact } from '../diagnostics/facts.ts';
import { graduationsOutward } from '../instruments/graduations.ts';
import type { Predicted } from '../setups/difference.ts';
import type { GoodRange } from '../setups/prediction.ts';
import { asPacked, type Rekeyed, rekeyed } from './rekey.ts';

/** The key that re-keys itself: for each figure the arrival reading may show, the good ranges that follow. */
export interface RekeyTable {
  readonly arrival: Predicted;
  readonly rows: readonly RekeyRow[];
}

export interface RekeyRow {
  /** A graduation of the instrument, SI. */
  readonly reading: number;
  readonly good: readonly Rekeyed[];
}

/** Of a thousand honest arrival readings three lie further off than this many standard uncertainties. */
const PLAUSIBLE = 3;
/** A figure that was written in decimals lies on a graduation but for its last bit. */
const SLACK = 1e-6;

/** A row for each graduation that the arrival reading may plausibly show; beyond them the table is looked at again. */
export function rekeyTable(table: readonly Predicted[], arrival: Predicted): RekeyTable {
  const at = asPacked(arrival);
  const span = plausibleSpan(at);
  const step = at.prediction.graduations?.step ?? 0;
  if (span === null || step === 0) return { arrival: at, rows: [] };
  const first = Math.round(span.from / step);
  const count = Math.round(span.to / step) - first + 1;
  const readings = Array.from({ length: count }, (_, n) => (first + n) * step);
  return {
    arrival: at,
    rows: readings.map((reading) => ({ reading, good: rekeyed(table, at, reading) })),
  };
}

/** From the lowest to the highest graduation of that table; `null` where nothing is read as one figure. */
export function plausibleSpan(arrival: Predicted): GoodRange | null {
  const { setup, prediction } = asPacked(arrival);
  const { outcome, graduations } = prediction;
  if (outcome.kind !== 'reading' || graduations === null) return null;
  const { from, to } = graduationsOutward(
    graduations,
    outcome.expected - PLAUSIBLE * outcome.u,
    outcome.expected + PLAUSIBLE * outcome.u,
  );
  const isPull = setup.watched === 'pull' && setup.scale !== null;
  const least = isPull ? (setup.scale?.stop ?? 0) : 0;
  const most = isPull ? (setup.scale?.range ?? to) : to;
  return { from: Math.max(from, least), to: Math.min(to, most) };
}

/** Whether a reading has a row, or lies between two of them. */
export function isPlausible(arrival: Predicted, reading: number): boolean {
  const span = plausibleSpan(arrival);
  const slack = SLACK * (arrival.prediction.graduations?.step ?? 0);
  return span !== null && reading >= span.from - slack && reading <= span.to + slack;
}

/** A figure of a setup in the marks of what it is read on; turns are a plain number. */
export const figureFact = ({ setup, prediction }: Predicted, si: number): QuantityFact | number => {
  const unit = prediction.graduations?.unit;
  switch (setup.watched) {
    case 'pull':
      return { ...forceFact(si), ...(unit === undefined ? {} : { unit }) };
    case 'travel':
      return { ...lengthFact(si), ...(unit === undefined ? {} : { unit }) };
    default:
      return si;
  }
};
