import { prepare } from '../../core/prepare.ts';
import { setupNamed, setupsOf } from '../../core/review.ts';
import { nearALimit } from '../../core/setups/predict-by-trials.ts';
import { setupSheet } from '../../documents/prepare.ts';
import { explainJson } from '../../documents/text/explain-json.ts';
import { explainText } from '../../documents/text/explain-text.ts';
import { mistakesText } from '../../documents/text/mistakes-text.ts';
import { nearLimitText } from '../../documents/text/trials-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';
import { trialsInWorker } from '../trials/trials-in-worker.ts';
import { unknownSetup } from '../unknown-setup.ts';

/** The same figures whenever it is explained. */
const SEED = 1;

export const explain: Command = {
  name: 'explain',
  usage: 'explain SETUP... [--in VISIT] [--json | --mistakes] [--language en|es]',
  summary: 'show how a figure of the key comes about, line by line; near a limit by trials as well',
  options: [
    '--in FILE   the visit file; for a kit and an activity name both after the setups',
    '--json      the same lines as JSON',
    '--mistakes  instead, what each usual mistake would leave on the instrument',
    LANGUAGE_OPTION,
  ],
  run: async (args, terminal) => {
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
    const source = preparationFiles(terminal.folder, names);
    const prepared = prepare(source);
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
    if (isOn('json')) {
      terminal.print(explainJson(wanted.map(({ prediction }) => prediction)));
      return hasErrors(prepared) ? EXIT.findings : EXIT.done;
    }
    const near = wanted.filter(({ setup, prediction }) => nearALimit(setup, prediction).length > 0);
    const tried =
      near.length === 0
        ? []
        : await trialsInWorker(
            { files: source, marks: near.map(({ setup }) => setup.mark), seed: SEED },
            terminal.progress,
          );
    terminal.progress('');
    const texts = wanted.map((found) => {
      const { prediction } = found;
      const trials = tried.find(({ setup }) => setup === found.setup.mark);
      const text = explainText(language, setupSheet(found));
      return trials === undefined
        ? text
        : `${text}\n${nearLimitText(language, prediction, SEED, trials.range)}`;
    });
    terminal.print(texts.join('\n'));
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};
