import type { AgeRange } from '../../core/files/activity.ts';
import type { Language } from '../sentences/language.ts';
import type { PaperJob } from '../sheets/paper-job.ts';
import { cardsOf } from '../sheets/table-card.ts';
import { type CardText, cardTextsOf } from './card-texts.ts';
import { type ReadingLanguage, type ReadingLevel, readingLevelOf } from './reading-level.ts';
import { isEasyEnough, MOST_WORDS_IN_A_STEP, type ReadingLimit, readingLimit } from './reading-limit.ts';
import { sentencesOf, tokensOf } from './tokens.ts';

/** How hard the card of one table is, beside what its readers can do. */
export interface CardLevel {
  readonly table: string;
  readonly title: string;
  readonly level: ReadingLevel;
  readonly limit: ReadingLimit;
  /** The longest sentence of all steps, with its words. */
  readonly longestStep: { readonly text: string; readonly words: number } | null;
  readonly verdict: CardVerdict;
}

export type CardVerdict =
  | 'easy enough'
  | 'too hard'
  | 'a step is too long'
  | 'too hard, and a step is too long';

/** A card before it is measured: whose it is, and what it says. */
export interface CardWords {
  readonly table: string;
  readonly title: string;
  readonly texts: readonly CardText[];
}

/** The level of every card of a printing, in its language, for the youngest readers of the activity. */
export function cardLevelsOf(job: PaperJob): readonly CardLevel[] {
  const language: Language = job.languages.cards;
  return cardsOf(job).map(({ table, card }) =>
    cardLevelOf(
      language,
      { table: table.mark, title: table.title, texts: cardTextsOf(language, table, card) },
      job.prepared.activity?.age ?? null,
    ),
  );
}

/** The level of a table's card for the youngest readers of the activity. */
export function cardLevelOf(
  language: ReadingLanguage,
  { table, title, texts }: CardWords,
  age: AgeRange | null,
): CardLevel {
  const level = readingLevelOf(
    texts.map(({ text }) => text),
    language,
  );
  const limit = readingLimit(age, language);
  const [longestStep = null] = texts
    .filter((each) => each.of === 'step')
    .flatMap(({ text }) => sentencesOf(text))
    .map((text) => ({ text, words: tokensOf(text).length }))
    .sort((a, b) => b.words - a.words);
  const verdict = verdictOf(
    isEasyEnough(level, limit),
    longestStep === null || longestStep.words <= MOST_WORDS_IN_A_STEP,
  );
  return { table, title, level, limit, longestStep, verdict };
}

const verdictOf = (easy: boolean, short: boolean): CardVerdict => {
  if (easy) return short ? 'easy enough' : 'a step is too long';
  return short ? 'too hard' : 'too hard, and a step is too long';
};
