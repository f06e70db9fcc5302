import type { CardLevel } from '../reading-level/card-level.ts';
import { MOST_WORDS_IN_A_STEP } from '../reading-level/reading-limit.ts';
import type { Language } from '../sentences/language.ts';
import { plainJson } from './plain-json.ts';

/** The counts and scores of all cards as JSON, every sentence with its own, hardest first. */
export const readingLevelJson = (language: Language, activity: string, cards: readonly CardLevel[]): string =>
  plainJson({
    handspike: 'reading level 1',
    activity,
    language,
    formula: language === 'en' ? 'Flesch and Kincaid, 1975' : 'Fernández Huerta, 1959; Szigriszt-Pazos, 1993',
    mostWordsInAStep: MOST_WORDS_IN_A_STEP,
    cards: cards.map(({ table, title, level, limit, longestStep, verdict }) => ({
      table,
      title,
      ...level.counted,
      score: level.score,
      limit,
      longestStep,
      verdict,
      hardest: level.sentences,
    })),
  });
