import { join } from 'node:path';
import { prepare } from '../../core/prepare.ts';
import { rehearse as rehearseClass } from '../../core/rehearse.ts';
import { sheetIn } from '../../documents/pages/sheet-in.ts';
import { sheetOf } from '../../documents/prepare.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { rehearsalOnPaper, usualRehearsal } from '../../documents/sheets/rehearsal-sheet.ts';
import { rehearsalAnswers, rehearsalJson, rehearsalText } from '../../documents/text/rehearsal-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { preparationFiles, writeText } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { REHEARSAL_HELP, rehearsalAsked } from '../rehearsal-asked.ts';
import { startTypesetter } from '../typesetter/typesetter.ts';
import { PAPERS } from './print.ts';

export const rehearse: Command = {
  name: 'rehearse',
  usage:
    'rehearse [VISIT | KIT ACTIVITY] [--groups N] [--mistakes N] [--seed N] [--answers | --csv | --json | --to FOLDER]',
  summary: 'a class that never was, with mistakes to find, for the night before',
  options: [
    ...REHEARSAL_HELP,
    '--answers          what happened, what the program thinks of it, and what to say at the table',
    '--csv              what the groups wrote as a readings file, for handspike review',
    '--json             as JSON; with --answers what happened is in it',
    '--to FOLDER        as a sheet on paper (PDF), the answers on its second page',
    '--paper a4|letter  the paper (a4)',
    LANGUAGE_OPTION,
  ],
  run: async (args, terminal) => {
    const found = readArguments(args, {
      groups: 'text',
      mistakes: 'text',
      seed: 'text',
      answers: 'switch',
      csv: 'switch',
      json: 'switch',
      to: 'text',
      paper: 'text',
      language: 'text',
    });
    if (found.isOn('csv') && (found.isOn('json') || found.isOn('answers')))
      throw new UsageFault('--csv is what the groups wrote and nothing else: leave out --json and --answers');
    const language = languageIn(found, 'language');
    const paper = PAPERS[found.text('paper') ?? 'a4'];
    if (paper === undefined) throw new UsageFault('the paper is a4 or letter');
    const prepared = prepare(preparationFiles(terminal.folder, found.files));
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    const rehearsal = rehearseClass(prepared, rehearsalAsked(found, usualRehearsal(prepared)));
    const folder = found.text('to');
    if (folder !== null) {
      const job = {
        prepared,
        sheet: sheetIn(language, sheetOf(prepared)),
        paper,
        period: null,
        languages: { cards: language, key: language },
      };
      const typesetter = startTypesetter();
      try {
        const sheet = rehearsalOnPaper(job, rehearsal);
        const name = join(folder, `${sheet.name}.pdf`);
        writeText(terminal.folder, name, await typesetter.set(sheet), 'replace');
        terminal.print(name);
      } finally {
        typesetter.close();
      }
    } else if (found.isOn('csv')) terminal.print(rehearsal.csv.trimEnd());
    else if (found.isOn('json')) terminal.print(rehearsalJson(rehearsal, found.isOn('answers')));
    else {
      terminal.print(rehearsalText(language, prepared, rehearsal));
      terminal.print(
        found.isOn('answers')
          ? rehearsalAnswers(language, rehearsal)
          : `${sentence(language, 'rehearsal.how-to-answer')}\n`,
      );
    }
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};
