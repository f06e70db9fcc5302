import { type Belief, beliefOf, takeIn } from './apparatus-belief.ts';
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

/** Readings as one hypothesis took them in, one after the other: each given those before it. */
export interface Evidence {
  readonly readings: readonly Weighable[];
  /** Logarithm of the probability of all of them. */
  readonly logarithm: number;
  /** What each was taken for when it came: a share of 1 for each of its explanations. */
  readonly shares: readonly (readonly number[])[];
  /** The apparatus after the last of them. */
  readonly belief: Belief;
  /** By group, and of all: how many were led by what changed at the table. */
  readonly turns: ReadonlyMap<string, Turn>;
  readonly all: Turn;
}

/**
 * Evidence of readings in the order they came. Where the same hypothesis has taken in the first of them `before`,
 * only the rest is taken in: a class asks again with every reading.
 */
export function evidenceOf(
  readings: readonly Weighable[],
  prior: readonly (readonly number[])[],
  noisier: number,
  before?: Evidence,
): Evidence {
  const known = before !== undefined && isBeginning(before.readings, readings) ? before : null;
  const belief = beliefOf(known?.belief.spread ?? prior, known?.belief.mean);
  const shares = [...(known?.shares ?? [])];
  const turns = new Map(known?.turns);
  let all = known?.all ?? NO_TURN;
  let logarithm = known?.logarithm ?? 0;
  for (let r = shares.length; r < readings.length; r += 1) {
    const reading = readings[r];
    if (reading === undefined) continue;
    const { explanations, group, led } = reading;
    const turn = turns.get(group) ?? NO_TURN;
    const share = sharesNow(reading, belief, noisier, led === null ? 1 : ledAfter(led, turn, all));
    logarithm += Math.log(share.total);
    shares.push(share.shares);
    if (led !== null) {
      const seen = ledShare(explanations, share.shares);
      turns.set(group, oneMore(turn, seen));
      all = oneMore(all, seen);
    }
    learn(belief, reading, share.shares, noisier);
  }
  return { readings, logarithm, shares, belief, turns, all };
}

/** What may have happened at a reading is made once, so that it is known again by what it is. */
const isBeginning = (some: readonly Weighable[], all: readonly Weighable[]): boolean =>
  some.length <= all.length && some.every(({ explanations }, n) => explanations === all[n]?.explanations);

const oneMore = ({ led, count }: Turn, seen: number): Turn => ({ led: led + seen, count: count + 1 });

function sharesNow(reading: Weighable, belief: Belief, noisier: number, led: number) {
  const { setup, explanations } = reading;
  const shares: number[] = [];
  likelihoodsInto(shares, explanations, belief.mean[setup] ?? 0, belief.spread[setup]?.[setup] ?? 0, noisier);
  const total = weightsInto(shares, reading, led);
  for (let n = 0; n < shares.length; n += 1) shares[n] = (shares[n] ?? 0) / total;
  return { total, shares };
}

/** Takes into the belief what one reading tells of the apparatus. */
function learn(belief: Belief, reading: Weighable, shares: readonly number[], noisier: number): void {
  const { setup, explanations } = reading;
  const shift = belief.mean[setup] ?? 0;
  const doubt = belief.spread[setup]?.[setup] ?? 0;
  if (doubt === 0) return;
  let [a, aSquared, b] = [0, 0, 0];
  for (let n = 0; n < explanations.length; n += 1) {
    const p = shares[n] ?? 0;
    const each = explanations[n];
    if (each === undefined || !each.informs || p < NOTHING) continue;
    const S = each.gain ** 2 * doubt + noiseOf(each, noisier);
    const move = (each.gain * (each.value - (each.low + each.high) / 2 - each.gain * shift)) / S;
    a += p * move;
    aSquared += p * move ** 2;
    b += (p * each.gain ** 2) / S;
  }
  if (b > 0) takeIn(belief, setup, a, aSquared, b);
}
