import { join } from 'node:path';
import { planPeriod } from '../../core/period.ts';
import { type Prepared, prepare } from '../../core/prepare.ts';
import { keySheet } from '../../documents/pages/key-sheet.ts';
import { rotationPage } from '../../documents/pages/rotation-page.ts';
import { sheetIn } from '../../documents/pages/sheet-in.ts';
import { tablePage } from '../../documents/pages/table-page.ts';
import { sheetOf } from '../../documents/prepare.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { fileWords } from '../../documents/sheets/file-words.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, type Terminal } from '../command.ts';
import { preparationFiles, writeText } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';

export const PAGES_FOLDER = 'handspike-pages';

export const pages: Command = {
  name: 'pages',
  usage: 'pages [VISIT | KIT ACTIVITY] [--to FOLDER] [--language en|es]',
  summary: 'write a page a table, the answer key and the rotation as HTML, ready to print',
  options: [
    `--to FOLDER  where they go (${PAGES_FOLDER}); pages of the same name are written again`,
    LANGUAGE_OPTION,
  ],
  run: (args, terminal) => {
    const found = readArguments(args, { to: 'text', language: 'text' });
    const language = languageIn(found, 'language');
    const folder = found.text('to') ?? PAGES_FOLDER;
    const prepared = prepare(preparationFiles(terminal.folder, found.files));
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    for (const name of writePages(terminal, prepared, folder, language)) terminal.print(name);
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};

/** Writes all pages of a preparation and gives back their names. */
export function writePages(
  terminal: Terminal,
  prepared: Prepared,
  folder: string,
  language: Language,
): readonly string[] {
  const sheet = sheetIn(language, sheetOf(prepared));
  const period = prepared.visit === null ? null : planPeriod(prepared);
  const tables = sheet.tables.filter((table) => table.setups.length > 0);
  const words = fileWords(tables.map((table) => table.mark));
  const written = [
    ...tables.map((table, n) => ({
      name: `table-${words[n]}.html`,
      text: tablePage(language, sheet, table),
    })),
    { name: 'answer-key.html', text: keySheet(language, sheet) },
    ...(period === null ? [] : [{ name: 'rotation.html', text: rotationPage(language, prepared, period) }]),
  ];
  return written.map(({ name, text }) => {
    const path = join(folder, name);
    writeText(terminal.folder, path, text, 'replace');
    return path;
  });
}
