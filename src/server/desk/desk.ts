import type { PreparationFiles } from '../../core/prepare.ts';
import type { Seat, Stored } from '../../store/entry.ts';
import type { GroupParts, HelperParts, Parts, TeacherParts } from '../../store/wire.ts';

/**
 * Judges what a class has written and says what each seat is shown. Nothing that is awaited here may
 * hold up the acknowledgement of a reading: `take` only hands over.
 */
export interface Desk {
  /** From the files to the cards and the plan; told again, the visit is prepared anew and keeps its entries. */
  open(visit: OpenVisit): Promise<void>;
  /** Entries that are stored by now, in any order and any number of times. */
  take(visit: string, stored: readonly Stored[]): void;
  /** All that a seat is shown now; whatever was taken before is in it. */
  parts(visit: string, seat: Seat): Promise<SeatParts>;
  /** Told of parts that are new or changed (or gone, as `null`), by audience; answers how to stop being told. */
  onChange(listener: DeskListener): () => void;
  close(): Promise<void>;
}

export interface OpenVisit {
  readonly visit: string;
  readonly code: string;
  /** Where a page of this visit is opened, as the teacher's page shows it. */
  readonly addresses: readonly string[];
  /** Which of the visit's classes, where it has several; `null`: the first. */
  readonly label: string | null;
  /** Language of the cards and sentences; `null`: the activity's own. */
  readonly language: string | null;
  readonly files: PreparationFiles;
}

export type SeatParts = Parts<GroupParts> | Parts<TeacherParts> | Parts<HelperParts>;

/** Those who are shown the same. */
export type Audience = 'teacher' | `group:${string}` | `helper:${string}`;

export type DeskListener = (visit: string, audience: Audience, parts: SeatParts) => void;

/** The audience of a seat; a helper without a table is shown nothing of any. */
export const audienceOf = (seat: Seat): Audience => {
  switch (seat.kind) {
    case 'teacher':
      return 'teacher';
    case 'group':
      return `group:${seat.group}`;
    case 'helper':
      return `helper:${seat.table ?? ''}`;
  }
};
