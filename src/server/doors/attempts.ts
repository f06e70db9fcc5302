/** Wrong tries at a door and how long the next one has to wait. */
export interface Attempts {
  /** Milliseconds until this address may try; 0: now. */
  readonly wait: (address: string, now: number) => number;
  readonly failed: (address: string, now: number) => void;
}

/** A class may mistype a few times before anybody has to wait. */
const FREE_TRIES = 5;
const LONGEST_WAIT = 60_000;
/** All addresses together: after so many the door opens to one try in `SLOWEST`, whoever tries. */
const FREE_TRIES_OF_ALL = 60;
const SLOWEST = 5_000;
/** Wrong tries are forgotten after this long. */
const MEMORY = 15 * 60_000;
const MOST_ADDRESSES = 2_000;

interface Tries {
  readonly count: number;
  readonly last: number;
}

const NONE: Tries = { count: 0, last: 0 };

/**
 * A right code makes nothing good: who knows one could else try for another between.
 * Guessing costs time that doubles: a second after the fifth wrong code of an address, at most a
 * minute. Many addresses that guess together are slowed down together, by little, so that they can't
 * lock the class out. A code of six letters out of sixteen has 16.7 million values: at one try in five
 * seconds a day's guessing finds one of a thousand.
 */
export function attempts(): Attempts {
  const byAddress = new Map<string, Tries>();
  let all = NONE;
  const live = (tries: Tries | undefined, now: number): Tries =>
    tries === undefined || now - tries.last > MEMORY ? NONE : tries;
  const forget = (now: number): void => {
    for (const [address, tries] of byAddress) if (now - tries.last > MEMORY) byAddress.delete(address);
    // Too many to keep apart: the oldest go, and the limit of all together holds.
    for (const address of byAddress.keys()) {
      if (byAddress.size <= MOST_ADDRESSES) break;
      byAddress.delete(address);
    }
  };
  return {
    wait: (address, now) => {
      const own = live(byAddress.get(address), now);
      const every = live(all, now);
      const ownWait =
        own.count < FREE_TRIES
          ? 0
          : own.last + Math.min(1000 * 2 ** (own.count - FREE_TRIES), LONGEST_WAIT) - now;
      const allWait =
        every.count < FREE_TRIES_OF_ALL
          ? 0
          : every.last + Math.min(100 * 2 ** (every.count - FREE_TRIES_OF_ALL), SLOWEST) - now;
      return Math.max(0, ownWait, allWait);
    },
    failed: (address, now) => {
      const own = live(byAddress.get(address), now);
      byAddress.delete(address);
      byAddress.set(address, { count: own.count + 1, last: now });
      all = { count: live(all, now).count + 1, last: now };
      if (byAddress.size > MOST_ADDRESSES) forget(now);
    },
  };
}
