import type { Discussion } from '../../core/discuss.ts';
import type { QuestionKind } from '../../core/discussion/question.ts';
import type { Prepared } from '../../core/prepare.ts';
import type { JudgedReading } from '../../core/review.ts';
import type { Language } from '../sentences/language.ts';
import type { Say } from '../sheets/say.ts';

/** One question as it stands on the wall, on paper and in the terminal: every outlet prints this. */
export interface TalkPage {
  readonly kind: QuestionKind;
  readonly number: number;
  readonly of: number;
  readonly ask: string;
  /** What the class does with it. */
  readonly task: string;
  /** What stands there from the start. */
  readonly shown: readonly TalkPart[];
  /** What is uncovered once the class has answered. */
  readonly answer: readonly TalkPart[];
  readonly notes: TalkNotes;
}

/** What whoever leads the talk has in hand, and the wall does not show. */
export interface TalkNotes {
  /** Seconds. */
  readonly wait: number;
  readonly minutes: number;
  /** A model answer, in the class's numbers. */
  readonly answer: readonly string[];
  /** What is often said. */
  readonly idea: string;
  /** What to ask back then. */
  readonly back: string;
}

export type TalkPart =
  | { readonly part: 'line'; readonly text: string }
  | {
      readonly part: 'figure';
      readonly caption: string;
      /** Carries its own words for whoever can't see it. */
      readonly svg: string;
    }
  | {
      readonly part: 'table';
      readonly head: readonly string[];
      /** The first cell heads its row. */
      readonly rows: readonly (readonly string[])[];
    };

/** What a page is made from. */
export interface TalkWords {
  readonly language: Language;
  readonly say: Say;
  readonly prepared: Prepared;
  readonly judged: readonly JudgedReading[];
  readonly discussion: Discussion;
}

/** What a kind of question brings to its page. */
export interface TalkContent {
  readonly shown: readonly TalkPart[];
  readonly answer: readonly TalkPart[];
  /** Model answer; what stands in the answer's lines where nothing else is said. */
  readonly model?: readonly string[];
}

export const lines = (texts: readonly string[]): readonly TalkPart[] =>
  texts.map((text) => ({ part: 'line', text }));

/** Width of a picture on a page, millimetres of paper. */
export const PICTURE_WIDTH = 150;
