import { prepare } from '../../core/prepare.ts';
import { sheetOf } from '../../documents/prepare.ts';
import { keyTable } from '../../documents/text/key-table.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT } from '../command.ts';
import { exampleFolder } from '../examples.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { PAGES_FOLDER, writePages } from './pages.ts';
import { PAPER_FOLDER, printSheets, usualWishes } from './print.ts';

export const demo: Command = {
  name: 'demo',
  usage: 'demo [--once] [--to FOLDER]',
  summary: 'the main job on the demo kit of Brackwater Boathouse: key, pages and all the paper',
  options: [
    '--once       end when it is done',
    `--to FOLDER  where all of it goes (else ${PAGES_FOLDER} and ${PAPER_FOLDER})`,
  ],
  run: async (args, terminal) => {
    const { text } = readArguments(args, { once: 'switch', to: 'text' });
    const prepared = prepare(preparationFiles(exampleFolder('brackwater'), []));
    tellErrors(terminal, prepared, 'en');
    terminal.print(keyTable('en', sheetOf(prepared)));
    const name = (names: readonly string[], what: string, folder: string): void =>
      terminal.print(`${names.length} ${what} in ${folder}:\n${names.map((each) => `  ${each}`).join('\n')}`);
    const pages = text('to') ?? PAGES_FOLDER;
    name(writePages(terminal, prepared, pages, 'en'), 'pages', pages);
    const paper = text('to') ?? PAPER_FOLDER;
    name(await printSheets(terminal, prepared, paper, usualWishes(prepared)), 'sheets of paper (PDF)', paper);
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};
