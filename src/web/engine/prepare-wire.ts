import type { Severity } from '../../core/diagnostics/diagnostic.ts';
import type { Path } from '../../core/files/context.ts';
import type { SourceText } from '../../core/files/source-text.ts';

/** What page and engine say to each other: plain data, which a worker's port carries. */
export const FILE_KINDS = ['kit', 'activity', 'visit'] as const;
export type FileKind = (typeof FILE_KINDS)[number];
export type Texts = Readonly<Record<FileKind, SourceText>>;

/** One value of one file, written anew; an empty one is taken out. */
export interface Edit {
  readonly file: FileKind;
  readonly path: Path;
  readonly value: string;
}

export interface Chosen {
  readonly table: string;
  readonly setup: string;
}

export interface Asked {
  readonly number: number;
  readonly language: 'en' | 'es';
  readonly texts: Texts;
  readonly edit: Edit | null;
  readonly chosen: Chosen | null;
}

/** The table in hand comes first; `whole` follows with all tables and what is found in the files. */
export interface Answered {
  readonly number: number;
  /** With the edit made; `null` where it could not be made. */
  readonly texts: Texts | null;
  readonly now: TableNow | null;
  readonly whole: Whole | null;
}

export interface TableNow {
  readonly rows: TableRows;
  readonly setup: SetupView | null;
}

export interface Whole {
  readonly tables: readonly TableRows[];
  readonly findings: readonly FindingView[];
}

export interface TableRows {
  readonly mark: string;
  readonly title: string;
  readonly machine: string;
  readonly rows: readonly Row[];
  readonly notPrepared: readonly string[];
}

export interface Row {
  readonly mark: string;
  readonly good: string;
}

export interface SetupView extends Chosen {
  readonly way: string;
  readonly good: string;
  readonly expected: string | null;
  readonly newtons: string | null;
  readonly grams: string | null;
  readonly schoolbook: string;
  readonly why: string;
  readonly narrows: string;
  readonly drawings: readonly { readonly title: string | null; readonly svg: string }[];
  readonly strip: string | null;
  readonly groups: readonly FieldGroup[];
}

export interface FieldGroup {
  readonly heading: string;
  /** What of it a part of the kit is, as the kit file calls the kind. */
  readonly kind: string | null;
  readonly fields: readonly FieldView[];
}

export interface FieldView extends Edit {
  readonly name: string;
  readonly meaning: string;
  readonly example: string;
  /** The words that may stand there; empty where it is written freely. */
  readonly words: readonly string[];
}

export interface FindingView {
  readonly file: FileKind;
  readonly name: string;
  readonly line: number;
  readonly column: number;
  readonly severity: Severity;
  readonly code: string;
  readonly text: string;
  readonly path: Path;
}
