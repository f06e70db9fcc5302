import type { Prediction } from '../../core/setups/prediction.ts';
import type { ScaleSheet, SetupSheet, Sheet, TableSheet } from '../pages/sheet.ts';
import { hangWords } from '../sentences/hang-words.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { unknownName } from '../sentences/unknown-name.ts';
import { arrivalText } from './arrival-text.ts';
import { columns, wrapped } from './columns.ts';
import {
  bothUnits,
  expectedText,
  goodRangeOf,
  marksOf,
  narrowingText,
  outcomeShort,
  outcomeText,
  textbookText,
} from './prediction-text.ts';
import { reasonsOf } from './reasons.ts';

/** A terminal that isn't wider still shows every line whole. */
const WIDTH = 100;

/** The answer key for the terminal: a block a table, aligned, in at most 100 columns. */
export function keyTable(language: Language, sheet: Sheet): string {
  const head = sentence(language, 'key.text.head', { activity: sheet.activity, kit: sheet.kit });
  return [
    ...wrapped(sheet.visit === null ? head : `${head}, ${sheet.visit}`, WIDTH),
    ...sheet.tables.flatMap((table) => ['', ...tableLines(language, table)]),
    '',
    ...wrapped(sentence(language, 'key.note.range'), WIDTH),
    ...wrapped(sentence(language, 'key.note.grams'), WIDTH),
    '',
  ].join('\n');
}

function tableLines(language: Language, table: TableSheet): readonly string[] {
  const title = sentence(language, 'key.text.table', { mark: table.mark, title: table.title });
  const head = [
    '',
    sentence(language, 'key.good'),
    sentence(language, 'key.expected'),
    sentence(language, 'key.newtons'),
    sentence(language, 'key.grams'),
    sentence(language, 'page.read'),
  ];
  const lines = columns(
    [head, ...table.setups.map((setup) => rowOf(language, setup))],
    ['left', 'left', 'right', 'left', 'left', 'left'],
  );
  const [first = '', ...rows] = lines;
  const arrival = arrivalText(language, table);
  return [
    title,
    '─'.repeat([...title].length),
    ...(arrival === null ? [] : wrapped(arrival, WIDTH - 2).map((each) => `  ${each}`)),
    `  ${first}`,
    ...table.setups.flatMap((setup, n) => [
      `  ${rows[n] ?? ''}`,
      ...remarks(language, setup).flatMap((remark) =>
        wrapped(remark, WIDTH - 8).map((line, place) => `      ${place === 0 ? '' : '  '}${line}`),
      ),
    ]),
    ...assumedLines(language, table),
  ];
}

function rowOf(language: Language, setup: SetupSheet): readonly string[] {
  const { prediction } = setup;
  const good = goodRangeOf(prediction);
  const both = good === null ? null : bothUnits(language, prediction, good);
  const expected = expectedText(language, prediction);
  return [
    setup.mark,
    outcomeShort(language, prediction),
    expected === null ? '–' : `${expected} ${unitWords(language, marksOf(prediction).unit)}`,
    both?.newtons ?? '–',
    both?.grams ?? '–',
    wayText(language, prediction),
  ];
}

/** The way of reading in words; what isn't a pull is named first. */
export const wayText = (language: Language, { watched, way }: Prediction): string =>
  sentence(language, watched === 'pull' ? `way.${way}` : `watched.${watched}`);

/** How the scale hangs and where its zero was set. */
export const hangText = (language: Language, scale: ScaleSheet): string =>
  scale.zeroed === 'in place' || scale.zeroed === scale.hangs
    ? sentence(language, 'key.hangs-in-place', { hangs: hangWords(language, scale.hangs) })
    : sentence(language, 'key.hangs', {
        hangs: hangWords(language, scale.hangs),
        zeroed: hangWords(language, scale.zeroed),
      });

/** Names of the values that were assumed and not measured, each once for a table. */
export const assumedNames = (language: Language, table: TableSheet): readonly string[] => [
  ...new Set(
    table.setups.flatMap(({ prediction }) =>
      prediction.assumed.map(({ unknown }) => unknownName(language, unknown)),
    ),
  ),
];

function assumedLines(language: Language, table: TableSheet): readonly string[] {
  const what = assumedNames(language, table);
  if (what.length === 0) return [];
  return wrapped(sentence(language, 'key.assumed-are', { what }), WIDTH - 4).map(
    (line, place) => `  ${place === 0 ? '' : '  '}${line}`,
  );
}

function remarks(language: Language, setup: SetupSheet): readonly string[] {
  const { prediction } = setup;
  const narrowing = narrowingText(language, prediction);
  const plain = prediction.outcome.kind === 'reading' || prediction.outcome.kind === 'band';
  return [
    ...(plain ? [] : [asSentence(outcomeText(language, prediction))]),
    ...(setup.scale === null
      ? []
      : [
          `${capital(sentence(language, 'page.scale-named', { mark: setup.scale.label }))}: ${hangText(language, setup.scale)}.`,
        ]),
    [textbookText(language, prediction.textbook, prediction.graduations), whyText(language, setup)]
      .filter((each) => each !== '')
      .join(' '),
    ...(narrowing === '' ? [] : [narrowing]),
  ];
}

/** Why the schoolbook's figure differs, as one sentence. Empty where nothing makes it differ. */
export function whyText(language: Language, setup: SetupSheet): string {
  const reasons = reasonsOf(language, setup);
  return reasons.length === 0 ? '' : `${capital(reasons.join('; '))}.`;
}

/**
 * A sentence begins with a capital.
 *
 * @example capital('off the scale') // => 'Off the scale'
 */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/**
 * Outcomes are told in the middle of a line elsewhere; on their own they are sentences.
 *
 * @example asSentence('off the scale') // => 'Off the scale.'
 */
export const asSentence = (text: string): string => `${capital(text)}${/[.!?]$/.test(text) ? '' : '.'}`;
