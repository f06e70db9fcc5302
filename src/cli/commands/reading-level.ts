import { prepare } from '../../core/prepare.ts';
import { preparedForCards } from '../../core/prepare-cards.ts';
import { sheetIn } from '../../documents/pages/sheet-in.ts';
import { sheetOf } from '../../documents/prepare.ts';
import { cardLevelsOf } from '../../documents/reading-level/card-level.ts';
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
    const ofKit = preparedForCards(prepared);
    const sheet = sheetIn(language, sheetOf(ofKit));
    const cards = cardLevelsOf({
      prepared: ofKit,
      sheet,
      paper: 'a4',
      period: null,
      languages: { cards: language, key: language },
    });
    if (cards.length === 0) return EXIT.findings;
    const print = found.isOn('json') ? readingLevelJson : readingLevelText;
    terminal.print(print(language, sheet.activity, cards));
    return hasErrors(prepared) || cards.some(({ verdict }) => verdict !== 'easy enough')
      ? EXIT.findings
      : EXIT.done;
  },
};
