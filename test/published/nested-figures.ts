import { readFileSync } from 'node:fs';

/** One printed figure of a case whose expected values are nested: `gum.u`, `interval95[0]`. */
export interface NestedFigure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly tolerance: number;
}

export interface NestedCase {
  readonly id: string;
  readonly gist: string;
  readonly basis: string;
  readonly source: { readonly title: string; readonly section: string };
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly figures: readonly NestedFigure[];
}

interface Printed {
  readonly value: number;
  readonly unit?: string;
  readonly tol_abs: number;
}

/** The cases of a topic whose expected figures come in groups, each group with its own tolerance. */
export function nestedCases(topic: string): readonly NestedCase[] {
  const { cases } = JSON.parse(
    readFileSync(new URL(`../reference/${topic}.json`, import.meta.url), 'utf8'),
  ) as { readonly cases: readonly (Omit<NestedCase, 'figures'> & { readonly expected: object })[] };
  return cases.map(({ expected, ...each }) => ({ ...each, figures: figuresIn(expected, '', null) }));
}

/** A list or a bare number takes the tolerance of its group; one without any is no figure to check. */
function figuresIn(group: object, path: string, outer: number | null): readonly NestedFigure[] {
  const entries = Object.entries(group).filter(([key]) => !key.startsWith('tol_'));
  const said = group as { readonly tol_abs_interval?: number; readonly tol_abs?: number };
  const tolerance = said.tol_abs_interval ?? said.tol_abs ?? outer;
  return entries.flatMap(([key, entry]): readonly NestedFigure[] => {
    const name = path === '' ? key : `${path}.${key}`;
    if (isPrinted(entry))
      return [{ name, value: entry.value, unit: entry.unit ?? '1', tolerance: entry.tol_abs }];
    if (Array.isArray(entry))
      return entry.map((value: number, n) => ({
        name: `${name}[${n}]`,
        value,
        unit: '1',
        tolerance: tolerance ?? 0,
      }));
    return typeof entry === 'object' && entry !== null ? figuresIn(entry, name, tolerance) : [];
  });
}

const isPrinted = (entry: unknown): entry is Printed =>
  typeof entry === 'object' &&
  entry !== null &&
  'value' in entry &&
  typeof entry.value === 'number' &&
  'tol_abs' in entry;
