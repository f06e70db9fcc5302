import type { Facts } from '../diagnostics/diagnostic.ts';
import type { GoodRange } from '../setups/prediction.ts';
import type { Cause } from './causes.ts';

/** What may have happened at a reading, with how probable it is once all readings are looked at. */
export interface LikelyCause {
  readonly code: string;
  /** Which weight, which partner. */
  readonly facts?: Facts;
  readonly kind: Cause['kind'] | 'unexplained';
  readonly probability: number;
  /** What the instrument would have shown, SI; absent for `unexplained`. */
  readonly wouldShow: number | null;
  /** How much of the probability is the station's, which the group found so. */
  readonly ofStation: number;
}

/** A station that is no longer as its card has it. */
export interface ChangedStation {
  readonly code: string;
  readonly facts?: Facts;
  readonly probability: number;
  /** What is good at the station as it stands. */
  readonly good: GoodRange;
}

/** How often anything but a good reading is made, by kind: a share of readings, or a factor on such shares. */
export type ByKind = Readonly<Record<Exclude<LikelyCause['kind'], 'good'>, number>>;
