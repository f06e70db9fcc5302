import { expect, test } from 'vitest';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { isNotDefined } from '../../core/description/not-defined.ts';
import { goodRangeOf, rangeText } from '../text/prediction-text.ts';
import type { SheetOfPaper } from './block.ts';
import { dataCharts } from './data-chart.ts';

const prepared = demoPrepared();
const job = paperJob(prepared);
const all = dataCharts.build(job);
const charts = all.filter(({ language }) => language === 'en');

test('there is one file a level, and in it one chart a group with its label', () => {
  expect(charts.map(({ name }) => name)).toEqual(['chart-level-1', 'chart-level-2', 'chart-level-3']);
  for (const chart of charts) {
    const groups = wordsOf(chart).filter((line) => /^Group: /.test(line));
    expect(groups).toEqual(['A', 'B', 'C', 'D', 'E'].map((label) => `Group: ${label}`));
    expect(chart.blocks.filter(({ block }) => block === 'page-break')).toHaveLength(4);
  }
});

test('a group that reads another language has its charts in a file of that language', () => {
  const others = all.filter(({ language }) => language !== 'en');
  expect(others.map(({ name, language }) => `${name} ${language}`)).toEqual([
    'chart-level-1-es es',
    'chart-level-2-es es',
    'chart-level-3-es es',
  ]);
  for (const chart of others) {
    expect(wordsOf(chart).filter((line) => /^Grupo: /.test(line))).toEqual(['Grupo: F']);
    expect(wordsOf(chart).join('\n')).not.toContain('Group');
  }
});

test('an activity that wishes one level gets the charts of that level alone', () => {
  const one = demoPrepared((text, file) =>
    file === 'activity' ? text.replace(/^age:.*$/m, '$&\nlevel: 2') : text,
  );
  expect(dataCharts.build(paperJob(one)).map(({ name }) => name)).toEqual([
    'chart-level-2',
    'chart-level-2-es',
  ]);
});

test('every setup has its row in every chart, with a guess before it', () => {
  const marks = job.sheet.tables.flatMap((table) => table.setups.map(({ mark }) => mark));
  for (const chart of charts) {
    const first = rowsOf(chart).slice(0, marks.length);
    expect(first.map(([mark]) => mark?.replace(' if you wait', ''))).toEqual(marks);
    expect(first.filter(([mark]) => mark?.endsWith(' if you wait'))).toHaveLength(2);
    expect(wordsOf(chart).join('\n')).toMatch(/guess/i);
  }
});

test('a chart has the four roles and tells nobody to write a name', () => {
  for (const chart of charts) {
    const words = wordsOf(chart);
    for (const role of ['Pull', 'Read', 'Write', 'Check']) expect(words).toContain(role);
    expect(words.join('\n')).not.toMatch(/\bnames?\b/i);
  }
});

test('a chart says nothing of what will be read', () => {
  for (const chart of charts) {
    const words = wordsOf(chart).join('\n');
    for (const { setups } of job.sheet.tables)
      for (const { prediction } of setups) {
        const good = goodRangeOf(prediction);
        if (good !== null) expect(words).not.toContain(rangeText('en', prediction, good));
      }
  }
});

test('a chart stays the same when the predictions change', () => {
  const tables = job.sheet.tables.map((table) => ({
    ...table,
    setups: table.setups.map((setup) => ({
      ...setup,
      prediction: { ...setup.prediction, outcome: { kind: 'scale on the other side', force: 3 } as const },
    })),
  }));
  expect(dataCharts.build({ ...job, sheet: { ...job.sheet, tables } })).toEqual(all);
});

const row = (level: number, mark: string, from: readonly SheetOfPaper[] = charts) => {
  const chart = from.find(({ name }) => name === `chart-level-${level}`);
  return chart === undefined ? undefined : rowsOf(chart).find(([first]) => first === mark);
};

test('level 1 compares partners and says what is compared, and asks for no reading of a scale', () => {
  expect(row(1, 'L1')?.slice(1)).toEqual([
    'less      more pull than at L2',
    'less      more pull than at L2',
    '',
    '',
  ]);
  expect(row(1, 'G1')?.[1]).toBe('less      more force than at G2');
  expect(row(1, 'P1')?.slice(1)).toEqual(['_______ turns', '_______ turns']);
  const words = wordsOf(charts[0] as SheetOfPaper).join('\n');
  expect(words).not.toMatch(/reading|middle/i);
  expect(words).toContain('Looks at the scale: less or more?');
});

test('level 2 asks for three readings with their unit, and for one order where ease is felt', () => {
  expect(row(2, 'S1')).toEqual(['S1', '', '', '', '', '', 'N']);
  expect(row(2, 'P2')?.at(-1)).toBe('mm');
  expect(row(2, 'G1')).toEqual(['G1', '', '']);
  expect(row(3, 'G1')).toEqual(['G1', '', '']);
});

test('level 3 has room for work, none where nothing moves, and no work columns where nothing is pulled', () => {
  expect(row(3, 'L1')?.slice(-5)).toEqual(['', '', '', '', '']);
  expect(row(3, 'C3')?.slice(-5)).toEqual(['–', '–', '–', '–', '–']);
  expect(row(3, 'P1')).toEqual(row(2, 'P1'));
});

test('level 3 has a column for the pull where a scale hangs so that it shows another figure', () => {
  const upsideDown = charts[2] as SheetOfPaper;
  for (const { setups } of job.sheet.tables)
    for (const { mark, scale, prediction } of setups) {
      if (scale === null || isNotDefined(prediction.account)) continue;
      const shift = scale.showsLess.toFixed(2);
      const cells = row(3, mark)?.join('\n') ?? '';
      if (shift === '0.00') expect(cells).not.toContain('middle +');
      else expect(cells).toContain(`middle + ${shift}`);
    }
  expect(wordsOf(upsideDown)).toContain('Pull (N)');
  // Hook down the scale shows the pull itself: no column, and no line about it.
  const hookDown = dataCharts.build(
    paperJob(
      demoPrepared((text, file) =>
        file === 'activity' ? text.replace(/pull: down\n/g, 'pull: down\n        zeroed: in place\n') : text,
      ),
    ),
  );
  expect(row(3, 'C1', hookDown)).toHaveLength(11);
  expect(row(3, 'C1')).toHaveLength(12);
});

test('a scale that is marked in grams says how newtons follow from them', () => {
  const grams = demoPrepared((text, file) =>
    file === 'kit'
      ? text.replace(
          /(slate:\n {4}part: spring scale\n) {4}range: 5 N\n {4}graduation: 0.1 N/,
          '$1    range: 500 gf\n    graduation: 10 gf',
        )
      : text,
  );
  expect(row(3, 'C1', dataCharts.build(paperJob(grams)))?.[6]).toMatch(/^middle × 0\.00981 \+ 0\.\d\d =/);
});

test('a visit that says nothing of groups gets one chart with a line for the label', () => {
  const alone = paperJob(
    demoPrepared((text, file) =>
      file === 'visit' ? text.replace(/^groups:.*\ngroup languages:.*\n/m, '') : text,
    ),
  );
  const [chart] = dataCharts.build(alone);
  expect(chart === undefined ? [] : wordsOf(chart).filter((line) => line.startsWith('Group:'))).toEqual([
    'Group: ________',
  ]);
});
