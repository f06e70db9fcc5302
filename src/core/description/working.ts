/**
 * One printed line of working. `formula` is arithmetic in the names of `values`, so that the line
 * can be recomputed by anyone from the numbers printed in it.
 *
 * Grammar of a formula: + - * / ^ ( ) , names, numbers, pi, and
 * sin cos tan asin acos atan sqrt exp ln abs min max hypot floor ceil; angles in radians.
 */
export interface WorkingLine {
  /** Sentence key printed above the line, where a new part of the working begins. */
  readonly heading?: string;
  /** What the line finds, as a key of the sentences: `lever.effort`. */
  readonly what: string;
  readonly symbol: string;
  readonly formula: string;
  readonly values: Readonly<Record<string, number>>;
  readonly value: number;
  /** SI unit as printed: `N`, `m`, `N·m`, `rad`, `1`. */
  readonly unit: string;
  /** Book, clause or sheet that the formula comes from. */
  readonly source: string;
}

/** A line that begins no new part. */
export const workingLine = (
  what: string,
  symbol: string,
  formula: string,
  values: Readonly<Record<string, number>>,
  value: number,
  unit: string,
  source: string,
): WorkingLine => ({ what, symbol, formula, values, value, unit, source });
