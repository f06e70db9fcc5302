import { prepare } from '../../core/prepare.ts';
import { sheetOf } from '../../documents/prepare.ts';
import { cardLevelOf } from '../../documents/reading-level/card-level.ts';
import { cardTextsOf } from '../../documents/reading-level/card-texts.ts';
import { readingLevelJson } from '../../documents/text/reading-level-json.ts';
import { readingLevelText } from '../../documents/text/reading-level-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';

export const readingLevel: Command = {
  name: 'reading-level',
  usage: 'reading-level [VISIT | KIT ACTIVITY] [--language en|es] [--json]',
  summary: 'count the words of each card, and say whether the youngest readers can follow it',
  options: [LANGUAGE_OPTION, '--json              the same with every sentence'],
  run: (args, terminal) => {
    const found = readArguments(args, { language: 'text', json: 'switch' });
    const language = languageIn(found, 'language');
    const prepared = prepare(preparationFiles(terminal.folder, found.files));
    tellErrors(terminal, prepared, language);
    const sheet = sheetOf(prepared);
    const tables = sheet.tables.filter(({ setups }) => setups.length > 0);
    if (tables.length === 0) return EXIT.findings;
    const cards = tables.map((table) =>
      cardLevelOf(
        language,
        { table: table.mark, title: table.title, texts: cardTextsOf(language, table) },
        prepared.activity?.age ?? null,
      ),
    );
    const print = found.isOn('json') ? readingLevelJson : readingLevelText;
    terminal.print(print(language, sheet.activity, cards));
    return hasErrors(prepared) || cards.some(({ verdict }) => verdict !== 'easy enough')
      ? EXIT.findings
      : EXIT.done;
  },
};
