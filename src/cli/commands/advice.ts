import { advise } from '../../core/advise.ts';
import { nearestName } from '../../core/diagnostics/nearest-name.ts';
import { type Prepared, prepare } from '../../core/prepare.ts';
import { setupNamed, setupsOf } from '../../core/review.ts';
import { COPIES } from '../../core/setups/chance-to-see.ts';
import { adviceJson } from '../../documents/text/advice-json.ts';
import { adviceText } from '../../documents/text/advice-text.ts';
import { readArguments } from '../arguments.ts';
import { type Command, EXIT, UsageFault } from '../command.ts';
import { preparationFiles } from '../files.ts';
import { hasErrors, tellErrors } from '../findings.ts';
import { LANGUAGE_OPTION, languageIn } from '../language.ts';

export const advice: Command = {
  name: 'advice',
  usage:
    'advice [TABLE | SETUP]... [VISIT | KIT ACTIVITY] [--ratio 15%] [--groups 95%] [--seed N] [--json] [--language en|es]',
  summary: 'say what a class would see at each pair of setups, and what would show it better',
  options: [
    'TABLE | SETUP   only these tables, or those that these setups stand on',
    '--ratio 15%     how far off a ratio of two readings may be and still be seen',
    '--groups 95%    how many of the groups are to see it',
    '--seed N        a whole number; the same one gives the same figures (1)',
    '--json          all figures as JSON, SI',
    LANGUAGE_OPTION,
  ],
  run: (args, terminal) => {
    const found = readArguments(args, {
      ratio: 'text',
      groups: 'text',
      seed: 'text',
      json: 'switch',
      language: 'text',
    });
    const language = languageIn(found, 'language');
    const wanted = {
      ratio: shareIn('ratio', found.text('ratio') ?? '15%'),
      groups: shareIn('groups', found.text('groups') ?? '95%'),
    };
    const seed = seedIn(found.text('seed') ?? '1');
    const isFile = (each: string): boolean => /\.ya?ml$/.test(each);
    const prepared = prepare(preparationFiles(terminal.folder, found.files.filter(isFile)));
    tellErrors(terminal, prepared, language);
    if (prepared.tables.length === 0) return EXIT.findings;
    const named = found.files.filter((each) => !isFile(each)).map((mark) => tableOf(prepared, mark));
    const tables = advise(prepared, { wanted, seed, ...(named.length === 0 ? {} : { tables: named }) });
    const head = { wanted, seed, copies: COPIES };
    terminal.print(
      found.isOn('json') ? adviceJson(tables, head) : adviceText(language, prepared, tables, head),
    );
    return hasErrors(prepared) ? EXIT.findings : EXIT.done;
  },
};

/** A table by its own mark, or by that of a setup on it. */
function tableOf(prepared: Prepared, mark: string): string {
  const table =
    prepared.tables.find((each) => each.mark === mark)?.mark ?? setupNamed(prepared, mark)?.setup.table;
  if (table !== undefined) return table;
  const known = [
    ...prepared.tables.map((each) => each.mark),
    ...setupsOf(prepared).map(({ setup }) => setup.mark),
  ];
  const nearest = nearestName(mark, known);
  throw new UsageFault(
    `there is no table and no setup "${mark}"${nearest === undefined ? '' : `; did you mean "${nearest}"?`}\n` +
      `there are ${known.join(', ')}`,
  );
}

/** `15%`, `15 %` or `0.15`: more than nothing and less than all. */
function shareIn(option: string, text: string): number {
  const [, digits, sign] = /^(\d+(?:[.,]\d+)?)\s*(%?)$/.exec(text.trim()) ?? [];
  const share = Number((digits ?? '').replace(',', '.')) / (sign === '%' ? 100 : 1);
  if (digits === undefined || !(share > 0 && share < 1))
    throw new UsageFault(
      `--${option} is a share between 0 and 100 %, not "${text}": for instance --${option} ${option === 'ratio' ? '15%' : '95%'}`,
    );
  return share;
}

function seedIn(text: string): number {
  const seed = Number(text);
  if (!/^-?\d+$/.test(text) || !Number.isSafeInteger(seed))
    throw new UsageFault(`the seed is a whole number, not "${text}": for instance --seed 7`);
  return seed;
}
