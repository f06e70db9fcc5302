import { allowedFrom } from './shop-breaks.ts';
import type { Held, ShopModel } from './shop-model.ts';

/**
 * No schedule ends before this: each resource has to get through its tasks after the earliest of them can begin
 * and before the shortest of what follows them. Of several bearers one has at least its share, and of so many
 * tasks one bearer has at least so many. `Infinity` where the order of tasks runs in a circle.
 */
export function shopBound(model: ShopModel): number {
  const heads = headsOf(model);
  const tails = tailsOf(model);
  if (heads === null || tails === null) return Infinity;
  const alone = model.lengths.reduce(
    (most, length, task) => Math.max(most, (heads[task] as number) + length + (tails[task] as number)),
    0,
  );
  return model.resources.reduce(
    (most, held) => Math.max(most, boundOf(held, model.lengths, heads, tails)),
    alone,
  );
}

/** By task its earliest beginning with the order and the breaks alone. */
function headsOf(model: ShopModel): Int32Array | null {
  const heads = Int32Array.from(model.earliest, (time, task) => allowed(model, task, time));
  for (let round = 0; round <= model.count; round += 1) {
    let isSame = true;
    for (const { first, then, gap } of model.arcs) {
      const time = (heads[first] as number) + gap;
      if (time <= (heads[then] as number)) continue;
      heads[then] = allowed(model, then, time);
      isSame = false;
    }
    if (isSame) return heads;
  }
  return null;
}

/** By task how long it takes at least from its end to the end of all. */
function tailsOf(model: ShopModel): Int32Array | null {
  const tails = new Int32Array(model.count);
  for (let round = 0; round <= model.count; round += 1) {
    let isSame = true;
    for (const { first, then, gap } of model.arcs) {
      const rest =
        gap - (model.lengths[first] as number) + (model.lengths[then] as number) + (tails[then] as number);
      if (rest <= (tails[first] as number)) continue;
      tails[first] = rest;
      isSame = false;
    }
    if (isSame) return tails;
  }
  return null;
}

const allowed = (model: ShopModel, task: number, time: number): number =>
  allowedFrom(model.forbidden[task] as Int32Array, time);

interface Share {
  readonly head: number;
  readonly hold: number;
  readonly length: number;
  /** From when the resource is free of it to the end of all; negative where it stays taken beyond. */
  readonly tail: number;
}

/** The greatest over all sets of tasks with a head and a tail at least so great. */
function boundOf(held: Held, lengths: Int32Array, heads: Int32Array, tails: Int32Array): number {
  const shares = Array.from(held.tasks, (task, place): Share => {
    const hold = held.holds[place] as number;
    const length = lengths[task] as number;
    return { head: heads[task] as number, hold, length, tail: (tails[task] as number) - (hold - length) };
  }).sort((a, b) => b.hold - a.hold);
  let most = 0;
  for (const head of new Set(shares.map((each) => each.head)))
    for (const tail of new Set(shares.map((each) => each.tail))) {
      const inside = shares.filter((each) => each.head >= head && each.tail >= tail);
      if (inside.length === 0) continue;
      const load = loadOfOne(inside, held.capacity);
      most = Math.max(most, acrossBreaks(held.closed, inside, head, load) + tail);
    }
  return most;
}

/** What one bearer has to bear at least. The shares come longest first. */
function loadOfOne(shares: readonly Share[], capacity: number): number {
  const all = shares.reduce((sum, { hold }) => sum + hold, 0);
  let most = Math.ceil(all / capacity);
  // Of k times the capacity and one more tasks, one bearer has k + 1: at least the shortest of them.
  for (let each = 1; each * capacity < shares.length; each += 1) {
    const last = each * capacity;
    const load = shares.slice(last - each, last + 1).reduce((sum, { hold }) => sum + hold, 0);
    most = Math.max(most, load);
  }
  return most;
}

/** When a load that begins at `time` is done, where no task of it runs over a break; a task of no length runs over nothing. */
function acrossBreaks(closed: Int32Array, shares: readonly Share[], time: number, load: number): number {
  const rest = shares.reduce((most, { hold, length }) => Math.max(most, hold - length), 0);
  const least = shares.reduce((fewest, { hold }) => Math.min(fewest, hold), Infinity);
  if (shares.some(({ length }) => length === 0)) return time + load;
  let begins = time;
  let left = load;
  for (let n = 0; n < closed.length; n += 2) {
    const from = closed[n] as number;
    const to = closed[n + 1] as number;
    if (to <= begins) continue;
    if (begins + left - rest <= from) break;
    // What was begun before the break may stay on in it by its time after, and not more.
    if (from > begins) left = Math.max(least, left - (from - begins) - rest);
    begins = to;
  }
  return begins + left;
}
