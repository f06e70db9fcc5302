import { nearestName } from '../core/diagnostics/nearest-name.ts';
import { type Command, EXIT, FileFault, type Terminal, UsageFault } from './command.ts';
import { advice } from './commands/advice.ts';
import { arrival } from './commands/arrival.ts';
import { backup } from './commands/backup.ts';
import { bench } from './commands/bench.ts';
import { check } from './commands/check.ts';
import { demo } from './commands/demo.ts';
import { discuss } from './commands/discuss.ts';
import { explain } from './commands/explain.ts';
import { fields } from './commands/fields.ts';
import { key } from './commands/key.ts';
import { link } from './commands/link.ts';
import { newFile } from './commands/new.ts';
import { next } from './commands/next.ts';
import { pages } from './commands/pages.ts';
import { print } from './commands/print.ts';
import { readingLevel } from './commands/reading-level.ts';
import { rehearse } from './commands/rehearse.ts';
import { restore } from './commands/restore.ts';
import { review } from './commands/review.ts';
import { rotation } from './commands/rotation.ts';
import { schema } from './commands/schema.ts';
import { serve } from './commands/serve.ts';
import { trials } from './commands/trials.ts';
import { version } from './version.ts';

const commands: readonly Command[] = [
  check,
  key,
  explain,
  pages,
  print,
  advice,
  review,
  rehearse,
  discuss,
  rotation,
  trials,
  bench,
  next,
  arrival,
  readingLevel,
  newFile,
  fields,
  schema,
  serve,
  link,
  backup,
  restore,
  demo,
];

/** Runs one command line; gives back the exit code. */
export async function run(args: readonly string[], terminal: Terminal): Promise<number> {
  const [first = '', ...others] = args;
  // `help key` is `key --help`.
  const asksFor = first === 'help' ? others[0] : undefined;
  const [name, rest] = asksFor === undefined ? [first, others] : [asksFor, ['--help']];
  if (['', '--help', '-h', 'help'].includes(name)) {
    terminal.print(help(terminal, undefined));
    return name === '' ? EXIT.usage : EXIT.done;
  }
  if (name === '--version') {
    terminal.print(version());
    return EXIT.done;
  }
  const command = commands.find((each) => each.name === name);
  if (command === undefined) {
    const nearest = nearestName(
      name,
      commands.map((each) => each.name),
    );
    terminal.tell(
      `handspike: there is no command "${name}"${nearest === undefined ? '' : `; did you mean "${nearest}"?`}\n` +
        'handspike --help lists them',
    );
    return EXIT.usage;
  }
  if (rest.includes('--help') || rest.includes('-h')) {
    terminal.print(help(terminal, command));
    return EXIT.done;
  }
  return guarded(command, rest, terminal);
}

async function guarded(command: Command, args: readonly string[], terminal: Terminal): Promise<number> {
  try {
    return await command.run(args, terminal);
  } catch (fault) {
    if (fault instanceof UsageFault) {
      terminal.tell(`handspike ${command.name}: ${fault.message}\nusage: handspike ${command.usage}`);
      return EXIT.usage;
    }
    if (fault instanceof FileFault) {
      terminal.tell(`handspike ${command.name}: ${fault.message}`);
      return EXIT.files;
    }
    throw fault;
  }
}

function help(terminal: Terminal, command: Command | undefined): string {
  if (command !== undefined)
    return [
      `${terminal.strong('handspike')} ${command.usage}`,
      '',
      `  ${command.summary}`,
      ...(command.options.length === 0 ? [] : ['', ...command.options.map((option) => `  ${option}`)]),
      '',
      '  VISIT is a visit file; it names its kit and its activity. KIT ACTIVITY are those two files',
      '  without a visit. With none of them, the one *.visit.yaml in this folder is taken.',
    ].join('\n');
  const width = Math.max(...commands.map((each) => each.name.length));
  return [
    `${terminal.strong('handspike')}: from a kit of hands-on mechanics to its answer key, its pages and its reading checks`,
    '',
    ...commands.map((each) => `  ${each.name.padEnd(width)}  ${each.summary}`),
    '',
    'handspike COMMAND --help tells more about one of them.',
    'Exit codes: 0 done, 1 something in the files has to be put right, 2 the command line, 3 a file.',
  ].join('\n');
}
