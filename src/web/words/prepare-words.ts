import { type PrepareKey, prepareEn } from './prepare-en.ts';
import { prepareEs } from './prepare-es.ts';
import { filledIn } from './words.ts';

export type { PrepareKey };
export type PrepareSay = (key: PrepareKey, facts?: Readonly<Record<string, string | number>>) => string;

/** How the page for preparing speaks. */
export const prepareSayIn = (language: string): PrepareSay => {
  const words: Readonly<Record<PrepareKey, string>> = language.startsWith('es') ? prepareEs : prepareEn;
  return (key, facts = {}) => filledIn(words[key], facts);
};
