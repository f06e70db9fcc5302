import type { Paper } from './block.ts';

/** Room between the margins of an upright page, millimetres. */
const HEIGHTS: Readonly<Record<Paper, number>> = { a4: 269, 'us-letter': 251 };
const ROW = 4.9;

/**
 * How high a slip is that holds a table of so many rows under a head of so many millimetres; never higher
 * than a page.
 *
 * @example slipHeight('a4', 7, 50) > slipHeight('a4', 6, 50) // => true
 */
export const slipHeight = (paper: Paper, rows: number, head: number): number =>
  Math.min(HEIGHTS[paper], Math.round(head + ROW * rows));
