import { prepare } from '../../core/prepare.ts';
import { sheetOf } from '../../documents/prepare.ts';
import { keyTable } from '../../documents/text/key-table.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT } from '../command.ts';
import { exampleFolder } from '../examples.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { PAGES_FOLDER, writePages } from './pages.ts';

export const demo: Command = {
  name: 'demo',
  usage: 'demo [--once] [--to FOLDER]',
  summary: 'the main job on the demo kit of Brackwater Boathouse: key and pages',
  options: ['--once       end when it is done', `--to FOLDER  where the pages go (${PAGES_FOLDER})`],
  run: (args, terminal) => {
    const { text } = readArguments(args, { once: 'switch', to: 'text' });
    const prepared = prepare(preparationFiles(exampleFolder('brackwater'), []));
    tellErrors(terminal, prepared);
    terminal.print(keyTable('en', sheetOf(prepared)));
    const folder = text('to') ?? PAGES_FOLDER;
    const names = writePages(terminal, prepared, folder);
    terminal.print(`${names.length} pages in ${folder}:\n${names.map((name) => `  ${name}`).join('\n')}`);
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};
