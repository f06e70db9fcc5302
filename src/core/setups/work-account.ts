import type { Balance, Direction, WorkRate } from '../statics/balance.ts';

/**
 * Where the work went: everything given to the machine stands against everything taken from it.
 * hand + falling dead weights + released springs = load + losses + stored.
 */
export interface WorkAccount {
  /** Travel of the pull that the account is for, metres. */
  readonly effortTravel: number;
  readonly direction: Direction;
  readonly given: readonly WorkEntry[];
  readonly taken: readonly WorkEntry[];
  /** |given - taken| over the largest entry: 0 but for rounding. */
  readonly closes: number;
}

export interface WorkEntry {
  readonly by: WorkRate['by'] | 'hand' | 'falling scale';
  readonly cause: string;
  readonly joules: number;
}

/**
 * The account of a balance over a travel of the pull. A scale that hangs upside down is a dead
 * weight that falls (or is raised) with the pull: the hand gives what is left.
 *
 * @example
 * const work = [
 *   { by: 'effort', cause: 'effort', rate: 3 },
 *   { by: 'load', cause: 'load', rate: -3 },
 * ];
 * workAccount({ work }, 'raise', 0.1, 0).given // => [{ by: 'hand', cause: 'hand', joules: 0.3 }]
 * workAccount({ work }, 'raise', 0.1, 0).closes // => 0
 */
export function workAccount(
  balance: Balance,
  direction: Direction,
  effortTravel: number,
  ownWeight: number,
): WorkAccount {
  const entries = balance.work.flatMap((term): WorkEntry[] => {
    if (term.by !== 'effort') return [{ by: term.by, cause: term.cause, joules: term.rate * effortTravel }];
    const scale = (direction === 'raise' ? 1 : -1) * ownWeight * effortTravel;
    return [
      { by: 'hand', cause: 'hand', joules: term.rate * effortTravel - scale },
      ...(ownWeight === 0
        ? []
        : [{ by: 'falling scale', cause: 'scale.own-weight', joules: scale } as const]),
    ];
  });
  const given = entries.filter((entry) => entry.joules > 0);
  const taken = entries
    .filter((entry) => entry.joules < 0)
    .map((entry) => ({ ...entry, joules: -entry.joules }));
  const largest = Math.max(...entries.map((entry) => Math.abs(entry.joules)), Number.MIN_VALUE);
  return { effortTravel, direction, given, taken, closes: Math.abs(sum(given) - sum(taken)) / largest };
}

const sum = (entries: readonly WorkEntry[]): number =>
  entries.reduce((total, each) => total + each.joules, 0);
