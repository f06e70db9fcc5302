import type { Field, Fields } from '../../core/description/fields.ts';
import type { Path } from '../../core/files/context.ts';
import { valueAt } from '../../core/files/edit-text.ts';
import type { Node } from '../../core/files/node.ts';
import { fillIn, sentence } from '../../documents/sentences/sentence.ts';
import type { FileKind } from './prepare-wire.ts';
import type { AnswerKind, Question } from './question-wire.ts';

export interface AskedOf {
  readonly language: 'en' | 'es';
  readonly roots: Readonly<Record<FileKind, Node | null>>;
}

/** Fields as questions, the needed ones first; each knows where its answer is written. */
export const questionsFor = (
  { language, roots }: AskedOf,
  file: FileKind,
  path: Path,
  fields: Fields,
): readonly Question[] =>
  Object.entries(fields)
    .map(
      ([name, field]): Question => ({
        file,
        path: [...path, name],
        name,
        value: valueAt(roots[file], [...path, name]) ?? '',
        meaning: sentence(language, field.meaning),
        example: field.example,
        words: wordsOf(field),
        said: wordsOf(field).map((word) => wordIn(language, word)),
        isNeeded: field.required === true,
        answers: answersTo(field),
        between: betweenOf(roots[file], path, field),
      }),
    )
    .toSorted((a, b) => Number(b.isNeeded) - Number(a.isNeeded));

function betweenOf(root: Node | null, path: Path, { between }: Field): Question['between'] {
  if (between === undefined) return null;
  const count = Number(valueAt(root, [...path, between]) ?? '');
  return {
    count: Number.isInteger(count) && count > 1 ? count : null,
    decimal: valueAt(root, ['decimal']) === 'comma' ? 'comma' : 'point',
  };
}

const wordsOf = (field: Field): readonly string[] =>
  field.type === 'choice' ? field.of : field.type === 'yes-no' ? ['yes', 'no'] : [];

/** The word that a language has for a name of the files. */
export const wordIn = (language: 'en' | 'es', name: string): string =>
  fillIn(language, '{name@word}', { name });

function answersTo(field: Field): readonly AnswerKind[] {
  switch (field.type) {
    case 'quantity':
      return field.dimensions;
    case 'quantities':
    case 'marks':
      return ['several'];
    case 'yes-no':
      return ['choice'];
    case 'text':
      return ['words'];
    default:
      return [field.type];
  }
}
