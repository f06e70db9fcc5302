import { prepare } from '../../core/prepare.ts';
import { setupsOf } from '../../core/review.ts';
import { sheetIn } from '../../documents/pages/sheet-in.ts';
import { sheetOf } from '../../documents/prepare.ts';
import { keyCsv } from '../../documents/text/key-csv.ts';
import { keyJson } from '../../documents/text/key-json.ts';
import { keyTable } from '../../documents/text/key-table.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';

export const key: Command = {
  name: 'key',
  usage: 'key [VISIT | KIT ACTIVITY] [--json | --csv] [--language en|es]',
  summary: 'print the answer key: what each scale will show, and from - to what is good',
  options: [
    '--json  all figures as JSON (SI, with what they rest on)',
    '--csv   one row a setup',
    LANGUAGE_OPTION,
  ],
  run: (args, terminal) => {
    const found = readArguments(args, { json: 'switch', csv: 'switch', language: 'text' });
    const { files, isOn } = found;
    const language = languageIn(found, 'language');
    if (isOn('json') && isOn('csv'))
      throw new UsageFault('--json and --csv are two ways to print it: name one');
    const prepared = prepare(preparationFiles(terminal.folder, files));
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    if (isOn('json')) terminal.print(keyJson(prepared));
    else if (isOn('csv')) terminal.print(keyCsv(setupsOf(prepared).map(({ prediction }) => prediction)));
    else terminal.print(keyTable(language, sheetIn(language, sheetOf(prepared))));
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};
