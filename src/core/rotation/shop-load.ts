import type { Held } from './shop-model.ts';
import { type HoldSums, holdSums } from './shop-sums.ts';

/** A task on a resource for several, as a bound sees it. */
export interface Share {
  readonly head: number;
  readonly hold: number;
  readonly length: number;
  readonly tail: number;
  /** Of the tasks with the same `kind` only so many can be held beyond their end at one time. */
  readonly kind: number;
  readonly kindCapacity: number;
}

/**
 * When the last of these tasks, longest first, can end at the soonest where none begins before `time`: each bearer
 * does whole tasks one by one, none over a break. Before a break, and before the end, one has room for a sum of holds
 * at most, and the last of them may be held beyond.
 */
export function soonestOfShares({ capacity, closed }: Held, shares: readonly Share[], time: number): number {
  const load = shares.reduce((sum, { hold }) => sum + hold, 0);
  const beyond = heldBeyond(shares, capacity);
  const sums = holdSums(shares.map(({ hold }) => hold));
  const breaks = shares.some(({ length }) => length === 0) ? new Int32Array(0) : closed;
  const fits = (end: number): boolean => workBy(breaks, beyond, sums, time, end) >= load;
  let low = time + pigeons(shares, capacity) - (beyond[0] as number);
  let high = low + 1;
  while (!fits(high)) high += high - low + 1;
  // `low` may fit or not; `high` does.
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    if (fits(middle)) high = middle;
    else low = middle + 1;
  }
  return low;
}

/** The most work that all bearers get done of what ends by `end`. */
function workBy(
  closed: Int32Array,
  beyond: readonly number[],
  sums: HoldSums,
  time: number,
  end: number,
): number {
  let begins = time;
  let work = 0;
  const add = (room: number): void => {
    for (const more of beyond) work += sums.greatestUpTo(room + more);
  };
  for (let n = 0; n < closed.length && (closed[n] as number) < end; n += 2) {
    if ((closed[n] as number) > begins) add((closed[n] as number) - begins);
    begins = Math.max(begins, closed[n + 1] as number);
  }
  // A task of no length may begin at the end itself.
  if (end >= begins) add(end - begins);
  return work;
}

/** By bearer how long the last task may be held beyond its end, the most first. */
function heldBeyond(shares: readonly Share[], capacity: number): readonly number[] {
  const taken = new Map<number, number>();
  const beyond: number[] = [];
  for (const { hold, length, kind, kindCapacity } of [...shares].sort(
    (a, b) => b.hold - b.length - (a.hold - a.length),
  )) {
    const before = taken.get(kind) ?? 0;
    if (beyond.length === capacity || before === kindCapacity) continue;
    taken.set(kind, before + 1);
    beyond.push(hold - length);
  }
  while (beyond.length < capacity) beyond.push(0);
  return beyond;
}

/** Of k times the capacity and one more tasks, one bearer has k + 1: at least the shortest of them. */
function pigeons(shares: readonly Share[], capacity: number): number {
  let most = 0;
  for (let each = 0; each * capacity < shares.length; each += 1) {
    const last = each * capacity;
    most = Math.max(
      most,
      shares.slice(last - each, last + 1).reduce((sum, { hold }) => sum + hold, 0),
    );
  }
  return most;
}
