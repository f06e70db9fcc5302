import type { Explanation } from './explanation.ts';
import { type Shown, shownBy, withHabits } from './group-habit.ts';
import type { ByKind, LikelyCause } from './likely-cause.ts';
import type { TableWeights } from './table-weights.ts';
import { ledRate } from './weighable.ts';

/** What probably happened at one reading, all hypotheses about its table together. */
export interface CausePosterior {
  /** The probabilities add up to 1. */
  readonly causes: readonly PosteriorCause[];
  /** What the reading shows of its group's habits: what neither station nor card explains. */
  readonly shown: Shown;
  /** How much of the probability hangs on how often each kind of mistake is made. */
  readonly chance: ByKind;
}

export interface PosteriorCause extends LikelyCause {
  readonly tableKey: string;
  /** How much of the probability hangs on how often such a thing happens: not the station's, nor the card's. */
  readonly ofChance: number;
}

/** Less probable than this, a cause is not kept. */
const NOTHING = 1e-6;

/** A cause while it is added up over the hypotheses. */
type Sum = { -readonly [K in keyof PosteriorCause]: PosteriorCause[K] };

const sumOf = ({ code, facts, kind, tableKey }: Explanation): Sum => {
  const sum: Sum = { code, kind, probability: 0, wouldShow: null, ofStation: 0, ofChance: 0, tableKey };
  if (facts !== undefined) sum.facts = facts;
  return sum;
};

/** A group that has shown nothing yet. */
const nothingShown = (): number => 0;

/**
 * Bayes over good, each mistake and "unexplained" for the n-th number of a table: under each hypothesis rate x likelihood
 * given all other readings, then by how probable the hypothesis is. `others`: what the group's other readings show.
 */
export function causePosterior(
  weights: TableWeights,
  n: number,
  others: (key: string) => number = nothingShown,
): CausePosterior {
  const sums = new Map<string, Sum>();
  const ratesOf = new Map<readonly Explanation[], readonly number[]>();
  const parts: number[] = [];
  let unexplained = 0;
  for (const { hypothesis, probability, readings, weighed } of weights.live) {
    const reading = readings[n];
    if (reading === undefined) continue;
    const { explanations } = reading;
    const rates = ratesOf.get(explanations) ?? withHabits(explanations, others);
    ratesOf.set(explanations, rates);
    const likelihoods = weighed.likelihoods[n] ?? [];
    const led = weighed.led[n] ?? 1;
    let total = reading.unexplained;
    for (let e = 0; e < explanations.length; e += 1) {
      const part = ledRate(rates[e] ?? 0, explanations[e]?.led ?? null, led) * (likelihoods[e] ?? 0);
      parts[e] = part;
      total += part;
    }
    unexplained += (probability * reading.unexplained) / total;
    const shift = weighed.belief.mean[reading.setup] ?? 0;
    for (let e = 0; e < explanations.length; e += 1) {
      const explanation = explanations[e];
      const share = (probability * (parts[e] ?? 0)) / total;
      if (explanation === undefined || share < NOTHING) continue;
      const { key, tableKey, ofStation, fixed, low, high, gain } = explanation;
      let sum = sums.get(key);
      if (sum === undefined) {
        sum = sumOf(explanation);
        sums.set(key, sum);
      }
      if (fixed === null && (sum.wouldShow === null || share > sum.probability))
        sum.wouldShow = (low + high) / 2 + gain * shift;
      sum.probability += share;
      if (ofStation) sum.ofStation += share;
      else if (hypothesis.change?.key !== tableKey && explanation.kind !== 'good') sum.ofChance += share;
    }
  }
  const causes: PosteriorCause[] = [...sums.values()];
  causes.push({
    code: 'unexplained',
    kind: 'unexplained',
    probability: unexplained,
    wouldShow: null,
    ofStation: 0,
    ofChance: unexplained,
    tableKey: 'unexplained',
  });
  const chance = { doing: 0, reading: 0, unexplained: 0 };
  for (const { kind, ofChance } of causes) if (kind !== 'good') chance[kind] += ofChance;
  return { causes, chance, shown: others === nothingShown ? shownOf(weights, n, causes) : NONE };
}

const NONE: Shown = new Map();

/** What a reading shows of its group's habits, as far as the table leaves it open. */
function shownOf(weights: TableWeights, n: number, causes: readonly PosteriorCause[]): Shown {
  const changed = new Map<string, number>();
  for (const { hypothesis, probability } of weights.live)
    if (hypothesis.change !== null)
      changed.set(hypothesis.change.key, (changed.get(hypothesis.change.key) ?? 0) + probability);
  const after = new Map<string, number>();
  for (const { tableKey, ofChance } of causes) after.set(tableKey, (after.get(tableKey) ?? 0) + ofChance);
  const shown = new Map<string, number>();
  for (const [key, rate] of weights.numbers[n]?.habits ?? []) {
    const open = 1 - (changed.get(key) ?? 0);
    if (open < NOTHING) continue;
    const tenths = shownBy(rate, Math.min((after.get(key) ?? 0) / open, 1), open);
    if (tenths !== 0) shown.set(key, tenths);
  }
  return shown;
}
