import type { FileKind } from '../../core/files/file-header.ts';
import { schemaOf } from '../../core/files/schema.ts';
import type { Vocabulary } from '../../core/files/vocabulary.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';

/** The JSON Schema of a file as it is published, its descriptions in a language. */
export const schemaJson = (language: Language, kind: FileKind, vocabulary: Vocabulary): string =>
  `${JSON.stringify(
    schemaOf(kind, vocabulary, (key) => sentence(language, key)),
    null,
    2,
  )}\n`;
