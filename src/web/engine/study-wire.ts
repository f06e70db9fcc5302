import type { RehearsalOptions } from '../../core/rehearse.ts';
import type { SheetOfPaper } from '../../documents/sheets/block.ts';
import type { Outline, OutlineLine } from '../../documents/text/outline.ts';
import type { Texts } from './prepare-wire.ts';

/** What is asked for by name, because it takes longer than an edit may. */
export type StudyOf =
  | { readonly kind: 'timetable' }
  /** At one table, or at all of them one after the other. */
  | { readonly kind: 'advice'; readonly table: string | null }
  | { readonly kind: 'next' }
  | { readonly kind: 'rehearsal'; readonly asked: Partial<RehearsalOptions> }
  /** A kind of sheet, by its name. */
  | { readonly kind: 'sheets'; readonly name: string };

export interface AskedStudy {
  readonly language: 'en' | 'es';
  readonly texts: Texts;
  readonly of: StudyOf;
}

export type AnsweredStudy =
  | { readonly answer: 'so far'; readonly done: number; readonly all: number; readonly found: Studied }
  | { readonly answer: 'done'; readonly found: Studied };

/** What was found, as sheets that print and as outlines by table. */
export interface Studied {
  /** What it is about and how it was reckoned. */
  readonly about: readonly string[];
  readonly outlines: readonly Outline<StudyLine>[];
  readonly sheets: readonly SheetOfPaper[];
  /** Why there is nothing, or what else is to know. */
  readonly remarks: readonly string[];
}

export interface StudyLine extends OutlineLine {
  /** The files as they would be with it; `null` where the line offers something that is written by hand. */
  readonly use?: Texts | null;
}
