import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Explanation } from './explanation.ts';
import { type Shown, shownBy, withHabits } from './group-habit.ts';
import type { LikelyCause } from './judgement.ts';
import type { TableWeights } from './table-weights.ts';
import { ledRate } from './weighing.ts';

/** What probably happened at one reading, all hypotheses about its table together. */
export interface CausePosterior {
  /** The probabilities add up to 1. */
  readonly causes: readonly PosteriorCause[];
  /** What the reading shows of its group's habits: what neither station nor card explains. */
  readonly shown: Shown;
  /** Probabilities by what a cause is called for the whole table. */
  readonly byTable: ReadonlyMap<string, number>;
}

export interface PosteriorCause extends LikelyCause {
  readonly tableKey: string;
  /** How much of the probability hangs on how often such a thing happens: not the station's, nor the card's. */
  readonly ofChance: number;
}

/** Less probable than this, a cause is not kept. */
const NOTHING = 1e-6;

interface Sum {
  readonly explanation: Explanation;
  probability: number;
  ofStation: number;
  ofChance: number;
  wouldShow: number;
}

const sumOf = (explanation: Explanation): Sum => ({
  explanation,
  probability: 0,
  ofStation: 0,
  ofChance: 0,
  wouldShow: Number.NaN,
});

/**
 * Bayes over good, each mistake and "unexplained" for the n-th number of a table: under each hypothesis rate x likelihood
 * given all other readings, then by how probable the hypothesis is.
 */
export function causePosterior(weights: TableWeights, n: number, others: readonly Shown[]): CausePosterior {
  const sums = new Map<string, Sum>();
  const shown = new Map<string, number>();
  const byTable = new Map<string, number>();
  let unexplained = 0;
  for (const { hypothesis, probability, readings, weighed } of weights.live) {
    const reading = readings[n];
    const likelihoods = weighed.likelihoods[n] ?? [];
    if (reading === undefined) continue;
    const rates = withHabits(reading.explanations, others);
    const led = weighed.led[n] ?? 1;
    let total = reading.unexplained;
    const parts = reading.explanations.map((each, e) => {
      const part = ledRate(rates[e] ?? 0, each.led, led) * (likelihoods[e] ?? 0);
      total += part;
      return part;
    });
    unexplained += (probability * reading.unexplained) / total;
    const shift = weighed.belief.mean[reading.setup] ?? 0;
    for (let e = 0; e < parts.length; e += 1) {
      const explanation = reading.explanations[e];
      const share = (probability * (parts[e] ?? 0)) / total;
      if (explanation === undefined || share < NOTHING) continue;
      const { key, tableKey, ofStation, fixed, low, high, gain } = explanation;
      const sum = sums.get(key) ?? sumOf(explanation);
      if (fixed === null && (Number.isNaN(sum.wouldShow) || share > sum.probability))
        sum.wouldShow = (low + high) / 2 + gain * shift;
      sum.probability += share;
      byTable.set(tableKey, (byTable.get(tableKey) ?? 0) + share);
      if (ofStation) sum.ofStation += share;
      else if (hypothesis.change?.key !== tableKey && explanation.kind !== 'good') {
        sum.ofChance += share;
        shown.set(tableKey, (shown.get(tableKey) ?? 0) + share);
      }
      sums.set(key, sum);
    }
  }
  return {
    causes: [
      ...[...sums.values()]
        .filter(({ probability }) => probability > NOTHING)
        .map(({ explanation, probability, ofStation, ofChance, wouldShow }) => ({
          code: explanation.code,
          ...factsOf(explanation.facts),
          kind: explanation.kind,
          probability,
          wouldShow: Number.isNaN(wouldShow) ? null : wouldShow,
          ofStation,
          ofChance,
          tableKey: explanation.tableKey,
        })),
      {
        code: 'unexplained',
        kind: 'unexplained' as const,
        probability: unexplained,
        wouldShow: null,
        ofStation: 0,
        ofChance: unexplained,
        tableKey: 'unexplained',
      },
    ],
    shown: shownOf(weights, n, shown),
    byTable,
  };
}

/**
 * What a reading shows of its group's habits, as far as the table leaves it open. Held to tenths: it moves a little with
 * every other reading of the table, and would otherwise move all of the group's readings at all tables.
 */
function shownOf(weights: TableWeights, n: number, after: ReadonlyMap<string, number>): Shown {
  const changed = new Map<string, number>();
  for (const { hypothesis, probability } of weights.live)
    if (hypothesis.change !== null)
      changed.set(hypothesis.change.key, (changed.get(hypothesis.change.key) ?? 0) + probability);
  const shown = new Map<string, number>();
  for (const [key, rate] of weights.numbers[n]?.habits ?? []) {
    const open = 1 - (changed.get(key) ?? 0);
    if (open < NOTHING) continue;
    const own = shownBy(rate, Math.min((after.get(key) ?? 0) / open, 1));
    const held = Math.round(10 * Math.log(1 - open + open * Math.exp(own))) / 10;
    if (held !== 0) shown.set(key, held);
  }
  return shown;
}

const factsOf = (facts: Facts | undefined) => (facts === undefined ? {} : { facts });
