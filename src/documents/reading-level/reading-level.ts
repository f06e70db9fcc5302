import { type NotDefined, notDefined } from '../../core/description/not-defined.ts';
import { englishSyllables } from './english-syllables.ts';
import {
  type Counts,
  fernandezHuerta,
  fleschKincaidGrade,
  fleschReadingEase,
  infleszBand,
  szigrisztPazos,
} from './formulas.ts';
import { spanishSyllables } from './spanish-syllables.ts';
import { sentencesOf, tokensOf } from './tokens.ts';

/** What was counted in a text, and what the published formulas make of it. */
export interface ReadingLevel {
  /** Sentences, words with figures among them, and the syllables of the words that are no figures. */
  readonly counted: TextCounts;
  readonly score: ReadingScore | NotDefined;
  /** Hardest first, each with its own words. */
  readonly sentences: readonly SentenceLevel[];
}

export interface TextCounts {
  readonly sentences: number;
  readonly words: number;
  /** Numbers, units after them and marks with a digit: words of their sentence whose syllables nobody counts. */
  readonly figures: number;
  readonly syllables: number;
}

/** One number decides; the other is told beside it. */
export type ReadingScore =
  | { readonly by: 'grade'; readonly grade: number; readonly ease: number }
  | {
      readonly by: 'score';
      readonly score: number;
      readonly perspicuity: number;
      readonly band: string;
    };

export interface SentenceLevel {
  readonly text: string;
  readonly words: number;
  readonly syllablesPerWord: number;
}

/** The languages that have a published formula here. */
export type ReadingLanguage = 'en' | 'es';

const SYLLABLES: Readonly<Record<ReadingLanguage, (word: string) => number>> = {
  en: englishSyllables,
  es: spanishSyllables,
};

/**
 * How hard some texts are to read, all together: the American grade of Flesch and Kincaid for English, the
 * score of Fernández Huerta for Spanish. A figure ("2.5", "N", "W500") is a word of its sentence, and is taken
 * to be as long as the others are on average: so it makes no sentence shorter and no word easier. It holds for
 * running text; a card of short orders is at the easy end of what the formulas were made for.
 *
 * @example readingLevelOf(['Hang the load from hole 3.', 'Pull it down.'], 'en').counted // => { sentences: 2, words: 9, figures: 1, syllables: 8 }
 */
export function readingLevelOf(texts: readonly string[], language: ReadingLanguage): ReadingLevel {
  const sentences = texts.flatMap(sentencesOf);
  const each = sentences.map((text) => ({ text, ...countsOf([text], language) }));
  const counted = countsOf(sentences, language);
  return {
    counted,
    score: scoreOf(counted, language),
    sentences: each
      .map(({ text, words, figures, syllables }) => ({
        text,
        words,
        syllablesPerWord: words === figures ? 0 : syllables / (words - figures),
      }))
      .sort((a, b) => hardness(b) - hardness(a)),
  };
}

function countsOf(sentences: readonly string[], language: ReadingLanguage): TextCounts {
  const tokens = sentences.flatMap(tokensOf);
  const words = tokens.filter(({ kind }) => kind === 'word');
  return {
    sentences: sentences.length,
    words: tokens.length,
    figures: tokens.length - words.length,
    syllables: words.reduce((sum, { text }) => sum + SYLLABLES[language](text), 0),
  };
}

/** The formulas on the counts, figures as long as the average word. */
function scoreOf(
  { sentences, words, figures, syllables }: TextCounts,
  language: ReadingLanguage,
): ReadingScore | NotDefined {
  if (words === figures) return notDefined('reading-level.no-words');
  const counts: Counts = { sentences, words, syllables: (syllables * words) / (words - figures) };
  if (language === 'en')
    return { by: 'grade', grade: fleschKincaidGrade(counts), ease: fleschReadingEase(counts) };
  const perspicuity = szigrisztPazos(counts);
  return { by: 'score', score: fernandezHuerta(counts), perspicuity, band: infleszBand(perspicuity) };
}

/** One sentence beside the others, by the weights of the English formula: used for their order only. */
const hardness = ({ words, syllablesPerWord }: Omit<SentenceLevel, 'text'>): number =>
  0.39 * words + 11.8 * syllablesPerWord;
