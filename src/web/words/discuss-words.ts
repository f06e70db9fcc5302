import { type DiscussKey, discussEn } from './discuss-en.ts';
import { discussEs } from './discuss-es.ts';
import { filledIn } from './words.ts';

export type { DiscussKey };
export type DiscussSay = (key: DiscussKey, facts?: Readonly<Record<string, string | number>>) => string;

/** How the page of the talk speaks. */
export const discussSayIn = (language: string): DiscussSay => {
  const words: Readonly<Record<DiscussKey, string>> = language.startsWith('es') ? discussEs : discussEn;
  return (key, facts = {}) => filledIn(words[key], facts);
};
