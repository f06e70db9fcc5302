import { measureNextAtTables } from '../../core/bench.ts';
import { prepare } from '../../core/prepare.ts';
import { nextJson, nextText } from '../../documents/text/next-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';

export const next: Command = {
  name: 'next',
  usage: 'next [VISIT | KIT ACTIVITY] [--json] [--language en|es]',
  summary: 'say for each table which one short measurement would narrow its good ranges most',
  options: ['--json  with the ranges before and after (SI)', LANGUAGE_OPTION],
  run: (args, terminal) => {
    const found = readArguments(args, { json: 'switch', language: 'text' });
    const language = languageIn(found, 'language');
    const prepared = prepare(preparationFiles(terminal.folder, found.files));
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    const tables = measureNextAtTables(prepared);
    terminal.print(found.isOn('json') ? nextJson(tables) : nextText(language, prepared, tables));
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};
