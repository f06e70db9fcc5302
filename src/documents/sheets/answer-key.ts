import { isNotDefined } from '../../core/description/not-defined.ts';
import type { SetupSheet, TableSheet } from '../pages/sheet.ts';
import type { Language } from '../sentences/language.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { predictionStrip } from '../strip/prediction-strip.ts';
import { readingStrip } from '../strip/reading-strip.ts';
import { arrivalText } from '../text/arrival-text.ts';
import { machineName } from '../text/explain-text.ts';
import { reasonText } from '../text/key-reason.ts';
import { assumedNames, hangText, wayText } from '../text/key-table.ts';
import {
  bothUnits,
  expectedText,
  goodRangeOf,
  marksOf,
  narrowingText,
  outcomeShort,
  textbookInBoth,
} from '../text/prediction-text.ts';
import type { Block, Cell } from './block.ts';
import type { PaperJob, SheetKind } from './paper-job.ts';
import { paperSvg } from './paper-svg.ts';
import type { Say } from './say.ts';
import { extraMarks, gravityFacts, notPreparedBlocks, sheetForAdults } from './visit-sheet.ts';

/** Length of a reading strip on the key, millimetres. */
const STRIP = 44;

/**
 * The answer key of this kit at this date and place: for each setup how it is read, the good range
 * large, newtons and grams, the reading strip with the range hatched, the schoolbook's value beside;
 * on the back why the two differ.
 */
export const answerKey: SheetKind = {
  name: 'key',
  of: 'visit',
  build: (job) => [
    sheetForAdults(job, {
      name: 'answer-key',
      title: 'key.title',
      about: 'key.for-adults',
      facts: gravityFacts(job, job.languages.key),
      blocks: (say, language) => [
        { block: 'text', text: say('sheet.rekey.beats'), tone: 'strong' },
        { block: 'text', text: `${say('key.caption')} ${say('key.note.assumed')}`, tone: 'small' },
        ...job.sheet.tables.flatMap((table) => front(job, table, say)),
        { block: 'page-break' },
        ...back(job.sheet.tables, language, say),
      ],
    }),
  ],
};

const COLUMNS = ['setup', 'good', 'both', 'strip', 'textbook'] as const;

function front(job: PaperJob, table: TableSheet, say: Say): readonly Block[] {
  const language = job.languages.key;
  const prepared = job.prepared.tables.find(({ mark }) => mark === table.mark);
  const missing = prepared?.notPrepared ?? [];
  const extra = extraMarks(prepared);
  const arrived = arrivalText(language, table);
  const heading = say('key.text.table', { mark: table.mark, title: table.title });
  return [
    {
      block: 'together',
      blocks: [
        { block: 'heading', level: 2, text: `${heading} · ${machineName(language, table.machine)}` },
        ...(table.setups.length === 0
          ? []
          : [
              {
                block: 'table' as const,
                head: COLUMNS.map((column) => say(`key.${column}`)),
                rows: table.setups.map((setup) => row(language, table, setup, extra.has(setup.mark), say)),
                widths: [2.6, 2.2, 1.8, 0, 1.5],
                size: 'small' as const,
              },
            ]),
        ...(arrived === null ? [] : [{ block: 'text' as const, text: arrived, tone: 'strong' as const }]),
        ...notPreparedBlocks(say, missing),
      ],
    },
  ];
}

function row(
  language: Language,
  table: TableSheet,
  setup: SetupSheet,
  isExtra: boolean,
  say: Say,
): readonly Cell[] {
  const { prediction, scale } = setup;
  const how = [
    ...(isExtra ? [say('sheet.key.extra')] : []),
    wayText(language, prediction),
    ...(scale === null ? [] : [hangText(language, scale)]),
  ];
  const good = goodRangeOf(prediction);
  const both = good === null ? null : bothUnits(language, prediction, good);
  const { textbook, graduations } = prediction;
  const book = isNotDefined(textbook) ? null : textbookInBoth(language, textbook, graduations);
  return [
    { text: setup.mark, strong: true, note: how.join('; ') },
    goodCell(language, setup, say),
    both === null ? say('sheet.none') : { text: both.newtons, note: both.grams },
    stripCell(language, table, setup, say),
    book === null
      ? say('sheet.none')
      : { text: book.newtons, ...(book.grams === null ? {} : { note: book.grams }) },
  ];
}

/** The range that counts, large; what is expected within it, small. A starred one rests on an assumption. */
function goodCell(language: Language, { prediction }: SetupSheet, say: Say): Cell {
  const short = outcomeShort(language, prediction);
  const { kind } = prediction.outcome;
  const star = prediction.assumed.length > 0 && goodRangeOf(prediction) !== null ? '*' : '';
  const expected = expectedText(language, prediction);
  const note =
    kind === 'ease'
      ? say('found.ease.note')
      : kind !== 'reading' && kind !== 'band'
        ? null
        : say('key.expected-is', {
            value: `${expected ?? ''} ${unitWords(language, marksOf(prediction).unit)}`,
          });
  return { text: `${short}${star}`, strong: true, isLarge: true, ...(note === null ? {} : { note }) };
}

function stripCell(language: Language, table: TableSheet, setup: SetupSheet, say: Say): Cell {
  const strip = predictionStrip(setup.prediction, setup.scale);
  if (strip === null) return say('sheet.none');
  const name = `strip ${table.mark} ${setup.mark}`;
  const svg = paperSvg(readingStrip(strip, { language, name, length: STRIP, hideGood: false }));
  const alt = say('sheet.strip.alt', {
    setup: setup.mark,
    good: outcomeShort(language, setup.prediction),
  });
  return { svg, alt, width: widthOf(svg) };
}

/** A drawing says its own width on paper; the typesetter is told the same, so that its scale stays true. */
export const widthOf = (svg: string): number => Number(/\bwidth="([\d.]+)mm"/.exec(svg)?.[1] ?? STRIP);

/** The back: for each setup the reasons in words, table by table. What needs no word has no line. */
function back(tables: readonly TableSheet[], language: Language, say: Say): readonly Block[] {
  return [
    { block: 'heading', level: 2, text: say('key.why') },
    { block: 'text', text: say('key.note.range'), tone: 'small' },
    { block: 'text', text: say('key.note.grams'), tone: 'small' },
    ...tables.flatMap((table): readonly Block[] => {
      const rows = table.setups.flatMap((setup): readonly (readonly Cell[])[] => {
        const narrowing = narrowingText(language, setup.prediction);
        const reason = reasonText(language, setup);
        return reason === '' && narrowing === ''
          ? []
          : [
              [
                { text: setup.mark, strong: true },
                narrowing === '' ? reason : { text: reason, note: narrowing },
              ],
            ];
      });
      const assumed = assumedNames(language, table);
      if (rows.length === 0 && assumed.length === 0) return [];
      return [
        {
          block: 'heading',
          level: 3,
          text: say('key.text.table', { mark: table.mark, title: table.title }),
        },
        ...(rows.length === 0
          ? []
          : [
              {
                block: 'table' as const,
                head: [say('key.setup'), say('sheet.key.reason')],
                rows,
                widths: [1, 11],
                size: 'small' as const,
              },
            ]),
        ...(assumed.length === 0
          ? []
          : [
              {
                block: 'text' as const,
                text: say('key.assumed-are', { what: assumed }),
                tone: 'small' as const,
              },
            ]),
      ];
    }),
  ];
}
