import type { Prepared } from '../../core/prepare.ts';
import type { Sheet } from '../pages/sheet.ts';
import type { Language } from '../sentences/language.ts';
import type { Paper, SheetOfPaper } from './block.ts';

/** What all sheets of one printing have in common. */
export interface PaperJob {
  readonly prepared: Prepared;
  readonly sheet: Sheet;
  readonly paper: Paper;
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
  readonly build: (job: PaperJob) => readonly SheetOfPaper[];
}
