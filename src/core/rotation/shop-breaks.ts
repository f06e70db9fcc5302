import type { Blocked } from './shop.ts';

/**
 * The beginnings at which a task of this length would run over a blocked interval, as pairs: after each first and
 * before each second, in order, none touching another. A task of no length runs over nothing.
 */
export function forbiddenStarts(
  blocked: readonly Blocked[],
  task: number,
  length: number,
  horizon: number,
): Int32Array {
  if (length === 0) return new Int32Array(0);
  const spans = blocked
    .filter(({ from, to, tasks }) => from < to && (tasks === null || tasks.includes(task)))
    .map(({ from, to }) => [Math.max(from, -1) - length, Math.min(to, horizon + 1)] as const)
    .filter(([after, before]) => before > 0 && after + 1 < before)
    .sort((a, b) => a[0] - b[0]);
  const merged: (readonly [number, number])[] = [];
  for (const span of spans) {
    const last = merged.at(-1);
    // A beginning exactly between two, at the end of one and the last moment before the other, is allowed.
    if (last === undefined || span[0] >= last[1]) merged.push(span);
    else merged[merged.length - 1] = [last[0], Math.max(last[1], span[1])];
  }
  return Int32Array.from(merged.flat());
}

/** The first allowed beginning at or after `time`. */
export function allowedFrom(forbidden: Int32Array, time: number): number {
  for (let n = 0; n < forbidden.length; n += 2)
    if (time > (forbidden[n] as number) && time < (forbidden[n + 1] as number))
      return forbidden[n + 1] as number;
  return time;
}

/** The last allowed beginning at or before `time`. */
export function allowedUpTo(forbidden: Int32Array, time: number): number {
  for (let n = 0; n < forbidden.length; n += 2)
    if (time > (forbidden[n] as number) && time < (forbidden[n + 1] as number)) return forbidden[n] as number;
  return time;
}

/** The breaks of all these tasks, as pairs of from and to, in order and none touching another. */
export function breaksOf(blocked: readonly Blocked[], tasks: readonly number[]): Int32Array {
  const spans = blocked
    .filter((each) => each.tasks === null || tasks.every((task) => each.tasks?.includes(task)))
    .filter(({ from, to }) => from < to && to > 0 && Number.isFinite(to))
    .map(({ from, to }) => [Math.max(0, from), to] as const)
    .sort((a, b) => a[0] - b[0]);
  const merged: (readonly [number, number])[] = [];
  for (const span of spans) {
    const last = merged.at(-1);
    if (last === undefined || span[0] > last[1]) merged.push(span);
    else merged[merged.length - 1] = [last[0], Math.max(last[1], span[1])];
  }
  return Int32Array.from(merged.flat());
}
