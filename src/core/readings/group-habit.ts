import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Explanation } from './explanation.ts';
import type { LikelyCause } from './likely-cause.ts';
import type { WrittenReading } from './written-reading.ts';

/** A mistake that a group makes again and again: who wrote grams once does so again. */
export interface GroupHabit {
  readonly group: string;
  readonly code: string;
  readonly facts?: Facts;
  readonly kind: LikelyCause['kind'];
  /** Readings that it probably explains, by setup, in the order of the file. */
  readonly readings: readonly { readonly setup: string; readonly line: number | null }[];
}

/** What one reading says of its group's habits: which it could have shown, and how probably it did. */
export interface Shown {
  readonly possible: ReadonlySet<string>;
  readonly probability: ReadonlyMap<string, number>;
}

/**
 * Readings that the base rate of a habit is worth: after one sure instance the next is expected in every
 * second reading. Common practice, no source.
 */
const WORTH = 1;

/**
 * The rate of a mistake after what the group's other readings have shown: the mean of a beta law that began
 * at the base rate with the weight of one reading (Laplace's rule, with that prior).
 *
 * @example habitRate(0.03, 'reading.in-grams', []) // => 0.03
 */
export function habitRate(rate: number, key: string, others: readonly Shown[]): number {
  let [seen, count] = [0, 0];
  for (const { possible, probability } of others)
    if (possible.has(key)) {
      count += 1;
      seen += probability.get(key) ?? 0;
    }
  return (rate * WORTH + seen) / (WORTH + count);
}

/** A habit belongs to a group; swapping two setups makes two readings wrong at once. */
export const isHabit = ({ kind, persists, code }: Explanation): boolean =>
  kind !== 'good' && (persists === 'group' || code === 'setup.swapped');

/** The explanations of a reading with the rates of this group; what is left is good. */
export function withHabits(
  explanations: readonly Explanation[],
  others: readonly Shown[],
): readonly number[] {
  if (others.length === 0) return explanations.map(({ rate }) => rate);
  const rates = explanations.map((each) =>
    isHabit(each) && each.led !== true ? habitRate(each.rate, each.tableKey, others) : each.rate,
  );
  const before = explanations.reduce((sum, { rate }) => sum + rate, 0);
  const after = rates.reduce((sum, rate) => sum + rate, 0);
  // All together stay as probable as they were: a habit takes from everything else in proportion.
  const habits = rates.reduce((sum, rate, n) => (isRaised(explanations[n], rate) ? sum + rate : sum), 0);
  const rest = after - habits;
  const left = Math.max(before - habits, 0.05 * before);
  return rates.map((rate, n) =>
    isRaised(explanations[n], rate) || rest === 0 ? rate : (rate * left) / rest,
  );
}

const isRaised = (of: Explanation | undefined, rate: number): boolean => of !== undefined && rate > of.rate;

/** A habit is told from the second reading on. */
const TWICE = 2;

/** The likeliest cause of a reading that is looked at again, where neither station nor card explains it. */
export interface OwnMistake {
  readonly reading: WrittenReading;
  readonly cause: LikelyCause;
}

/** Mistakes that were probably made at least twice by one group. */
export function habitsOf(mistakes: readonly OwnMistake[]): readonly GroupHabit[] {
  const found = new Map<string, GroupHabit>();
  for (const { reading, cause } of mistakes) {
    if (reading.group === '') continue;
    const name = `${reading.group}\n${cause.code}`;
    const before = found.get(name);
    found.set(name, {
      group: reading.group,
      code: cause.code,
      ...(cause.facts === undefined ? {} : { facts: cause.facts }),
      kind: cause.kind,
      readings: [...(before?.readings ?? []), { setup: reading.setup, line: reading.line }],
    });
  }
  return [...found.values()].filter(({ readings }) => readings.length >= TWICE);
}
