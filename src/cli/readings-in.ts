import type { SourceText } from '../core/files/source-text.ts';
import type { Prepared } from '../core/prepare.ts';
import type { Terminal } from './command.ts';
import { beside, readTable } from './files.ts';

/** What of the names on a command line is a table of readings. */
export const isTable = (name: string): boolean => /\.(csv|tsv|txt)$/i.test(name);

/** The readings file that is named, else the one that the visit names; `null` where there is neither. */
export function readingsIn(terminal: Terminal, prepared: Prepared, name: string | null): SourceText | null {
  const { visit } = prepared;
  const named = visit?.readingsIn ?? null;
  const file = name ?? (visit === null || named === null ? null : beside(visit.file, named));
  return file === null ? null : readTable(terminal.folder, file);
}
