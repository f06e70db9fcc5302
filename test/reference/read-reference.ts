import { readFileSync } from 'node:fs';

/** A published case: inputs and outputs with their units and tolerances, as the file has them. */
export interface ReferenceCase {
  readonly id: string;
  readonly kind: string;
  readonly gist: string;
  readonly basis: string;
  readonly source: { readonly title: string; readonly section: string };
  readonly inputs: Readonly<Record<string, { readonly value: number; readonly unit: string }>>;
  readonly expected: Readonly<Record<string, ReferenceFigure>>;
}

export interface ReferenceFigure {
  readonly value: number;
  readonly unit: string;
  readonly tol_abs: number;
  readonly recomputed?: number;
}

/** A table beside this file; its shape is known to the test that asks for it. */
export const readTable = <T>(name: string): T => parse(`./tables/${name}.json`) as T;

/** The cases of one topic, of the kinds asked for. */
export const readCases = (topic: string, ...kinds: readonly string[]): readonly ReferenceCase[] => {
  const { cases } = parse(`./${topic}.json`) as { readonly cases: readonly ReferenceCase[] };
  return cases.filter((each) => kinds.includes(each.kind));
};

const parse = (path: string): unknown => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'));
