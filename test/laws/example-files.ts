import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse, stringify } from 'yaml';
import { isError } from '../../src/core/diagnostics/diagnostic.ts';
import { type Prepared, prepare } from '../../src/core/prepare.ts';
import { predictionJson } from '../../src/documents/text/key-json.ts';

/** A file's content with every value as the text that was written. */
export type Tree = string | null | readonly Tree[] | { readonly [key: string]: Tree };
export type TreeMap = { readonly [key: string]: Tree };

/** The three files of an example, as trees that can be written another way. */
export interface Files {
  readonly kit: TreeMap;
  readonly activity: TreeMap;
  readonly visit: TreeMap;
}

const examples = join(import.meta.dirname, '../../examples');

export function exampleFiles(name: string): Files {
  const folder = join(examples, name);
  const read = (kind: keyof Files): TreeMap => {
    const file = readdirSync(folder).find((each) => each.endsWith(`.${kind}.yaml`)) ?? '';
    return parse(readFileSync(join(folder, file), 'utf8'), { schema: 'failsafe' }) as TreeMap;
  };
  return { kit: read('kit'), activity: read('activity'), visit: read('visit') };
}

/** Written in block style, a key a line, and prepared as a user's files would be. */
export function preparedFrom(files: Files): Prepared {
  const text = (kind: keyof Files) => ({
    name: `${kind}.yaml`,
    text: stringify(files[kind], { schema: 'failsafe', lineWidth: 0 }),
  });
  const prepared = prepare({ kit: text('kit'), activity: text('activity'), visit: text('visit') });
  const errors = prepared.diagnostics.filter(isError);
  if (errors.length > 0)
    throw new Error(errors.map(({ code, at }) => `${code} at ${at.file} ${at.path.join('/')}`).join('\n'));
  return prepared;
}

/**
 * Every number of the key, by table and setup, each to nine significant digits, and nothing but the
 * numbers and the kinds of outcome: names and the units of the marks belong to the way of writing.
 * Rows of a budget and findings come in the order of their numbers.
 */
export function keyNumbers(
  prepared: Prepared,
  asWas: (mark: string) => string = (mark) => mark,
): Readonly<Record<string, unknown>> {
  const rows = prepared.tables.flatMap((table) =>
    table.setups.map(({ prediction }) => {
      const { marks: _, setup: __, graduation, ...rest } = predictionJson(prediction);
      const figures = { ...rest, graduation: graduation === null ? null : graduation.step };
      const name = `${asWas(table.mark)} ${asWas(prediction.setup)}`;
      return [name, numbersOf(JSON.parse(JSON.stringify(figures)))] as const;
    }),
  );
  return Object.fromEntries(rows.sort(([a], [b]) => (a < b ? -1 : 1)));
}

/** Below this a figure is nought but for rounding: the remainder of an account, for one. */
const NOUGHT = 1e-12;
const KINDS = new Set([
  'kind',
  'outcome',
  'way',
  'watched',
  'machine',
  'severity',
  'code',
  'because',
  'by',
  'key',
]);

function numbersOf(value: unknown, key = ''): unknown {
  if (typeof value === 'number') return Math.abs(value) < NOUGHT ? 0 : Number(value.toPrecision(9));
  if (Array.isArray(value)) return value.map((each) => numbersOf(each)).sort(byText);
  if (isBudgetRow(value)) return { u: numbersOf(value.u), share: value.share.toFixed(7) };
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, numbersOf(each, name)]));
  return KINDS.has(key) || typeof value === 'boolean' ? value : '';
}

/**
 * A row of the budget. Its slope is a difference of nearly equal numbers and has fewer good digits than
 * the key; what it weighs in the whole doubt is compared to seven decimals.
 */
const isBudgetRow = (value: unknown): value is { readonly u: number; readonly share: number } =>
  typeof value === 'object' && value !== null && 'share' in value && 'sensitivity' in value;

const byText = (a: unknown, b: unknown): number => (JSON.stringify(a) < JSON.stringify(b) ? -1 : 1);
