import { spawn } from 'node:child_process';
import { join, resolve } from 'node:path';
import { planPeriod } from '../../core/period.ts';
import { type Prepared, prepare } from '../../core/prepare.ts';
import { otherThanOnCards, preparedForCards } from '../../core/prepare-cards.ts';
import type { Period } from '../../core/rotation/class-period.ts';
import { sheetIn } from '../../documents/pages/sheet-in.ts';
import { sheetOf } from '../../documents/prepare.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import type { Paper, SheetOfPaper } from '../../documents/sheets/block.ts';
import { readersOf } from '../../documents/sheets/groups.ts';
import { sheetKinds } from '../../documents/sheets/list.ts';
import type { PaperJob, SheetKind } from '../../documents/sheets/paper-job.ts';
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

export interface Wishes {
  readonly only: readonly string[] | null;
  readonly paper: Paper;
  readonly cards: Language;
  readonly key: Language;
}

/** Everything, on A4, in the languages of the visit. */
export const usualWishes = ({ visit }: Prepared): Wishes => ({
  only: null,
  paper: 'a4',
  cards: visit?.cardsIn ?? 'en',
  key: visit?.keyIn ?? 'en',
});

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

/**
 * The sheets as blocks, before anything is set. What is laminated once is made from kit and activity
 * alone: nothing of a visit is within its reach.
 */
export function sheetsOf(prepared: Prepared, { only, paper, cards, key }: Wishes): readonly SheetOfPaper[] {
  const kinds = sheetKinds.filter(({ name }) => only === null || only.includes(name));
  const jobOf = (of: Prepared, period: Period | null): PaperJob => ({
    prepared: of,
    sheet: sheetIn(key, sheetOf(of)),
    paper,
    period,
    languages: { cards, key },
  });
  const isTimed = prepared.visit !== null && kinds.some((kind) => kind.isTimed === true);
  const jobs = {
    kit: jobOf(preparedForCards(prepared), null),
    visit: jobOf(prepared, isTimed ? planPeriod(prepared) : null),
  };
  return kinds.flatMap(({ name, of, build }) => [
    ...build(jobs[of]),
    ...(name === 'cards' ? cardsForOthers(jobs.kit, prepared, build) : []),
  ]);
}

/** Cards once more in each language that a group reads instead; what stands on a card knows nothing of it. */
function cardsForOthers(
  job: PaperJob,
  { visit }: Prepared,
  build: SheetKind['build'],
): readonly SheetOfPaper[] {
  const { cards, key } = job.languages;
  const others = readersOf(visit, cards).filter(({ language }) => language !== cards);
  return others.flatMap(({ language }) =>
    build({ ...job, languages: { cards: language, key } })
      .filter(({ name }) => name.startsWith('card-'))
      .map((sheet) => ({ ...sheet, name: `${sheet.name}-${language}` })),
  );
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
