import type { Caution } from '../../core/description/step.ts';
import type { SetupSheet } from '../pages/sheet.ts';
import type { Language } from './language.ts';
import { hasSentence, sentence } from './sentence.ts';

/**
 * A caution as the card says it: short, and only what the pupil has to keep. The whole caution, with what
 * the adult sees to, stands on the hazard sheet. A language without the short form says the whole.
 *
 * @example pupilCaution('en', { key: 'caution.eye-protection', facts: {}, source: 'eye protection' }) // => 'Wear safety glasses.'
 */
export const pupilCaution = (language: Language, { key, facts }: Caution): string =>
  sentence(language, hasSentence(language, `${key}.pupil`) ? `${key}.pupil` : key, facts);

/** Each caution of a table once, in the order of its setups. */
export function cautionsOf(table: {
  readonly setups: readonly Pick<SetupSheet, 'cautions'>[];
}): readonly Caution[] {
  const found = new Map<string, Caution>();
  for (const setup of table.setups)
    for (const caution of setup.cautions) if (!found.has(caution.key)) found.set(caution.key, caution);
  return [...found.values()];
}
