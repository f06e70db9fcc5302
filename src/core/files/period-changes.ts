import type { Seconds } from '../quantities/brands.ts';
import type { Way } from '../rotation/rotation.ts';
import type { PastTime } from '../rotation/times-from-visits.ts';

/** What if: a visit's period with something else than the files say. What is left out stays as written. */
export interface PeriodChanges {
  /** How long the period is. */
  readonly lasts?: Seconds;
  /** Marks of tables that are closed. */
  readonly closed?: readonly string[];
  /** Groups that come later than the period starts. */
  readonly late?: readonly LateGroup[];
  /** How many adults there are, who may stand anywhere. */
  readonly adults?: number;
  /** How many of a table there are, by mark. */
  readonly copies?: Readonly<Record<string, number>>;
  readonly way?: Way;
  readonly groups?: number;
  /** How long groups of earlier visits were at each table, by mark. */
  readonly past?: Readonly<Record<string, readonly PastTime[]>>;
}

export interface LateGroup {
  readonly group: string;
  readonly by: Seconds;
}
