import type { Seconds } from '../quantities/brands.ts';
import type { Way } from '../rotation/rotation.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { Path } from './context.ts';
import type { DayTime } from './day-time.ts';

/** What a visit says of how its day goes: when it starts, how groups move on, what is open, who is there, what is wished. */
export interface DayWords {
  /** Since midnight. */
  readonly starts: Seconds | null;
  readonly move: Way | null;
  /** How many pupils a group should have. */
  readonly groupSize: number | null;
  readonly copies: readonly CopiesWords[];
  readonly closed: readonly ClosedWords[];
  /** `null` where the visit lists none: then `helpers` counts them. */
  readonly adults: readonly AdultWords[] | null;
  readonly breaks: readonly BreakWords[];
  readonly apart: readonly GroupsWords[];
  readonly together: readonly GroupsWords[];
  readonly wishes: readonly WishWords[];
  /** Rows of tables that stand next to each other; `null`: as the activity lists them. */
  readonly beside: readonly RowWords[] | null;
  /** Several classes that come one after the other; none where it is one. */
  readonly classes: readonly ClassWords[];
}

export interface CopiesWords {
  readonly table: string;
  readonly copies: number;
  readonly path: Path;
}

export interface ClosedWords {
  readonly table: string;
  /** `null` from the start. */
  readonly from: DayTime | null;
  /** `null` to the end. */
  readonly until: DayTime | null;
  readonly path: Path;
}

export interface AdultWords {
  readonly label: string;
  /** `null` is any table. */
  readonly at: readonly string[] | null;
  readonly path: Path;
}

export interface BreakWords {
  readonly at: DayTime;
  readonly lasts: Seconds;
}

/** Groups that want something of each other, two at least. */
export interface GroupsWords {
  readonly groups: readonly string[];
  readonly path: Path;
}

export interface RowWords {
  readonly tables: readonly string[];
  readonly path: Path;
}

/** One block of wishes, for some groups or for all. */
export interface WishWords {
  readonly path: Path;
  /** `null` is every class. */
  readonly ofClass: string | null;
  /** `null` is every group. */
  readonly groups: readonly string[] | null;
  readonly first: string | null;
  readonly last: string | null;
  readonly mustDo: readonly string[];
  readonly skips: readonly string[];
  readonly at: { readonly table: string; readonly time: DayTime } | null;
  readonly order: { readonly table: string; readonly after: readonly string[] } | null;
  readonly comesAt: DayTime | null;
  readonly away: { readonly from: DayTime; readonly until: DayTime | null } | null;
}

export interface ClassWords {
  readonly label: string;
  /** Since midnight. */
  readonly starts: Seconds;
  readonly period: Measured<Seconds> | null;
  readonly pupils: number | null;
  readonly groups: number | null;
  readonly path: Path;
}

/** A day of which nothing is said. */
export const plainDay: DayWords = {
  starts: null,
  move: null,
  groupSize: null,
  copies: [],
  closed: [],
  adults: null,
  breaks: [],
  apart: [],
  together: [],
  wishes: [],
  beside: null,
  classes: [],
};
