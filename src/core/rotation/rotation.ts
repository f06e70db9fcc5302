import type { Seconds } from '../quantities/brands.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { Wish } from './wish.ts';

/**
 * What has to be arranged: groups, tables, adults and the time between the start and the bell.
 * All times are whole seconds since the period began.
 */
export interface Rotation {
  readonly groups: readonly RotationGroup[];
  readonly tables: readonly RotationTable[];
  /** Those who may stand at a table that needs somebody. */
  readonly adults: readonly Adult[];
  /** From one table to the next; the table that is left need not wait for it. */
  readonly walk: Seconds;
  /** When the first group may begin: after the introduction. */
  readonly begins: Seconds;
  /** When the last group has to be done: before the talk at the end. */
  readonly bell: Seconds;
  /** In the order of the day; nobody is at a table then. */
  readonly breaks: readonly Break[];
  readonly way: Way;
  readonly wishes: readonly Wish[];
}

/** `signal`: all move together. `free`: each moves on as a table frees up. */
export type Way = 'signal' | 'free';

export interface RotationGroup {
  readonly label: string;
  /** How many pupils; `null` where nobody said. */
  readonly pupils: number | null;
  /** Later than the others: a group whose bus is late. 0 for those who are there. */
  readonly arrives: Seconds;
}

export interface RotationTable {
  readonly mark: string;
  /** How long a group is at it, and how far groups differ. */
  readonly run: Measured<Seconds>;
  /** Then, before the next group can begin. */
  readonly reset: Measured<Seconds>;
  /** How many times it is set up; each takes one group at a time. */
  readonly copies: number;
  readonly needsAdult: boolean;
  /** May be left out where the time is short, before one that is not. */
  readonly mayDo: boolean;
  /** Marks of the tables next to it. */
  readonly beside: readonly string[];
}

export interface Adult {
  readonly label: string;
  /** Tables at which this person may stand; `null` is any. */
  readonly at: readonly string[] | null;
}

export interface Break {
  readonly from: Seconds;
  readonly to: Seconds;
}
