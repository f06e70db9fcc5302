import type { Fields, Filled } from '../description/fields.ts';
import { textIn } from '../description/filled.ts';
import { type PaperLanguage, paperLanguages } from './group-words.ts';

/** A title as it was written, and what it is in languages that have their own. */
export interface Titled {
  readonly title: string;
  readonly titles: Readonly<Partial<Record<PaperLanguage, string>>>;
}

const keyOf = (language: PaperLanguage): string => `title in ${language}`;

const EXAMPLES: Readonly<Record<PaperLanguage, string>> = { en: 'The boat hook', es: 'El bichero' };

/** `title in es`: for paper in a language that the title itself is not written in. */
export const titleFields: Fields = Object.fromEntries(
  paperLanguages.map((language) => [
    keyOf(language),
    { type: 'text', meaning: `activity.field.title-in-${language}`, example: EXAMPLES[language] },
  ]),
);

/** The titles that stand in checked fields, and one to fall back on. */
export const titledIn = (filled: Filled, otherwise: string): Titled => ({
  title: textIn(filled, 'title') ?? otherwise,
  titles: Object.fromEntries(
    paperLanguages.flatMap((language) => {
      const text = textIn(filled, keyOf(language));
      return text === undefined ? [] : [[language, text]];
    }),
  ),
});

/**
 * The title that paper in this language bears.
 *
 * @example titleIn('es', { title: 'The boat hook', titles: { es: 'El bichero' } }) // => 'El bichero'
 * @example titleIn('es', { title: 'The boat hook', titles: {} }) // => 'The boat hook'
 */
export const titleIn = (language: PaperLanguage, { title, titles }: Titled): string =>
  titles[language] ?? title;
