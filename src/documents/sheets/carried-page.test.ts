import { expect, test } from 'vitest';
import {
  demoPrepared,
  paperJob,
  rowsOf,
  wordsOf,
  wordsOfCell,
} from '../../../test/documents/demo-prepared.ts';
import { arrivalCheckOf } from '../../core/calibration/arrival-check.ts';
import { rekeyTable } from '../../core/calibration/rekey-table.ts';
import { machines } from '../../core/machines/list.ts';
import { hasSentence } from '../sentences/sentence.ts';
import { goodRangeOf, rangeText } from '../text/prediction-text.ts';
import { linesOf } from './carried-lines.ts';
import { carriedPage } from './carried-page.ts';

const job = paperJob(demoPrepared());
const [page] = carriedPage.build(job);
if (page === undefined) throw new Error('no page');
const words = wordsOf(page);
const tablesWithHead = (name: RegExp) =>
  page.blocks
    .flatMap((block) => (block.block === 'together' ? block.blocks : []))
    .flatMap((block) => (block.block === 'columns' ? block.columns.flat() : [block]))
    .flatMap((block) => (block.block === 'table' && name.test(block.head[0] ?? '') ? [block] : []));
const rows = tablesWithHead(/^If they wrote$/).flatMap((table) =>
  table.rows.map((row) => row.map(wordsOfCell)),
);

test('every table has the good ranges of its setups beside its name', () => {
  for (const { setups } of job.sheet.tables)
    for (const { mark, prediction } of setups) {
      const good = goodRangeOf(prediction);
      if (good === null) continue;
      expect(words.join('\n').replaceAll('\u00a0', ' ')).toContain(
        `${mark} ${rangeText('en', prediction, good)}`,
      );
    }
});

test('a number in grams is told by the column of the scale that has them', () => {
  const [wrote, likely, say] = rows.find(([, cause]) => cause === 'The number counts grams') ?? [];
  expect(wrote).toBe('about 220 (L1), 440 (L2), 150 (L3)');
  expect(likely).toBe('The number counts grams');
  expect(say).toBe('look which unit stands at the marks.');
});

test('beside each printed range there is room for the one of today, where a reading can move it', () => {
  const goods = tablesWithHead(/^Good$/);
  expect(goods.map(({ head }) => head.slice(1).map((good) => good.slice(0, 2)))).toEqual([
    ['L1', 'L2', 'L3'],
    ['S1', 'S2', 'S3', 'S4'],
    ['T1', 'T2'],
    ['C1', 'C2', 'C3'],
    ['D1', 'D2'],
  ]);
  for (const { head, rows } of goods)
    expect(rows.map((row) => row.map(wordsOfCell))).toEqual([
      ['Today', ...head.slice(1).map(() => '______ to ______')],
    ]);
  expect(words).toContain(
    'Good: P1\u00a03.75\u00a0to\u00a04.25\u00a0turns;  P2\u00a013\u00a0to\u00a015\u00a0mm',
  );
});

test('a number that some row would call good has a sign, and no other number has one', () => {
  let signed = 0;
  for (const table of job.prepared.tables) {
    const { setups } = table;
    const arrival = arrivalCheckOf(setups);
    if (arrival === null) continue;
    const rekeyed = rekeyTable(setups, arrival).rows;
    for (const { figures } of linesOf(table))
      for (const { setup, figure } of figures) {
        const unit = setups.find((at) => at.setup.mark === setup)?.prediction.graduations?.unitSi ?? 1;
        const number = figure.number ?? Number.NaN;
        const isGood = rekeyed.some(({ good }) => {
          const range = good.find((each) => each.setup === setup)?.good;
          return range != null && number >= range.from / unit - 1e-9 && number <= range.to / unit + 1e-9;
        });
        const told = rows.map(([wrote]) => wrote ?? '').filter((wrote) => wrote.includes(`(${setup})`));
        const text = String(Number(number.toFixed(3)));
        const asPrinted = new RegExp(`(?<![\\d.])${text.replace('.', '\\.')}(†?) \\(${setup}\\)`);
        const found = told.flatMap((wrote) => asPrinted.exec(wrote)?.[1] ?? []);
        expect(found, `${text} at ${setup}`).toContain(isGood ? '†' : '');
        signed += isGood ? 1 : 0;
      }
  }
  expect(signed).toBeGreaterThan(2);
  expect(words.join(' ')).toContain('† Good if the range of today holds it.');
});

test('a table that follows its typed arrival reading has no room for another range', () => {
  const arrived = demoPrepared((text, file) => (file === 'visit' ? `${text}arrival: { L2: 4.1 N }\n` : text));
  const [typed] = carriedPage.build(paperJob(arrived));
  const lines = typed === undefined ? [] : wordsOf(typed);
  expect(lines.find((line) => line.startsWith('Good: L1'))?.replaceAll('\u00a0', ' ')).toBe(
    'Good: L1 1.9 to 2.4 N;  L2 4.0 to 4.7 N;  L3 1.3 to 1.6 N',
  );
  expect(lines.filter((line) => line === 'Today')).toHaveLength(4);
});

test('the rule for any other number comes before the tables, so that no page can end without it', () => {
  const at = words.findIndex((line) => line.includes('Any other number:'));
  expect(at).toBeGreaterThan(0);
  expect(at).toBeLessThan(words.findIndex((line) => line.startsWith('Table 1:')));
});

test('two causes of one number have a remedy each, once where it is the same', () => {
  const said = (causes: RegExp) => rows.find(([, cause]) => causes.test(cause ?? ''))?.[2];
  expect(said(/came back down; or the board stood one pin too low/)).toBe(
    'read while the load goes up; or count the pins against the card.',
  );
  expect(said(/too far right; or what carries the load went up empty/)).toBe(
    'count the holes against the card; or put the load on.',
  );
  // Marks so coarse that two holes leave the same number.
  const coarse = demoPrepared((text, file) =>
    file === 'kit'
      ? text.replace('graduation: 0.1 N\n    other graduation: 10 gf', 'graduation: 0.5 N')
      : text,
  );
  const [carried] = carriedPage.build(paperJob(coarse));
  const row = (carried === undefined ? [] : rowsOf(carried)).find(([, cause]) =>
    /load was one hole .*; or the scale was hooked one hole/.test(cause ?? ''),
  );
  expect(row?.[2]).toBe('count the holes against the card.');
});

test('no table has more lines than can be read while walking', () => {
  const counts = page.blocks.flatMap((block) =>
    block.block === 'together'
      ? block.blocks.flatMap((inner) => (inner.block === 'table' ? [inner.rows.length] : []))
      : [],
  );
  expect(counts.length).toBeGreaterThan(4);
  for (const count of counts) expect(count).toBeLessThanOrEqual(4);
});

test('what is said to a group never accuses it', () => {
  for (const [, , say] of rows) expect(say).not.toMatch(/wrong|mistake|fault|bad|false/i);
});

test('a table without any number says what to ask instead', () => {
  const at = words.findIndex((line) => line.startsWith('Table 6:'));
  expect(words.slice(at, at + 3).join(' ')).toContain('No number gives its cause away here');
});

test('every usual mistake of every machine has its few words to say', () => {
  const codes = machines.flatMap((machine) => machine.mistakes.map(({ code }) => code));
  const without = codes.filter(
    (code) => !/hole|counted-from/.test(code) && !hasSentence('en', `sheet.carried.say.${code}`),
  );
  expect(without).toEqual([]);
});

test('a pointer that would rest on its stop is told as such, with the zero to set', () => {
  const heavy = demoPrepared((text, file) =>
    file === 'kit'
      ? text
          .replace('mass: 46 g ± 0.5 g', 'mass: 300 g ± 0.5 g')
          .replace('turn-over shift: 0.21 N ± 0.02 N', 'turn-over shift: 2.4 N ± 0.02 N')
      : file === 'activity'
        ? text.replace('setup: L1\n', 'setup: L1\n        hand carries the scale: yes\n')
        : text,
  );
  const [carried] = carriedPage.build(paperJob(heavy));
  const row = (carried === undefined ? [] : rowsOf(carried)).find(([wrote]) => wrote?.startsWith('it stays'));
  expect(row).toEqual([
    'it stays at 0 or on its stop (L1)',
    'The scale was turned and kept its old zero',
    'zero the scale the way it hangs.',
  ]);
});
