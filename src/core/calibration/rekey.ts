import type { WorkingLine } from '../description/working.ts';
import { budgetOf, narrowingOf, without } from '../setups/budget.ts';
import type { Predicted } from '../setups/difference.ts';
import { goodBand } from '../setups/good-range.ts';
import { predict } from '../setups/predict.ts';
import { offTheMarks } from '../setups/predict-scale.ts';
import type { GoodRange, Outcome, Prediction } from '../setups/prediction.ts';
import { balanceFor } from '../setups/pull.ts';
import type { Setup } from '../setups/setup.ts';
import { setupLimits } from '../setups/setup-limits.ts';
import { setupWorking } from '../setups/setup-working.ts';
import {
  covariance,
  exactly,
  type Measured,
  plus,
  standardUncertainty,
  times,
} from '../uncertainty/measured.ts';
import { atBest } from '../uncertainty/propagate.ts';

/** A setup of the table after the arrival reading; no range where the pointer would leave its marks. */
export interface Rekeyed {
  readonly setup: string;
  readonly good: GoodRange | null;
}

/**
 * The good ranges of a table for the rest of the period, once one reading was taken on arrival: what
 * the setups have in common (the scale, the bar, the pin) has told on itself in that reading.
 *
 * Linear law of JCGM 100 (5.2) with Bayes' rule for normal unknowns: a figure moves by
 * gain x (reading - expected), gain = covariance / variance of the arrival reading, and its variance
 * falls by covariance² / variance. Evenly spread unknowns are taken as normal ones of the same u.
 * Hand, graduation and pointer of the arrival reading are noise in it and stay in every later one.
 */
export const rekeyed = (
  table: readonly Predicted[],
  arrival: Predicted,
  reading: number,
): readonly Rekeyed[] =>
  table.flatMap((at): readonly Rekeyed[] => {
    if (asPacked(at).prediction.read === null) return [];
    const { outcome } = rekeyedPrediction(at, arrival, reading);
    return [{ setup: at.setup.mark, good: 'good' in outcome ? outcome.good : null }];
  });

/** A prediction as it was before any arrival reading. */
export const asPacked = ({ setup, prediction }: Predicted): Predicted => ({
  setup,
  prediction: prediction.rekeyedBy === null ? prediction : predict(setup),
});

/** One prediction, re-keyed: figure, doubt, budget and good range; what has no figure stays as it was. */
export function rekeyedPrediction(at: Predicted, arrival: Predicted, reading: number): Prediction {
  const { setup, prediction } = asPacked(at);
  const told = onArrival(asPacked(arrival).prediction.read);
  const { read, lower } = prediction;
  if (read === null || told === null) return prediction;
  const upper = updated(read, told, reading);
  const low = lower === null ? null : updated(lower, told, reading);
  const range = (one: Measured, other: Measured | null): GoodRange => rangeOf(setup, other ?? one, one);
  const good = range(upper.read, low?.read ?? null);
  const budget = budgetOf(upper.read);
  const narrows = narrowingOf(budget, good, (unknown) =>
    range(without(upper.read, unknown), low === null ? null : without(low.read, unknown)),
  );
  const outcome = outcomeOf(setup, prediction.outcome, upper.read, low?.read ?? null, good);
  const result = { outcome, read: upper.read, shown: upper.read, lower: low?.read ?? null, budget, narrows };
  const lines = [
    ...(low === null ? [] : workingOf(low, setup, 'lower', true)),
    ...workingOf(upper, setup, 'upper', low === null),
  ];
  return {
    ...prediction,
    outcome,
    read: upper.read,
    lower: result.lower,
    budget,
    narrows,
    rekeyedBy: { setup: arrival.setup.mark, reading },
    diagnostics: setupLimits(setup, balanceFor(setup, atBest, setup.way), prediction.pull, outcome),
    working: () => setupWorking(setup, result, lines),
  };
}

interface Updated {
  readonly before: Measured;
  readonly told: Measured;
  readonly reading: number;
  readonly gain: number;
  readonly read: Measured;
}

/** The rest of a figure when what the arrival reading told is taken out of it: still a sum of unknowns. */
function updated(before: Measured, told: Measured, reading: number): Updated {
  const variance = standardUncertainty(told) ** 2;
  const gain = variance === 0 ? 0 : covariance(before, told) / variance;
  const read = gain === 0 ? before : plus(before, times(told, -gain), exactly(gain * reading));
  return { before, told, reading, gain, read };
}

/** What belongs to one reading is another chance in the arrival reading than in the next. */
function onArrival(read: Measured | null): Measured | null {
  if (read === null) return null;
  return {
    value: read.value,
    parts: read.parts.map(({ unknown, slope }) => ({
      unknown: unknown.id.startsWith('reading/') ? { ...unknown, id: `${unknown.id} on arrival` } : unknown,
      slope,
    })),
  };
}

/** The good range that a figure, or the two ends of a band, have on the marks of their setup. */
export function rangeOf(setup: Setup, lower: Measured, upper: Measured): GoodRange {
  const { marks, scale } = setup;
  if (setup.watched === 'pull' && scale !== null)
    return goodBand(lower, upper, scale.graduations, scale.stop, scale.range);
  return goodBand(lower, upper, marks ?? { step: 1, unit: '', unitSi: 1 }, 0, Number.MAX_VALUE);
}

function outcomeOf(
  setup: Setup,
  before: Outcome,
  read: Measured,
  lower: Measured | null,
  good: GoodRange,
): Outcome {
  const off =
    setup.watched === 'pull' && setup.scale !== null
      ? offTheMarks(setup.scale, (lower ?? read).value, read.value)
      : null;
  if (off !== null) return off;
  const u = standardUncertainty(read);
  switch (before.kind) {
    case 'reading':
      return { ...before, expected: read.value, u, good };
    case 'band':
      return {
        ...before,
        lower: Math.max(lower?.value ?? before.lower, setup.scale?.stop ?? 0),
        upper: read.value,
        u,
        good,
      };
    case 'moves under the scale':
      return { ...before, shows: read.value, u, good };
    default:
      return before;
  }
}

/** The step from the figure as packed to the figure as re-keyed, for the explanation. */
function workingOf(
  of: Updated,
  setup: Setup,
  end: 'lower' | 'upper',
  isFirst: boolean,
): readonly WorkingLine[] {
  const { before, told, reading, gain, read } = of;
  const unit = setup.watched === 'turns' ? 'turns' : setup.watched === 'travel' ? 'm' : 'N';
  const [K, Y] = end === 'lower' ? ['Kl', 'Yl'] : ['K', 'Y'];
  const source = 'JCGM 100:2008, 5.2, and Bayes for normal unknowns';
  const C = covariance(before, told);
  const V = standardUncertainty(told) ** 2;
  return [
    {
      ...(isFirst ? { heading: 'setup.heading.arrival' } : {}),
      what: 'arrival.gain',
      symbol: K,
      formula: V === 0 ? '0' : 'C/V',
      values: V === 0 ? {} : { C, V },
      value: gain,
      unit: '1',
      source,
    },
    {
      what: end === 'lower' ? 'arrival.shows-lower' : 'arrival.shows',
      symbol: Y,
      formula: `y + ${K}*(a - e)`,
      values: { y: before.value, [K]: gain, a: reading, e: told.value },
      value: read.value,
      unit,
      source,
    },
  ];
}
