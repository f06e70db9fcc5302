import { type Language, languagePack } from '../sentences/language.ts';

/** What was written as a class that speaks the language would write it: readings files may have points. */
export const writtenText = (language: Language, written: string): string =>
  languagePack(language).decimal === 'comma' ? written.replace(/(\d)\.(\d)/, '$1,$2') : written;
