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
  const often = new Map<string, number>();
  for (const { group, posterior } of numbers)
    for (const { tableKey, ofChance } of posterior.causes)
      if (ofChance > 0)
        often.set(`${group}\n${tableKey}`, (often.get(`${group}\n${tableKey}`) ?? 0) + ofChance);
  const once = (group: string, { tableKey }: PosteriorCause): number =>
    1 / Math.max(1, often.get(`${group}\n${tableKey}`) ?? 1);
  const seen = numbers.map(({ group, posterior, expected }) => {
    const chance = { doing: 0, reading: 0, unexplained: 0 };
    const counts = { doing: 0, reading: 0, unexplained: 0 };
    for (const each of posterior.causes)
      if (each.kind !== 'good' && each.ofChance > 0) {
        chance[each.kind] += each.ofChance;
        counts[each.kind] += each.ofChance * once(group, each);
      }
    return { chance, counts, expected };
  });
  const times = { doing: 1, reading: 1, unexplained: 1 };
  for (let step = 0; step < STEPS; step += 1) {
    const mistakes = { doing: WORTH, reading: WORTH, unexplained: WORTH };
    const likely = {
      doing: WORTH * times.doing,
      reading: WORTH * times.reading,
      unexplained: WORTH * times.unexplained,
    };
    for (const { chance, counts, expected } of seen) {
      const [after, before] = [1 / totalAt(chance, times), 1 / totalAt(expected, times)];
      for (const kind of KINDS) {
        mistakes[kind] += counts[kind] * times[kind] * after;
        likely[kind] += expected[kind] * times[kind] * before;
      }
    }
    for (const kind of KINDS) times[kind] *= mistakes[kind] / likely[kind];
  }
  return times;
}

/** What shares of 1 add up to with the rest, where each kind becomes so many times as probable. */
const totalAt = (shares: ByKind, times: ByKind): number =>
  KINDS.reduce((sum, kind) => sum + (times[kind] - 1) * shares[kind], 1);

/** The causes of a reading in a class that makes so many times as many mistakes, most probable first. */
export function atRate(causes: readonly PosteriorCause[], times: ByKind): readonly PosteriorCause[] {
  const factor = ({ kind }: PosteriorCause): number => (kind === 'good' ? 1 : times[kind]);
  const total = causes.reduce((sum, each) => sum + (factor(each) - 1) * each.ofChance, 1);
  return causes
    .map((each) => ({
      ...each,
      probability: (each.probability + (factor(each) - 1) * each.ofChance) / total,
      ofStation: each.ofStation / total,
    }))
    .sort((a, b) => b.probability - a.probability);
}
