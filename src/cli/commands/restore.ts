import { resolve } from 'node:path';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { DATA_OPTION, dataFolder } from '../data-folder.ts';
import { storageRefusal } from '../storage-refusal.ts';

export const restore: Command = {
  name: 'restore',
  usage: 'restore FILE [--data FOLDER]',
  summary: 'put a copy back in the place of all visits; what was there is kept beside it',
  options: [DATA_OPTION],
  run: async (args, terminal) => {
    const { files, text } = readArguments(args, { data: 'text' });
    const [file] = files;
    if (file === undefined || files.length > 1) throw new UsageFault('name the one file to put back');
    const folder = dataFolder(terminal, text('data'));
    const { restore: putBack } = await import('../../server/serve.ts');
    try {
      const { visits, entries, before } = putBack(folder, resolve(terminal.folder, file));
      terminal.print(`${visits} visits with ${entries} entries are in ${folder}`);
      if (before !== null) terminal.print(`what was there before is kept in ${before}`);
    } catch (fault) {
      throw storageRefusal(fault, file);
    }
    return EXIT.done;
  },
};
