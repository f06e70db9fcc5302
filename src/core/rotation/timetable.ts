import type { Seconds } from '../quantities/brands.ts';
import type { Way } from './rotation.ts';

/** Who is where, from when to when. The times are those of the plan; what chance does to them is told apart. */
export interface Timetable {
  readonly way: Way;
  /** In the order of time, then of the groups. */
  readonly stays: readonly Stay[];
  /** Where all move together; `null` where tables free up. */
  readonly rounds: readonly Round[] | null;
  readonly waits: readonly Wait[];
  /** Which adult stands where, for tables that need one. */
  readonly stands: readonly Stand[];
  /** Visits that did not fit, in fairness. */
  readonly leftOut: readonly LeftOut[];
  readonly ends: Seconds;
  /** No timetable with the same visits and wishes ends before this. */
  readonly bound: Seconds;
  readonly proof: Proof;
}

/** `bound`: it ends at the bound, so nothing ends sooner. `search`: every other was ruled out. `none`: it is within the bound. */
export type Proof = 'bound' | 'search' | 'none';

export interface Stay {
  readonly group: string;
  readonly table: string;
  /** Which of the copies, from 1. */
  readonly copy: number;
  readonly from: Seconds;
  /** The group is done; the table is ready again after its reset. */
  readonly to: Seconds;
  /** Which round, from 1; `null` where tables free up. */
  readonly round: number | null;
}

export interface Round {
  readonly from: Seconds;
  /** The signal. */
  readonly to: Seconds;
}

export interface Wait {
  readonly group: string;
  readonly from: Seconds;
  readonly to: Seconds;
}

export interface Stand {
  readonly adult: string;
  readonly table: string;
  readonly copy: number;
  readonly from: Seconds;
  readonly to: Seconds;
}

export interface LeftOut {
  readonly group: string;
  readonly table: string;
}
