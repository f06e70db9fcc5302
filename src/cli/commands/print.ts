import { spawn } from 'node:child_process';
import { join, resolve } from 'node:path';
import { type Prepared, prepare } from '../../core/prepare.ts';
import { otherThanOnCards } from '../../core/prepare-cards.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import type { Paper } from '../../documents/sheets/block.ts';
import { sheetKinds } from '../../documents/sheets/list.ts';
import { sheetsOf, usualWishes, type Wishes } from '../../documents/sheets/sheets-of.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { type Command, EXIT, type Terminal, UsageFault } from '../command.ts';
import { preparationFiles, writeText } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { languageIn } from '../language.ts';
import { startTypesetter } from '../typesetter/typesetter.ts';

export const PAPER_FOLDER = 'handspike-paper';

export const PAPERS: Readonly<Record<string, Paper>> = { a4: 'a4', letter: 'us-letter' };

export const print: Command = {
  name: 'print',
  usage: 'print [VISIT | KIT ACTIVITY] [--only KINDS] [--paper a4|letter] [--to FOLDER] [--open]',
  summary: 'set the sheets as PDF: cards, charts, keys, guide and all that is laminated once',
  options: [
    `--only KINDS          some of ${sheetKinds.map((kind) => kind.name).join(', ')}, with commas between`,
    '--paper a4|letter     the paper (a4)',
    `--to FOLDER           where they go (${PAPER_FOLDER}); sheets of the same name are written again`,
    '--cards-in LANGUAGE   en or es, for what pupils read (what the visit says, else en)',
    '--key-in LANGUAGE     en or es, for what the teacher reads (the same)',
    '--open                open the folder when it is done',
  ],
  run: async (args, terminal) => {
    const found = readArguments(args, {
      only: 'text',
      paper: 'text',
      to: 'text',
      'cards-in': 'text',
      'key-in': 'text',
      open: 'switch',
    });
    const prepared = prepare(preparationFiles(terminal.folder, found.files));
    tellErrors(terminal, prepared, languageIn(found, 'key-in'));
    if (prepared.tables.length === 0) return EXIT.findings;
    const folder = found.text('to') ?? PAPER_FOLDER;
    const wishes = wishesOf(found, prepared);
    for (const name of await printSheets(terminal, prepared, folder, wishes)) terminal.print(name);
    tellOtherThanOnCards(terminal, prepared, wishes.key);
    if (found.isOn('open')) openFolder(resolve(terminal.folder, folder));
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};

/** A laminated card can't follow today's casting: said, so that nobody builds what the key isn't for. */
function tellOtherThanOnCards(terminal: Terminal, prepared: Prepared, language: Language): void {
  for (const { table, role, onCard, today } of otherThanOnCards(prepared))
    terminal.tell(
      today === null
        ? sentence(language, 'sheet.card.nobody-today', { table, role, card: onCard })
        : sentence(language, 'sheet.card.other-today', { table, role, card: onCard, today }),
    );
}

/** Sets all sheets that are wished for, tells how far it is, and gives back the files' names. */
export async function printSheets(
  terminal: Terminal,
  prepared: Prepared,
  folder: string,
  wishes: Wishes,
): Promise<readonly string[]> {
  const sheets = sheetsOf(prepared, wishes);
  const typesetter = startTypesetter();
  const names: string[] = [];
  try {
    for (const sheet of sheets) {
      const name = join(folder, `${sheet.name}.pdf`);
      writeText(terminal.folder, name, await typesetter.set(sheet), 'replace');
      names.push(name);
      terminal.progress(`${names.length} of ${sheets.length}  ${sheet.name}.pdf`);
    }
  } finally {
    typesetter.close();
  }
  return names;
}

/** What is asked for on the command line; what is not, as the visit has it. */
export function wishesOf(found: Arguments, prepared: Prepared): Wishes {
  const known = sheetKinds.map((kind) => kind.name);
  const only = found.text('only')?.split(/\s*,\s*/) ?? null;
  const unknown = only?.find((name) => !known.includes(name));
  if (unknown !== undefined)
    throw new UsageFault(`there are no sheets "${unknown}"; there are ${known.join(', ')}`);
  const paper = PAPERS[found.text('paper') ?? 'a4'];
  if (paper === undefined) throw new UsageFault('the paper is a4 or letter');
  const usual = usualWishes(prepared);
  return {
    only,
    paper,
    cards: found.text('cards-in') === null ? usual.cards : languageIn(found, 'cards-in'),
    key: found.text('key-in') === null ? usual.key : languageIn(found, 'key-in'),
  };
}

/** With whatever this system opens folders with; where there is none, nothing is lost. */
function openFolder(path: string): void {
  const opener = { darwin: 'open', win32: 'explorer' }[process.platform as string] ?? 'xdg-open';
  spawn(opener, [path], { detached: true, stdio: 'ignore' })
    .on('error', () => undefined)
    .unref();
}
