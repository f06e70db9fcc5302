import type { CausePosterior, PosteriorCause } from './cause-posterior.ts';
import { timesCounted } from './group-habit.ts';
import type { ByKind } from './likely-cause.ts';

/** One number of the class: what it is taken for, and how probable each kind was before it was read. */
export interface Counted {
  readonly group: string;
  readonly posterior: CausePosterior;
  readonly expected: ByKind;
  /** The part of what was expected that can be a habit of the group. */
  readonly ofHabits: ByKind;
}

/** That a class makes so many times as many mistakes as the base rates say, kind by kind, with how probable that is. */
export interface PossibleRate {
  readonly times: ByKind;
  readonly probability: number;
}

const KINDS = ['doing', 'reading', 'unexplained'] as const;

/**
 * Nobody has counted how often mistakes are made. A class makes so many times more or fewer of all kinds than the base
 * rates say, and of each kind so many times more or fewer than of the others, two times of three (lognormals).
 * Common practice, no source.
 */
const OF_ALL_KINDS = Math.log(6);
const OF_EACH_KIND = Math.log(2);

/** Less probable than this beside the best, a rate is left out. */
const NO_LONGER = 1e-3;

/** Where that is looked at, in standard deviations of one kind. */
const STEPS = [-2, -1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2];
const STEP = Math.hypot(OF_ALL_KINDS, OF_EACH_KIND);

const possible = (doing: number, reading: number, unexplained: number): PossibleRate => ({
  times: {
    doing: Math.exp(STEP * doing),
    reading: Math.exp(STEP * reading),
    unexplained: Math.exp(STEP * unexplained),
  },
  probability: normalTogether([STEP * doing, STEP * reading, STEP * unexplained]),
});

/** Density, but for a factor, of normal numbers that have one part in common and one each of their own. */
function normalTogether(logs: readonly number[]): number {
  const sum = logs.reduce((all, each) => all + each, 0);
  const squares = logs.reduce((all, each) => all + each ** 2, 0);
  const [common, own] = [OF_ALL_KINDS ** 2, OF_EACH_KIND ** 2];
  return Math.exp(-(squares - (common * sum ** 2) / (own + logs.length * common)) / (2 * own));
}

const PRIOR: readonly PossibleRate[] = STEPS.flatMap((doing) =>
  STEPS.flatMap((reading) => STEPS.map((unexplained) => possible(doing, reading, unexplained))),
).filter(({ probability }) => probability > NO_LONGER);

/**
 * How many times as many mistakes a class makes as the base rates say, found from the class itself: Bayes over all rates
 * that are possible. A habit counts once; what the station or the card did doesn't count.
 */
export function classRates(numbers: readonly Counted[]): readonly PossibleRate[] {
  const seen = countedOnce(numbers);
  const logs = PRIOR.map(({ times, probability }) => Math.log(probability) + logLikelihood(seen, times));
  const most = Math.max(...logs);
  const left = PRIOR.flatMap(({ times }, n) => {
    const probability = Math.exp((logs[n] ?? 0) - most);
    return probability < NO_LONGER ? [] : [{ times, probability }];
  });
  const all = left.reduce((sum, { probability }) => sum + probability, 0);
  return left.map(({ times, probability }) => ({ times, probability: probability / all }));
}

/** One logarithm for so many numbers together: of more the product could leave the range of a double. */
const TOGETHER = 50;

function logLikelihood(seen: readonly Seen[], times: ByKind): number {
  const [doing, reading, unexplained] = [times.doing - 1, times.reading - 1, times.unexplained - 1];
  let [log, odds] = [0, 1];
  for (const [n, { made, expected }] of seen.entries()) {
    odds *=
      (1 + doing * made.doing + reading * made.reading + unexplained * made.unexplained) /
      (1 + doing * expected.doing + reading * expected.reading + unexplained * expected.unexplained);
    if (n % TOGETHER === 0) [log, odds] = [log + Math.log(odds), 1];
  }
  return log + Math.log(odds);
}

/**
 * A part of what a class does wrong moves its readings by less than they scatter, and is taken for good: half as much again as is
 * seen. Found with simulated classes; common practice, no source.
 */
const WITH_UNSEEN = 1.5;

/**
 * How many times as many mistakes a class makes as the base rates say, as one number: on the average over all that is possible,
 * with what isn't seen, to a power of the root of two, so that few readings more seldom move it.
 */
export function timesAsMany(numbers: readonly Counted[]): number {
  const rates = classRates(numbers);
  let [made, expected] = [0, 0];
  for (const kind of KINDS) {
    const all = numbers.reduce((sum, each) => sum + each.expected[kind], 0);
    expected += all;
    made += all * rates.reduce((sum, { times, probability }) => sum + probability * times[kind], 0);
  }
  return expected === 0 ? 1 : 2 ** (Math.round(2 * Math.log2((WITH_UNSEEN * made) / expected)) / 2);
}

/** What a number was taken for and what was expected of it, each habit counted once. */
interface Seen {
  readonly made: ByKind;
  readonly expected: ByKind;
}

function countedOnce(numbers: readonly Counted[]): readonly Seen[] {
  const often = oftenInGroup(numbers);
  const count = new Map<string, number>();
  for (const { group } of numbers) count.set(group, (count.get(group) ?? 0) + 1);
  return numbers.map(({ group, posterior, expected, ofHabits }) => {
    const made = { ...posterior.chance };
    const again = often.get(group);
    for (const { kind, tableKey, ofChance } of again === undefined ? [] : posterior.causes) {
      const times = again?.get(tableKey);
      if (kind !== 'good' && times !== undefined) made[kind] -= ofChance * (1 - 1 / times);
    }
    // Without a group nobody knows whose habit it is.
    const less = group === '' ? 0 : 1 - timesCounted(count.get(group) ?? 1);
    const { doing, reading, unexplained } = expected;
    return {
      made,
      expected: {
        doing: doing - less * ofHabits.doing,
        reading: reading - less * ofHabits.reading,
        unexplained,
      },
    };
  });
}

/** What a group has made more than once, with how often: mistakes by what they are called for the whole table. */
function oftenInGroup(numbers: readonly Counted[]): ReadonlyMap<string, ReadonlyMap<string, number>> {
  const groups = new Map<string, Map<string, number>>();
  for (const { group, posterior } of numbers) {
    if (group === '') continue;
    let often = groups.get(group);
    if (often === undefined) {
      often = new Map();
      groups.set(group, often);
    }
    for (const { tableKey, ofChance } of posterior.causes)
      if (ofChance > 0) often.set(tableKey, (often.get(tableKey) ?? 0) + ofChance);
  }
  for (const [group, often] of groups) {
    for (const [key, times] of often) if (times <= 1) often.delete(key);
    if (often.size === 0) groups.delete(group);
  }
  return groups;
}

/** What shares of 1 add up to with the rest, where each kind becomes so many times as probable. */
const totalAt = (shares: ByKind, { doing, reading, unexplained }: ByKind): number =>
  1 + (doing - 1) * shares.doing + (reading - 1) * shares.reading + (unexplained - 1) * shares.unexplained;

/** Less probable than this, a cause is neither said nor counted with those that are. */
const NOTHING = 1e-4;

/** The causes of a reading in a class that makes so many times as many mistakes, most probable first. */
export function atRates(
  { causes, chance }: CausePosterior,
  rates: readonly PossibleRate[],
): readonly PosteriorCause[] {
  // Each rate makes everything so many times as probable, and what hangs on its kind still more so.
  let [whole, doing, reading, unexplained] = [0, 0, 0, 0];
  for (const { times, probability } of rates) {
    const share = probability / totalAt(chance, times);
    whole += share;
    doing += share * (times.doing - 1);
    reading += share * (times.reading - 1);
    unexplained += share * (times.unexplained - 1);
  }
  const more = { good: 0, doing, reading, unexplained };
  const found: PosteriorCause[] = [];
  for (const each of causes) {
    const probability = each.probability * whole + each.ofChance * more[each.kind];
    if (probability > NOTHING) found.push({ ...each, probability, ofStation: each.ofStation * whole });
  }
  return found.sort((a, b) => b.probability - a.probability);
}
