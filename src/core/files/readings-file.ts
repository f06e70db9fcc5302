import Papa from 'papaparse';
import type { Facts } from '../diagnostics/diagnostic.ts';
import type { WrittenReading } from '../readings/written-reading.ts';
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

const COLUMNS = ['group', 'setup', 'reading', 'note'] as const;
type Column = (typeof COLUMNS)[number];

/**
 * Readings as a spreadsheet writes them: columns group, setup, reading and note in any order, with
 * commas, semicolons or tabs between them. A row is never dropped and never changed.
 */
export function readReadingsFile(file: SourceText, _marks: readonly string[] = []): ReadingsFile {
  // Files that went through several hands have line ends of several kinds.
  const text = file.text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const rows = rowsWithLines(text).filter((row) => row.cells.some((cell) => cell.trim() !== ''));
  const head = rows[0];
  const places = head === undefined ? null : placesOf(head.cells);
  if (head === undefined || places === null)
    return {
      readings: [],
      refused: rows.map((row) => refused(row, row === head ? 'readings.no-heading' : 'readings.no-column')),
      notes: [],
    };
  const readings: WrittenReading[] = [];
  const notUsed: RefusedRow[] = [];
  for (const row of rows.slice(1)) {
    const cell = (column: Column): string => (row.cells[places[column] ?? -1] ?? '').trim();
    if (row.fault !== null) notUsed.push(refused(row, row.fault));
    else if (row.cells.slice(head.cells.length).some((each) => each.trim() !== ''))
      notUsed.push(refused(row, 'readings.long-row'));
    else if (cell('setup') === '') notUsed.push(refused(row, 'readings.no-setup'));
    else if (row.cells.length < Math.max(places.setup ?? 0, places.reading ?? 0) + 1)
      notUsed.push(refused(row, 'readings.short-row'));
    else
      readings.push({
        group: cell('group'),
        setup: cell('setup'),
        written: cell('reading'),
        note: cell('note'),
        line: row.line,
      });
  }
  return { readings, refused: notUsed, notes: [] };
}

interface Row {
  readonly line: number;
  readonly cells: readonly string[];
  /** Why the row could not be taken apart, as a sentence key. */
  readonly fault: string | null;
}

/** Rows with the line that each begins on: a quoted cell may hold line ends. */
function rowsWithLines(text: string): readonly Row[] {
  const rows: Row[] = [];
  let from = 0;
  Papa.parse<string[]>(text, {
    delimiter: separatorOf(text),
    newline: '\n',
    step: ({ data, errors, meta }) => {
      const isQuoted = errors.some((error) => error.type === 'Quotes');
      rows.push({ line: lineAt(text, from), cells: data, fault: isQuoted ? 'readings.open-quote' : null });
      from = meta.cursor;
    },
  });
  return rows;
}

const SEPARATORS = [',', ';', '\t', '|'] as const;

/** The heading tells it: rows may hold decimal commas. */
function separatorOf(text: string): string {
  const [heading = ''] = text.trimStart().split('\n', 1);
  const unquoted = heading.replaceAll('"', '');
  return SEPARATORS.find((separator) => placesOf(unquoted.split(separator)) !== null) ?? ',';
}

const lineAt = (text: string, offset: number): number => text.slice(0, offset).split('\n').length;

/** Column numbers by name; `null` where setup or reading is not among the headings. */
function placesOf(cells: readonly string[]): Partial<Record<Column, number>> | null {
  const names = cells.map((cell) => cell.trim().toLowerCase());
  const places = Object.fromEntries(
    COLUMNS.flatMap((column) => (names.includes(column) ? [[column, names.indexOf(column)]] : [])),
  ) as Partial<Record<Column, number>>;
  return places.setup === undefined || places.reading === undefined ? null : places;
}

const refused = (row: Row, because: string): RefusedRow => ({
  line: row.line,
  text: row.cells.join(', '),
  because,
});
