import { readArguments } from '../arguments.ts';
import { type Command, EXIT, FileFault } from '../command.ts';
import { DATA_OPTION, dataFolder } from '../data-folder.ts';
import { storageRefusal } from '../storage-refusal.ts';

export const link: Command = {
  name: 'link',
  usage: 'link [--data FOLDER]',
  summary: 'print another one-time link for the teacher, while the server runs on this machine',
  options: [DATA_OPTION],
  run: async (args, terminal) => {
    const found = readArguments(args, { data: 'text' });
    const folder = dataFolder(terminal, found.text('data'));
    const { furtherLink } = await import('../../server/serve.ts');
    let printed: string | null;
    try {
      printed = furtherLink(folder);
    } catch (fault) {
      throw storageRefusal(fault, folder);
    }
    if (printed === null)
      throw new FileFault(`no server runs with ${folder}; handspike serve starts one and prints a link`);
    terminal.print(printed);
    return EXIT.done;
  },
};
