import type { Prepared } from '../../core/prepare.ts';
import type { Period } from '../../core/rotation/class-period.ts';
import type { Sheet } from '../pages/sheet.ts';
import type { Language } from '../sentences/language.ts';
import type { Paper, SheetOfPaper } from './block.ts';

/** What all sheets of one printing have in common. */
export interface PaperJob {
  readonly prepared: Prepared;
  readonly sheet: Sheet;
  readonly paper: Paper;
  /** The timetable of the visit's classes; `null` where none was made, and on all that is laminated once. */
  readonly period: Period | null;
  readonly languages: PaperLanguages;
}

/** Cards may be in another language than the teacher's key. */
export interface PaperLanguages {
  readonly cards: Language;
  readonly key: Language;
}

/** A kind of sheet: of the kit (laminated once, nothing of a visit on it) or of one visit. */
export interface SheetKind {
  readonly name: string;
  readonly of: 'kit' | 'visit';
  /** It tells of the timetable, which takes a moment to make. */
  readonly isTimed?: true;
  readonly build: (job: PaperJob) => readonly SheetOfPaper[];
}
