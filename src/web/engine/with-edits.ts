import { withGrown } from '../../core/files/grow-text.ts';
import { readYaml } from '../../core/files/yaml-tree.ts';
import type { Edit, Texts } from './prepare-wire.ts';

/** The texts with edits made one after the other; `null` where one of them can't be made. */
export const withEdits = (texts: Texts, edits: readonly Edit[]): Texts | null =>
  edits
    .flatMap(({ and = [], ...first }): readonly Edit[] => [first, ...and])
    .reduce(withEdit, texts as Texts | null);

function withEdit(texts: Texts | null, { file, path, value }: Edit): Texts | null {
  if (texts === null) return null;
  const text = withGrown(readYaml(texts[file]).source, path, value);
  return text === null ? null : { ...texts, [file]: { ...texts[file], text } };
}
