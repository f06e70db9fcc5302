import { expect, test } from 'vitest';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { machines } from '../../core/machines/list.ts';
import { hasSentence } from '../sentences/sentence.ts';
import { goodRangeOf, rangeText } from '../text/prediction-text.ts';
import { carriedPage } from './carried-page.ts';

const job = paperJob(demoPrepared());
const [page] = carriedPage.build(job);
if (page === undefined) throw new Error('no page');
const words = wordsOf(page);
const rows = rowsOf(page);

test('every table has the good ranges of its setups in one line', () => {
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
    'The scale was turned upside down with its old zero',
    'zero the scale the way it hangs.',
  ]);
});
