import { type Belief, beliefOf, takeInMean, without } from './apparatus-belief.ts';
import type { Evidence } from './evidence.ts';
import { likelihoodsInto } from './explanation.ts';
import {
  ledAfter,
  ledShare,
  NO_TURN,
  NOTHING,
  noiseOf,
  type Turn,
  type Weighable,
  weightsInto,
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
  // Shares before each sweep, likelihoods after it: written over, and seen by nobody before the last.
  const rows = shares.map((row): number[] => [...row]);
  let belief = beliefOf(prior);
  let led: readonly number[] = [];
  for (let sweep = 0; sweep < SWEEPS; sweep += 1) {
    if (sweep > 0) for (const [n, row] of rows.entries()) shareOut(readings[n], led[n] ?? 1, row);
    const told = readings.map((reading, n) => toldBy(reading, rows[n] ?? [], noisier));
    led = ledOf(readings, rows);
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
    for (const [n, row] of rows.entries()) {
      const [reading, own] = [readings[n], told[n]];
      if (reading === undefined || own === undefined) continue;
      const { setup, explanations } = reading;
      const { shift, doubt } = without(belief, setup, own.distance, own.precision);
      likelihoodsInto(row, explanations, shift, doubt, noisier);
    }
  }
  return { belief, likelihoods: rows, led };
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

/** Turns the likelihoods of a reading's explanations into how much of it each of them is. */
function shareOut(reading: Weighable | undefined, led: number, row: number[]): void {
  if (reading === undefined) return;
  const total = weightsInto(row, reading, led);
  for (let n = 0; n < row.length; n += 1) row[n] = (row[n] ?? 0) / total;
}
