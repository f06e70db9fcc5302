import { type Prepared, prepare } from '../../core/prepare.ts';
import { type Review, review as reviewFile, reviewOne } from '../../core/review.ts';
import type { Language } from '../../documents/sentences/language.ts';
import { reviewCsv } from '../../documents/text/review-csv.ts';
import { reviewJson } from '../../documents/text/review-json.ts';
import { judgedText, reviewTable } from '../../documents/text/review-table.ts';
import { type Arguments, readArguments } from '../arguments.ts';
import { type Command, EXIT, type Terminal, UsageFault } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { isTable, readingsIn } from '../readings-in.ts';
import { unknownSetup } from '../unknown-setup.ts';

export const review: Command = {
  name: 'review',
  usage: 'review [VISIT | KIT ACTIVITY] [READINGS.csv] [--setup SETUP --reading READING] [--language en|es]',
  summary: 'say which readings are good and what probably happened to the others',
  options: [
    'READINGS.csv       columns group, setup, reading, note, or one column a setup; separated by comma,',
    '                   semicolon or tab; without it, the file that the visit names',
    '--setup SETUP      one reading typed at the table: its setup',
    '--reading READING  and what the group wrote, with or without a unit',
    '--group GROUP      and which group',
    '--json             as JSON',
    '--csv              as a table: what was written, unchanged, beside what it means',
    LANGUAGE_OPTION,
  ],
  run: (args, terminal) => {
    const found = readArguments(args, {
      setup: 'text',
      reading: 'text',
      group: 'text',
      json: 'switch',
      csv: 'switch',
      language: 'text',
    });
    if (found.isOn('json') && found.isOn('csv'))
      throw new UsageFault('--json and --csv are two outlets: name one of them');
    const language = languageIn(found, 'language');
    const tables = found.files.filter(isTable);
    const prepared = prepare(
      preparationFiles(
        terminal.folder,
        found.files.filter((name) => !tables.includes(name)),
      ),
    );
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    const code =
      found.text('setup') === null && found.text('reading') === null
        ? reviewReadings(terminal, prepared, tables, found, language)
        : reviewTyped(terminal, prepared, found, language);
    return hasErrors(prepared) ? EXIT.findings : code;
  },
};

function reviewReadings(
  terminal: Terminal,
  prepared: Prepared,
  tables: readonly string[],
  options: Arguments,
  language: Language,
): number {
  const file = readingsIn(terminal, prepared, tables[0] ?? null);
  if (file === null)
    throw new UsageFault('no readings: name a CSV file, or type one with --setup and --reading');
  const found = reviewFile(prepared, file);
  terminal.print(printed(found, options, language, () => reviewTable(language, found, file.name)));
  return found.refused.length > 0 ? EXIT.findings : EXIT.done;
}

function reviewTyped(terminal: Terminal, prepared: Prepared, found: Arguments, language: Language): number {
  const setup = found.text('setup');
  const written = found.text('reading');
  if (setup === null || written === null)
    throw new UsageFault('--setup and --reading go together: which setup, and what was written');
  const judged = reviewOne(prepared, {
    group: found.text('group') ?? '',
    setup,
    written,
    note: '',
    line: null,
  });
  if (judged === null) throw unknownSetup(prepared, setup);
  const alone: Review = { judged: [judged], refused: [], notes: [], tables: [], groups: [] };
  terminal.print(printed(alone, found, language, () => judgedText(language, judged)));
  return EXIT.done;
}

function printed(found: Review, options: Arguments, language: Language, asText: () => string): string {
  if (options.isOn('json')) return reviewJson(language, found);
  return options.isOn('csv') ? reviewCsv(language, found) : asText();
}
