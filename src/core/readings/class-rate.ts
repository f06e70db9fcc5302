import type { CausePosterior, PosteriorCause } from './cause-posterior.ts';
import type { ByKind } from './likely-cause.ts';

/** One number of the class: what it is taken for, and how probable each kind was before it was read. */
export interface Counted {
  readonly group: string;
  readonly posterior: CausePosterior;
  readonly expected: ByKind;
}

const KINDS = ['doing', 'reading', 'unexplained'] as const;
/**
 * The base rates of each kind together are worth so many mistakes that were seen: a class makes only a few that
 * are plain enough to count. Common practice, no source.
 */
const WORTH = 4;
const STEPS = 10;

/**
 * How many times as many mistakes this class makes as the base rates say, kind by kind: found from the
 * class itself, because nobody has counted. A habit counts once; what the station or the card did
 * doesn't count. Expectation and maximisation on the odds against good readings, from 1 on.
 *
 * @example classRate([]).doing // => 1
 */
export function classRate(numbers: readonly Counted[]): ByKind {
  const often = oftenInGroup(numbers);
  const seen = numbers.map(({ group, posterior, expected }) => {
    const { chance } = posterior;
    const counts = { ...chance };
    const again = often.get(group);
    if (again !== undefined)
      for (const { kind, tableKey, ofChance } of posterior.causes) {
        const times = again.get(tableKey);
        if (kind !== 'good' && times !== undefined) counts[kind] -= ofChance * (1 - 1 / times);
      }
    return { chance, counts, expected };
  });
  // By kind, as plain rows of numbers: they are gone through again in every step.
  const rows = KINDS.map((kind) => ({
    kind,
    made: seen.map(({ counts }) => counts[kind]),
    likely: seen.map(({ expected }) => expected[kind]),
  }));
  const times = { doing: 1, reading: 1, unexplained: 1 };
  for (let step = 0; step < STEPS; step += 1) {
    const after = seen.map(({ chance }) => 1 / totalAt(chance, times));
    const before = seen.map(({ expected }) => 1 / totalAt(expected, times));
    for (const { kind, made, likely } of rows) {
      const now = times[kind];
      times[kind] *= sumAt(made, now, after, WORTH) / sumAt(likely, now, before, WORTH * now);
    }
  }
  return times;
}

function sumAt(shares: readonly number[], times: number, by: readonly number[], worth: number): number {
  let sum = worth;
  for (let n = 0; n < shares.length; n += 1) sum += (shares[n] ?? 0) * times * (by[n] ?? 0);
  return sum;
}

/** What a group has made more than once, with how often: mistakes by what they are called for the whole table. */
function oftenInGroup(numbers: readonly Counted[]): ReadonlyMap<string, ReadonlyMap<string, number>> {
  const groups = new Map<string, Map<string, number>>();
  for (const { group, posterior } of numbers) {
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
export function atRate({ causes, chance }: CausePosterior, times: ByKind): readonly PosteriorCause[] {
  const total = totalAt(chance, times);
  const found: PosteriorCause[] = [];
  for (const each of causes) {
    const more = each.kind === 'good' ? 0 : times[each.kind] - 1;
    const probability = (each.probability + more * each.ofChance) / total;
    if (probability > NOTHING) found.push({ ...each, probability, ofStation: each.ofStation / total });
  }
  return found.sort((a, b) => b.probability - a.probability);
}
