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
 * What readings say of their group's habits, by what these are called for the whole table: how many times as probable they
 * are where the group has the habit, in tenths of a logarithm. Whole numbers, so that one reading can be taken out again.
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
  const odds = (before / (1 - before)) * Math.exp(shown / 10);
  return slipRate(rate) + (KEPT - slipRate(rate)) * (odds / (1 + odds));
}

/**
 * How often a mistake that can be a habit is counted, of the times that it is made, where a group has read so many numbers and a
 * habit counts once.
 *
 * @example timesCounted(1) // => 1
 */
export const timesCounted = (numbers: number): number =>
  1 - OF_HABIT + OF_HABIT / Math.max(1, KEPT * numbers);

/**
 * What a reading shows of a habit: the mistake is `rate` probable before it is read, and `after` then, where the table
 * leaves it `open`. Held to tenths: it moves a little with every other reading of the table, and would otherwise move all of
 * the group's readings at all tables.
 */
export function shownBy(rate: number, after: number, open: number): number {
  const under = (share: number): number => (share * after) / rate + ((1 - share) * (1 - after)) / (1 - rate);
  return Math.round(10 * Math.log(1 - open + (open * under(KEPT)) / under(slipRate(rate))));
}

/** What all readings of a group show together. */
export function shownTogether(all: readonly Shown[]): Shown {
  const sums = new Map<string, number>();
  for (const shown of all) for (const [key, tenths] of shown) sums.set(key, (sums.get(key) ?? 0) + tenths);
  return sums;
}

export const isSameShown = (a: Shown, b: Shown | undefined): boolean =>
  a.size === b?.size && [...a].every(([key, tenths]) => b.get(key) === tenths);

/** A habit belongs to a group; swapping two setups makes two readings wrong at once. */
export const isHabit = ({ kind, persists, code }: Pick<Explanation, 'kind' | 'persists' | 'code'>): boolean =>
  kind !== 'good' && (persists === 'group' || code === 'setup.swapped');

/** The explanations of a reading with the rates that a group has by its `others`; what is left is good. */
export function withHabits(
  explanations: readonly Explanation[],
  others: (key: string) => number,
): readonly number[] {
  let [before, habits, rest] = [0, 0, 0];
  const rates: number[] = [];
  for (const each of explanations) {
    const isOpen = isHabit(each) && each.led !== true;
    const rate = isOpen ? habitRate(each.rate, others(each.tableKey)) : each.rate;
    before += each.rate;
    if (isRaised(each, rate)) habits += rate;
    else rest += rate;
    rates.push(rate);
  }
  if (rest === 0) return rates;
  // All together stay as probable as they were: a habit takes from everything else in proportion.
  const times = Math.max(before - habits, 0.05 * before) / rest;
  for (let n = 0; n < rates.length; n += 1) {
    const [each, rate] = [explanations[n], rates[n] ?? 0];
    if (each !== undefined && !isRaised(each, rate)) rates[n] = rate * times;
  }
  return rates;
}

const isRaised = (of: Explanation, rate: number): boolean => rate > of.rate;

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
