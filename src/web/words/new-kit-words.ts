import { type NewKitKey, newKitEn } from './new-kit-en.ts';
import { newKitEs } from './new-kit-es.ts';
import { filledIn } from './words.ts';

export type { NewKitKey };
export type NewKitSay = (key: NewKitKey, facts?: Readonly<Record<string, string | number>>) => string;

/** How the questions about a new kit speak. */
export const newKitSayIn = (language: string): NewKitSay => {
  const words: Readonly<Record<NewKitKey, string>> = language.startsWith('es') ? newKitEs : newKitEn;
  return (key, facts = {}) => filledIn(words[key], facts);
};
