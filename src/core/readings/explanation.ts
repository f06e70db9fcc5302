import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Persists } from '../machines/machine.ts';
import type { Setup } from '../setups/setup.ts';
import { type Cause, causeKey } from './causes.ts';
import { densityBetween, normalShare } from './figure.ts';
import type { ReadingUnit } from './written-reading.ts';

/**
 * One explanation of one reading, ready to be weighed: where the figure lies, how it moves with the
 * apparatus, and what belongs to the reading alone.
 */
export interface Explanation {
  readonly code: string;
  readonly facts: Facts | undefined;
  /** The cause with what tells it from others of its code. */
  readonly key: string;
  /** The same for all setups of a table that it can happen at together. */
  readonly tableKey: string;
  readonly kind: Cause['kind'];
  readonly persists: Persists;
  readonly rate: number;
  /** The reading in SI, if this is what happened. */
  readonly value: number;
  /** Figure at the best values of the apparatus, SI; a band has two ends. */
  readonly low: number;
  readonly high: number;
  /** How far the figure moves where the good one moves by 1. */
  readonly gain: number;
  /** Variance that no other reading of the table shares, SI². */
  readonly noise: number;
  /** Density per SI unit -> density per logarithm of the number. */
  readonly measure: number;
  /** Where there is no figure but a stop: 1 or 0, whatever the apparatus; else `null`. */
  readonly fixed: number | null;
  /** Where all that was said is that the pointer stands beyond this; else `null`. */
  readonly beyond: number | null;
  /** Whether such a reading tells where the apparatus stands. */
  readonly informs: boolean;
  /** The figure is that of a station that has changed, and the group read it well. */
  readonly ofStation: boolean;
  /** Whether the group was led there by what changed at the table; `null` where nothing did. */
  readonly led: boolean | null;
}

/** What a setup's good figure is made of: shared with the table's other readings, and a reading's own. */
export interface FigureSpread {
  readonly middle: number;
  /** Variance that comes from the apparatus. */
  readonly shared: number;
  /** Variance that comes anew with each reading. */
  readonly own: number;
}

/** A number as it was written, or that the pointer rests on its stop or stands beyond the last mark. */
export type Written =
  | { readonly number: number; readonly unit: ReadingUnit }
  | 'at the stop'
  | 'off the scale';

/** How probable the reading is under an explanation, with the apparatus moved by `shift` ± √`doubt`. */
export function likelihoodOf(of: Explanation, shift: number, doubt: number, noisier: number): number {
  if (of.fixed !== null) return of.fixed;
  const u = Math.sqrt(of.gain ** 2 * doubt + of.noise * noisier);
  const moved = of.gain * shift;
  if (of.beyond !== null) {
    const middle = (of.low + of.high) / 2 + moved;
    return 1 - normalShare((of.beyond - middle) / Math.hypot(u, (of.high - of.low) / Math.sqrt(12)));
  }
  return densityBetween(of.low + moved, of.high + moved, u, of.value) * of.measure;
}

/** The same for each of several, written into `row`; one loop, so that thousands of numbers are not boxed. */
export function likelihoodsInto(
  row: number[],
  explanations: readonly Explanation[],
  shift: number,
  doubt: number,
  noisier: number,
): void {
  for (let n = 0; n < explanations.length; n += 1) {
    const each = explanations[n];
    if (each !== undefined) row[n] = likelihoodOf(each, shift, doubt, noisier);
  }
}

/** One cause as an explanation of a written number. */
export function explanationOf(cause: Cause, written: Written, setup: Setup, good: FigureSpread): Explanation {
  const { code, facts, kind, rate, persists } = cause;
  const { value, low, high, gain, noise, measure, fixed, beyond } = lyingAt(cause, written, setup, good);
  // Written out, and every one of them with the same fields: a class makes and reads them by the thousand.
  return {
    code,
    facts,
    key: causeKey(cause),
    tableKey: tableKeyOf(cause),
    kind,
    persists,
    rate,
    value,
    low,
    high,
    gain,
    noise,
    measure,
    fixed,
    beyond,
    informs:
      fixed === null && beyond === null && (kind === 'good' || (kind === 'reading' && cause.unit !== null)),
    ofStation: false,
    led: null,
  };
}

type Lying = Pick<Explanation, 'value' | 'low' | 'high' | 'gain' | 'noise' | 'measure' | 'fixed' | 'beyond'>;

/** Where there is no figure: the reading is what a cause leads to, or it is not. */
const isSo = (is: boolean, value = 0): Lying => ({
  value,
  low: 0,
  high: 0,
  gain: 0,
  noise: 0,
  measure: 0,
  fixed: is ? 1 : 0,
  beyond: null,
});

function lyingAt(
  { kind, unit: counted, figure }: Cause,
  written: Written,
  setup: Setup,
  good: FigureSpread,
): Lying {
  if (written === 'at the stop') return isSo(figure === null);
  if (written === 'off the scale') {
    if (figure === null) return isSo(false);
    const { low, high, u } = figure;
    const noise = Math.max(u ** 2 - good.shared, good.own);
    const beyond = setup.scale?.range ?? Number.MAX_VALUE;
    return { value: 0, low, high, gain: 1, noise, measure: 1, fixed: null, beyond };
  }
  const unit = counted ?? written.unit;
  const value = written.number * unit.si;
  if (figure === null) return isSo(Math.abs(value - (setup.scale?.stop ?? 0)) < halfStep(setup), value);
  const { low, high, u } = figure;
  const middle = (low + high) / 2;
  // What is made at the apparatus moves with it; what was reckoned in the head doesn't.
  const gain = kind === 'reading' && counted === null ? 0 : 1;
  const least = good.own * Math.min(1, good.middle === 0 ? 1 : (middle / good.middle) ** 2);
  const noise = Math.max(u ** 2 - gain ** 2 * good.shared, least, 1e-12);
  const measure = unit.si * grain(written.number, setup, unit);
  return { value, low, high, gain, noise, measure, fixed: null, beyond: null };
}

/**
 * The name that a cause has for a whole table: the same weight hung everywhere, the same two setups in each
 * other's place.
 */
export function tableKeyOf({ code, facts }: Pick<Cause, 'code' | 'facts'>): string {
  if (facts === undefined) return code;
  if (code === 'setup.swapped') return [code, ...[facts.setup, facts.partner].map(String).sort()].join(' ');
  return facts.hung === undefined ? code : `${code} ${String(facts.hung)}`;
}

/** Numbers that a slip of the pen can lead to: from a thousandth to a thousand times the figure. */
const DECADES = Math.log(1e6);

/** Of readings that nothing explains, so many would be beyond the last mark. Common practice, no source. */
const UNKNOWN_BEYOND = 0.1;

/** How probable a number is that nothing explains: half anywhere on the marks, half in six decades. */
export function unexplainedLikelihood(written: Written, setup: Setup): number {
  if (typeof written === 'string') return written === 'at the stop' ? 1 : UNKNOWN_BEYOND;
  const { number, unit } = written;
  const span = (setup.scale?.range ?? 1) / unit.si;
  const onTheMarks = Math.abs(number) <= span ? (0.5 * grain(number, setup, unit)) / span : 0;
  return 0.5 / DECADES + onTheMarks;
}

/** d number = number x d ln number; near 0 a graduation is the least that can be told apart. */
const grain = (number: number, setup: Setup, unit: ReadingUnit): number =>
  Math.max(Math.abs(number), halfStep(setup) / unit.si);

export const halfStep = (setup: Setup): number => ((setup.marks ?? setup.scale?.graduations)?.step ?? 0) / 2;
