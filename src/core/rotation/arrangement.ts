import type { Seconds } from '../quantities/brands.ts';
import type { Proof, Timetable } from './timetable.ts';
import type { Wish } from './wish.ts';

/** What came of arranging a period: who goes where, or which wishes can't be kept together. */
export type Arrangement =
  | {
      readonly kind: 'timetable';
      readonly timetable: Timetable;
      /** Why visits were left out; `null` where all fit. */
      readonly shortage: Shortage | null;
    }
  | {
      readonly kind: 'clash';
      /** Can't be kept together; without any one of them the others can. Empty where what can't be is no wish. */
      readonly wishes: readonly Wish[];
      /** Other such sets that share no wish with it or with each other. */
      readonly alsoClashing: readonly (readonly Wish[])[];
      /** `smallest`: no smaller set clashes. `minimal`: none inside it does. `none`: the search ended before that was sure. */
      readonly proof: 'smallest' | 'minimal' | 'none';
    }
  | { readonly kind: 'unknown'; readonly why: UnknownReason };

/** `effort`: neither a timetable nor a proof that there is none was found in so many steps. The others: there is nothing to look for. */
export type UnknownReason = 'effort' | 'all-closed' | 'no-time';

/** By how much the time is too short for every visit, and what that costs. */
export interface Shortage {
  /** With every visit, the last group would be done so long after the bell at least; `null` where none of it hangs on the bell. */
  readonly by: Seconds | null;
  readonly visits: number;
  /** `search`: no timetable leaves out fewer, or shares them out more fairly. `none`: none was found. */
  readonly proof: Exclude<Proof, 'bound'>;
}
