import { type Seconds, seconds } from '../quantities/brands.ts';
import type { DecimalMark } from '../quantities/print-quantity.ts';
import { readQuantity } from '../quantities/read-quantity.ts';
import { clockTime } from './day-time.ts';
import type { RefusedRow } from './readings-file.ts';
import { type TableRow, tableRows } from './readings-table.ts';
import type { SourceText } from './source-text.ts';

/** What has been done so far: who was where, as somebody ticked it off. */
export interface DoneFile {
  readonly stays: readonly DoneStay[];
  readonly refused: readonly RefusedRow[];
}

export interface DoneStay {
  /** `null` where the file has no such column. */
  readonly ofClass: string | null;
  readonly group: string;
  readonly table: string;
  readonly copy: number;
  readonly from: Seconds;
  /** `null`: still there. */
  readonly to: Seconds | null;
  readonly line: number;
}

/** What a done file is held against. */
export interface DoneContext {
  readonly groups: readonly string[];
  readonly tables: readonly string[];
  /** Since midnight; `null` where nobody says. */
  readonly starts: Seconds | null;
  readonly decimal: DecimalMark;
}

const COLUMNS = ['class', 'kind', 'group', 'table', 'copy', 'from', 'to'] as const;
type Column = (typeof COLUMNS)[number];

/** Headings in English and Spanish, in small letters. */
const WORDS: Readonly<Record<Column, readonly string[]>> = {
  class: ['class', 'clase'],
  kind: ['kind'],
  group: ['group', 'grupo'],
  table: ['table', 'mesa'],
  copy: ['copy', 'copia'],
  from: ['from', 'began', 'de', 'desde'],
  to: ['to', 'until', 'ended', 'a', 'hasta'],
};

/**
 * What has been done as a spreadsheet writes it: columns group, table, from, to, as the plan's own CSV has them. A
 * blank "to" is a group that is still there. Times are read off the clock, or are minutes since the start. No row is
 * dropped without a word: what can't be used is kept with its line and why.
 */
export function readDoneFile(file: SourceText, context: DoneContext): DoneFile {
  const rows = tableRows(file.text, (cells) => columnsOf(cells) !== null);
  const heading = rows.findIndex(({ cells }) => columnsOf(cells) !== null);
  const columns = columnsOf(rows[heading]?.cells ?? []);
  if (columns === null) return { stays: [], refused: rows.map((row) => refused(row, 'done.no-heading')) };
  const stays: DoneStay[] = [];
  const notUsed: RefusedRow[] = [];
  for (const row of rows.slice(heading + 1).filter((each) => isVisit(each, columns))) {
    const found = row.fault ?? stayIn(row, columns, context);
    if (typeof found === 'string') notUsed.push(refused(row, found));
    else if (stays.some((stay) => isSameVisit(stay, found))) notUsed.push(refused(row, 'done.twice'));
    else stays.push(found);
  }
  return { stays, refused: notUsed };
}

type Columns = ReadonlyMap<Column, number>;

function columnsOf(cells: readonly string[]): Columns | null {
  const found = new Map<Column, number>();
  cells.forEach((cell, n) => {
    const word = cell.trim().toLowerCase();
    const column = COLUMNS.find((each) => WORDS[each].includes(word));
    if (column !== undefined && !found.has(column)) found.set(column, n);
  });
  return found.has('group') && found.has('table') && found.has('from') ? found : null;
}

/** The plan's own CSV has rows of other kinds too: what a group does while it waits, and where adults stand. */
const isVisit = ({ cells }: TableRow, columns: Columns): boolean =>
  !['wait', 'adult'].includes((cells[columns.get('kind') ?? -1] ?? '').trim());

/** A row as a stay, or why it is none. */
function stayIn(row: TableRow, columns: Columns, context: DoneContext): DoneStay | string {
  const cell = (column: Column): string => (row.cells[columns.get(column) ?? -1] ?? '').trim();
  const group = named(cell('group'), context.groups);
  if (group === null) return 'done.unknown-group';
  const table = named(cell('table'), context.tables);
  if (table === null) return 'done.unknown-table';
  const from = timeIn(cell('from'), context);
  if (from === null) return cell('from') === '' ? 'done.no-from' : 'done.no-time';
  const to = cell('to') === '' ? null : timeIn(cell('to'), context);
  if (to === null && cell('to') !== '') return 'done.no-time';
  if (to !== null && to <= from) return 'done.backwards';
  const copy = /^[1-9]\d?$/.test(cell('copy')) ? Number(cell('copy')) : 1;
  return {
    ofClass: cell('class') === '' ? null : cell('class'),
    group,
    table,
    copy,
    from,
    to,
    line: row.line,
  };
}

const isSameVisit = (a: DoneStay, b: DoneStay): boolean =>
  a.ofClass === b.ofClass && a.group === b.group && a.table === b.table;

const named = (written: string, known: readonly string[]): string | null =>
  known.find((each) => each === written) ??
  known.find((each) => each.toLowerCase() === written.toLowerCase()) ??
  null;

/** Seconds since the start: from the clock, with seconds or without; from a time with its unit; or from bare minutes. */
function timeIn(text: string, { starts, decimal }: DoneContext): Seconds | null {
  const [, minutes = '', rest] = /^(\d{1,2}:\d{2})(?::(\d{2}))?$/.exec(text) ?? [];
  const clock = clockTime(minutes);
  if (clock !== null && starts === null) return null;
  if (clock !== null) {
    const since = clock + Number(rest ?? 0) - (starts ?? 0);
    return since < 0 ? null : seconds(since);
  }
  const bare = /^\d{1,3}([.,]\d+)?$/.test(text) ? `${text} min` : text;
  const read = readQuantity(bare, { dimensions: ['time'], decimal: bare.includes(',') ? 'comma' : decimal });
  return read.kind === 'written' && read.value >= 0 ? seconds(Math.round(read.value)) : null;
}

const refused = (row: TableRow, because: string): RefusedRow => ({
  line: row.line,
  text: row.cells.join(', '),
  because,
});
