import type { Random } from '../uncertainty/random.ts';
import { type ListRows, listRows, listSchedule } from './shop-greedy.ts';
import type { ShopModel } from './shop-model.ts';

export interface Schedule {
  readonly starts: Int32Array;
  readonly end: number;
}

/**
 * How many tries a task is worth, and how many at most: found by trying classes of all sizes. Where every resource is
 * for one the search itself is the better way to a schedule.
 */
const TRIES = { ofOne: { each: 2, most: 100 }, ofSeveral: { each: 8, most: 1000 } } as const;
/** How far the weights of a try differ from the best so far. */
const SPREAD = 1.5;
/** How many tasks are moved at most, and how far, in lengths of the longest. */
const MOST_MOVED = 4;
const FARTHEST = 40;

/**
 * The best of some first schedules, which may be `LATE`; `null` where the order runs in a circle. The first half weighs
 * resources and tasks ever more as the best try did; the second does tasks in the order of the best schedule, but for
 * a few.
 */
export function firstSchedule(
  model: ShopModel,
  enough: number,
  steps: number,
  random: Random,
): Schedule | null {
  const rows = listRows(model);
  const { each, most } = model.resources.some(({ capacity }) => capacity > 1) ? TRIES.ofSeveral : TRIES.ofOne;
  const tries = Math.min(most, each * model.count, steps);
  const best = byWeights(model, rows, enough, Math.ceil(tries / 2), random);
  return best === null || best.end <= enough ? best : nearBest(model, rows, enough, tries / 2, random, best);
}

function byWeights(
  model: ShopModel,
  rows: ListRows,
  enough: number,
  tries: number,
  random: Random,
): Schedule | null {
  const longest = longestOf(model);
  let pull = new Float64Array(model.resources.length).fill(1);
  let liking = Float64Array.from(model.latest, (latest) => (model.horizon - latest) / 100);
  let best: Schedule | null = null;
  for (let attempt = 0; attempt <= tries; attempt += 1) {
    const change = (): number => (attempt === 0 ? 0 : SPREAD * (random.even() - 0.5));
    const nextPull = pull.map((each) => each * (1 + change()));
    const nextLiking = liking.map((each) => each + longest * change());
    const end = listSchedule(model, rows, nextPull, nextLiking);
    if (end > (best?.end ?? Number.MAX_VALUE)) continue;
    best = { starts: Int32Array.from(rows.starts), end };
    pull = nextPull;
    liking = nextLiking;
    if (end <= enough) break;
  }
  return best;
}

function nearBest(
  model: ShopModel,
  rows: ListRows,
  enough: number,
  tries: number,
  random: Random,
  first: Schedule,
): Schedule {
  const reach = FARTHEST * longestOf(model);
  const pull = new Float64Array(model.resources.length);
  let best = first;
  for (let attempt = 0; attempt < tries && best.end > enough; attempt += 1) {
    const liking = Float64Array.from(best.starts, (start) => -start);
    const moved = 1 + Math.floor(random.even() * MOST_MOVED);
    for (let n = 0; n < moved; n += 1) {
      const task = Math.floor(random.even() * model.count);
      // Sooner is tried a little more often than later.
      liking[task] = (liking[task] as number) + reach * (random.even() - 0.3);
    }
    const end = listSchedule(model, rows, pull, liking);
    if (end <= best.end) best = { starts: Int32Array.from(rows.starts), end };
  }
  return best;
}

const longestOf = ({ lengths }: ShopModel): number =>
  lengths.reduce((most, length) => Math.max(most, length), 0);
