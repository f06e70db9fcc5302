import type { Facts } from '../diagnostics/diagnostic.ts';
import type { ComputedColumns, WrittenReading } from '../readings/written-reading.ts';
import type { ColumnName } from './readings-headings.ts';
import { type Column, headingColumns, layoutOf, type ReadingsLayout } from './readings-layout.ts';
import { type TableRow, tableRows } from './readings-table.ts';
import type { SourceText } from './source-text.ts';

/** A readings file: every row is kept, also those that can't be used, with their line and why. */
export interface ReadingsFile {
  readonly readings: readonly WrittenReading[];
  readonly refused: readonly RefusedRow[];
  /** How the file was read, where that was not plain. */
  readonly notes: readonly FileNote[];
}

/** Something that was decided or seen while reading the file, as a sentence key with facts. */
export interface FileNote {
  /** `null` where it is about the whole file. */
  readonly line: number | null;
  readonly key: string;
  readonly facts: Facts;
}

export interface RefusedRow {
  readonly line: number;
  /** The row as it stands in the file. */
  readonly text: string;
  /** Why it can't be used, as a sentence key. */
  readonly because: string;
}

/**
 * Readings as a spreadsheet writes them: columns group, setup, reading and note in any order, or one
 * column a setup, or one a group. A row is never dropped and never changed. `marks` are the setups that
 * there are: by them a file without a heading is understood.
 */
export function readReadingsFile(file: SourceText, marks: readonly string[] = []): ReadingsFile {
  const rows = tableRows(file.text, (cells) => headingColumns(cells, marks) !== null);
  const layout = layoutOf(rows, marks);
  if (layout === null)
    return {
      readings: [],
      refused: rows.map((row, n) => refused(row, n === 0 ? 'readings.no-heading' : 'readings.no-column')),
      notes: [],
    };
  const readings: WrittenReading[] = [];
  const notUsed: RefusedRow[] = [];
  const notes: FileNote[] = [...notesAbove(rows, layout), ...unusedColumns(layout)];
  let groupAbove = '';
  for (const row of rows.slice(layout.above)) {
    if (isHeadingAgain(row, rows[layout.heading])) {
      notes.push({ line: row.line, key: 'readings.heading-again', facts: { text: row.cells.join(', ') } });
      continue;
    }
    const fault = row.fault ?? faultOf(row, layout.columns);
    if (fault !== null) {
      notUsed.push(refused(row, fault));
      continue;
    }
    const found = readingsOf(row, layout.columns);
    if (found.length === 0)
      notes.push({ line: row.line, key: 'readings.empty-row', facts: { text: row.cells.join(', ') } });
    readings.push(...found);
    const group = found[0]?.group ?? '';
    if (group !== '') groupAbove = group;
    else if (found.length > 0 && groupAbove !== '')
      notes.push({ line: row.line, key: 'readings.no-group', facts: { above: groupAbove } });
  }
  return { readings, refused: notUsed, notes: [...notes, ...doubles(readings)] };
}

/** A title and a date above the heading are no readings, and not lost. */
const notesAbove = (rows: readonly TableRow[], { heading, told }: ReadingsLayout): readonly FileNote[] => [
  ...rows
    .slice(0, Math.max(heading, 0))
    .map((row) => ({ line: row.line, key: 'readings.above-heading', facts: { text: row.cells.join(', ') } })),
  ...(told === null ? [] : [{ line: null, key: told.key, facts: told.facts }]),
];

function unusedColumns({ columns }: ReadingsLayout): readonly FileNote[] {
  const names = columns.flatMap(({ role, name }) => (role === null && name !== '' ? [name] : []));
  return names.length === 0 ? [] : [{ line: null, key: 'readings.unused-columns', facts: { names } }];
}

/** Two tables pasted under one another. */
const isHeadingAgain = (row: TableRow, heading: TableRow | undefined): boolean =>
  heading !== undefined &&
  row !== heading &&
  row.cells.length === heading.cells.length &&
  row.cells.every((cell, n) => cell.trim() === heading.cells[n]?.trim());

function faultOf(row: TableRow, columns: readonly Column[]): string | null {
  if (row.cells.slice(columns.length).some((cell) => cell.trim() !== '')) return 'readings.long-row';
  const setup = columns.findIndex(({ role }) => role === 'setup');
  if (setup >= 0 && (row.cells[setup] ?? '').trim() === '') return 'readings.no-setup';
  const reading = columns.findIndex(({ role }) => role === 'reading');
  const isWide = columns.some(({ of }) => of !== null);
  return !isWide && row.cells.length <= Math.max(setup, reading) ? 'readings.short-row' : null;
}

/** A row's readings: one, or one for each setup or group that has a column; blank there is none. */
function readingsOf(row: TableRow, columns: readonly Column[]): readonly WrittenReading[] {
  const cells = columns.map((column, n) => ({ column, text: (row.cells[n] ?? '').trim() }));
  const cell = (role: ColumnName): string => cells.find(({ column }) => column.role === role)?.text ?? '';
  const bySubject = new Map<string, (typeof cells)[number][]>();
  for (const each of cells.filter(({ column }) => column.role === 'reading')) {
    const subject = JSON.stringify(each.column.of);
    bySubject.set(subject, [...(bySubject.get(subject) ?? []), each]);
  }
  return [...bySubject.values()].flatMap((several) => {
    const written = several.map(({ text }) => text).filter((text) => text !== '');
    const column = several[0]?.column;
    if (column === undefined || (column.of !== null && written.length === 0)) return [];
    return [
      {
        group: cell('group'),
        setup: cell('setup'),
        ...column.of,
        written: written.join('; '),
        note: cell('note'),
        line: row.line,
        ...optional(cells, column.unit),
      },
    ];
  });
}

/** What only some files have a column for, as written. */
function optional(cells: readonly { readonly column: Column; readonly text: string }[], unitAbove: string) {
  const written = (role: ColumnName): string =>
    cells.find(({ column, text }) => column.role === role && text !== '')?.text ?? '';
  const computed: ComputedColumns = {
    ...(written('advantage') === '' ? {} : { advantage: written('advantage') }),
    ...(written('workIn') === '' ? {} : { workIn: written('workIn') }),
    ...(written('workOut') === '' ? {} : { workOut: written('workOut') }),
  };
  const others = cells.filter(({ column, text }) => column.role === null && text !== '');
  const unit = unitAbove === '' ? written('unit') : unitAbove;
  return {
    ...(unit === '' ? {} : { unitAbove: unit }),
    ...(written('ease') === '' ? {} : { ease: written('ease') }),
    ...(written('guess') === '' ? {} : { guess: written('guess') }),
    ...(Object.keys(computed).length === 0 ? {} : { computed }),
    ...(others.length === 0
      ? {}
      : { others: others.map(({ column, text }) => ({ heading: column.name, text })) }),
  };
}

/** The same group at the same setup once more: both stand, and it is said which line came first. */
function doubles(readings: readonly WrittenReading[]): readonly FileNote[] {
  const first = new Map<string, WrittenReading>();
  return readings.flatMap((reading) => {
    if (reading.group === '') return [];
    const place = JSON.stringify([reading.group, reading.setup].map((each) => each.toLowerCase()));
    const before = first.get(place);
    if (before === undefined) {
      first.set(place, reading);
      return [];
    }
    const key = before.written === reading.written ? 'readings.same-again' : 'readings.another';
    const { group, setup } = reading;
    return [{ line: reading.line, key, facts: { group, setup, line: before.line ?? 0 } }];
  });
}

const refused = (row: TableRow, because: string): RefusedRow => ({
  line: row.line,
  text: row.cells.join(', '),
  because,
});
