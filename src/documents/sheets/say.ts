import type { Facts } from '../../core/diagnostics/diagnostic.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';

/** A sentence in one language: what a builder of sheets says its words with. */
export type Say = (key: string, facts?: Facts) => string;

/**
 * The words of one language, ready to be asked by key.
 *
 * @example sayIn('en')('way.raise') // => 'moving up slowly'
 */
export const sayIn =
  (language: Language): Say =>
  (key, facts = {}) =>
    sentence(language, key, facts);
