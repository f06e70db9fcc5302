import { type Edit, FILE_KINDS, type Texts } from './prepare-wire.ts';

/** What an older page kept, or somebody else's, may be anything. */
export const isTexts = (kept: unknown): kept is Texts =>
  FILE_KINDS.every((kind) => isFile((kept as Partial<Record<string, unknown>> | undefined)?.[kind])) &&
  areBooks((kept as { readonly books?: unknown }).books);

const areBooks = (books: unknown): boolean =>
  books === undefined ||
  (typeof books === 'object' &&
    books !== null &&
    Object.values(books).every((text) => typeof text === 'string'));

export const isFile = (kept: unknown): boolean => {
  const file = kept as { readonly name?: unknown; readonly text?: unknown } | undefined;
  return typeof file?.name === 'string' && typeof file.text === 'string';
};

export const areEdits = (kept: unknown): kept is readonly Edit[] =>
  Array.isArray(kept) &&
  kept.every((each: Partial<Edit> | null) => {
    const { file, path, value, and = [] } = each ?? {};
    return (
      FILE_KINDS.some((kind) => kind === file) &&
      Array.isArray(path) &&
      typeof value === 'string' &&
      areEdits(and)
    );
  });
