import { prepare } from '../../core/prepare.ts';
import { setupNamed, setupsOf } from '../../core/review.ts';
import { trialsJson, trialsText } from '../../documents/text/trials-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { trialsInWorker } from '../trials/trials-in-worker.ts';
import { unknownSetup } from '../unknown-setup.ts';

/** Another seed gives other last digits; the same one gives the same figures everywhere. */
const SEED = '1';

export const trials: Command = {
  name: 'trials',
  usage: 'trials [SETUP...] [VISIT | KIT ACTIVITY] [--seed N] [--json] [--language en|es]',
  summary: 'good ranges by random trials beside those of the key, and which of them holds',
  options: [
    '--seed N  a whole number; the same one gives the same figures (1)',
    '--json    all figures as JSON, SI',
    LANGUAGE_OPTION,
  ],
  run: async (args, terminal) => {
    const found = readArguments(args, { seed: 'text', json: 'switch', language: 'text' });
    const language = languageIn(found, 'language');
    const seed = seedIn(found.text('seed') ?? SEED);
    const isFile = (each: string): boolean => /\.ya?ml$/.test(each);
    const files = preparationFiles(terminal.folder, found.files.filter(isFile));
    const prepared = prepare(files);
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    const named = found.files.filter((each) => !isFile(each));
    for (const mark of named) if (setupNamed(prepared, mark) === null) throw unknownSetup(prepared, mark);
    const marks = named.length > 0 ? named : setupsOf(prepared).map(({ setup }) => setup.mark);
    const ranges = await trialsInWorker({ files, marks, seed }, terminal.progress);
    terminal.progress('');
    terminal.print(
      found.isOn('json') ? trialsJson(seed, ranges) : trialsText(language, prepared, seed, ranges),
    );
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};

function seedIn(text: string): number {
  const seed = Number(text);
  if (!/^-?\d+$/.test(text) || !Number.isSafeInteger(seed))
    throw new UsageFault(`the seed is a whole number, not "${text}": for instance --seed 7`);
  return seed;
}
