import type { SourceText } from '../core/files/source-text.ts';
import type { Trial } from '../core/files/trials-on-arrival.ts';
import type { PreparationFiles } from '../core/prepare.ts';
import type { Entry, Seat, Telling } from './entry.ts';

/**
 * What goes between a device and the server. A page is shown *parts*, each replaced as a whole when it
 * changes: what a seat may not see is in no part that is sent to it.
 */

/** `POST /api/join`: a code and what the device wants to be. */
export interface JoinRequest {
  readonly code: string;
  /** Made by the device at its first opening. */
  readonly device: string;
  readonly seat: Seat;
}

/**
 * What `POST /api/join` answers, and `GET /api/pass`: who this device is. The pass itself is a cookie
 * that no script reads, one a kind of seat; where a browser holds several, `?as=group`, `?as=helper` or
 * `?as=teacher` on `/api/pass`, `/api/parts`, `/api/entries` and `/api/stream` says which is meant. A
 * teacher adds `&visit=` where several are open. The address that lets in with a code is `/group#CODE`
 * or `/helper#CODE`: what stands behind the # is never sent.
 */
export interface PassView {
  /** For a teacher: the visit that was opened last; `null` where none is open. */
  readonly visit: string | null;
  readonly seat: Seat;
  /** `null` for a teacher: it writes under whatever name its page made. */
  readonly device: string | null;
  /** The server's clock. */
  readonly now: number;
  /** Which device writes for the group; the page asks before it takes over with a `handed` entry. */
  readonly heldBy: 'nobody' | 'this' | 'another';
}

/** What the talk about a visit is made of: its files, and what its class wrote in it. */
export interface TalkMatter {
  readonly files: PreparationFiles;
  /** As a readings file. */
  readonly readings: SourceText;
  /** Trial readings on arrival, the last one a setup. */
  readonly trials: readonly Trial[];
}

/** A visit in the list of `GET /api/teacher/visits`; codes are `null` once it is closed. */
export interface VisitView {
  readonly visit: string;
  readonly title: string;
  readonly opened: number;
  readonly closed: number | null;
  readonly code: string | null;
  /** Lets a helper in, who sees what is expected: not for groups. */
  readonly helperCode: string | null;
  readonly entries: number;
  /** Pages that listen at this moment. */
  readonly listening: number;
}

/** `GET /api/visit?code=`: what can be chosen, and which page the code lets in to: groups and helpers have a code each. */
export interface DoorAnswer extends DoorView {
  readonly opens: 'group' | 'helper';
}

/** What can be chosen at the door. */
export interface DoorView {
  readonly title: string;
  readonly language: string;
  readonly groups: readonly string[];
  readonly tables: readonly { readonly mark: string; readonly title: string }[];
}

/** `POST /api/entries`. */
export interface EntriesRequest {
  /** The device's clock at this moment, in milliseconds since 1970. */
  readonly sent: number;
  readonly entries: readonly Entry[];
}

export interface EntriesAnswer {
  readonly stored: readonly string[];
  readonly refused: readonly { readonly id: string; readonly why: EntryRefusal }[];
}

/**
 * Why an entry will never be taken as it is. `visit`: of another visit. `seat`: this seat may not write
 * that. `device`: another device's. `handed`: written after another device took the group over. `over`:
 * the visit is closed. `other`: that id stands for something else.
 */
export type EntryRefusal = 'visit' | 'seat' | 'device' | 'handed' | 'over' | 'other';

/**
 * `GET /api/parts` (all at once) and the events `parts` of `GET /api/stream`: parts that are new or
 * changed, all of them at first. Other events: `beat` every three seconds with `{ now }`, `over` when the
 * visit is closed and `stopping` when the server is, after which the stream ends.
 */
export type Parts<P> = Partial<{ readonly [K in keyof P]: P[K] | null }>;

/** Milliseconds by the server's clock; `now` is when it was sent. */
export interface ClockPart {
  readonly now: number;
  readonly begun: number | null;
  readonly pausedSince: number | null;
  readonly paused: number;
  /** The end of the period; while it stands still, later by as much as it goes on doing so. */
  readonly ends: number | null;
  /** On a signal: which round, from 1, and when its signal is due. */
  readonly round: { readonly number: number; readonly of: number; readonly due: number } | null;
}

export interface RouteStop {
  readonly table: string;
  readonly title: string;
  /** Milliseconds since the period began, as planned now. */
  readonly from: number;
  readonly to: number;
  readonly state: 'done' | 'here' | 'next';
}

/** What a group's page shows; nothing here depends on what a setup is expected to read, but for the talk, whose wall everybody sees. */
export interface GroupParts {
  readonly clock: ClockPart;
  readonly group: { readonly label: string; readonly language: string; readonly title: string };
  readonly route: { readonly stops: readonly RouteStop[]; readonly waiting: string | null };
  /** By table mark: its card, as a fragment of HTML that `documents` made. */
  readonly cards: Readonly<Record<string, GroupCard>>;
  readonly readings: readonly OwnReading[];
  /** The device that writes for the group, or the one that the teacher took it from and nobody has come for it yet. */
  readonly writes: { readonly device: string | null; readonly freed: string | null };
  /** What the wall of the talk shows; not there while tablets don't follow it. */
  readonly wall?: WallPart;
}

/** A question of the talk as it stands on the wall, in the group's language. */
export interface WallPart {
  readonly number: string;
  readonly ask: string;
  /** What stands below it, as HTML that `documents` made. */
  readonly html: string;
}

export interface GroupCard {
  readonly title: string;
  readonly html: string;
  readonly setups: readonly {
    readonly mark: string;
    readonly html: string;
    /** Unit printed beside the field; `null`: the group has to say it. */
    readonly unit: string | null;
    readonly asks: { readonly ease: boolean; readonly turns: boolean };
    readonly isExtra: boolean;
  }[];
}

export interface OwnReading {
  readonly id: string;
  readonly setup: string;
  readonly written: string;
  readonly before: readonly string[];
  readonly isVoid: boolean;
  /** Sentences; `null` where nothing is to be said or the teacher tells nothing. */
  readonly again: { readonly say: string; readonly tryThis: string | null } | null;
}

/** What the teacher's page shows. */
export interface TeacherParts {
  readonly clock: ClockPart;
  readonly visit: {
    readonly title: string;
    readonly language: string;
    readonly code: string;
    readonly addresses: readonly string[];
    readonly telling: Telling;
    readonly way: 'signal' | 'free' | null;
    /** The groups' tablets show the wall of the talk. */
    readonly isOnWall: boolean;
  };
  readonly groups: readonly TeacherGroup[];
  /** The rotation chart as SVG, and what changed when it was planned anew, in a sentence. */
  readonly plan: { readonly chart: string; readonly remarks: readonly string[] };
  readonly arrival: readonly ArrivalRow[];
  /** What a group's paper chart asks, in its order. */
  readonly chart: readonly ChartTable[];
  /** What is wrong with the files, and what could not be worked out, a text each; never a reading lost. */
  readonly trouble: readonly string[];
  /** `table/1` and so on: one part a table. */
  readonly [table: `table/${string}`]: TeacherTable;
}

export interface TeacherGroup {
  readonly label: string;
  readonly table: string | null;
  readonly since: number | null;
  readonly next: string | null;
  /** Behind the plan by so many milliseconds; 0 where on time. */
  readonly behind: number;
  readonly device: string | null;
  /** Taken from its device, and no other has come for it yet. */
  readonly isFreed: boolean;
  /** When its device was last heard of. */
  readonly heard: number | null;
  readonly toLookAt: number;
}

export interface TeacherTable {
  readonly mark: string;
  readonly title: string;
  readonly isClosed: boolean;
  /** What the whole table has to say: a station that has changed, a card that leads astray. */
  readonly findings: readonly string[];
  readonly setups: readonly {
    readonly mark: string;
    readonly summary: string;
    /** The reading strip with the groups' dots, as SVG with its words. */
    readonly strip: string;
    readonly range: string;
    readonly readings: readonly TeacherReading[];
  }[];
}

export interface TeacherReading {
  readonly id: string;
  readonly group: string;
  readonly written: string;
  readonly before: readonly string[];
  readonly when: number;
  readonly isVoid: boolean;
  /** `good`, `little-off`, `look-again`, `unread`: a word is shown with it. */
  readonly verdict: 'good' | 'little-off' | 'look-again' | 'unread';
  readonly verdictText: string;
  /** Likely cause and what to say to the group, as sentences. */
  readonly cause: string | null;
  readonly say: string | null;
  /** All that a review prints below the reading: how it was read, causes with how likely, what tells them apart. */
  readonly remarks: readonly string[];
  /** Whether the group's own page asks for it once more: it goes by that group's readings alone. */
  readonly isAskedAgain: boolean;
}

export interface ChartTable {
  readonly table: string;
  readonly title: string;
  readonly rows: readonly ChartRow[];
}

/** A row asks one thing: a number with its unit, its place in the order felt with 1 the easiest, or turns counted. */
export interface ChartRow {
  readonly setup: string;
  readonly asks: 'number' | 'ease' | 'turns';
  /** Printed behind the number; `null` where groups write it themselves. */
  readonly unit: string | null;
  readonly isExtra: boolean;
}

export interface ArrivalRow {
  readonly table: string;
  readonly setup: string;
  readonly range: string;
  readonly written: string | null;
  readonly isInside: boolean | null;
  readonly doThis: string | null;
}

/** A helper sees the clock, who comes to her table, and that table as the teacher does. */
export interface HelperParts {
  readonly clock: ClockPart;
  readonly visit: { readonly title: string; readonly language: string };
  readonly table: TeacherTable;
  readonly coming: readonly {
    readonly group: string;
    readonly from: number;
    readonly to: number;
    readonly isHere: boolean;
  }[];
  readonly card: GroupCard;
  /** The reading to take here before the class comes; empty where there is none. */
  readonly arrival: readonly ArrivalRow[];
}

/** RFC 9457. */
export interface Problem {
  readonly type: string;
  readonly title: string;
  readonly status: number;
  readonly detail: string;
  /** Places in the request and what to do, where there are any. */
  readonly errors?: readonly { readonly pointer: string; readonly detail: string }[];
}
