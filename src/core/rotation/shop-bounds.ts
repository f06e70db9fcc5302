import { type HeadsTails, headsTails } from './shop-heads.ts';
import { type Share, soonestOfShares } from './shop-load.ts';
import type { Held, ShopModel } from './shop-model.ts';
import { type Alike, soonestOnOne } from './shop-one.ts';

/**
 * No schedule ends before this: each resource has to get through its tasks after the earliest of them can begin
 * and before the shortest of what follows them. `Infinity` where the order of tasks runs in a circle.
 */
export function shopBound(model: ShopModel): number {
  return boundWith(model, new Int32Array(model.count));
}

/**
 * Whether the tasks of some resource, or in their order, can't all keep their latest ends: one that has to be done
 * sooner than the latest of all counts as if so much came after it.
 */
export function lacksTime(model: ShopModel): boolean {
  const ends = model.latest.map((latest, task) => latest + (model.lengths[task] as number));
  const last = ends.reduce((most, end) => Math.max(most, end), 0);
  return (
    boundWith(
      model,
      ends.map((end) => last - end),
    ) > last
  );
}

function boundWith(model: ShopModel, tails: Int32Array): number {
  const known = headsTails(model, tails);
  if (known === null) return Infinity;
  const alone = model.lengths.reduce(
    (most, length, task) =>
      Math.max(most, (known.heads[task] as number) + length + (known.tails[task] as number)),
    0,
  );
  return model.resources.reduce(
    (most, held) =>
      Math.max(
        most,
        held.capacity === 1 ? boundOfOne(model, held, known) : boundOfSeveral(model, held, known),
      ),
    alone,
  );
}

/** The greatest over all sets of tasks with a tail at least so great. */
function boundOfOne(model: ShopModel, held: Held, known: HeadsTails): number {
  const kinds = kindsOn(model, held, known);
  let most = 0;
  for (const tail of new Set(kinds.map((each) => each.tail))) {
    const inside = kinds.filter((each) => each.tail >= tail);
    most = Math.max(most, isPlain(inside) ? sumOf(inside) : boundInTurn(inside));
  }
  return most;
}

/** All of them in turn; where that is too many, as if all began and ended alike. */
function boundInTurn(kinds: readonly Alike[]): number {
  const exact = soonestOnOne(kinds);
  if (exact !== null) return exact;
  const head = Math.min(...kinds.map((each) => each.head));
  const tail = Math.min(...kinds.map((each) => each.tail));
  const alike = merged(kinds.map((each) => ({ ...each, head, tail })));
  return Math.max(sumOf(kinds), soonestOnOne(alike) ?? 0);
}

/** Where nothing but the sum of all counts. */
const isPlain = (kinds: readonly Alike[]): boolean =>
  kinds.every(
    ({ head, tail, forbidden }) =>
      head === kinds[0]?.head && tail === kinds[0]?.tail && forbidden.length === 0,
  );

/** The greatest over all sets with a head at least so great: one after the other, and what is shortest beyond. */
function sumOf(kinds: readonly Alike[]): number {
  let most = 0;
  for (const head of new Set(kinds.map((each) => each.head))) {
    const inside = kinds.filter((each) => each.head >= head);
    const load = inside.reduce((sum, { count, hold }) => sum + count * hold, 0);
    most = Math.max(
      most,
      head + load + Math.min(...inside.map(({ length, hold, tail }) => length - hold + tail)),
    );
  }
  return most;
}

function kindsOn(model: ShopModel, { tasks, holds }: Held, { heads, tails }: HeadsTails): readonly Alike[] {
  const each = Array.from(
    tasks,
    (task, place): Alike => ({
      count: 1,
      head: heads[task] as number,
      length: model.lengths[task] as number,
      hold: holds[place] as number,
      tail: tails[task] as number,
      forbidden: model.forbidden[task] as Int32Array,
    }),
  );
  return merged(each);
}

/** Those that differ in nothing as one kind. */
function merged(kinds: readonly Alike[]): readonly Alike[] {
  const found = new Map<string, Alike>();
  for (const one of kinds) {
    const key = [one.head, one.length, one.hold, one.tail, ...one.forbidden].join(' ');
    found.set(key, { ...one, count: one.count + (found.get(key)?.count ?? 0) });
  }
  return [...found.values()];
}

/** The greatest over all sets of tasks with a head and a tail at least so great. */
function boundOfSeveral(model: ShopModel, held: Held, { heads, tails }: HeadsTails): number {
  const shares = Array.from(held.tasks, (task, place): Share => {
    const hold = held.holds[place] as number;
    const length = model.lengths[task] as number;
    return {
      head: heads[task] as number,
      hold,
      length,
      tail: tails[task] as number,
      ...kindOf(model, held, task, hold),
    };
  }).sort((a, b) => b.hold - a.hold);
  let most = 0;
  for (const head of new Set(shares.map((each) => each.head)))
    for (const tail of new Set(shares.map((each) => each.tail))) {
      const inside = shares.filter((each) => each.head >= head && each.tail >= tail);
      if (inside.length > 0) most = Math.max(most, soonestOfShares(held, inside, head) + tail);
    }
  return most;
}

/** Of the resources that hold a task at least as long, the one with the most tasks of this one too. */
function kindOf(
  model: ShopModel,
  held: Held,
  task: number,
  hold: number,
): { readonly kind: number; readonly kindCapacity: number } {
  let kind = -1;
  let kindCapacity = held.capacity;
  let most = 0;
  model.resources.forEach((other, n) => {
    const place = other.tasks.indexOf(task);
    if (other === held || place < 0 || (other.holds[place] as number) < hold) return;
    const both = other.tasks.filter((each) => held.tasks.includes(each)).length;
    if (other.capacity >= held.capacity || both <= most) return;
    most = both;
    kind = n;
    kindCapacity = other.capacity;
  });
  return { kind, kindCapacity };
}
