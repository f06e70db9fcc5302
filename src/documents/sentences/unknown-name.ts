import type { Language } from './language.ts';
import { hasSentence, sentence } from './sentence.ts';

/**
 * The name of an unknown as a row of the budget or the advice has it: it reads after "measure the". An
 * unknown is a field of a part or setup (`bar 1/pin diameter`), of a stage (`D1/stage 2 tilt`), a named
 * kind (`kind:bearing/dry pin`), or one of the house's own (`reading/hand scatter`).
 *
 * @example unknownName('en', 'reading/hand scatter') // => 'hand scatter'
 * @example unknownName('en', 'bar 1/pin diameter') // => 'diameter of the pin of bar 1'
 * @example unknownName('en', 'D1/stage 2 tilt') // => 'tilt of the bar in stage 2 of D1'
 * @example unknownName('en', 'kind:bearing/dry pin') // => 'friction of a dry pin'
 */
export function unknownName(language: Language, id: string): string {
  if (hasSentence(language, `unknown.${id}`)) return sentence(language, `unknown.${id}`);
  const kind = /^kind:([^/]+)\/(.+?)(?:\/(ratio|share|constant))?$/.exec(id);
  if (kind !== null) {
    const [, table = '', name = '', part] = kind;
    const key = `unknown.kind.${part ?? table}`;
    return sentence(language, hasSentence(language, key) ? key : 'unknown.kind.other', {
      name: kindName(language, name),
    });
  }
  const slash = id.indexOf('/');
  if (slash < 0) return id;
  return fieldName(language, id.slice(0, slash), id.slice(slash + 1));
}

/** What the files call by an English name, in the reader's words. */
const kindName = (language: Language, name: string): string =>
  hasSentence(language, `kind.${name}`) ? sentence(language, `kind.${name}`) : name;

/** A field with what may stand around it: the stage before it, the start or a number behind it. */
function fieldName(language: Language, owner: string, field: string): string {
  const key = `unknown.field.${field}`;
  if (hasSentence(language, key)) return sentence(language, key, { owner });
  const stage = /^stage (\d+) (.+)$/.exec(field);
  if (stage !== null)
    return fieldName(
      language,
      sentence(language, 'unknown.stage-of', { stage: stage[1] ?? '', owner }),
      stage[2] ?? '',
    );
  const start = /^(.+) at the start$/.exec(field);
  if (start !== null)
    return sentence(language, 'unknown.at-the-start', { what: fieldName(language, owner, start[1] ?? '') });
  const [, several = '', number = ''] = /^(.+) (\d+)$/.exec(field) ?? [];
  if (hasSentence(language, `unknown.numbered.${several}`))
    return sentence(language, `unknown.numbered.${several}`, { owner, number });
  return sentence(language, 'unknown.field-of', { owner, field });
}
