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

/**
 * What one reading says of its group's habits, by what they are called for the whole table: how many times as probable
 * (as a logarithm) it is where the group has the habit.
 */
export type Shown = ReadonlyMap<string, number>;

/**
 * Half of the mistakes that can be a habit are made by groups that have it, and these make it four times of five; the
 * rest are slips. Common practice, no source.
 */
const OF_HABIT = 0.5;
const KEPT = 0.8;

/** Rate of the mistake in a group that hasn't got the habit, where `rate` is that of all groups. */
const slipRate = (rate: number): number => rate * (1 - OF_HABIT);

/**
 * The rate of a mistake after what the group's other readings have shown (Bayes over having the habit or not). What
 * differs too little to be seen in one reading shows in all of a group's readings together.
 *
 * @example habitRate(0.03, 0) // => 0.03
 */
export function habitRate(rate: number, shown: number): number {
  const before = Math.min((rate * OF_HABIT) / (KEPT - slipRate(rate)), 0.5);
  const odds = (before / (1 - before)) * Math.exp(shown);
  return slipRate(rate) + (KEPT - slipRate(rate)) * (odds / (1 + odds));
}

/** What a reading shows of a habit: the mistake is `rate` probable before it is read, and `after` then. */
export function shownBy(rate: number, after: number): number {
  const under = (share: number): number => (share * after) / rate + ((1 - share) * (1 - after)) / (1 - rate);
  return Math.log(under(KEPT) / under(slipRate(rate)));
}

/** A habit belongs to a group; swapping two setups makes two readings wrong at once. */
export const isHabit = ({ kind, persists, code }: Pick<Explanation, 'kind' | 'persists' | 'code'>): boolean =>
  kind !== 'good' && (persists === 'group' || code === 'setup.swapped');

/** The explanations of a reading with the rates of this group; what is left is good. */
export function withHabits(
  explanations: readonly Explanation[],
  others: readonly Shown[],
): readonly number[] {
  if (others.length === 0) return explanations.map(({ rate }) => rate);
  const rates = explanations.map((each) =>
    isHabit(each) && each.led !== true ? habitRate(each.rate, shownIn(others, each.tableKey)) : each.rate,
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

const shownIn = (others: readonly Shown[], key: string): number =>
  others.reduce((sum, each) => sum + (each.get(key) ?? 0), 0);

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
