import type { DiagnosticSentence } from '../text/diagnostic-text.ts';
import { diagnosticSentences as english } from './en/diagnostics.ts';
import { diagnosticSentences as spanish } from './es/diagnostics.ts';
import type { Language } from './language.ts';

const byLanguage: Readonly<Record<Language, Readonly<Record<string, DiagnosticSentence>>>> = {
  en: english,
  es: spanish,
};

/** The words of a message. A code without words is a fault of the program and throws. */
export function diagnosticSentence(language: Language, code: string): DiagnosticSentence {
  const found = byLanguage[language][code];
  if (found === undefined) throw new RangeError(`no message in "${language}" for "${code}"`);
  return found;
}
