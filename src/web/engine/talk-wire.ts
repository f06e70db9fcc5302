import type { SourceText } from '../../core/files/source-text.ts';
import type { Trial } from '../../core/files/trials-on-arrival.ts';
import type { PreparationFiles } from '../../core/prepare.ts';
import type { RehearsalOptions } from '../../core/rehearse.ts';
import type { TalkEntry } from '../../documents/discussion/talk-entries.ts';
import type { TalkPart } from '../../documents/discussion/talk-page.ts';

/** What the talk's page and its engine say to each other: plain data, which a worker's port carries. */
export type TalkOf =
  | { readonly kind: 'class'; readonly readings: SourceText; readonly trials: readonly Trial[] }
  | { readonly kind: 'rehearsal'; readonly asked: Partial<RehearsalOptions> };

export interface AskedTalk {
  readonly number: number;
  readonly language: 'en' | 'es';
  readonly files: PreparationFiles;
  readonly of: TalkOf;
  /** Whether a group may be named. */
  readonly names: boolean;
}

export interface AnsweredTalk {
  readonly number: number;
  /** `null` where the files give no tables. */
  readonly talk: TalkShown | null;
  /** What is wrong with the files, a sentence each. */
  readonly faults: readonly string[];
  /** Rows that belong to no setup. */
  readonly refused: number;
}

export interface TalkShown {
  readonly title: string;
  readonly about: string;
  readonly facts: readonly (readonly [term: string, value: string])[];
  readonly how: readonly string[];
  readonly leftOut: readonly string[];
  /** What the answer is called that is covered until it is wanted. */
  readonly answer: string;
  readonly questions: readonly QuestionShown[];
  /** The same as files of their own, for paper or for keeping. */
  readonly sheets: { readonly wall: string; readonly notes: string };
}

export interface QuestionShown {
  readonly kind: string;
  /** "Question 1 of 8", and with how long it takes. */
  readonly number: string;
  readonly count: string;
  readonly ask: string;
  readonly task: string;
  readonly shown: readonly TalkPart[];
  readonly answer: readonly TalkPart[];
  readonly notes: readonly TalkEntry[];
}
