import type { Severity } from '../../core/diagnostics/diagnostic.ts';
import type { Path } from '../../core/files/context.ts';
import type { SourceText } from '../../core/files/source-text.ts';

/** What page and engine say to each other: plain data, which a worker's port carries. */
export const FILE_KINDS = ['kit', 'activity', 'visit'] as const;
export type FileKind = (typeof FILE_KINDS)[number];

/** The three files, and the bench books of all kits that this browser has seen. */
export interface Texts extends Readonly<Record<FileKind, SourceText>> {
  /** The book of the kit in hand, which follows from the kit and `books`; `null` where it names none. */
  readonly bench?: SourceText | null;
  /** Text of each kit's book, by the kit's serial. */
  readonly books?: Readonly<Record<string, string>>;
}

/** What is found stands in one of the three, or in the bench book. */
export type TextKind = FileKind | 'bench';

/** One value of one file, written anew; an empty one is taken out. */
export interface Edit {
  readonly file: FileKind;
  readonly path: Path;
  readonly value: string;
  /** What is written with it in the same step. */
  readonly and?: readonly Edit[];
}

export interface Chosen {
  readonly table: string;
  readonly setup: string;
}

/** What the page asks of a thread: the setup in hand at once, or everything that follows from the texts. */
export type Asked = AskedNow | AskedWhole;

export interface AskedNow {
  readonly job: 'now';
  readonly number: number;
  readonly language: 'en' | 'es';
  readonly texts: Texts;
  readonly edit: Edit | null;
  readonly chosen: Chosen | null;
}

export interface AskedWhole {
  readonly job: 'whole';
  readonly number: number;
  readonly language: 'en' | 'es';
  readonly texts: Texts;
}

/** Figures and strip come first, the rest as soon as it is made. */
export type Answered = AnsweredNow | AnsweredRest | AnsweredWhole;

export interface AnsweredNow {
  readonly job: 'now';
  readonly number: number;
  /** With the edit made; `null` where it could not be made. */
  readonly texts: Texts | null;
  readonly now: TableNow | null;
}

export interface AnsweredRest {
  readonly job: 'rest';
  readonly number: number;
  readonly rest: SetupRest;
}

export interface AnsweredWhole {
  readonly job: 'whole';
  readonly number: number;
  readonly whole: Whole;
}

/** What of a setup takes longer than its figures, or is not looked at in the same moment. */
export interface SetupRest {
  /** Whose it is. */
  readonly setup: string;
  readonly drawings: readonly DrawingView[];
  /** All that may be changed at it. */
  readonly groups: readonly FieldGroup[];
}

export interface DrawingView {
  readonly title: string | null;
  readonly svg: string;
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
  readonly strip: string | null;
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
  readonly file: TextKind;
  readonly name: string;
  readonly line: number;
  readonly column: number;
  readonly severity: Severity;
  readonly code: string;
  readonly text: string;
  /** The same without the line of the file: what is wrong, why, and what can be done. */
  readonly words: Readonly<Record<'what' | 'here' | 'why' | 'help', string>>;
  readonly path: Path;
}
