import { prepare } from '../../core/prepare.ts';
import { setupNamed, setupsOf } from '../../core/review.ts';
import { setupSheet } from '../../documents/prepare.ts';
import { explainJson } from '../../documents/text/explain-json.ts';
import { explainText } from '../../documents/text/explain-text.ts';
import { mistakesText } from '../../documents/text/mistakes-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { unknownSetup } from '../unknown-setup.ts';

export const explain: Command = {
  name: 'explain',
  usage: 'explain SETUP... [--in VISIT] [--json | --mistakes] [--language en|es]',
  summary: 'show how a figure of the key comes about, line by line',
  options: [
    '--in FILE   the visit file; for a kit and an activity name both after the setups',
    '--json      the same lines as JSON',
    '--mistakes  instead, what each usual mistake would leave on the instrument',
    LANGUAGE_OPTION,
  ],
  run: (args, terminal) => {
    const options = readArguments(args, {
      in: 'text',
      json: 'switch',
      mistakes: 'switch',
      language: 'text',
    });
    const { files, text, isOn } = options;
    const language = languageIn(options, 'language');
    const named = text('in');
    const marks = files.filter((each) => !/\.ya?ml$/.test(each));
    const names = [...(named === null ? [] : [named]), ...files.filter((each) => /\.ya?ml$/.test(each))];
    const prepared = prepare(preparationFiles(terminal.folder, names));
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    const known = setupsOf(prepared).map(({ setup }) => setup.mark);
    const wanted = (marks.length === 0 ? known : marks).map((mark) => {
      const found = setupNamed(prepared, mark);
      if (found === null) throw unknownSetup(prepared, mark);
      return found;
    });
    if (isOn('mistakes')) {
      terminal.print(wanted.map((found) => mistakesText(language, found)).join('\n'));
      return hasErrors(prepared) ? EXIT.findings : EXIT.done;
    }
    terminal.print(
      isOn('json')
        ? explainJson(wanted.map(({ prediction }) => prediction))
        : wanted.map((found) => explainText(language, setupSheet(found))).join('\n'),
    );
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};
