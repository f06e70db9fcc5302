import Papa from 'papaparse';

/** A row of a separated file with the line that it begins on: a quoted cell may hold line ends. */
export interface TableRow {
  readonly line: number;
  readonly cells: readonly string[];
  /** Why the row could not be taken apart, as a sentence key. */
  readonly fault: string | null;
}

export const SEPARATORS = [',', ';', '\t', '|'] as const;
/** Rows in which a heading is looked for: above it may stand a title and a date. */
const ABOVE = 10;

/**
 * Rows that hold anything, taken apart by whichever separator makes sense of their heading; where none
 * does, by the one that stands equally often in every row.
 */
export function tableRows(
  text: string,
  isHeading: (cells: readonly string[]) => boolean,
): readonly TableRow[] {
  // Files that went through several hands have line ends of several kinds.
  const plain = text.replace(/^\uFEFF/, '').replace(/\r\n?/g, '\n');
  const stated = /^\s*"?sep=([,;|\t])"?\s*\n/i.exec(plain);
  const body = stated === null ? plain : plain.slice(stated[0].length);
  const separator = stated?.[1] ?? separatorOf(body, isHeading);
  const above = plain.slice(0, plain.length - body.length).split('\n').length - 1;
  return rowsWithLines(body, separator)
    .filter((row) => row.cells.some((cell) => cell.trim() !== ''))
    .map((row) => ({ ...row, line: row.line + above }));
}

function separatorOf(text: string, isHeading: (cells: readonly string[]) => boolean): string {
  const lines = text
    .split('\n')
    .filter((line) => line.trim() !== '')
    .slice(0, ABOVE)
    .map((line) => line.replaceAll('"', ''));
  const byHeading = SEPARATORS.find((separator) => lines.some((line) => isHeading(line.split(separator))));
  if (byHeading !== undefined) return byHeading;
  const isEven = (separator: string): boolean => {
    const counts = lines.map((line) => line.split(separator).length);
    return (counts[0] ?? 0) > 1 && counts.every((count) => count === counts[0]);
  };
  return (['\t', ';', '|'] as const).find(isEven) ?? ',';
}

function rowsWithLines(text: string, delimiter: string): readonly TableRow[] {
  const rows: TableRow[] = [];
  let from = 0;
  let line = 1;
  Papa.parse<string[]>(text, {
    delimiter,
    newline: '\n',
    step: ({ data, errors, meta }) => {
      const isQuoted = errors.some((error) => error.type === 'Quotes');
      rows.push({ line, cells: data.map(withoutGuard), fault: isQuoted ? 'readings.open-quote' : null });
      line += text.slice(from, meta.cursor).split('\n').length - 1;
      from = meta.cursor;
    },
  });
  return rows;
}

/**
 * The apostrophe that keeps a spreadsheet from working a cell out, as this program and others write it.
 *
 * @example withoutGuard("'-1") // => '-1'
 */
export const withoutGuard = (cell: string): string => cell.replace(/^'(?=[=+\-@'\t\r])/, '');

/**
 * A cell that no spreadsheet takes for a formula; `withoutGuard` takes the apostrophe off again.
 *
 * @example withGuard('=1+1') // => "'=1+1"
 */
export const withGuard = (cell: string): string =>
  /^(?:[=+\-@\t\r]|'[=+\-@'\t\r])/.test(cell) ? `'${cell}` : cell;
