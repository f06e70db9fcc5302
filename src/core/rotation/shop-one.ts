import { allowedFrom } from './shop-breaks.ts';

/** So many tasks that are alike, on a resource for one. */
export interface Alike {
  readonly count: number;
  readonly head: number;
  readonly length: number;
  readonly hold: number;
  readonly tail: number;
  readonly forbidden: Int32Array;
}

/** As many as are worth going through for a bound. */
const MOST_STATES = 100_000;

/**
 * The soonest end of all where one resource does these tasks one by one and nothing else matters: for each number
 * done of every kind when it can be free at the soonest (a shortest path). `null` where there are too many of those.
 */
export function soonestOnOne(kinds: readonly Alike[]): number | null {
  const states = kinds.reduce((product, { count }) => product * (count + 1), 1);
  if (states > MOST_STATES) return null;
  const free = new Float64Array(states).fill(Infinity);
  free[0] = 0;
  let soonest = Infinity;
  for (let state = 0; state < states - 1; state += 1) {
    const time = free[state] as number;
    let step = 1;
    for (const { count, head, length, hold, tail, forbidden } of kinds) {
      if (Math.floor(state / step) % (count + 1) < count) {
        const start = allowedFrom(forbidden, Math.max(time, head));
        const next = state + step;
        free[next] = Math.min(free[next] as number, start + hold);
        if (next === states - 1) soonest = Math.min(soonest, start + length + tail);
      }
      step *= count + 1;
    }
  }
  return soonest;
}
