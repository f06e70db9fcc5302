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

/** A row for each graduation that the table can follow; beyond them it is looked at again. */
export function rekeyTable(table: readonly Predicted[], arrival: Predicted): RekeyTable {
  const at = asPacked(arrival);
  return {
    arrival: at,
    rows: followedReadings(at).map((reading) => ({ reading, good: rekeyed(table, at, reading) })),
  };
}

/**
 * Whether a row says anything that the key as packed does not. It does not where what the setups have in
 * common is known far better than a hand can read: then no row is ringed and the printed ranges stay.
 */
export const movesTheKey = ({ rows }: RekeyTable, table: readonly Predicted[]): boolean =>
  rows.some((row) =>
    row.good.some(({ setup, good }) => {
      const at = table.find((each) => each.setup.mark === setup);
      if (at === undefined) return false;
      const { outcome, graduations } = asPacked(at).prediction;
      const packed = 'good' in outcome ? outcome.good : null;
      return !isSameRange(good, packed, SLACK * (graduations?.step ?? 0));
    }),
  );

const isSameRange = (one: GoodRange | null, other: GoodRange | null, slack: number): boolean =>
  one === null || other === null
    ? one === other
    : Math.abs(one.from - other.from) <= slack && Math.abs(one.to - other.to) <= slack;

/** All that the arrival reading may show, graduations outward; `null` where nothing is read as one figure. */
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

/**
 * The graduations that the table can follow: those whose own row calls them good. Of an odd reading the
 * table takes over only the share that its setups have in common (the gain K); the rest was the hand's.
 * A reading z standard uncertainties off is good in its own row up to z = 1.96 sqrt((1 + K)/(1 - K)). So
 * where little is shared the rows end near the good range: what lies beyond is no other zero of the
 * scale but a sign of something that the model has not, and no row may be made of it. An honest table is
 * still hardly ever closed: it is read again, and at K = 0 two readings in a row beyond 1.96 are as rare
 * (1 in 400) as one beyond three, where the rows end at the latest.
 *
 * The rows hold the whole good range as packed, and there is no gap in them, since K lies within 0..1.
 */
function followedReadings(arrival: Predicted): readonly number[] {
  const at = asPacked(arrival);
  const span = plausibleSpan(at);
  const step = at.prediction.graduations?.step ?? 0;
  if (span === null || step === 0) return [];
  const first = Math.round(span.from / step);
  const count = Math.round(span.to / step) - first + 1;
  return Array.from({ length: count }, (_, n) => (first + n) * step).filter((reading) => {
    const [own] = rekeyed([at], at, reading);
    const good = own?.good ?? null;
    const slack = SLACK * step;
    return good !== null && reading >= good.from - slack && reading <= good.to + slack;
  });
}

/** From the lowest to the highest reading that has a row; `null` where there is none. */
export function followedSpan(arrival: Predicted): GoodRange | null {
  const readings = followedReadings(arrival);
  const [from, to] = [readings[0], readings.at(-1)];
  return from === undefined || to === undefined ? null : { from, to };
}

/** Whether a reading has a row, or lies between two of them. */
export function isFollowed(arrival: Predicted, reading: number): boolean {
  const span = followedSpan(arrival);
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
