import { en, type WordKey } from './en.ts';
import { es } from './es.ts';

export type { WordKey };
export type Say = (key: WordKey, facts?: Readonly<Record<string, string | number>>) => string;

type Facts = Readonly<Record<string, string | number>>;

/** How a page speaks: by the visit's language, where it is one of ours. */
export const sayIn = (language: string): Say => {
  const words: Readonly<Record<WordKey, string>> = language.startsWith('es') ? es : en;
  return (key, facts = {}) => filledIn(words[key], facts);
};

/** A sentence with its facts in their places. */
export const filledIn = (text: string, facts: Facts): string =>
  text.replace(/\{(\w+)\}/g, (whole, name: string) => String(facts[name] ?? whole));
