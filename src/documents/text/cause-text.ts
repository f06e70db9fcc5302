import type { Facts } from '../../core/diagnostics/diagnostic.ts';
import type { Language } from '../sentences/language.ts';
import { hasSentence, sentence } from '../sentences/sentence.ts';

/** A cause as it is said: its code, and which weight or which partner where there are several. */
export interface SaidCause {
  readonly code: string;
  readonly facts?: Facts;
}

/**
 * The name of a cause; one of a machine's is said by the machine.
 *
 * @example causeName('en', { code: 'lever.load-hole-left' }) // => 'the load was one hole too far left'
 */
export const causeName = (language: Language, { code }: SaidCause): string =>
  sentence(language, keyOf(language, 'cause', code));

/**
 * The name of a cause, and which weight or which partner where there are several.
 *
 * @example causeNamed('en', { code: 'setup.swapped', facts: { partner: 'L2' } }).endsWith(': L2') // => true
 */
export function causeNamed(language: Language, cause: SaidCause): string {
  const other = cause.facts?.hung ?? cause.facts?.partner;
  return `${causeName(language, cause)}${typeof other === 'string' ? `: ${other}` : ''}`;
}

/**
 * The one thing that the group is asked to do. It says what to look at, never what was done wrong.
 *
 * @example causeToTry('en', { code: 'incline.left-empty' }) // => 'Put the load on, then read once more.'
 */
export const causeToTry = (language: Language, { code }: SaidCause): string =>
  sentence(language, keyOf(language, 'try', code));

/** What probably happened and how to see it, for the teacher alone; which weight or partner, where known. */
export function causeToSee(language: Language, { code, facts }: SaidCause): string {
  const key = keyOf(language, 'see', code);
  return facts !== undefined && hasSentence(language, `${key}.named`)
    ? sentence(language, `${key}.named`, facts)
    : sentence(language, key);
}

/** Causes of which all are told in the same words. */
const ALIKE: readonly { readonly codes: RegExp; readonly as: string }[] = [
  { codes: /^reading\.in-/, as: 'reading.unit' },
  { codes: /^reading\.(ten-times|a-tenth|a-hundred-times)$/, as: 'reading.point' },
];

/** `lever.load-hole-left` is named by the machine as `lever.mistake.load-hole-left`. */
function keyOf(language: Language, what: 'cause' | 'try' | 'see', code: string): string {
  const alike = what === 'cause' ? undefined : ALIKE.find(({ codes }) => codes.test(code));
  const general = `${what}.${alike?.as ?? code}`;
  if (hasSentence(language, general)) return general;
  // A reckoning that any machine can see is called by its code.
  return what === 'cause' && hasSentence(language, code)
    ? code
    : code.replace('.', `.${what === 'cause' ? 'mistake' : what}.`);
}
