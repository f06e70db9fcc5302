import type { Dimension } from '../quantities/dimension.ts';

/**
 * What is wrong with, or worth knowing about, something the user wrote. It is data: a code, a
 * place in the data, plain facts. The sentence stands in the message file of a language; only
 * `files` turns the place into line and column.
 */
export interface Diagnostic {
  readonly code: string;
  readonly severity: Severity;
  readonly at: Place;
  readonly facts: Facts;
}

export type Severity = 'error' | 'warning' | 'note';

/** A place in one of the user's files, as a path of keys; `span` narrows it within the value's text. */
export interface Place {
  readonly file: string;
  readonly path: readonly (string | number)[];
  readonly on: 'key' | 'value';
  readonly span?: readonly [from: number, to: number];
}

/** A plain fact for a sentence: text, a count, a list of names, or a quantity in SI. */
export type Fact = string | number | readonly string[] | QuantityFact;
export interface QuantityFact {
  readonly si: number;
  readonly dimension: Dimension;
  readonly u?: number;
  /** The unit to print it in, where one is at hand: a scale's own marks. */
  readonly unit?: string;
}
export type Facts = Readonly<Record<string, Fact>>;

export const isError = (diagnostic: Diagnostic): boolean => diagnostic.severity === 'error';

/** The same finding at the same place, met through several setups, is told once. */
export function eachOnce(diagnostics: readonly Diagnostic[]): readonly Diagnostic[] {
  const seen = new Set<string>();
  return diagnostics.filter((diagnostic) => {
    const key = JSON.stringify([diagnostic.code, diagnostic.at, diagnostic.facts]);
    return !seen.has(key) && seen.add(key);
  });
}
