import { resolve } from 'node:path';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { DATA_OPTION, dataFolder } from '../data-folder.ts';
import { storageRefusal } from '../storage-refusal.ts';

export const backup: Command = {
  name: 'backup',
  usage: 'backup FILE [--data FOLDER]',
  summary: 'copy all visits into one file, also while the server runs',
  options: [DATA_OPTION],
  run: async (args, terminal) => {
    const { files, text } = readArguments(args, { data: 'text' });
    const [file] = files;
    if (file === undefined || files.length > 1) throw new UsageFault('name one file for the copy');
    const folder = dataFolder(terminal, text('data'));
    const { backup: copy } = await import('../../server/serve.ts');
    try {
      const { visits, entries } = copy(folder, resolve(terminal.folder, file));
      terminal.print(`${visits} visits with ${entries} entries are in ${file}`);
    } catch (fault) {
      throw storageRefusal(fault, file);
    }
    return EXIT.done;
  },
};
