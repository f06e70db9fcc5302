/**
 * Something that happened in a visit, as the device that saw it wrote it down. An entry is never
 * changed and never taken away: what turns out wrong is voided by a later one.
 */
export interface Entry {
  /** Made by the device; the same id is the same entry however often it comes. */
  readonly id: string;
  readonly visit: string;
  readonly device: string;
  /** Counts what this device has written, from 1. */
  readonly sequence: number;
  /** By the device's own clock, in milliseconds since 1970: it may be wrong by years. */
  readonly made: number;
  readonly seat: Seat;
  readonly what: Happening;
}

/** Who wrote it: never a name. */
export type Seat =
  | { readonly kind: 'teacher' }
  | { readonly kind: 'helper'; readonly table: string | null }
  | { readonly kind: 'group'; readonly group: string };

export type Happening =
  | WrittenReading
  /** Written anew; what it said before is kept, struck through. */
  | { readonly kind: 'correction'; readonly of: string; readonly written: string }
  | { readonly kind: 'void'; readonly of: string }
  | { readonly kind: 'restore'; readonly of: string }
  /** A group is at a table, or done with it. */
  | { readonly kind: 'arrived'; readonly group: string; readonly table: string }
  | { readonly kind: 'done'; readonly group: string; readonly table: string }
  | { readonly kind: 'begun' }
  /** The signal at the end of a round. */
  | { readonly kind: 'signal'; readonly round: number }
  | { readonly kind: 'paused' }
  | { readonly kind: 'resumed' }
  | { readonly kind: 'late'; readonly group: string; readonly minutes: number }
  | { readonly kind: 'closed'; readonly table: string }
  | { readonly kind: 'opened'; readonly table: string }
  /** The trial reading of a table on arrival. */
  | { readonly kind: 'arrival'; readonly setup: string; readonly written: string }
  /** Another device writes for this group from now on. */
  | { readonly kind: 'handed'; readonly group: string }
  /** The teacher takes a group from a device; the next that takes its label writes for it. */
  | { readonly kind: 'freed'; readonly group: string; readonly from: string }
  /** The teacher takes back what she did: as if it had not been. */
  | { readonly kind: 'recalled'; readonly of: string }
  /** How much a group is told about a reading that should be read once more. */
  | { readonly kind: 'telling'; readonly much: Telling }
  /** What the wall of the talk shows, for the groups' tablets to follow; `null`: they go back to their tables. */
  | { readonly kind: 'wall'; readonly shows: WallNow | null };

/** A question of the talk by its kind, whether its answer is uncovered, and whether groups may be named in it. */
export interface WallNow {
  readonly question: string;
  readonly isOpen: boolean;
  readonly names: boolean;
}

/** `nothing`; `again`: to read it once more; `try`: and the one thing to try. */
export type Telling = 'nothing' | 'again' | 'try';

export interface WrittenReading {
  readonly kind: 'reading';
  readonly group: string;
  readonly setup: string;
  /** As written, its unit with it where one was. */
  readonly written: string;
  /** Its place in the order felt at the table, 1 the easiest, where the activity asks. */
  readonly ease: number | null;
  readonly turns: string | null;
  readonly note: string | null;
}

/** An entry that outlives the device that made it. */
export interface Stored {
  readonly entry: Entry;
  /** Where it stands in the visit's journal, from 1, without a hole. */
  readonly position: number;
  /** When it came, by the clock of the place that stores it. */
  readonly received: number;
  /** How far the device's clock was behind when it sent it: to be added to `made`. */
  readonly behind: number;
}
