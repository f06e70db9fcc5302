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
 * A template with its facts put into the braces.
 *
 * @example fillIn('en', 'through hole {hole}', { hole: 6 }) // => 'through hole 6'
 */
export function fillIn(language: Language, template: string, facts: Facts): string {
  return template.replace(/\{([^{}]+)\}/g, (_, name: string) => {
    const fact = facts[name];
    if (fact === undefined) throw new RangeError(`no fact "${name}" for the sentence "${template}"`);
    return factText(language, fact);
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
  return others.length === 0 ? last : `${others.reverse().join(', ')} ${sentences['list.and'] ?? ''} ${last}`;
}
