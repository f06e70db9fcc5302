import type { Dimension } from '../../core/quantities/dimension.ts';
import type { DecimalMark } from '../../core/quantities/print-quantity.ts';
import type { Edit, FieldView, Texts } from './prepare-wire.ts';

/** What is asked about the three files, as plain data: every question carries the edit that its answer makes. */
export interface Questions {
  readonly kit: readonly Question[];
  readonly place: readonly Question[];
  readonly activity: readonly Question[];
  readonly visit: readonly Question[];
  readonly kinds: readonly KindOfPart[];
  readonly parts: readonly PartQuestions[];
  readonly machines: readonly MachineOffered[];
  readonly tables: readonly TableQuestions[];
  /** Marks that stand in the files already: a new one is another. */
  readonly taken: readonly string[];
}

/** A field as it is asked: needed or not, and what kind of thing answers it. */
export interface Question extends FieldView {
  readonly isNeeded: boolean;
  /** The words that may stand there, as the language says them. */
  readonly said: readonly string[];
  /** Any of these answers it. */
  readonly answers: readonly AnswerKind[];
  /** Of a length between each and the next: how many there are, as far as that is answered; `null` for any other. */
  readonly between: { readonly count: number | null; readonly decimal: DecimalMark } | null;
}

/** What is written there: a number with a unit of some dimension, a count, a place, words. */
export type AnswerKind = Dimension | 'count' | 'position' | 'several' | 'sourced' | 'words' | 'choice';

export interface KindOfPart {
  readonly kind: string;
  readonly meaning: string;
  /** Titles of the machines that use it; empty where any setup may. */
  readonly usedBy: readonly string[];
}

export interface PartQuestions {
  readonly mark: string;
  readonly kind: string;
  readonly meaning: string;
  readonly questions: readonly Question[];
}

export interface MachineOffered {
  readonly name: string;
  readonly title: string;
  readonly does: string;
  /** Kinds of part that it can't be without and that the kit has not, in words. */
  readonly lacks: readonly string[];
}

export interface TableQuestions {
  readonly mark: string;
  readonly machine: string;
  readonly title: string;
  readonly path: Edit['path'];
  readonly questions: readonly Question[];
  readonly setups: readonly SetupQuestions[];
  /** Writes one more setup, as the last one with a mark of its own. */
  readonly another: Edit;
}

export interface SetupQuestions {
  readonly mark: string;
  readonly path: Edit['path'];
  readonly slots: readonly SlotQuestion[];
  readonly questions: readonly Question[];
}

/** Which part of the kit stands somewhere; each that can stand there with the edit that puts it there. */
export interface SlotQuestion {
  readonly slot: string;
  /** The slot as the language says it. */
  readonly words: string;
  readonly path: Edit['path'];
  readonly isNeeded: boolean;
  /** Mark of the part that stands there; empty where none does. */
  readonly mark: string;
  readonly offers: readonly { readonly mark: string; readonly words: string; readonly edit: Edit }[];
}

export interface AskedQuestions {
  readonly job: 'questions';
  readonly number: number;
  readonly language: 'en' | 'es';
  readonly texts: Texts;
}

export interface AnsweredQuestions {
  readonly job: 'questions';
  readonly number: number;
  /** `null` where a file can't be read as what it should be. */
  readonly questions: Questions | null;
}

/** A first setup of a machine on a table, from what the kit has. */
export interface AskedStart {
  readonly job: 'start';
  readonly number: number;
  readonly texts: Texts;
  readonly machine: string;
  readonly mark: string;
  readonly title: string;
}

export interface AnsweredStart {
  readonly job: 'start';
  readonly number: number;
  readonly start: TableStarted | null;
}

export interface TableStarted {
  readonly edit: Edit;
  /** Whether a setup was found that can be read well, one that can only be built, or none. */
  readonly found: 'clear' | 'built' | 'none';
}

/** A partner for the last setup of a table, in which a class sees the difference. */
export interface AskedPair {
  readonly job: 'pair';
  readonly number: number;
  readonly texts: Texts;
  readonly table: string;
}

export interface AnsweredPair {
  readonly job: 'pair';
  readonly number: number;
  readonly pair: PairStarted | null;
}

export interface PairStarted {
  /** With both setups written. */
  readonly texts: Texts;
  /** The setup that asks for more, and the one that asks for less. */
  readonly more: string;
  readonly less: string;
  /** So many of 100 groups see from one reading at each which asks for more. */
  readonly of100: number;
}
