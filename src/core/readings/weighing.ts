import { type Belief, beliefOf, takeIn, takeInMean, without } from './apparatus-belief.ts';
import { type Explanation, likelihoodOf } from './explanation.ts';

/** One reading with what may have happened, as one hypothesis about its table sees it. */
export interface Weighable {
  /** Place of its setup in the table. */
  readonly setup: number;
  readonly explanations: readonly Explanation[];
  /** Rate x density of a number that nothing explains. */
  readonly unexplained: number;
  readonly group: string;
  /** How a change of the table leads groups astray; `null` where nothing changed. */
  readonly led: Leads | null;
}

/** A share of groups, and how many readings of a group's own it is worth: what a group did once it does again. */
export interface Leads {
  readonly share: number;
  readonly worth: number;
}

/** How a hypothesis explains the readings of a table. */
export interface Weighed {
  /** Logarithm of the probability of all readings. */
  readonly evidence: number;
  readonly belief: Belief;
  /** Likelihood of each explanation of each reading, given all other readings. */
  readonly likelihoods: readonly (readonly number[])[];
  /** How probable it is that the reading's group was led, by the group's other readings. */
  readonly led: readonly number[];
}

/** Between careful readings and all of them weighed, this often. */
const SWEEPS = 3;
/** Shares smaller than this move nothing. */
const NOTHING = 1e-6;

/** Probability of a reading by itself: the apparatus anywhere that its file, or a fifth beside it, allows. */
export function likelyAlone(
  { explanations, unexplained, led }: Weighable,
  at: { readonly shared: number; readonly middle: number } | undefined,
): number {
  const { shared = 0, middle = 0 } = at ?? {};
  let [close, wide] = [unexplained, unexplained];
  for (const each of explanations) {
    const rate = ledRate(each.rate, each.led, led?.share ?? 1);
    close += rate * likelihoodOf(each, 0, shared, 1);
    wide += rate * likelihoodOf(each, 0, shared + (ELSEWHERE * middle) ** 2, 1);
  }
  return (1 - RARELY) * close + RARELY * wide;
}

/**
 * How many of a class a change leads is learnt from the other groups: the share is worth so many readings of theirs. A card that
 * is plainly wrong leads everybody. Common practice, no source.
 */
const CLASS_WORTH = 3;

interface Turn {
  readonly led: number;
  readonly count: number;
}

const ledAfter = ({ share, worth }: Leads, own: Turn, all: Turn): number => {
  const others = all.count - own.count;
  const often = (share * CLASS_WORTH + all.led - own.led) / (CLASS_WORTH + others);
  return (often * worth + own.led) / (worth + own.count);
};

/** What a rate becomes where the group was led with probability `led`. */
export const ledRate = (rate: number, isLed: boolean | null, led: number): number =>
  isLed === null ? rate : rate * (isLed ? led : 1 - led);

const ELSEWHERE = 0.2;
const RARELY = 0.1;

/** Probability of all readings in the order they came: each given those before it. */
export function evidenceOf(
  readings: readonly Weighable[],
  prior: readonly (readonly number[])[],
  noisier: number,
): { readonly evidence: number; readonly shares: readonly (readonly number[])[] } {
  const belief = beliefOf(prior);
  const shares: (readonly number[])[] = [];
  const turns = new Map<string, { led: number; count: number }>();
  const all = { led: 0, count: 0 };
  let evidence = 0;
  for (const { setup, explanations, unexplained, group, led } of readings) {
    const turn = led === null ? null : (turns.get(group) ?? { led: 0, count: 0 });
    const isLed = turn === null || led === null ? 1 : ledAfter(led, turn, all);
    const shift = belief.mean[setup] ?? 0;
    const doubt = belief.spread[setup]?.[setup] ?? 0;
    const share: number[] = [];
    let total = unexplained;
    for (const each of explanations) {
      const weight = ledRate(each.rate, each.led, isLed) * likelihoodOf(each, shift, doubt, noisier);
      share.push(weight);
      total += weight;
    }
    evidence += Math.log(total);
    let [a, aSquared, b] = [0, 0, 0];
    for (let n = 0; n < explanations.length; n += 1) {
      const p = (share[n] ?? 0) / total;
      share[n] = p;
      const each = explanations[n];
      if (each === undefined || !each.informs || p < NOTHING || doubt === 0) continue;
      const S = each.gain ** 2 * doubt + noiseOf(each, noisier);
      const move = (each.gain * (each.value - (each.low + each.high) / 2 - each.gain * shift)) / S;
      a += p * move;
      aSquared += p * move ** 2;
      b += (p * each.gain ** 2) / S;
    }
    shares.push(share);
    if (turn !== null) {
      turns.set(group, turn);
      const seen = ledShare(explanations, share);
      for (const each of [turn, all]) {
        each.count += 1;
        each.led += seen;
      }
    }
    if (b > 0) takeIn(belief, setup, a, aSquared, b);
  }
  return { evidence, shares };
}

/**
 * Every reading against all the others: the apparatus is found from the readings, each with the weight that
 * it is a plain one, and each reading is then judged by the apparatus as the others show it.
 */
export function weigh(
  readings: readonly Weighable[],
  prior: readonly (readonly number[])[],
  noisier: number,
): Weighed {
  const { evidence, shares } = evidenceOf(readings, prior, noisier);
  let now = shares;
  let belief = beliefOf(prior);
  let likelihoods: readonly (readonly number[])[] = [];
  let led: readonly number[] = [];
  for (let sweep = 0; sweep < SWEEPS; sweep += 1) {
    const told = readings.map((reading, n) => toldBy(reading, now[n] ?? [], noisier));
    belief = beliefOf(prior);
    for (let s = 0; s < prior.length; s += 1) {
      let [precision, sum] = [0, 0];
      for (const [n, each] of told.entries())
        if (readings[n]?.setup === s) {
          precision += each.precision;
          sum += each.precision * each.distance;
        }
      if (precision > 0) takeInMean(belief, s, sum / precision, precision);
    }
    likelihoods = readings.map(({ setup, explanations }, n) => {
      const own = told[n] ?? { distance: 0, precision: 0 };
      const { shift, doubt } = without(belief, setup, own.distance, own.precision);
      return explanations.map((each) => likelihoodOf(each, shift, doubt, noisier));
    });
    led = ledOf(readings, now);
    now = likelihoods.map((row, n) => sharesOf(readings[n], row, led[n] ?? 1));
  }
  return { evidence, belief, likelihoods, led };
}

/** What one reading tells of the figure at its setup: a distance, with the precision that it deserves. */
function toldBy({ explanations }: Weighable, share: readonly number[], noisier: number) {
  let [precision, sum] = [0, 0];
  for (const [n, each] of explanations.entries()) {
    const p = share[n] ?? 0;
    if (!each.informs || p < NOTHING) continue;
    const noise = noiseOf(each, noisier);
    precision += (p * each.gain ** 2) / noise;
    sum += (p * each.gain * (each.value - (each.low + each.high) / 2)) / noise;
  }
  return { precision, distance: precision === 0 ? 0 : sum / precision };
}

/** For each reading how probable it is, by the group's others, that the group was led. */
function ledOf(readings: readonly Weighable[], now: readonly (readonly number[])[]): readonly number[] {
  const own = readings.map(({ explanations, led }, n) =>
    led === null ? 0 : ledShare(explanations, now[n] ?? []),
  );
  const turns = new Map<string, Turn>();
  let all: Turn = { led: 0, count: 0 };
  const and = (turn: Turn, n: number): Turn => ({ led: turn.led + (own[n] ?? 0), count: turn.count + 1 });
  for (const [n, { group, led }] of readings.entries()) {
    if (led === null) continue;
    turns.set(group, and(turns.get(group) ?? { led: 0, count: 0 }, n));
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

const ledShare = (explanations: readonly Explanation[], share: readonly number[]): number =>
  explanations.reduce((sum, { led }, n) => (led === true ? sum + (share[n] ?? 0) : sum), 0);

function sharesOf(reading: Weighable | undefined, row: readonly number[], led: number): readonly number[] {
  if (reading === undefined) return [];
  const weights = row.map((each, n) => {
    const explanation = reading.explanations[n];
    return explanation === undefined ? 0 : each * ledRate(explanation.rate, explanation.led, led);
  });
  const total = weights.reduce((sum, each) => sum + each, reading.unexplained);
  return weights.map((each) => each / total);
}

/** Of a band the whole width is noise: it lies anywhere within. */
const noiseOf = (of: Explanation, noisier: number): number =>
  of.noise * noisier + (of.high - of.low) ** 2 / 12;
