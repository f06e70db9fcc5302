import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { exampleFolder } from '../examples.ts';
import { readText, writeText } from '../files.ts';

const KINDS = ['kit', 'activity', 'visit'] as const;

export const newFile: Command = {
  name: 'new',
  usage: 'new kit|activity|visit [FILE]',
  summary: 'start a new file from the smallest one that works',
  options: ['FILE  where it goes; an existing file is never written over. Without it, it is printed'],
  run: (args, terminal) => {
    const { files } = readArguments(args, {});
    const [kind, name, ...more] = files;
    if (!KINDS.some((each) => each === kind) || more.length > 0)
      throw new UsageFault('say what to start: kit, activity or visit, and perhaps a file name');
    const { text } = readText(exampleFolder('smallest'), `smallest.${kind}.yaml`);
    if (name === undefined) terminal.print(text);
    else {
      writeText(terminal.folder, name, text, 'refuse');
      terminal.print(
        `started ${name}; it works as it stands: change it line by line and run "handspike check"`,
      );
    }
    return EXIT.done;
  },
};
