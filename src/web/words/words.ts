import { en, type WordKey } from './en.ts';
import { es } from './es.ts';

export type { WordKey };
export type Say = (key: WordKey, facts?: Readonly<Record<string, string | number>>) => string;

/** How a page speaks: by the visit's language, where it is one of ours. */
export const sayIn = (language: string): Say => {
  const words: Readonly<Record<WordKey, string>> = language.startsWith('es') ? es : en;
  return (key, facts = {}) =>
    words[key].replace(/\{(\w+)\}/g, (whole, name: string) => String(facts[name] ?? whole));
};
