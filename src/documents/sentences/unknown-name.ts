import type { Language } from './language.ts';
import { hasSentence, sentence } from './sentence.ts';

/**
 * The name of an unknown as a row of the budget or the advice has it. An unknown is a field of a
 * part or setup (`bar 1/pin diameter`), a named kind (`kind:bearing/dry pin`), or one of the house's
 * own (`reading/hand scatter`).
 *
 * @example unknownName('en', 'reading/hand scatter') // => 'hand scatter'
 * @example unknownName('en', 'bar 1/pin diameter') // => 'pin diameter of bar 1'
 * @example unknownName('en', 'kind:bearing/dry pin') // => 'dry pin: friction of its kind'
 */
export function unknownName(language: Language, id: string): string {
  if (hasSentence(language, `unknown.${id}`)) return sentence(language, `unknown.${id}`);
  const kind = /^kind:([^/]+)\/(.+?)(?:\/(ratio|share|constant))?$/.exec(id);
  if (kind !== null) {
    const [, table = '', name = '', part] = kind;
    const key = `unknown.kind.${part ?? table}`;
    return sentence(language, hasSentence(language, key) ? key : 'unknown.kind.other', { name });
  }
  const slash = id.indexOf('/');
  if (slash < 0) return id;
  return sentence(language, 'unknown.field-of', { owner: id.slice(0, slash), field: id.slice(slash + 1) });
}
