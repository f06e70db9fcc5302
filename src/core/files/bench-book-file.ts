import Papa from 'papaparse';
import type { Diagnostic, Facts } from '../diagnostics/diagnostic.ts';
import { isCalendarDate } from './calendar-date.ts';
import type { Path } from './context.ts';
import { type FileCode, fileFinding } from './file-code.ts';
import type { Entry, MapNode } from './node.ts';
import type { SourceFile, SourceText } from './source-text.ts';

/** Columns of a bench book, in the order in which a new one has them. */
export const BENCH_COLUMNS = [
  'date',
  'kit',
  'by',
  'activity',
  'what',
  'with',
  'reading',
  'use',
  'replaces',
  'note',
] as const;
export type BenchColumn = (typeof BENCH_COLUMNS)[number];
const NEEDED: readonly BenchColumn[] = ['date', 'kit', 'what', 'reading'];

/** One line of a bench book: what was read on the bench, when and by which role. Nothing in it is changed. */
export interface BenchLine {
  /** Line in the file, from 1. */
  readonly line: number;
  readonly path: Path;
  readonly date: string;
  /** A label, never a name. */
  readonly by: string;
  /** Activity that the setup is of; empty where that is not said. */
  readonly activity: string;
  /** As written: `L1`, `L1 lower`, `amber with W500`, `amber turned over`, `oar mass`. */
  readonly what: string;
  /** Marks of the parts that it was read with; empty where that is not said. */
  readonly parts: readonly string[];
  readonly reading: string;
  readonly decided: 'use' | 'leave out' | null;
  readonly note: string;
  /** The later line that stands instead of this one. */
  readonly replacedBy: number | null;
}

export interface ReadBenchBook {
  readonly source: SourceFile;
  readonly lines: readonly BenchLine[];
  readonly diagnostics: readonly Diagnostic[];
}

interface Row {
  readonly line: number;
  readonly node: MapNode;
  readonly cells: Readonly<Record<string, string>>;
  readonly isWhole: boolean;
}

/**
 * Reads a bench book: a table in which a line is only ever added. A correction is a new line that says in
 * "replaces" which line it stands for; both stay in the book.
 */
export function readBenchBook(file: SourceText, serial: string): ReadBenchBook {
  const text = file.text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const { rows, heading } = rowsOf(text);
  const items = rows.map(({ node }) => node);
  const source: SourceFile = {
    name: file.name,
    text,
    root: { kind: 'list', range: [0, text.length], items },
  };
  const diagnostics: Diagnostic[] = [];
  const say = (code: FileCode, path: Path, facts: Facts = {}): null => {
    diagnostics.push(fileFinding(code, { file: file.name, path, on: 'value' }, facts));
    return null;
  };
  const lacking = NEEDED.filter((column) => !heading.includes(column));
  // A file in which nothing stands yet is a book that nobody has begun.
  if (text.trim() === '') return { source, lines: [], diagnostics };
  if (lacking.length > 0) {
    const span: readonly [number, number] = [0, text.indexOf('\n') < 0 ? text.length : text.indexOf('\n')];
    const at = { file: file.name, path: [], on: 'value', span } as const;
    return {
      source,
      lines: [],
      diagnostics: [fileFinding('bench-no-columns', at, { lacking, known: BENCH_COLUMNS })],
    };
  }
  const by = replacements(rows, say);
  const lines = rows.flatMap((row, n): readonly BenchLine[] => {
    // What a later line stands for has been seen to: the slip stays in the book and is told no more.
    const replacedBy = by.get(row.line) ?? null;
    const line = lineOf(row, n, serial, replacedBy === null ? say : () => null);
    return line === null ? [] : [{ ...line, replacedBy }];
  });
  return { source, lines, diagnostics };
}

type Say = (code: FileCode, path: Path, facts?: Facts) => null;

function lineOf(row: Row, n: number, serial: string, say: Say): Omit<BenchLine, 'replacedBy'> | null {
  const cell = (column: BenchColumn): string => (row.cells[column] ?? '').trim();
  const path = [n];
  if (!row.isWhole) return say('bench-row', path);
  const blank = NEEDED.find((column) => cell(column) === '');
  if (blank !== undefined) return say('nothing-written', [n, blank], { key: blank });
  if (!isCalendarDate(cell('date'))) return say('not-a-date', [n, 'date'], { written: cell('date') });
  if (cell('kit') !== serial) return say('bench-other-kit', [n, 'kit'], { written: cell('kit'), serial });
  const use = cell('use').toLowerCase();
  if (!['', 'yes', 'no'].includes(use)) return say('not-yes-or-no', [n, 'use'], { written: use, key: 'use' });
  return {
    line: row.line,
    path,
    date: cell('date'),
    by: cell('by'),
    activity: cell('activity'),
    what: cell('what'),
    parts: cell('with')
      .split(';')
      .map((each) => each.trim())
      .filter((each) => each !== ''),
    reading: cell('reading'),
    decided: use === 'yes' ? 'use' : use === 'no' ? 'leave out' : null,
    note: cell('note'),
  };
}

/** Which line stands instead of which; a line is replaced once, by a later one. */
function replacements(rows: readonly Row[], say: Say): ReadonlyMap<number, number> {
  const by = new Map<number, number>();
  for (const [n, { line, cells }] of rows.entries()) {
    const written = (cells.replaces ?? '').trim();
    if (written === '') continue;
    const target = rows.find((each) => String(each.line) === written)?.line;
    const before = target === undefined ? undefined : by.get(target);
    if (target !== undefined && target < line && before === undefined) by.set(target, line);
    else
      say('bench-replaces', [n, 'replaces'], {
        written,
        ...(before === undefined ? {} : { by: String(before) }),
      });
  }
  return by;
}

function rowsOf(text: string): { readonly rows: readonly Row[]; readonly heading: readonly string[] } {
  const delimiter = separatorOf(text);
  const found: {
    readonly from: number;
    readonly to: number;
    readonly cells: string[];
    readonly isSound: boolean;
  }[] = [];
  let from = 0;
  Papa.parse<string[]>(text, {
    delimiter,
    newline: '\n',
    step: ({ data, errors, meta }) => {
      found.push({
        from,
        to: meta.cursor,
        cells: data,
        isSound: !errors.some(({ type }) => type === 'Quotes'),
      });
      from = meta.cursor;
    },
  });
  const [head, ...rest] = found.filter(({ cells }) => cells.some((cell) => cell.trim() !== ''));
  const heading = (head?.cells ?? []).map((cell) => cell.trim().toLowerCase());
  return {
    heading,
    rows: rest.map(({ from: start, to, cells, isSound }) => {
      const ranges = cellRanges(text, start, to, delimiter);
      const entries = heading.map((key, k): Entry => {
        const range =
          ranges[k] ??
          ([start, Math.max(start + 1, text.slice(start, to).trimEnd().length + start)] as const);
        return { key, keyRange: range, node: { kind: 'text', range, text: cells[k] ?? '', textFrom: null } };
      });
      return {
        line: text.slice(0, start).split('\n').length,
        node: { kind: 'map', range: [start, to], entries },
        cells: Object.fromEntries(heading.map((key, k) => [key, cells[k] ?? ''])),
        isWhole: isSound && cells.slice(heading.length).every((cell) => cell.trim() === ''),
      };
    }),
  };
}

/** Where each cell of a row stands in the text, its quotes included. */
function cellRanges(
  text: string,
  from: number,
  to: number,
  delimiter: string,
): (readonly [number, number])[] {
  const ranges: (readonly [number, number])[] = [];
  let start = from;
  let isQuoted = false;
  for (let at = from; at <= to; at += 1) {
    const letter = at === to ? '\n' : text[at];
    if (letter === '"') isQuoted = !isQuoted;
    if (isQuoted || (letter !== delimiter && letter !== '\n')) continue;
    ranges.push([start, at]);
    start = at + 1;
    if (letter === '\n') break;
  }
  return ranges;
}

/** The heading tells it: readings may hold decimal commas. */
function separatorOf(text: string): string {
  const [heading = ''] = text.trimStart().split('\n', 1);
  return [',', ';', '\t'].find((each) => heading.includes(each)) ?? ',';
}

/** What is written in a new line; what is left out stays blank. */
export type BenchEntry = Partial<Readonly<Record<BenchColumn, string>>>;

/**
 * The text to put behind a bench book so that it has one line more; a book that has not been begun gets its
 * heading first. What stands in the book already is never touched.
 *
 * @example addedLine('date,kit,what\n', { date: '2026-04-30', kit: 'BB-03', what: 'L1' }) // => '2026-04-30,BB-03,L1\n'
 */
export function addedLine(before: string, entry: BenchEntry): string {
  const text = before.replace(/^\uFEFF/, '');
  const delimiter = text.trim() === '' ? ',' : separatorOf(text);
  const isNew = text.trim() === '';
  const [head = ''] = text.trimStart().split(/\r\n?|\n/, 1);
  const columns: readonly string[] = isNew
    ? BENCH_COLUMNS
    : head.split(delimiter).map((cell) => cell.replaceAll('"', '').trim().toLowerCase());
  const cells = columns.map((column) => entry[column as BenchColumn] ?? '');
  const row = Papa.unparse([cells], { delimiter, newline: '\n' });
  const end = isNew || /[\r\n]$/.test(text) ? '' : '\n';
  return `${end}${isNew ? `${columns.join(',')}\n` : ''}${row}\n`;
}
