import type { Facts } from '../diagnostics/diagnostic.ts';
import type { Seconds } from '../quantities/brands.ts';
import type { Arrangement } from './arrangement.ts';
import type { Rotation } from './rotation.ts';
import type { Stay } from './timetable.ts';

/** One class in its period: what was asked, who goes where and when, and how likely all are done by the bell. */
export interface ClassPeriod {
  /** What the class is called, where several come on one day; `null` where there is one. */
  readonly label: string | null;
  readonly clock: PeriodClock;
  /** From the start to the end of the period. */
  readonly lasts: Seconds;
  /** Told to all before the first table; the rotation begins after it. */
  readonly introduction: Seconds;
  /** With all at the end; the bell of the rotation rings before it. */
  readonly talkAtTheEnd: Seconds;
  readonly pupils: number | null;
  readonly rotation: Rotation;
  /** The adults have no labels but numbers, 1, 2, …: they are known by how many there are. */
  readonly adultsAreCounted: boolean;
  /** Tables that nobody is sent to, and why. */
  readonly closed: readonly ClosedTable[];
  /** What nobody said and was taken from common practice: sentences that have to be shown. */
  readonly assumed: readonly Assumption[];
  /** Tables whose time follows earlier visits; empty where none were given. */
  readonly fromPast: readonly TableFromPast[];
  readonly outcome: Arrangement;
  /** `null` where there is no timetable. */
  readonly chance: PeriodChance | null;
  /** What to do while waiting, by group and time. */
  readonly waits: readonly FilledWait[];
  /** What would gain most, best first; empty where nobody asked or nothing would. */
  readonly gains: readonly PeriodGain[];
  /** Where the period is under way: since when this plan holds, and what was done before; else `null`. */
  readonly underWay: UnderWay | null;
}

/** The wall clock of a period; what is `null` was not said, and times are then told as minutes from the start. */
export interface PeriodClock {
  /** Year-month-day. */
  readonly date: string | null;
  /** Since midnight. */
  readonly starts: Seconds | null;
}

/** `visit`: the visit says so. `parts`: nothing on it can be built today. `asked`: a what-if of the command line. */
export interface ClosedTable {
  readonly table: string;
  readonly because: 'visit' | 'parts' | 'asked';
  /** Marks of the parts that are missing, for `parts`. */
  readonly parts: readonly string[];
  /** `null` is the whole period. */
  readonly during: { readonly from: Seconds; readonly to: Seconds | null } | null;
}

/** What earlier visits made of a table's time: of so many stays, others set aside as far off from the rest. */
export interface TableFromPast {
  readonly table: string;
  readonly takes: Seconds;
  readonly used: number;
  readonly setAside: number;
}

/** A sentence key with its facts. */
export interface Assumption {
  readonly key: string;
  readonly facts: Facts;
}

/** Of many periods, drawn from what the times may be; where all move together, the signal waits for the slowest. */
export interface PeriodChance {
  /** Share of the periods in which all are done by the bell, from 0 to 1. */
  readonly byTheBell: number;
  /** When the last group is done: as often before as after, and 19 of 20 times from - to. */
  readonly ends: { readonly middle: Seconds; readonly from: Seconds; readonly to: Seconds };
  /** How long each group waits on average. */
  readonly waits: readonly { readonly group: string; readonly expected: Seconds }[];
  /** Where all move together and the signal is given by the plan's clock, done or not; else `null`. */
  readonly byTheClock: {
    /** How many stays it cuts off on average, and how many there are. */
    readonly unfinished: number;
    readonly stays: number;
  } | null;
}

/** A time in which a group has no table, and what there is for it. */
export interface FilledWait {
  readonly group: string;
  readonly from: Seconds;
  readonly to: Seconds;
  /** A setup with more to find that is free then, a paper task, or nothing. */
  readonly task:
    | { readonly kind: 'setup'; readonly table: string; readonly setup: string }
    | { readonly kind: 'paper'; readonly text: string; readonly texts: Readonly<Record<string, string>> }
    | null;
}

/** One change to the tables and what the period would then be like. */
export interface PeriodGain {
  readonly change:
    | { readonly kind: 'another copy'; readonly table: string }
    | { readonly kind: 'shorter'; readonly table: string; readonly by: Seconds };
  readonly byTheBell: number;
  /** When the last group is done by the plan. */
  readonly ends: Seconds;
  /** All groups' waiting together, on average. */
  readonly waiting: Seconds;
}

/** A plan made again in the middle of the period. */
export interface UnderWay {
  readonly now: Seconds;
  readonly done: readonly Stay[];
  /** Groups of which nothing is told: planned as if they had done nothing. Left out where there are none. */
  readonly notTold?: readonly string[];
  /** In how many places it differs from the plan that stood. */
  readonly changes: number;
}

/** The day on one kit: a plan for each class, and the time between them. */
export interface Period {
  readonly classes: readonly ClassPeriod[];
  readonly between: readonly BetweenClasses[];
}

/** Between two classes every table is put back for the next. */
export interface BetweenClasses {
  readonly before: string;
  readonly after: string;
  /** From the end of one period to the start of the other; less than nothing where they overlap. */
  readonly has: Seconds;
  /** All resets, shared among the adults. */
  readonly needs: Seconds;
}
