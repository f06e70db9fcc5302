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
  readonly refused: readonly RefusedStay[];
  /** No row names the columns that are needed: nothing of the file can be used. */
  readonly lacksHeading: boolean;
}

/** A row that can't be used. */
export interface RefusedStay extends RefusedRow {
  /** The line that it contradicts; `null` where the row itself is at fault. */
  readonly other: number | null;
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
  /** `null`: whatever label stands there, as in the file of an earlier visit. */
  readonly groups: readonly string[] | null;
  readonly tables: readonly string[];
  /** How many of a table there are, by mark; one where nothing is said. */
  readonly copies: Readonly<Record<string, number>>;
  /** Labels of the classes that come; none where the visit is of one. */
  readonly classes: readonly string[];
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
 * dropped without a word: what can't be used is kept with its line and why. Of two rows that can't both be true (a
 * group at two tables at once, more groups at a table than it has copies) the later one is refused.
 */
export function readDoneFile(file: SourceText, context: DoneContext): DoneFile {
  const rows = tableRows(file.text, (cells) => columnsOf(cells) !== null);
  const heading = rows.findIndex(({ cells }) => columnsOf(cells) !== null);
  const columns = columnsOf(rows[heading]?.cells ?? []);
  if (columns === null)
    return { stays: [], refused: rows.map((row) => refused(row, 'done.no-heading')), lacksHeading: true };
  const stays: WrittenStay[] = [];
  const notUsed: RefusedStay[] = [];
  for (const row of rows.slice(heading + 1).filter((each) => isVisit(each, columns))) {
    const found = row.fault ?? stayIn(row, columns, context);
    if (typeof found === 'string') {
      notUsed.push(refused(row, found));
      continue;
    }
    const clash = contradicted(found, stays, context);
    if (clash === null) stays.push(placed(found, stays));
    else notUsed.push(refused(row, clash.because, clash.other));
  }
  return {
    stays: stays.map(({ copy, ...stay }) => ({ ...stay, copy: copy ?? 1 })),
    refused: notUsed,
    lacksHeading: false,
  };
}

/** A row as it is written: where no copy is named, it may be any. */
type WrittenStay = Omit<DoneStay, 'copy'> & { readonly copy: number | null };

/** Why a row can't be true beside the rows before it, and beside which. */
function contradicted(
  stay: WrittenStay,
  before: readonly WrittenStay[],
  { copies }: DoneContext,
): { readonly because: string; readonly other: number } | null {
  const ours = before.filter(({ ofClass }) => ofClass === stay.ofClass);
  const again = ours.find(({ group, table }) => group === stay.group && table === stay.table);
  if (again !== undefined) return { because: 'done.twice', other: again.line };
  const atOnce = ours.filter((other) => overlap(other, stay));
  const elsewhere = atOnce.find(({ group }) => group === stay.group);
  if (elsewhere !== undefined) return { because: 'done.two-tables', other: elsewhere.line };
  const there = atOnce.filter(({ table }) => table === stay.table);
  const inTheWay = stay.copy === null ? undefined : there.find(({ copy }) => copy === stay.copy);
  const full = inTheWay ?? (there.length >= (copies[stay.table] ?? 1) ? there.at(-1) : undefined);
  return full === undefined ? null : { because: 'done.taken', other: full.line };
}

/** Back to back is not at once. */
const overlap = (a: WrittenStay, b: WrittenStay): boolean =>
  a.from < (b.to ?? Infinity) && b.from < (a.to ?? Infinity);

/** Where no copy is named, the first that is free. */
function placed(stay: WrittenStay, before: readonly WrittenStay[]): WrittenStay {
  if (stay.copy !== null) return stay;
  const taken = before
    .filter((other) => other.ofClass === stay.ofClass && other.table === stay.table && overlap(other, stay))
    .map(({ copy }) => copy);
  let copy = 1;
  while (taken.includes(copy)) copy += 1;
  return { ...stay, copy };
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
function stayIn(row: TableRow, columns: Columns, context: DoneContext): WrittenStay | string {
  const cell = (column: Column): string => (row.cells[columns.get(column) ?? -1] ?? '').trim();
  const ofClass = named(cell('class'), context.classes);
  if (ofClass === null && cell('class') !== '') return 'done.unknown-class';
  const group = context.groups === null ? cell('group') : named(cell('group'), context.groups);
  if (group === null || group === '') return 'done.unknown-group';
  const table = named(cell('table'), context.tables);
  if (table === null) return 'done.unknown-table';
  const from = timeIn(cell('from'), context);
  if (from === null) return cell('from') === '' ? 'done.no-from' : 'done.no-time';
  const to = cell('to') === '' ? null : timeIn(cell('to'), context);
  if (to === null && cell('to') !== '') return 'done.no-time';
  if (to !== null && to <= from) return 'done.backwards';
  const copy = cell('copy') === '' ? null : Number(cell('copy'));
  const isCopy =
    copy === null || (Number.isInteger(copy) && copy >= 1 && copy <= (context.copies[table] ?? 1));
  if (!isCopy) return 'done.no-copy';
  return {
    ofClass,
    group,
    table,
    copy,
    from,
    to,
    line: row.line,
  };
}

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

const refused = (row: TableRow, because: string, other: number | null = null): RefusedStay => ({
  line: row.line,
  text: row.cells.join(', '),
  because,
  other,
});
