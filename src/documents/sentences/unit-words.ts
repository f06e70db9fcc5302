import { unitLabel } from '../printing/reading-text.ts';
import type { Language } from './language.ts';
import { hasSentence, sentence } from './sentence.ts';

/**
 * A unit as a reader of the language has it: a symbol as it stands on the instrument, a word translated.
 *
 * @example unitWords('es', 'turns') // => 'vueltas'
 * @example unitWords('es', 'gf') // => 'g'
 */
export const unitWords = (language: Language, unit: string): string =>
  hasSentence(language, `unit.${unit}`) ? sentence(language, `unit.${unit}`) : unitLabel(unit);
