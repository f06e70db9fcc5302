import { expect, test } from 'vitest';
import { demoPrepared, paperJob, rowsOf, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { goodRangeOf, rangeText } from '../text/prediction-text.ts';
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

test('level 1 compares partners, level 2 writes units, level 3 leaves no room for work where nothing moves', () => {
  const row = (level: number, mark: string) =>
    rowsOf(charts[level - 1] ?? ({ blocks: [] as never[] } as never)).find(([first]) => first === mark);
  expect(row(1, 'L1')?.slice(1, 3)).toEqual(['L2', 'less      more']);
  expect(row(1, 'P1')?.[2]).toContain('turns');
  expect(row(2, 'S1')?.at(-1)).toBe('N');
  expect(row(2, 'P2')?.at(-1)).toBe('mm');
  expect(row(3, 'L1')?.slice(-5)).toEqual(['', '', '', '', '']);
  expect(row(3, 'C3')?.slice(-5)).toEqual(['–', '–', '–', '–', '–']);
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
