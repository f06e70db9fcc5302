/** How the server's clock stands to one that only ever runs on, from the last few times it was heard. */
export interface ServerClock {
  /** The server said its time; `at` by our own running clock. */
  readonly heard: (now: number, at: number) => void;
  /** `null` until it was heard. */
  readonly now: (at: number) => number | null;
}

/** What was heard longer ago than so many tellings may be of before a sleep. */
const REMEMBERED = 8;

/**
 * The way here takes time, never less than none: of what was heard, the telling that came fastest is
 * the nearest to the truth.
 */
export function serverClock(): ServerClock {
  let ahead: readonly number[] = [];
  return {
    heard: (now, at) => {
      ahead = [...ahead, now - at].slice(-REMEMBERED);
    },
    now: (at) => (ahead.length === 0 ? null : at + Math.max(...ahead)),
  };
}
