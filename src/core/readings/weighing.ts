import { type Belief, beliefOf, takeInMean, without } from './apparatus-belief.ts';
import type { Evidence } from './evidence.ts';
import { likelihoodOf } from './explanation.ts';
import {
  ledAfter,
  ledRate,
  ledShare,
  NO_TURN,
  NOTHING,
  noiseOf,
  type Turn,
  type Weighable,
} from './weighable.ts';

/** How a hypothesis explains the readings of a table. */
export interface Weighed {
  readonly belief: Belief;
  /** Likelihood of each explanation of each reading, given all other readings. */
  readonly likelihoods: readonly (readonly number[])[];
  /** How probable it is that the reading's group was led, by the group's other readings. */
  readonly led: readonly number[];
}

/** Between careful readings and all of them weighed, this often. */
const SWEEPS = 3;

/**
 * Every reading against all the others: the apparatus is found from the readings, each with the weight that
 * it is a plain one, and each reading is then judged by the apparatus as the others show it.
 */
export function weigh(
  { readings, shares }: Evidence,
  prior: readonly (readonly number[])[],
  noisier: number,
): Weighed {
  // Written over from sweep to sweep; nobody else sees them before the last.
  const likelihoods = shares.map((row): number[] => [...row]);
  const now = shares.map((row): number[] => [...row]);
  let belief = beliefOf(prior);
  let led: readonly number[] = [];
  for (let sweep = 0; sweep < SWEEPS; sweep += 1) {
    const told = readings.map((reading, n) => toldBy(reading, now[n] ?? [], noisier));
    belief = beliefOf(prior);
    for (let s = 0; s < prior.length; s += 1) {
      let [precision, sum] = [0, 0];
      for (let n = 0; n < readings.length; n += 1) {
        const each = told[n];
        if (each === undefined || readings[n]?.setup !== s) continue;
        precision += each.precision;
        sum += each.precision * each.distance;
      }
      if (precision > 0) takeInMean(belief, s, sum / precision, precision);
    }
    led = ledOf(readings, now);
    for (let n = 0; n < readings.length; n += 1) {
      const [reading, row, share] = [readings[n], likelihoods[n], now[n]];
      if (reading === undefined || row === undefined || share === undefined) continue;
      const { distance = 0, precision = 0 } = told[n] ?? {};
      const { shift, doubt } = without(belief, reading.setup, distance, precision);
      for (const [e, each] of reading.explanations.entries())
        row[e] = likelihoodOf(each, shift, doubt, noisier);
      shareOut(reading, row, led[n] ?? 1, share);
    }
  }
  return { belief, likelihoods, led };
}

/** What one reading tells of the figure at its setup: a distance, with the precision that it deserves. */
function toldBy({ explanations }: Weighable, share: readonly number[], noisier: number) {
  let [precision, sum] = [0, 0];
  for (let n = 0; n < explanations.length; n += 1) {
    const each = explanations[n];
    const p = share[n] ?? 0;
    if (each === undefined || !each.informs || p < NOTHING) continue;
    const noise = noiseOf(each, noisier);
    precision += (p * each.gain ** 2) / noise;
    sum += (p * each.gain * (each.value - (each.low + each.high) / 2)) / noise;
  }
  return { precision, distance: precision === 0 ? 0 : sum / precision };
}

/** For each reading how probable it is, by the group's others, that the group was led. */
function ledOf(readings: readonly Weighable[], now: readonly (readonly number[])[]): readonly number[] {
  if (readings.every(({ led }) => led === null)) return readings.map(() => 1);
  const own = readings.map(({ explanations, led }, n) =>
    led === null ? 0 : ledShare(explanations, now[n] ?? []),
  );
  const turns = new Map<string, Turn>();
  let all = NO_TURN;
  const and = (turn: Turn, n: number): Turn => ({ led: turn.led + (own[n] ?? 0), count: turn.count + 1 });
  for (const [n, { group, led }] of readings.entries()) {
    if (led === null) continue;
    turns.set(group, and(turns.get(group) ?? NO_TURN, n));
    all = and(all, n);
  }
  return readings.map(({ group, led }, n) => {
    const turn = turns.get(group);
    if (led === null || turn === undefined) return 1;
    const seen = own[n] ?? 0;
    const less = ({ led: sum, count }: Turn): Turn => ({ led: sum - seen, count: count - 1 });
    return ledAfter(led, less(turn), less(all));
  });
}

/** Writes into `share` how much of a reading each of its explanations is. */
function shareOut(
  { explanations, unexplained }: Weighable,
  likelihoods: readonly number[],
  led: number,
  share: number[],
): void {
  let total = unexplained;
  for (let n = 0; n < explanations.length; n += 1) {
    const each = explanations[n];
    const weight = each === undefined ? 0 : (likelihoods[n] ?? 0) * ledRate(each.rate, each.led, led);
    share[n] = weight;
    total += weight;
  }
  for (let n = 0; n < share.length; n += 1) share[n] = (share[n] ?? 0) / total;
}
