import { isNotDefined } from '../../core/description/not-defined.ts';
import type { SetupSheet } from '../pages/sheet.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { asSentence, whyText } from './key-table.ts';
import { outcomeText, textbookText } from './prediction-text.ts';

/**
 * What stands on the back of the key for a setup: what is found where it is no plain reading, and why
 * the schoolbook differs (its figure is in front). Empty where there is nothing to say.
 */
export function reasonText(language: Language, setup: SetupSheet): string {
  const { prediction } = setup;
  const { kind } = prediction.outcome;
  const cut = 'cutAtOwnWeight' in prediction.outcome ? sentence(language, 'found.cut-at-own-weight') : '';
  const isPlain = kind === 'reading' || kind === 'band' || kind === 'ease';
  const special = isPlain ? cut : asSentence(outcomeText(language, prediction));
  const { textbook } = prediction;
  const missing = isNotDefined(textbook) ? textbookText(language, textbook) : '';
  return [special, missing, whyText(language, setup)].filter((each) => each !== '').join(' ');
}
