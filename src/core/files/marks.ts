import { asText, type Context, type Path } from './context.ts';
import type { Node } from './node.ts';

/** A mark or label with its place, for findings. */
export interface MarkAt {
  readonly mark: string;
  readonly path: Path;
}

/** Marks as a list or as one text with commas between: `5, 6`. */
export function readMarks(node: Node, path: Path, context: Context): readonly MarkAt[] {
  if (node.kind !== 'list') return marksIn(asText(node, path, context) ?? '', path);
  return node.items.flatMap((item, n) => {
    const mark = asText(item, [...path, n], context);
    return mark === null ? [] : [{ mark, path: [...path, n] }];
  });
}

/**
 * Marks in one text with commas between.
 *
 * @example marksIn('5, 6', ['at']).map(({ mark }) => mark) // => ['5', '6']
 */
export const marksIn = (text: string, path: Path): readonly MarkAt[] =>
  text
    .split(',')
    .map((mark) => mark.trim())
    .filter((mark) => mark !== '')
    .map((mark) => ({ mark, path }));
