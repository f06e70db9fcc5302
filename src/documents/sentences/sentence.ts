import type { Fact, Facts } from '../../core/diagnostics/diagnostic.ts';
import { significant } from '../../core/quantities/print-quantity.ts';
import { quantityText, trimmed } from '../printing/quantity-text.ts';
import { type Language, languagePack } from './language.ts';

/**
 * The sentence of a key with its facts filled in: quantities in a unit that fits them, lists joined,
 * counts as they are. A key without a sentence, or a sentence that asks for a fact which isn't
 * there, is a fault of the program and throws; the tests ask for every key.
 *
 * @example sentence('en', 'way.raise', {}) // => 'moving up slowly'
 */
export function sentence(language: Language, key: string, facts: Facts = {}): string {
  const template = languagePack(language).sentences[key];
  if (template === undefined) throw new RangeError(`no sentence in "${language}" for "${key}"`);
  return fillIn(language, template, facts);
}

/**
 * Whether a language has a sentence for a key.
 *
 * @example hasSentence('en', 'way.raise') // => true
 */
export const hasSentence = (language: Language, key: string): boolean =>
  Object.hasOwn(languagePack(language).sentences, key);

/**
 * A template with its facts put into the braces. `{block@word}` says the word that the language has for a
 * name of the model's, `word.fixed block`; a name without one stands as it is.
 *
 * @example fillIn('en', 'through hole {hole}', { hole: 6 }) // => 'through hole 6'
 * @example fillIn('es', 'el {block@word}', { block: 'fixed block' }) // => 'el bloque fijo'
 */
export function fillIn(language: Language, template: string, facts: Facts): string {
  return template.replace(/\{([^{}@]+)(?:@([^{}]+))?\}/g, (_, name: string, of: string | undefined) => {
    const fact = facts[name];
    if (fact === undefined) throw new RangeError(`no fact "${name}" for the sentence "${template}"`);
    return factText(language, of === undefined ? fact : worded(language, fact, of));
  });
}

/**
 * A fact as words: a quantity in a unit that fits it, a number with at most four digits, a list
 * joined by commas and "and".
 *
 * @example factText('en', { si: 0.3, dimension: 'mass' }) // => '300 g'
 * @example factText('en', ['red', 'blue', 'teal']) // => 'red, blue and teal'
 */
export function factText(language: Language, fact: Fact): string {
  const { decimal, sentences } = languagePack(language);
  if (typeof fact === 'string') return fact;
  if (typeof fact === 'number')
    return Number.isInteger(fact) ? String(fact) : trimmed(significant(fact, 3, decimal));
  if ('si' in fact) return quantityText(fact, decimal);
  const [last, ...others] = [...fact].reverse();
  if (last === undefined) return sentences['list.nothing'] ?? '';
  if (others.length === 0) return last;
  return `${others.reverse().join(', ')} ${andBefore(language, last)} ${last}`;
}

/** "And" before a word: Spanish says "e" before the sound of i. */
function andBefore(language: Language, next: string): string {
  const { sentences } = languagePack(language);
  return (isSoundOfI(next) ? sentences['list.and.before-i'] : sentences['list.and']) ?? '';
}

const isSoundOfI = (word: string): boolean => /^h?[ií](?![aeou])/i.test(word);

/** Names of the model's as words: each of a list, or one. */
function worded(language: Language, fact: Fact, of: string): Fact {
  const word = (name: string): string => languagePack(language).sentences[`${of}.${name}`] ?? name;
  if (typeof fact === 'string') return word(fact);
  return typeof fact === 'number' || 'si' in fact ? fact : fact.map(word);
}
