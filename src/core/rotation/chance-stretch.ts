import type { Stretch } from './chance-plan.ts';

/**
 * When something of this length can begin, from `start` on: nobody begins what by the plan would reach into a
 * break. `Infinity` where it never can.
 *
 * @example beginAround([{ from: 600, to: 900 }], 500, 120) // => 900
 */
export function beginAround(shut: readonly Stretch[], start: number, length: number): number {
  let at = start;
  for (let moved = true; moved; ) {
    moved = false;
    for (const { from, to } of shut) {
      const blocks = to === Infinity ? at >= from : at < to && at + length > from;
      if (!blocks) continue;
      if (to === Infinity) return Infinity;
      at = to;
      moved = true;
    }
  }
  return at;
}

/** When something begun at `start` is over, and whether it is done or was cut off. */
export interface Over {
  at: number;
  isDone: boolean;
}

/**
 * Work that meets a break goes on after it; what meets a stretch without an end is cut off there.
 *
 * @example workAround([{ from: 600, to: 900 }], 500, 120, { at: 0, isDone: false }).at // => 920
 */
export function workAround(shut: readonly Stretch[], start: number, length: number, over: Over): Over {
  let at = start;
  let left = length;
  over.isDone = true;
  for (const { from, to } of shut) {
    if (to <= at) continue;
    if (at + left <= from) break;
    if (to === Infinity) {
      over.isDone = false;
      over.at = Math.max(at, from);
      return over;
    }
    left -= Math.max(0, from - at);
    at = to;
  }
  over.at = at + left;
  return over;
}

/**
 * How much of a stretch of time is open.
 *
 * @example openBetween([{ from: 600, to: 900 }], 500, 1000) // => 200
 */
export function openBetween(shut: readonly Stretch[], start: number, end: number): number {
  let open = 0;
  let at = start;
  for (const { from, to } of shut) {
    if (from >= end) break;
    if (to <= at) continue;
    open += Math.max(0, from - at);
    at = to;
  }
  return open + Math.max(0, end - at);
}
