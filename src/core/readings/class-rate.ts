import type { CausePosterior, PosteriorCause } from './cause-posterior.ts';

/** One number of the class: what it is taken for, and how probable any mistake was before it was read. */
export interface Counted {
  readonly group: string;
  readonly posterior: CausePosterior;
  /** Sum of the base rates of everything that is no good reading, of 1. */
  readonly expected: number;
}

/** The base rates together are worth so many mistakes that were seen. Common practice, no source. */
const WORTH = 1;
const STEPS = 12;

/**
 * How many times as many mistakes this class makes as the base rates say (odds against good readings): found from the
 * class itself, because nobody has counted. A habit counts once, what the station or the card did
 * doesn't count. Expectation and maximisation, beginning at 1 with the weight of one mistake.
 *
 * @example classRate([]) // => 1
 */
export function classRate(numbers: readonly Counted[]): number {
  const often = new Map<string, number>();
  for (const { group, posterior } of numbers)
    for (const { tableKey, ofChance } of posterior.causes)
      if (ofChance > 0)
        often.set(`${group}\n${tableKey}`, (often.get(`${group}\n${tableKey}`) ?? 0) + ofChance);
  const once = (group: string, { tableKey, ofChance }: PosteriorCause): number =>
    tableKey === 'good' ? 0 : ofChance / Math.max(1, often.get(`${group}\n${tableKey}`) ?? 1);
  const seen = numbers.map(({ group, posterior, expected }) => {
    const chance = chanceOf(posterior);
    const counts = posterior.causes.reduce((sum, each) => sum + once(group, each), 0);
    return { chance, share: chance === 0 ? 0 : counts / chance, expected };
  });
  let times = 1;
  for (let step = 0; step < STEPS; step += 1) {
    let [mistakes, expected] = [WORTH, WORTH * times];
    for (const { chance, share, expected: before } of seen) {
      mistakes += share * oddsTimes(chance, times);
      expected += oddsTimes(before, times);
    }
    times *= mistakes / expected;
  }
  return times;
}

/** Probability that something happened which hangs on a base rate. */
const chanceOf = ({ causes }: CausePosterior): number => causes.reduce((sum, each) => sum + each.ofChance, 0);

/** A probability whose odds are multiplied. */
const oddsTimes = (p: number, times: number): number => (times * p) / (1 - p + times * p);

/** The causes of a reading in a class that makes so many times as many mistakes, most probable first. */
export function atRate(causes: readonly PosteriorCause[], times: number): readonly PosteriorCause[] {
  const chance = causes.reduce((sum, each) => sum + each.ofChance, 0);
  const total = 1 - chance + times * chance;
  return causes
    .map((each) => ({
      ...each,
      probability: (each.probability + (times - 1) * each.ofChance) / total,
      ofStation: each.ofStation / total,
    }))
    .sort((a, b) => b.probability - a.probability);
}
