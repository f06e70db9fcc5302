import { arrivalCheckOf, STEP_TO_ROW, stepsOutside } from '../../core/calibration/arrival-check.ts';
import { movesTheKey, rekeyTable } from '../../core/calibration/rekey-table.ts';
import type { Fact } from '../../core/diagnostics/diagnostic.ts';
import type { PreparedTable } from '../../core/prepare.ts';
import type { Predicted } from '../../core/setups/difference.ts';
import { setupSheet } from '../prepare.ts';
import { markText } from '../printing/reading-text.ts';
import { holdLines } from '../sentences/hang-words.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import { unitWords } from '../sentences/unit-words.ts';
import { marksOf, outcomeShort } from '../text/prediction-text.ts';
import type { Block } from './block.ts';
import type { SheetKind } from './paper-job.ts';
import { type Say, sayIn } from './say.ts';
import { tableHeading } from './table-heading.ts';
import { notPreparedBlocks, sheetForAdults } from './visit-sheet.ts';

/**
 * The check on arrival: scales are dropped and set anew on the bus. One trial reading a table, what is
 * set up for it, from - to, room to write it, and what to do if it lies outside.
 */
export const arrivalSheet: SheetKind = {
  name: 'arrival',
  of: 'visit',
  build: (job) => [
    sheetForAdults(job, {
      name: 'arrival-check',
      title: 'sheet.arrival',
      about: 'sheet.arrival.about',
      blocks: (say, language) => [...job.prepared.tables.map((table) => tableBlock(table, language, say))],
    }),
  ],
};

function tableBlock(table: PreparedTable, language: Language, say: Say): Block {
  const heading = tableHeading(language, table);
  const trial = trialOf(table);
  const missing = notPreparedBlocks(say, table.notPrepared);
  if (trial === null)
    return {
      block: 'together',
      blocks: [
        { block: 'heading', level: 2, text: heading },
        { block: 'text', text: say('sheet.arrival.no-reading') },
        ...missing,
      ],
    };
  const { arrival, actions } = trial(language);
  const mark = arrival.setup.mark;
  const isKeyMoved = movesTheKey(rekeyTable(table.setups, arrival), table.setups);
  return {
    block: 'together',
    blocks: [
      { block: 'heading', level: 2, text: say('sheet.arrival.heading', { table: heading, setup: mark }) },
      {
        block: 'columns',
        shares: [1, 1],
        columns: [
          [{ block: 'steps', items: actions }],
          [
            {
              block: 'text',
              text: say('sheet.arrival.good', { range: outcomeShort(language, arrival.prediction) }),
              tone: 'large',
            },
            { block: 'line', name: say('sheet.arrival.read', { setup: mark }) },
            {
              block: 'text',
              text: isKeyMoved ? say(STEP_TO_ROW.key) : say('sheet.arrival.unmoved'),
              tone: 'strong',
            },
            { block: 'text', text: say('sheet.arrival.outside'), tone: 'strong' },
            { block: 'steps', items: outside(arrival, isKeyMoved, language, say) },
          ],
        ],
      },
      ...missing,
    ],
  };
}

/** What to do outside the range; figures as they stand on the instrument. */
function outside(arrival: Predicted, isKeyMoved: boolean, language: Language, say: Say): readonly string[] {
  const { decimal } = languagePack(language);
  const marks = marksOf(arrival.prediction);
  const onTheMarks = (si: number): string =>
    `${markText(marks, si, decimal)} ${unitWords(language, marks.unit)}`;
  return stepsOutside(arrival, isKeyMoved).map(({ key, facts }) => {
    const told = Object.entries(facts).map(([name, fact]): readonly [string, Fact] => {
      if (typeof fact === 'number') return [name, onTheMarks(fact)];
      return typeof fact === 'object' && 'si' in fact ? [name, onTheMarks(fact.si)] : [name, fact];
    });
    return say(key, Object.fromEntries(told));
  });
}

/** The trial reading of a table and all that is done for it; `null` where nothing is read on arrival. */
function trialOf(table: PreparedTable) {
  const arrival = arrivalCheckOf(table.setups);
  const prepared = table.setups.find(({ setup }) => setup.mark === arrival?.setup.mark);
  if (arrival === null || prepared === undefined) return null;
  const { scale, load, steps, reads } = setupSheet(prepared);
  const taken = [load, scale].flatMap((part) => (part === null ? [] : [part.label]));
  return (language: Language) => {
    const say = sayIn(language);
    return {
      arrival,
      actions: [
        ...(taken.length === 0 ? [] : [say('sheet.arrival.take', { parts: taken })]),
        ...(scale === null ? [] : holdLines(language, scale)),
        ...[...steps, ...reads].map(({ key, facts }) => say(key, facts)),
      ],
    };
  };
}
