import { wrapped } from './columns.ts';

/** One thing that is said, and how far in it stands: a terminal, a page and paper each break it as they do. */
export interface OutlineLine {
  /** Letters from the edge. */
  readonly indent: number;
  readonly text: string;
  /** How it was found, which comes after what was found. */
  readonly tone?: 'small';
}

/** What is said of one table. */
export interface Outline<L extends OutlineLine = OutlineLine> {
  readonly heading: string;
  readonly lines: readonly L[];
}

/**
 * An outline for the terminal, broken so that no line is longer than the width.
 *
 * @example outlineText({ heading: 'Table 1', lines: [{ indent: 2, text: 'a long bar' }] }, 8) // => ['Table 1', '  a long', '  bar']
 */
export const outlineText = ({ heading, lines }: Outline, width: number): readonly string[] => [
  heading,
  ...lines.flatMap(({ indent, text }) =>
    wrapped(text, width - indent).map((line) => ' '.repeat(indent) + line),
  ),
];
