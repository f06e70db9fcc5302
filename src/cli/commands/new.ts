import { existsSync, readdirSync } from 'node:fs';
import { basename, dirname, resolve } from 'node:path';
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
    if (name === undefined) {
      terminal.print(text);
      return EXIT.done;
    }
    const started =
      kind === 'visit' ? visitBeside(resolve(terminal.folder, name), text) : { text, lacks: [] };
    writeText(terminal.folder, name, started.text, 'refuse');
    terminal.print(
      started.lacks.length === 0
        ? `started ${name}; it works as it stands: change it line by line and run "handspike check"`
        : `started ${name}; write into it which ${started.lacks.join(' and which ')} it is with, then run "handspike check"`,
    );
    return EXIT.done;
  },
};

/** A visit names the kit and the activity that lie beside it; `lacks` are those that nobody could guess. */
function visitBeside(
  path: string,
  text: string,
): { readonly text: string; readonly lacks: readonly string[] } {
  const folder = dirname(path);
  const stem = basename(path).replace(/\.visit\.ya?ml$/, '');
  const there = existsSync(folder) ? readdirSync(folder) : [];
  const found = (['kit', 'activity'] as const).map((kind) => {
    const all = there.filter((each) => new RegExp(`\\.${kind}\\.ya?ml$`).test(each));
    return {
      kind,
      name: all.find((each) => each.startsWith(`${stem}.`)) ?? (all.length === 1 ? all[0] : undefined),
    };
  });
  return {
    text: found.reduce(
      (filled, { kind, name }) =>
        name === undefined
          ? filled
          : filled.replace(`${kind}: smallest.${kind}.yaml`, () => `${kind}: ${asYaml(name)}`),
      text,
    ),
    lacks: found.filter(({ name }) => name === undefined).map(({ kind }) => kind),
  };
}

/** A name as YAML takes it: in quotes where it has more than letters, digits and the usual signs. */
const asYaml = (name: string): string => (/^[\p{L}\p{N}][\p{L}\p{N} ._-]*$/u.test(name) ? name : `"${name}"`);
