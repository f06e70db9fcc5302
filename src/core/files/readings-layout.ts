import type { Facts } from '../diagnostics/diagnostic.ts';
import { type ColumnName, type Heading, headingOf } from './readings-headings.ts';
import type { TableRow } from './readings-table.ts';

/** How the columns of a readings file are meant. */
export interface ReadingsLayout {
  readonly columns: readonly Column[];
  /** Rows above the first one with readings. */
  readonly above: number;
  /** Row of the heading; -1 where there is none. */
  readonly heading: number;
  /** Where it had to be guessed or is not one reading a row: said as a sentence. */
  readonly told: { readonly key: string; readonly facts: Facts } | null;
}

export interface Column {
  readonly role: ColumnName | null;
  readonly name: string;
  /** Unit in the heading, for the cells below it. */
  readonly unit: string;
  /** Where one column stands for one setup or for one group, which one. */
  readonly of: { readonly setup: string } | { readonly group: string } | null;
}

/** Rows among which a heading is looked for. */
const SEARCHED = 10;
const LOOKS_LIKE_A_MARK = /^[A-Za-z]{1,3}-?\d{1,3}[a-z]?$/;

/** Columns that a heading names, or `null` where the row is no heading. */
export function headingColumns(cells: readonly string[], marks: readonly string[]): readonly Column[] | null {
  const headings = cells.map(headingOf);
  const has = (column: ColumnName): boolean => headings.some((each) => each.column === column);
  if (has('setup') && has('reading')) return headings.map(plainColumn);
  if (has('reading')) return null;
  if (has('setup')) return columnsByGroup(headings);
  return columnsBySetup(headings, marks, has('group'));
}

const plainColumn = ({ column, name, unit }: Heading): Column => ({ role: column, name, unit, of: null });

/** One row a setup, one column a group. */
function columnsByGroup(headings: readonly Heading[]): readonly Column[] | null {
  const groups = headings.filter(({ column, name }) => column === null && name !== '' && name.length <= 20);
  if (groups.length < 2) return null;
  return headings.map((heading) =>
    groups.includes(heading)
      ? { role: 'reading', name: heading.name, unit: heading.unit, of: { group: heading.name } }
      : heading.column === 'group'
        ? { ...plainColumn(heading), role: null }
        : plainColumn(heading),
  );
}

/** One row a group, one column a setup; two columns of one setup are two readings. */
function columnsBySetup(
  headings: readonly Heading[],
  marks: readonly string[],
  hasGroup: boolean,
): readonly Column[] | null {
  const markOf = (name: string): string | null => {
    const bare = name.replace(/\s*(?:\(\d+\)|#\d+)$/, '');
    const known = marks.find((mark) => mark.toLowerCase() === bare.toLowerCase());
    if (known !== undefined) return bare;
    return hasGroup && LOOKS_LIKE_A_MARK.test(bare) ? bare : null;
  };
  const setups = headings.map(({ column, name }) => (column === null ? markOf(name) : null));
  if (setups.filter((setup) => setup !== null).length < 2) return null;
  const first = setups.findIndex((setup) => setup !== null);
  const corner = hasGroup ? -1 : headings.findIndex(({ column }, n) => n < first && column === null);
  // A row of marks alone is a row of setups and no heading: nobody says whose readings they are.
  if (!hasGroup && corner < 0) return null;
  return headings.map((heading, n) => {
    const setup = setups[n] ?? null;
    if (setup !== null) return { role: 'reading', name: heading.name, unit: heading.unit, of: { setup } };
    return n === corner ? { ...plainColumn(heading), role: 'group' } : plainColumn(heading);
  });
}

/**
 * The layout by its heading; without one that is understood, by what stands in the columns, which is
 * said. `null` where nobody can tell.
 */
export function layoutOf(rows: readonly TableRow[], marks: readonly string[]): ReadingsLayout | null {
  for (const [heading, row] of rows.slice(0, SEARCHED).entries()) {
    const columns = headingColumns(row.cells, marks);
    if (columns !== null) return { columns, heading, above: heading + 1, told: toldOf(columns) };
  }
  return marks.length === 0 ? null : guessedLayout(rows, marks);
}

function toldOf(columns: readonly Column[]): ReadingsLayout['told'] {
  const wide = columns.flatMap(({ of }) => (of === null ? [] : [of]));
  const [first] = wide;
  if (first === undefined) return null;
  return 'setup' in first
    ? { key: 'readings.column-a-setup', facts: { columns: wide.length } }
    : { key: 'readings.column-a-group', facts: { columns: wide.length } };
}

/** No heading that is understood: the column of known marks is the setup, the numbers beside it the reading. */
function guessedLayout(rows: readonly TableRow[], marks: readonly string[]): ReadingsLayout | null {
  const known = new Set(marks.map((mark) => mark.toLowerCase()));
  const width = Math.max(...rows.map((row) => row.cells.length));
  const share = (column: number, test: (cell: string) => boolean): number =>
    rows.filter((row) => test((row.cells[column] ?? '').trim())).length / rows.length;
  const all = Array.from({ length: width }, (_, column) => column);
  const isMark = (cell: string): boolean => known.has(cell.toLowerCase());
  const setup = all.find((column) => share(column, isMark) > 0.5);
  if (setup === undefined) return null;
  const isFigure = (cell: string): boolean => /^\D{0,9}\d/.test(cell);
  const figures = all.filter((column) => column !== setup && share(column, isFigure) > 0.5);
  const reading = figures.find((column) => column > setup) ?? figures.at(-1);
  if (reading === undefined) return null;
  const rest = all.filter((column) => column !== setup && column !== reading);
  const isFilled = (column: number): boolean => share(column, (cell) => cell !== '') === 1;
  const group = rest.find((column) => column < setup) ?? rest.find(isFilled);
  const note = rest.find((column) => column > Math.max(setup, reading) && column !== group);
  const hasHeading =
    !isMark((rows[0]?.cells[setup] ?? '').trim()) && !isFigure(rows[0]?.cells[reading] ?? '');
  const roles = new Map<number, ColumnName>([
    [setup, 'setup'],
    [reading, 'reading'],
  ]);
  if (group !== undefined) roles.set(group, 'group');
  if (note !== undefined) roles.set(note, 'note');
  const columns = all.map((n) => ({
    role: roles.get(n) ?? null,
    name: (hasHeading ? rows[0]?.cells[n] : undefined) ?? String(n + 1),
    unit: '',
    of: null,
  }));
  return {
    columns,
    heading: hasHeading ? 0 : -1,
    above: hasHeading ? 1 : 0,
    told: {
      key: 'readings.guessed-columns',
      facts: { setup: setup + 1, reading: reading + 1, group: group === undefined ? '-' : group + 1 },
    },
  };
}
