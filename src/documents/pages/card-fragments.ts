import { element, escapeText } from '../markup.ts';
import type { Language } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';
import { fragment } from './fragment.ts';
import { type CardSetup, type CardTable, care, setupSection } from './table-page.ts';

/** A table's card as pieces of a page: what it is and what to take care of, then each setup. */
export interface CardFragments {
  readonly about: string;
  readonly setups: readonly { readonly mark: string; readonly markup: string }[];
}

/** The card of a table for a group's own screen: made from nothing that tells what will be read. */
export function cardFragments(language: Language, table: CardTable): CardFragments {
  const within = `table-${table.mark}`;
  const key = `${table.machine}.about`;
  const about = hasSentence(language, key) ? element('p', {}, escapeText(sentence(language, key))) : '';
  return {
    about: fragment(`${about}${care(language, table)}`, within),
    setups: table.setups.map((setup: CardSetup) => ({
      mark: setup.mark,
      markup: fragment(setupSection(language, table, setup), within),
    })),
  };
}
