import { type DoneFile, readDoneFile } from '../core/files/done-file.ts';
import { seconds } from '../core/quantities/brands.ts';
import type { DecimalMark } from '../core/quantities/print-quantity.ts';
import type { PastTime } from '../core/rotation/times-from-visits.ts';
import type { Language } from '../documents/sentences/language.ts';
import { sentence } from '../documents/sentences/sentence.ts';
import type { Arguments, Options } from './arguments.ts';
import { type Terminal, UsageFault } from './command.ts';
import { readTable } from './files.ts';
import { tellRefused } from './so-far-in.ts';

export const PAST_OPTIONS = { past: 'text' } as const satisfies Options;
export const PAST_HELP: readonly string[] = [
  '--past FILES    times of earlier visits, a CSV each with group, table, from, to: tables take as long as they did',
];

/** Nobody has more of one table. */
const MOST_COPIES = 20;

/** How long groups of earlier visits were at each table; `null` where nobody asks. A stay that never ended tells nothing. */
export function pastIn(
  found: Arguments,
  known: {
    readonly tables: readonly string[];
    readonly classes: readonly string[];
    readonly decimal: DecimalMark;
  },
  terminal: Terminal,
  language: Language,
): { readonly past: Readonly<Record<string, readonly PastTime[]>>; readonly isWhole: boolean } | null {
  const text = found.text('past');
  if (text === null) return null;
  const names = text.split(',').map((name) => name.trim());
  if (names.some((name) => name === ''))
    throw new UsageFault(`--past is written as may.csv,june.csv, not "${text}"`);
  const past: Record<string, PastTime[]> = {};
  let isWhole = true;
  for (const name of names) {
    const file = pastFile(name, known, terminal);
    if (file.lacksHeading) {
      const because = sentence(language, 'done.no-heading');
      terminal.tell(sentence(language, 'done.unreadable', { file: name, because }));
    }
    tellRefused(name, file.lacksHeading ? [] : file.refused, terminal, language);
    isWhole &&= file.refused.length === 0 && !file.lacksHeading;
    for (const { table, from, to } of file.stays)
      if (to !== null) past[table] = [...(past[table] ?? []), { date: name, lasted: seconds(to - from) }];
  }
  return { past, isWhole };
}

/** Whoever the groups were, and whenever that visit began: only how long they stayed counts. */
const pastFile = (
  name: string,
  { tables, classes, decimal }: Parameters<typeof pastIn>[1],
  terminal: Terminal,
): DoneFile =>
  readDoneFile(readTable(terminal.folder, name), {
    groups: null,
    tables,
    copies: Object.fromEntries(tables.map((mark) => [mark, MOST_COPIES])),
    classes,
    starts: seconds(0),
    decimal,
  });
