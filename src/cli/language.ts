import { type Language, languageNamed, languageTags } from '../documents/sentences/language.ts';
import type { Arguments } from './arguments.ts';
import { UsageFault } from './command.ts';

/** The line of help of a command that speaks more than one language. */
export const LANGUAGE_OPTION = `--language LANGUAGE  ${languageTags.join(' or ')} (en)`;

/** The language that an option asks for: English where it asks for none; the system's own is not consulted. */
export function languageIn(found: Arguments, option: string): Language {
  const tag = found.text(option) ?? 'en';
  const language = languageNamed(tag);
  if (language === undefined)
    throw new UsageFault(`--${option} is ${languageTags.join(' or ')}, not "${tag}"`);
  return language;
}
