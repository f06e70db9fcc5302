import { expect, test } from 'vitest';
import { demoPrepared, paperJob, wordsOf, wordsOfCell } from '../../../test/documents/demo-prepared.ts';
import { goodRangeOf, rangeText } from '../text/prediction-text.ts';
import { rekeySheet } from './rekey-sheet.ts';

const [sheet] = rekeySheet.build(paperJob(demoPrepared()));
if (sheet === undefined) throw new Error('no sheet');
const blocks = sheet.blocks.flatMap((block) => (block.block === 'together' ? block.blocks : [block]));
const tables = blocks.flatMap((block) =>
  block.block === 'table' ? [{ head: block.head, rows: block.rows.map((row) => row.map(wordsOfCell)) }] : [],
);

test('three lines say how it is used, and none of them asks for a computer', () => {
  const steps = blocks.flatMap((block) => (block.block === 'steps' ? block.items : []));
  expect(steps).toHaveLength(3);
  expect(wordsOf(sheet).join(' ')).not.toMatch(/computer|laptop|program|command/i);
});

test('the rows of a table are the graduations of its scale, one after the other', () => {
  expect(tables.length).toBe(5);
  for (const { rows } of tables) {
    const readings = rows.map(([first]) => Number(first));
    const steps = readings.slice(1).map((reading, n) => reading - (readings[n] ?? 0));
    expect(Math.min(...steps)).toBeGreaterThan(0);
    expect(Math.max(...steps) - Math.min(...steps)).toBeLessThan(1e-9);
  }
});

test('which range counts stands above all rows: the ringed row, and until then the printed range', () => {
  const words = wordsOf(sheet);
  const at = words.findIndex((line) =>
    /^The row ringed .* beats every printed range of its table/.test(line),
  );
  expect(words[at]).toMatch(/until a row is ringed the printed range holds\.$/);
  expect(at).toBeGreaterThan(0);
  expect(at).toBeLessThan(words.findIndex((line) => line.startsWith('Table 1')));
  expect(words[at + 2]).toBe('Ring its row on every copy of this sheet.');
});

test('a table whose rows would all be the printed key has no rows', () => {
  const words = wordsOf(sheet);
  const at = words.indexOf('Table 5: The spindle');
  expect(words[at + 1]).toBe('No arrival reading tells more here: use the answer key.');
});

test('the row of a reading is the key that the program prints when that reading is typed in', () => {
  let compared = 0;
  for (const { head, rows } of tables) {
    const [, setup = '', unit = ''] = /^Read at (\S+) \((\S+)\)$/.exec(head[0] ?? '') ?? [];
    for (const [reading = '', ...printed] of [rows[0] ?? [], rows.at(-1) ?? []]) {
      const arrived = demoPrepared((text, file) =>
        file === 'visit' ? `${text}arrival: { ${setup}: ${reading} ${unit} }\n` : text,
      );
      const table = arrived.tables.find(({ setups }) => setups.some((each) => each.setup.mark === setup));
      const typed = (table?.setups ?? []).map(({ prediction }) => {
        const good = goodRangeOf(prediction);
        return good === null ? 'off the scale' : rangeText('en', prediction, good);
      });
      expect(printed, `${setup} ${reading}`).toEqual(typed);
      compared += printed.length;
    }
  }
  expect(compared).toBeGreaterThan(25);
});
