import { inputsOf } from '../../src/core/setups/pull.ts';
import { readingChance } from '../../src/core/setups/reading-by-chance.ts';
import type { Setup } from '../../src/core/setups/setup.ts';
import { unknownsOf } from '../../src/core/uncertainty/propagate.ts';
import { type Random, randomFrom } from '../../src/core/uncertainty/random.ts';

/** What groups at tables of chance saw of a pair. */
export interface GroupsSeen {
  readonly order: number;
  readonly ratio: number;
  /** Share of readings at either setup that were plain readings of the pull. */
  readonly read: number;
}

/**
 * Groups one by one at apparatus of chance: each trial draws one apparatus and one reading (or the mean of
 * several) at each setup, as `readingChance` makes them. No sums over graduations, no spread draws.
 */
export function groupsByTrials(
  more: Setup,
  less: Setup,
  asked: { ratio: number; tolerance: number; trials: number; seed: number; repeats?: number },
): GroupsSeen {
  const random = randomFrom(asked.seed);
  const [first, second] = [readerOf(more), readerOf(less)];
  let [order, ratio, read] = [0, 0, 0];
  for (let n = 0; n < asked.trials; n += 1) {
    const off = new Map<string, number>();
    const a = meanOf(() => first(off, random), asked.repeats ?? 1);
    const b = meanOf(() => second(off, random), asked.repeats ?? 1);
    if (a === null || b === null) continue;
    read += 1;
    if (a > b + 1e-9) order += 1;
    const seen = b > 0 ? a / b : 0;
    if (a > b + 1e-9 && Math.abs(seen / asked.ratio - 1) <= asked.tolerance + 1e-9) ratio += 1;
  }
  return { order: order / asked.trials, ratio: ratio / asked.trials, read: read / asked.trials };
}

function meanOf(reading: () => number | null, repeats: number): number | null {
  let sum = 0;
  for (let n = 0; n < repeats; n += 1) {
    const one = reading();
    if (one === null) return null;
    sum += one;
  }
  return sum / repeats;
}

/** Reads a setup at an apparatus that is drawn as far as it is asked for, and kept in `off`. */
function readerOf(setup: Setup): (off: Map<string, number>, random: Random) => number | null {
  const { read } = readingChance(setup, 'anywhere');
  const unknowns = unknownsOf(inputsOf(setup));
  return (off, random) => {
    const drawn = unknowns.map(({ id, u, shape }) => {
      const kept =
        off.get(id) ?? u * (shape === 'even' ? Math.sqrt(12) * (random.even() - 0.5) : random.normal());
      off.set(id, kept);
      return kept;
    });
    const { fate, written } = read([random.even(), random.even(), random.normal(), ...drawn]);
    return fate === 'moves under the scale' ? null : written;
  };
}
