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

/** Shares smaller than this move nothing. */
export const NOTHING = 1e-6;

/** Probability of a reading by itself: the apparatus anywhere that its file, or a fifth beside it, allows. */
export function likelyAlone(
  { explanations, unexplained, led }: Weighable,
  at: { readonly shared: number; readonly middle: number } | undefined,
): number {
  const { shared = 0, middle = 0 } = at ?? {};
  const elsewhere = shared + (ELSEWHERE * middle) ** 2;
  let [close, wide] = [unexplained, unexplained];
  for (const each of explanations) {
    const rate = ledRate(each.rate, each.led, led?.share ?? 1);
    close += rate * likelihoodOf(each, 0, shared, 1);
    wide += rate * likelihoodOf(each, 0, elsewhere, 1);
  }
  return (1 - RARELY) * close + RARELY * wide;
}

const ELSEWHERE = 0.2;
const RARELY = 0.1;

/** How many of some readings were led, and how many there are. */
export interface Turn {
  readonly led: number;
  readonly count: number;
}

export const NO_TURN: Turn = { led: 0, count: 0 };

/**
 * How many of a class a change leads is learnt from the other groups: the share is worth so many readings of theirs. A card that
 * is plainly wrong leads everybody. Common practice, no source.
 */
const CLASS_WORTH = 3;

/** How probable it is that a group is led, after its own readings and those of all. */
export const ledAfter = ({ share, worth }: Leads, own: Turn, all: Turn): number => {
  const others = all.count - own.count;
  const often = (share * CLASS_WORTH + all.led - own.led) / (CLASS_WORTH + others);
  return (often * worth + own.led) / (worth + own.count);
};

/** What a rate becomes where the group was led with probability `led`. */
export const ledRate = (rate: number, isLed: boolean | null, led: number): number =>
  isLed === null ? rate : rate * (isLed ? led : 1 - led);

/** Likelihoods of a reading's explanations -> rate x likelihood, in place; gives back the total with "unexplained". */
export function weightsInto(row: number[], { explanations, unexplained }: Weighable, led: number): number {
  let total = unexplained;
  for (let n = 0; n < explanations.length; n += 1) {
    const each = explanations[n];
    if (each === undefined) continue;
    const weight = ledRate(each.rate, each.led, led) * (row[n] ?? 0);
    row[n] = weight;
    total += weight;
  }
  return total;
}

/** How much of a reading is explained by where the table leads. */
export const ledShare = (explanations: readonly Explanation[], share: readonly number[]): number =>
  explanations.reduce((sum, { led }, n) => (led === true ? sum + (share[n] ?? 0) : sum), 0);

/** Of a band the whole width is noise: it lies anywhere within. */
export const noiseOf = (of: Explanation, noisier: number): number =>
  of.noise * noisier + (of.high - of.low) ** 2 / 12;
