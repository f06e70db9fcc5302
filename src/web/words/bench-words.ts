import { type BenchKey, benchEn } from './bench-en.ts';
import { benchEs } from './bench-es.ts';
import { filledIn } from './words.ts';

export type BenchSay = (key: BenchKey, facts?: Readonly<Record<string, string | number>>) => string;

/** How the page speaks of readings on the bench and on arrival. */
export const benchSayIn = (language: string): BenchSay => {
  const words: Readonly<Record<BenchKey, string>> = language.startsWith('es') ? benchEs : benchEn;
  return (key, facts = {}) => filledIn(words[key], facts);
};
