import { arrivalCheckOf } from '../../core/calibration/arrival-check.ts';
import { movesTheKey, type RekeyTable, rekeyTable } from '../../core/calibration/rekey-table.ts';
import type { PreparedTable } from '../../core/prepare.ts';
import { markText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { marksOf, rangeText } from '../text/prediction-text.ts';
import type { Block, Cell } from './block.ts';
import type { SheetKind } from './paper-job.ts';
import type { Say } from './say.ts';
import { tableHeading } from './table-heading.ts';
import { notPreparedBlocks, sheetForAdults } from './visit-sheet.ts';

/**
 * The key that re-keys itself: the row of the arrival reading has the good ranges of every setup of that
 * table for the rest of the period. Nobody needs the program for it.
 */
export const rekeySheet: SheetKind = {
  name: 'rekey',
  of: 'visit',
  build: (job) => [
    sheetForAdults(job, {
      name: 're-keying-key',
      title: 'sheet.rekey',
      about: 'key.for-adults',
      blocks: (say, language) => [
        { block: 'text', text: say('sheet.rekey.beats'), tone: 'strong' },
        { block: 'steps', items: [1, 2, 3].map((step) => say(`sheet.rekey.step-${step}`)) },
        // Before the tables: whoever rings a row needs it then.
        { block: 'text', text: say('sheet.rekey.note'), tone: 'small' },
        ...job.prepared.tables.map((table) => tableBlock(table, language, say)),
      ],
    }),
  ],
};

function tableBlock(table: PreparedTable, language: Language, say: Say): Block {
  const arrival = arrivalCheckOf(table.setups);
  const rekeyed = arrival === null ? null : rekeyTable(table.setups, arrival);
  const heading = tableHeading(language, table);
  return {
    block: 'together',
    blocks: [
      { block: 'heading', level: 2, text: heading },
      ...(rekeyed === null || !movesTheKey(rekeyed, table.setups)
        ? [{ block: 'text' as const, text: say('sheet.rekey.nothing') }]
        : rows(table, rekeyed, language, say)),
      ...notPreparedBlocks(say, table.notPrepared),
    ],
  };
}

function rows(
  table: PreparedTable,
  { arrival, rows }: RekeyTable,
  language: Language,
  say: Say,
): readonly Block[] {
  const { decimal } = languagePack(language);
  const marks = marksOf(arrival.prediction);
  const text = (si: number): string => markText(marks, si, decimal);
  const [first, last] = [rows[0], rows.at(-1)];
  if (first === undefined || last === undefined) return [];
  const setups = first.good.map(({ setup }) => setup);
  return [
    {
      block: 'table',
      head: [
        say('sheet.rekey.read', { setup: arrival.setup.mark, unit: unitWords(language, marks.unit) }),
        ...setups.map((setup) => say('sheet.rekey.good', { setup })),
      ],
      rows: rows.map(({ reading, good }): readonly Cell[] => [
        { text: text(reading), strong: true },
        ...good.map(({ setup, good: range }): Cell => {
          const at = table.setups.find((each) => each.setup.mark === setup);
          return range === null || at === undefined
            ? say('sheet.rekey.off')
            : rangeText(language, at.prediction, range);
        }),
      ]),
      widths: [1.2, ...setups.map(() => 1)],
      align: ['center', ...setups.map(() => 'center' as const)],
      size: 'small',
    },
    {
      block: 'text',
      text: say('sheet.rekey.outside', {
        from: text(first.reading),
        to: text(last.reading),
        unit: unitWords(language, marks.unit),
      }),
      tone: 'small',
    },
  ];
}
