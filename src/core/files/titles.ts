import type { Fields, Filled } from '../description/fields.ts';
import { textIn } from '../description/filled.ts';
import { type PaperLanguage, paperLanguages } from './group-words.ts';

/** A title as it was written, and what it is in languages that have their own. */
export interface Titled {
  readonly title: string;
  readonly titles: Readonly<Partial<Record<PaperLanguage, string>>>;
}

/** A sentence of the activity's own, and what it is in languages that have it too. */
export interface OwnWords {
  readonly text: string;
  readonly texts: Titled['titles'];
}

const keyOf = (field: string, language: PaperLanguage): string => `${field} in ${language}`;

const EXAMPLES: Readonly<Record<PaperLanguage, string>> = { en: 'The boat hook', es: 'El bichero' };

/** `title in es`: for paper in a language that the title itself is not written in. */
export const titleFields: Fields = Object.fromEntries(
  paperLanguages.map((language) => [
    keyOf('title', language),
    { type: 'text', meaning: `activity.field.title-in-${language}`, example: EXAMPLES[language] },
  ]),
);

/** The titles that stand in checked fields, and one to fall back on. */
export const titledIn = (filled: Filled, otherwise: string): Titled => ({
  title: textIn(filled, 'title') ?? otherwise,
  titles: perLanguage(filled, 'title'),
});

const SHOWN: Readonly<Record<PaperLanguage, string>> = {
  en: 'twice the arm, half the pull',
  es: 'el doble de brazo, la mitad de tirón',
};

/** `shows in es`: what two setups show together, for paper in another language. */
export const showsFields: Fields = Object.fromEntries(
  paperLanguages.map((language) => [
    keyOf('shows', language),
    { type: 'text', meaning: `activity.field.shows-in-${language}`, example: SHOWN[language] },
  ]),
);

/** What a setup shows beside its partner, where the activity says so. */
export function showsIn(filled: Filled): OwnWords | null {
  const text = textIn(filled, 'shows');
  return text === undefined ? null : { text, texts: perLanguage(filled, 'shows') };
}

const TASKS: Readonly<Record<PaperLanguage, string>> = {
  en: 'Draw the machine of your last table.',
  es: 'Dibujen la máquina de su última mesa.',
};

/** A task on paper for a group that waits, for paper in several languages. */
export const taskFields: Fields = {
  task: { type: 'text', required: true, meaning: 'activity.field.task', example: TASKS.en },
  ...Object.fromEntries(
    paperLanguages.map((language) => [
      keyOf('task', language),
      { type: 'text', meaning: `activity.field.task-in-${language}`, example: TASKS[language] },
    ]),
  ),
};

export function taskIn(filled: Filled): OwnWords | null {
  const text = textIn(filled, 'task');
  return text === undefined ? null : { text, texts: perLanguage(filled, 'task') };
}

const perLanguage = (filled: Filled, field: string): Titled['titles'] =>
  Object.fromEntries(
    paperLanguages.flatMap((language) => {
      const text = textIn(filled, keyOf(field, language));
      return text === undefined ? [] : [[language, text]];
    }),
  );

/**
 * The title that paper in this language bears.
 *
 * @example titleIn('es', { title: 'The boat hook', titles: { es: 'El bichero' } }) // => 'El bichero'
 * @example titleIn('es', { title: 'The boat hook', titles: {} }) // => 'The boat hook'
 */
export const titleIn = (language: PaperLanguage, { title, titles }: Titled): string =>
  titles[language] ?? title;

/** The words that paper in this language bears; the activity's own where it has none. */
export const ownWordsIn = (language: PaperLanguage, words: OwnWords | null): string | null =>
  words === null ? null : (words.texts[language] ?? words.text);
