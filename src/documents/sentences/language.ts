import type { DecimalMark } from '../../core/quantities/print-quantity.ts';
import { english } from './en/english.ts';
import { spanish } from './es/spanish.ts';

/** A language is a folder with its sentences; a second one is one more folder and one more line here. */
export type Language = keyof typeof languages;

/** All that a language brings along. */
export interface LanguagePack {
  /** As an HTML `lang` attribute has it (BCP 47). */
  readonly tag: string;
  readonly decimal: DecimalMark;
  readonly sentences: Readonly<Record<string, string>>;
}

const languages = { en: english, es: spanish } as const;

/**
 * What a language brings along.
 *
 * @example languagePack('en').tag // => 'en'
 */
export const languagePack = (language: Language): LanguagePack => languages[language];

/**
 * The language that a tag names, or nothing where there is none.
 *
 * @example languageNamed('es') // => 'es'
 */
export const languageNamed = (tag: string): Language | undefined => languageTags.find((each) => each === tag);

/** Every language that there is. */
export const languageTags: readonly Language[] = ['en', 'es'];
