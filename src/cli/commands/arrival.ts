import { trialOnArrival } from '../../core/arrival.ts';
import { type Prepared, prepare } from '../../core/prepare.ts';
import {
  arrivalChecksJson,
  arrivalChecksText,
  arrivedJson,
  arrivedText,
} from '../../documents/text/arrival-check-text.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { unknownSetup } from '../unknown-setup.ts';

export const arrival: Command = {
  name: 'arrival',
  usage: 'arrival [VISIT | KIT ACTIVITY] [--setup SETUP --reading READING] [--json] [--language en|es]',
  summary: 'say which one reading to take at each table on arrival, and what follows from it',
  options: [
    '--setup SETUP      a reading that was taken: at which setup',
    '--reading READING  and what the instrument showed; a number alone is in its own marks',
    '--json             as JSON (SI)',
    LANGUAGE_OPTION,
  ],
  run: (args, terminal) => {
    const found = readArguments(args, { setup: 'text', reading: 'text', json: 'switch', language: 'text' });
    const language = languageIn(found, 'language');
    const prepared = prepare(preparationFiles(terminal.folder, found.files));
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    const taken = takenOf(found, prepared);
    if (taken === null)
      terminal.print(
        found.isOn('json') ? arrivalChecksJson(prepared) : arrivalChecksText(language, prepared),
      );
    else {
      const { table, at, reading } = taken;
      terminal.print(
        found.isOn('json') ? arrivedJson(table, at, reading) : arrivedText(language, table, at, reading),
      );
    }
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};

/** The reading on the command line; `null` where there is none. */
function takenOf(found: Arguments, prepared: Prepared) {
  const mark = found.text('setup');
  const written = found.text('reading');
  if (mark === null && written === null) return null;
  if (mark === null || written === null)
    throw new UsageFault('--setup and --reading go together: which setup, and what the instrument showed');
  const trial = trialOnArrival(prepared, mark, written);
  switch (trial.kind) {
    case 'taken':
      return trial;
    case 'no such setup':
      throw unknownSetup(prepared, mark);
    case 'no one figure':
      throw new UsageFault(
        `setup ${trial.setup} has no one figure, so nothing follows from it: "handspike arrival" names one that has`,
      );
    case 'no reading':
      throw new UsageFault(`"${written}" is no reading: write a number with its unit, as "2.3 N"`);
  }
}
