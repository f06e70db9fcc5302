import { join } from 'node:path';
import { type Prepared, prepare } from '../../core/prepare.ts';
import { keySheet } from '../../documents/pages/key-sheet.ts';
import { tablePage } from '../../documents/pages/table-page.ts';
import { sheetOf } from '../../documents/prepare.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, type Terminal } from '../command.ts';
import { preparationFiles, writeText } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';

export const PAGES_FOLDER = 'handspike-pages';

export const pages: Command = {
  name: 'pages',
  usage: 'pages [VISIT | KIT ACTIVITY] [--to FOLDER]',
  summary: 'write a page a table and the answer key as HTML, ready to print',
  options: [`--to FOLDER  where they go (${PAGES_FOLDER}); pages of the same name are written again`],
  run: (args, terminal) => {
    const { files, text } = readArguments(args, { to: 'text' });
    const prepared = prepare(preparationFiles(terminal.folder, files));
    tellErrors(terminal, prepared);
    if (prepared.tables.length === 0) return EXIT.findings;
    for (const name of writePages(terminal, prepared, text('to') ?? PAGES_FOLDER)) terminal.print(name);
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};

/** Writes all pages of a preparation and gives back their names. */
export function writePages(terminal: Terminal, prepared: Prepared, folder: string): readonly string[] {
  const sheet = sheetOf(prepared);
  const tables = sheet.tables.filter((table) => table.setups.length > 0);
  const words = fileWords(tables.map((table) => table.mark));
  const written = [
    ...tables.map((table, n) => ({ name: `table-${words[n]}.html`, text: tablePage('en', sheet, table) })),
    { name: 'answer-key.html', text: keySheet('en', sheet) },
  ];
  return written.map(({ name, text }) => {
    const path = join(folder, name);
    writeText(terminal.folder, path, text, 'replace');
    return path;
  });
}

/** Marks as parts of file names, all different, also where capitals are the same as small letters. */
export function fileWords(marks: readonly string[]): readonly string[] {
  const words: string[] = [];
  for (const mark of marks) {
    const word = fileWord(mark);
    let free = word;
    for (let n = 2; words.includes(free); n += 1) free = `${word}-${n}`;
    words.push(free);
  }
  return words;
}

/** A mark as part of a file name, whatever it is written with. */
const fileWord = (mark: string): string =>
  mark
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '') || 'table';
