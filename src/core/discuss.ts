import { isNotDefined, notDefined } from './description/not-defined.ts';
import { guessAgainstReading } from './discussion/guess-against-reading.ts';
import { limitsOfKit } from './discussion/limits-of-kit.ts';
import { machinesAtTables } from './discussion/machines-at-tables.ts';
import {
  type FoundFor,
  type OpenQuestion,
  PACE,
  type Question,
  type QuestionKind,
  type QuestionOf,
  questionsWithin,
} from './discussion/question.ts';
import { restOfWork } from './discussion/rest-of-work.ts';
import { savedWork } from './discussion/saved-work.ts';
import { surprisingNumbers } from './discussion/surprising-numbers.ts';
import { tradedOf } from './discussion/traded.ts';
import type { Prepared } from './prepare.ts';
import { type ClassSummary, classSummary } from './readings/class-summary.ts';
import type { Review } from './review.ts';

/** The talk at the end: questions in their order, each with the class's own numbers or why it has none. */
export interface Discussion {
  /** A class that was there, or one that never was, for the night before. */
  readonly of: 'class' | 'rehearsal';
  /** Groups that wrote something. */
  readonly groups: number;
  /** Rows that belong to a setup. */
  readonly readings: number;
  /** Whether groups may be named on the wall. */
  readonly names: boolean;
  /** What the class found: the same figures as at the end of a review. */
  readonly summary: ClassSummary;
  readonly questions: readonly Question[];
  /** Minutes that there are for the talk: what the activity says, else ten. */
  readonly minutes: number;
  /** Questions that these minutes hold, and those to ask where only five are left. */
  readonly within: readonly QuestionKind[];
  readonly inFive: readonly QuestionKind[];
}

export interface DiscussionOptions {
  readonly of: Discussion['of'];
  readonly names: boolean;
}

/** Where the activity says nothing of the talk: common practice, no source. */
const USUAL_MINUTES = 10;
const SHORT_MINUTES = 5;
/** Up to this age a felt order comes before any number: common practice, no source. */
const YOUNGEST = 9;

/** What is prepared and reviewed -> what the class found -> questions with its numbers. */
export function discuss(
  prepared: Prepared,
  found: Pick<Review, 'judged' | 'tables'>,
  { of, names }: DiscussionOptions,
): Discussion {
  const { judged, tables: findings } = found;
  const { tables, activity } = prepared;
  const summary = classSummary(found);
  const felt = summary.felt.filter(({ groups }) => groups > 0);
  const questions: readonly Question[] = [
    asked('machines', machinesAtTables(tables)),
    asked('guess', guessAgainstReading(judged, summary)),
    asked('traded', tradedOf(tables, summary)),
    asked('saved', savedWork(summary)),
    asked('rest', restOfWork(tables, summary)),
    asked('surprised', surprisingNumbers(judged, findings, summary, names)),
    asked('ease', felt.length === 0 ? notDefined('discuss.nothing-felt') : felt),
    asked('limits', limitsOfKit(tables, summary)),
  ];
  const isYoungest = (activity?.age?.to ?? YOUNGEST + 1) <= YOUNGEST || activity?.level === 1;
  const inOrder = isYoungest ? easeFirst(questions) : questions;
  const minutes = Math.round((activity?.period.talkAtTheEnd?.value ?? USUAL_MINUTES * 60) / 60);
  const open = inOrder.filter(isAsked);
  const kindsWithin = (limit: number) => questionsWithin(open, limit).map(({ kind }) => kind);
  return {
    of,
    groups: new Set(judged.map(({ judgement }) => judgement.reading.group)).size,
    readings: judged.length,
    names,
    summary,
    questions: inOrder,
    minutes,
    within: kindsWithin(minutes),
    inFive: kindsWithin(SHORT_MINUTES),
  };
}

/** A question that the class's numbers say something to: only these stand on the wall. */
export const isAsked = (question: Question): question is OpenQuestion => !isNotDefined(question.found);

/** For the youngest the order of ease comes first, and before any number. */
const easeFirst = (questions: readonly Question[]): readonly Question[] => [
  ...questions.filter(({ kind }) => kind === 'ease').map((each) => ({ ...each, rank: 0 })),
  ...questions.filter(({ kind }) => kind !== 'ease'),
];

const asked = <K extends QuestionKind>(
  kind: K,
  found: FoundFor[K] | QuestionOf<K>['found'],
): QuestionOf<K> => ({
  kind,
  found,
  ...PACE[kind],
});
