import type { PreparationFiles } from '../../core/prepare.ts';

/** A visit as the server keeps it: its files as they were, and the codes that let in while it is open. */
export interface VisitRecord {
  readonly visit: string;
  readonly opened: number;
  readonly closed: number | null;
  readonly code: string;
  readonly helperCode: string;
  /** Which of the visit's classes; `null`: the first. */
  readonly label: string | null;
  readonly language: string | null;
  readonly files: PreparationFiles;
}

export interface VisitToOpen {
  readonly label: string | null;
  readonly language: string | null;
  readonly files: PreparationFiles;
}

export type VisitState = 'open' | 'over';

/** The visits of a server. */
export interface Visits {
  /** Latest first. */
  readonly list: () => readonly VisitRecord[];
  readonly find: (visit: string) => VisitRecord | null;
  /** Without reading its files; `null` where there is none. */
  readonly state: (visit: string) => VisitState | null;
  /** The open visit that was opened last. */
  readonly latest: () => string | null;
  /** The open visit that a code lets into, and what it opens there. */
  readonly behind: (
    code: string,
  ) => { readonly record: VisitRecord; readonly opens: 'group' | 'helper' } | null;
  readonly open: (what: VisitToOpen, now: number) => VisitRecord;
  /** Its passes end with it. */
  readonly close: (visit: string, now: number) => void;
  /** The files as they are now; its entries and codes stay. */
  readonly prepareAnew: (visit: string, what: VisitToOpen) => void;
  /** Other codes; who is in stays in. */
  readonly newCodes: (visit: string) => void;
  readonly entries: (visit: string) => number;
}
