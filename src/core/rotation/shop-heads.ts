import { allowedFrom } from './shop-breaks.ts';
import type { Arc, Held, ShopModel } from './shop-model.ts';

/** By task: when it can begin at the soonest, and how long it takes at least from its end to the end of all. */
export interface HeadsTails {
  readonly heads: Int32Array;
  readonly tails: Int32Array;
}

/**
 * From the order of tasks, the breaks, and that several tasks before one (or after it) on a resource for one take all
 * their time together. `least` is how long each tail is at least. `null` where the order runs in a circle.
 */
export function headsTails(model: ShopModel, least: Int32Array): HeadsTails | null {
  const heads = Int32Array.from(model.earliest, (time, task) => allowed(model, task, time));
  const tails = Int32Array.from(least);
  const sets = model.arcs.length === 0 ? [] : neighboursOn(model);
  for (let round = 0; round <= 2 * model.count; round += 1) {
    const isSame = [
      ...model.arcs.map((arc) => followArc(model, arc, heads, tails)),
      ...sets.map((set) => followSet(model, set, heads, tails)),
    ].every((each) => each);
    if (isSame) return { heads, tails };
  }
  return null;
}

const allowed = (model: ShopModel, task: number, time: number): number =>
  allowedFrom(model.forbidden[task] as Int32Array, time);

/** True where it told nothing new. */
function followArc(model: ShopModel, arc: Arc, heads: Int32Array, tails: Int32Array): boolean {
  const { first, then, gap } = arc;
  const rest = gap - (model.lengths[first] as number) + (model.lengths[then] as number);
  return (
    Number(raise(tails, first, rest + (tails[then] as number))) +
      Number(raise(heads, then, allowed(model, then, (heads[first] as number) + gap))) ===
    0
  );
}

function raise(row: Int32Array, task: number, value: number): boolean {
  if (value <= (row[task] as number)) return false;
  row[task] = value;
  return true;
}

/** All that come right before a task, or right after it, on one resource. */
interface Neighbours {
  readonly task: number;
  readonly isBefore: boolean;
  readonly others: readonly { readonly task: number; readonly gap: number; readonly hold: number }[];
}

function neighboursOn(model: ShopModel): readonly Neighbours[] {
  const holds = model.resources.filter(({ capacity }) => capacity === 1).map(holdByTask);
  const found: Neighbours[] = [];
  for (let task = 0; task < model.count; task += 1) {
    const before = model.arcs.filter(({ then }) => then === task);
    const after = model.arcs.filter(({ first }) => first === task);
    for (const hold of holds) {
      const on = (arcs: readonly Arc[], of: (arc: Arc) => number): Neighbours['others'] =>
        [...new Set(arcs.map(of))].flatMap((other) => {
          const gap = Math.max(...arcs.filter((arc) => of(arc) === other).map((arc) => arc.gap));
          const held = hold.get(other);
          return held === undefined ? [] : [{ task: other, gap, hold: held }];
        });
      const sooner = on(before, ({ first }) => first);
      const later = on(after, ({ then }) => then);
      if (sooner.length > 1) found.push({ task, isBefore: true, others: sooner });
      if (later.length > 1) found.push({ task, isBefore: false, others: later });
    }
  }
  return found;
}

const holdByTask = ({ tasks, holds }: Held): ReadonlyMap<number, number> =>
  new Map(Array.from(tasks, (task, place) => [task, holds[place] as number] as const));

/** True where it told nothing new. */
function followSet(
  model: ShopModel,
  { task, isBefore, others }: Neighbours,
  heads: Int32Array,
  tails: Int32Array,
): boolean {
  const least = (of: (other: Neighbours['others'][number]) => number): number => Math.min(...others.map(of));
  const load = others.reduce((sum, { hold }) => sum + hold, 0);
  if (isBefore) {
    const begins = least((other) => heads[other.task] as number);
    const time = begins + load + least(({ gap, hold }) => gap - hold);
    return !raise(heads, task, allowed(model, task, time));
  }
  const wait = least(({ gap }) => gap) - (model.lengths[task] as number);
  // The last of them is over before its resource is free of it.
  const rest = least(
    (other) => (model.lengths[other.task] as number) - other.hold + (tails[other.task] as number),
  );
  return !raise(tails, task, wait + load + rest);
}
