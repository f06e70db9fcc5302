import { prepare } from '../../core/prepare.ts';
import { sheetOf } from '../../documents/prepare.ts';
import { usualWishes } from '../../documents/sheets/sheets-of.ts';
import { keyTable } from '../../documents/text/key-table.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT } from '../command.ts';
import { DATA_OPTION, dataFolder } from '../data-folder.ts';
import { exampleFolder } from '../examples.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { serveUntilEnded } from '../serving.ts';
import { PAGES_FOLDER, writePages } from './pages.ts';
import { PAPER_FOLDER, printSheets } from './print.ts';
import { portIn } from './serve.ts';

export const demo: Command = {
  name: 'demo',
  usage: 'demo [--once] [--to FOLDER] [--port PORT] [--lan] [--data FOLDER]',
  summary:
    'the main job on the demo kit of Brackwater Boathouse: key, pages, all the paper, and the class live',
  options: [
    '--once          end when the paper is done, and open no visit',
    `--to FOLDER     where the paper goes (else ${PAGES_FOLDER} and ${PAPER_FOLDER})`,
    '--port PORT     where the server listens (else 8377, or one of the next)',
    '--lan           for everybody on the network, and not only for this machine',
    DATA_OPTION,
  ],
  run: async (args, terminal) => {
    const { text, isOn } = readArguments(args, {
      once: 'switch',
      to: 'text',
      port: 'text',
      lan: 'switch',
      data: 'text',
    });
    const port = portIn(text('port'));
    const files = preparationFiles(exampleFolder('brackwater'), []);
    const prepared = prepare(files);
    tellErrors(terminal, prepared, 'en');
    terminal.print(keyTable('en', sheetOf(prepared)));
    const name = (names: readonly string[], what: string, folder: string): void =>
      terminal.print(`${names.length} ${what} in ${folder}:\n${names.map((each) => `  ${each}`).join('\n')}`);
    const pages = text('to') ?? PAGES_FOLDER;
    name(writePages(terminal, prepared, pages, 'en'), 'pages', pages);
    const paper = text('to') ?? PAPER_FOLDER;
    name(await printSheets(terminal, prepared, paper, usualWishes(prepared)), 'sheets of paper (PDF)', paper);
    if (!isOn('once'))
      await serveUntilEnded(terminal, {
        folder: dataFolder(terminal, text('data')),
        visit: { files, label: null, language: null },
        port,
        isOnNetwork: isOn('lan'),
        isAfresh: false,
        names: [],
        isOnce: false,
      });
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};
