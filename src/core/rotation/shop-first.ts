import type { Random } from '../uncertainty/random.ts';
import { listRows, listSchedule } from './shop-greedy.ts';
import type { ShopModel } from './shop-model.ts';

const TRIES = 100;
/** How far a try differs from the best so far. */
const SPREAD = 0.3;

/** The best of some first schedules, each near the best before it; `null` where none keeps all windows. */
export function firstSchedule(
  model: ShopModel,
  enough: number,
  steps: number,
  random: Random,
): { readonly starts: Int32Array; readonly end: number } | null {
  const rows = listRows(model);
  let pull = new Float64Array(model.resources.length).fill(1);
  let liking = Float64Array.from(model.latest, (latest) => (model.horizon - latest) / 100);
  let best: { readonly starts: Int32Array; readonly end: number } | null = null;
  const longest = model.lengths.reduce((most, length) => Math.max(most, length), 0);
  for (let attempt = 0; attempt <= Math.min(TRIES, steps); attempt += 1) {
    const nextPull = attempt === 0 ? pull : pull.map((each) => each * (1 + SPREAD * (random.even() - 0.5)));
    const nextLiking =
      attempt === 0 ? liking : liking.map((each) => each + SPREAD * longest * (random.even() - 0.5));
    const end = listSchedule(model, rows, nextPull, nextLiking);
    if (end > (best?.end ?? Number.MAX_VALUE)) continue;
    best = { starts: Int32Array.from(rows.starts), end };
    pull = nextPull;
    liking = nextLiking;
    if (end <= enough) break;
  }
  return best;
}
