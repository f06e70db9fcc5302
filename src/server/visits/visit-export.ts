import { withGuard } from '../../core/files/readings-table.ts';
import type { Stored } from '../../store/entry.ts';
import { visitLog } from '../../store/visit-log.ts';

/** Every entry as it was written, one JSON a line, in the order in which they came. */
export const entryLines = (stored: readonly Stored[]): string =>
  stored.map((each) => `${JSON.stringify(each)}\n`).join('');

const COLUMNS = ['group', 'setup', 'reading', 'note', 'ease', 'turns'];

/**
 * The readings as they stand, as a readings file that `handspike review` takes: corrected ones as they
 * were corrected, void ones left out (they are among the entries).
 */
export function readingsCsv(stored: readonly Stored[]): string {
  const rows = visitLog(stored)
    .readings.filter(({ isVoid }) => !isVoid)
    .map(({ reading }) => [
      reading.group,
      reading.setup,
      reading.written,
      reading.note ?? '',
      reading.ease === null ? '' : String(reading.ease),
      reading.turns ?? '',
    ]);
  return [COLUMNS, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/** RFC 4180, and nothing that a spreadsheet would take for a formula. */
const cell = (text: string): string => {
  const guarded = withGuard(text);
  return /[",\r\n]/.test(guarded) ? `"${guarded.replaceAll('"', '""')}"` : guarded;
};
