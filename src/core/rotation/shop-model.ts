import type { Resource, Shop } from './shop.ts';
import { breaksOf, forbiddenStarts } from './shop-breaks.ts';

/**
 * A shop made ready for a search: what can't differ is dropped, every pair that shares a resource for one is
 * listed once, and times are whole numbers in plain rows.
 */
export interface ShopModel {
  readonly count: number;
  readonly lengths: Int32Array;
  /** Earliest and latest beginning by task. */
  readonly earliest: Int32Array;
  readonly latest: Int32Array;
  /** If there is any schedule there is one that ends by this, whatever is asked of its windows. */
  readonly horizon: number;
  /** Two tasks that never run at once: the second begins `there` after the first does, or the first `back` after the second. */
  readonly pairs: readonly OrderedPair[];
  /** `then` begins no sooner than `gap` after `first` begins. */
  readonly arcs: readonly Arc[];
  /** Those for one task at a time, and those for several. */
  readonly resources: readonly Held[];
  /** By task the beginnings that breaks forbid: after each `from` and before its `to`, in order. */
  readonly forbidden: readonly Int32Array[];
}

export interface OrderedPair {
  readonly first: number;
  readonly second: number;
  readonly there: number;
  readonly back: number;
}

export interface Arc {
  readonly first: number;
  readonly then: number;
  readonly gap: number;
}

/** A resource with the tasks that can get in each other's way on it. */
export interface Held {
  readonly capacity: number;
  readonly tasks: Int32Array;
  /** By place in `tasks`: its length and what it stays taken after. */
  readonly holds: Int32Array;
  /** Breaks of all its tasks: from, to, in order. */
  readonly closed: Int32Array;
}

/** Beyond this a sum of times could leave the whole numbers that the rows hold. */
const MOST_TIME = 2 ** 28;

/**
 * The shop as the searches read it; `null` where a task can't be done at all. A task that holds a resource for no
 * time doesn't take it.
 *
 * @throws RangeError where a time is no whole number, or too great.
 */
export function shopModel(shop: Shop): ShopModel | null {
  const count = shop.lengths.length;
  const lengths = Int32Array.from(shop.lengths, (each) => wholeTime(each, 'a length'));
  const earliest = Int32Array.from(shop.lengths, (_, task) =>
    Math.max(0, wholeTime(shop.earliest?.[task] ?? 0, 'an earliest beginning')),
  );
  const arcs = shop.before.map(({ first, then, gap }) => ({
    first,
    then,
    gap: (lengths[first] as number) + wholeTime(gap, 'a gap'),
  }));
  const resources = shop.resources.map((each) => heldBy(shop, each, lengths)).filter((each) => each !== null);
  if (resources.some(({ capacity, tasks }) => capacity <= 0 && tasks.length > 0)) return null;
  const horizon = horizonOf(shop, lengths, earliest);
  if (horizon > MOST_TIME) throw new RangeError(`the times of a shop add up to ${horizon}: too much`);
  const latest = Int32Array.from(
    lengths,
    (length, task) => Math.min(horizon, Math.max(-1, latestEnd(shop, task))) - length,
  );
  const forbidden = shop.lengths.map((length, task) => forbiddenStarts(shop.blocked, task, length, horizon));
  const tight = resources.filter(({ capacity, tasks }) => tasks.length > capacity);
  return {
    count,
    lengths,
    earliest,
    latest,
    horizon,
    pairs: pairsOf(count, tight),
    arcs,
    resources: tight,
    forbidden,
  };
}

/** Rounded down: a task with whole times that ends by 7.5 ends by 7. */
function latestEnd(shop: Shop, task: number): number {
  return Math.floor(shop.latest?.[task] ?? Infinity);
}

function heldBy(shop: Shop, resource: Resource, lengths: Int32Array): Held | null {
  const holds = resource.tasks.map(
    (task, place) => (lengths[task] as number) + wholeTime(resource.after[place] ?? 0, 'a time after'),
  );
  if (new Set(resource.tasks).size < resource.tasks.length)
    throw new RangeError('a resource has a task twice');
  const places = holds.flatMap((hold, place) => (hold > 0 ? [place] : []));
  if (places.length === 0) return null;
  return {
    capacity: Math.floor(resource.capacity),
    tasks: Int32Array.from(places, (place) => resource.tasks[place] as number),
    holds: Int32Array.from(places, (place) => holds[place] as number),
    closed: breaksOf(shop.blocked, resource.tasks),
  };
}

/** Every pair on a resource for one; where two share several, the longest time apart counts. */
function pairsOf(count: number, resources: readonly Held[]): readonly OrderedPair[] {
  const found = new Map<number, { first: number; second: number; there: number; back: number }>();
  for (const { capacity, tasks, holds } of resources) {
    if (capacity !== 1) continue;
    for (let a = 0; a < tasks.length; a += 1)
      for (let b = a + 1; b < tasks.length; b += 1) {
        const isInOrder = (tasks[a] as number) < (tasks[b] as number);
        const [low, high] = isInOrder ? [a, b] : [b, a];
        const [first, second] = [tasks[low] as number, tasks[high] as number];
        const [there, back] = [holds[low] as number, holds[high] as number];
        const known = found.get(first * count + second);
        if (known === undefined) found.set(first * count + second, { first, second, there, back });
        else {
          known.there = Math.max(known.there, there);
          known.back = Math.max(known.back, back);
        }
      }
  }
  return [...found.values()];
}

/**
 * In a schedule in which nothing can be moved forward without changing an order, every task begins at its
 * earliest, at the end of a break, or right after another: no chain of those is longer than all tasks together.
 */
function horizonOf(shop: Shop, lengths: Int32Array, earliest: Int32Array): number {
  const anchors = shop.blocked
    .flatMap(({ from, to }) => [from, to])
    .flatMap((time) => (Number.isFinite(time) ? [wholeTime(time, 'a break')] : []));
  const rests = Int32Array.from(lengths, () => 0);
  const rest = (task: number, more: number): void => {
    rests[task] = Math.max(rests[task] as number, more);
  };
  for (const { tasks, after } of shop.resources)
    tasks.forEach((task, place) => {
      rest(task, after[place] ?? 0);
    });
  for (const { first, gap } of shop.before) rest(first, gap);
  const chain = lengths.reduce((sum, length, task) => sum + length + (rests[task] as number), 0);
  return Math.max(0, ...earliest, ...anchors) + chain;
}

function wholeTime(time: number, what: string): number {
  if (!Number.isSafeInteger(time)) throw new RangeError(`${what} is a whole number of units, not ${time}`);
  if (Math.abs(time) > MOST_TIME) throw new RangeError(`${what} is at most ${MOST_TIME}, not ${time}`);
  return time;
}
