import type { BenchEntry } from '../../core/files/bench-book-file.ts';
import type { Path } from '../../core/files/context.ts';
import type { ArrivedTold, CheckTold } from '../../documents/text/arrival-check-text.ts';
import type { ToldRows } from '../../documents/text/bench-told.ts';
import type { DiagnosticSentence } from '../../documents/text/diagnostic-text.ts';
import type { KeyMoved } from '../../documents/text/key-moved.ts';
import type { Texts } from './prepare-wire.ts';

/** What the page asks about readings that the teacher takes: on the bench before the day, on arrival on the day. */
export type BenchOf =
  /** What may be read at a setup, and what stands in the book about it. */
  | { readonly kind: 'setup'; readonly setup: string }
  /** A line more in the book. */
  | { readonly kind: 'line'; readonly entry: BenchEntry }
  /** Another line instead of one that stands in the book. */
  | { readonly kind: 'instead'; readonly line: number; readonly entry: BenchEntry }
  /** Another text for the book, which gets this name where the kit names none. */
  | { readonly kind: 'book'; readonly name?: string; readonly text: string }
  /** The one reading to take at each table. */
  | { readonly kind: 'arrival' }
  /** What was read there. */
  | { readonly kind: 'trial'; readonly setup: string; readonly written: string };

export interface AskedBench {
  readonly job: 'bench';
  readonly number: number;
  readonly language: 'en' | 'es';
  readonly texts: Texts;
  readonly of: BenchOf;
}

export interface AnsweredBench {
  readonly job: 'bench';
  readonly number: number;
  /** `null` where the files give nothing to answer from. */
  readonly found: BenchFound | null;
}

export type BenchFound = BenchAtSetup | BenchLineAdded | BookOpened | ArrivalChecks | TrialRead;

export interface BenchAtSetup {
  readonly found: 'setup';
  readonly setup: string;
  readonly tasks: readonly BenchTaskView[];
  readonly lines: readonly BenchLineView[];
  /** Lines of the book about anything else. */
  readonly others: number;
  readonly told: BenchTold | null;
}

export interface BenchTaskView {
  /** As the book calls it, by which a line says what it is of. */
  readonly what: string;
  readonly of: 'setup' | 'scale' | 'parts';
  /** What to do, as somebody would be asked for it. */
  readonly words: string;
  readonly example: string;
  readonly entry: BenchEntry;
}

export interface BenchLineView {
  readonly line: number;
  readonly date: string;
  readonly by: string;
  readonly what: string;
  readonly reading: string;
  readonly note: string;
  /** What the files made one expect; `null` where the line isn't reckoned with. */
  readonly expected: string | null;
  /** Whether the key follows it, or why not. */
  readonly state: string;
  readonly isUsed: boolean;
  readonly isReplaced: boolean;
  /** It was set aside, and somebody may decide that it holds all the same. */
  readonly mayBeUsed: boolean;
}

/** What all readings of the book tell together. */
export interface BenchTold {
  readonly head: string;
  readonly unknowns: ToldRows;
  readonly remarks: readonly string[];
}

export interface BenchLineAdded {
  readonly found: 'line';
  /** With the line; `null` where it is not sound, and `faults` says why. */
  readonly texts: Texts | null;
  readonly added: string;
  readonly faults: readonly DiagnosticSentence[];
  /** Setups whose figures it moved: as they are now, as they were. */
  readonly moved: readonly KeyMoved[];
}

export interface BookOpened {
  readonly found: 'book';
  readonly texts: Texts | null;
}

export interface ArrivalChecks {
  readonly found: 'arrival';
  readonly tables: readonly ArrivalCheckView[];
}

export interface ArrivalCheckView {
  readonly table: string;
  readonly title: string;
  /** `null` where nothing at the table is read as one figure. */
  readonly check: CheckTold | null;
  readonly example: string;
  /** What the visit file says was read; its table follows it. */
  readonly written: WrittenOnArrival | null;
}

export interface WrittenOnArrival {
  readonly setup: string;
  readonly reading: string;
  /** What is taken out of the visit file so that the table is as packed. */
  readonly path: Path;
}

export interface TrialRead {
  readonly found: 'trial';
  readonly setup: string;
  readonly written: string;
  /** `null` where it is no reading. */
  readonly told: ArrivedTold | null;
}
