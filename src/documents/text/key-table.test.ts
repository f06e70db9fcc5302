import { expect, test } from 'vitest';
import { boathouse, setupNamed } from '../../../test/documents/boathouse.ts';
import type { Prediction } from '../../core/setups/prediction.ts';
import { keyCsv } from './key-csv.ts';
import { keyTable, whyText } from './key-table.ts';
import { expectedText } from './prediction-text.ts';

const sheet = boathouse();
const text = keyTable('en', sheet);
const predictions = sheet.tables.flatMap((table) => table.setups.map((setup) => setup.prediction));

test('the key fits a terminal of 100 columns', () => {
  for (const line of text.split('\n')) expect([...line].length, line).toBeLessThanOrEqual(100);
});

test('the key prints every setup with its range in whole graduations of its own scale', () => {
  for (const mark of ['L1', 'L2', 'L3', 'L4', 'S1', 'J1'])
    expect(text).toMatch(new RegExp(`^  ${mark} `, 'm'));
  expect(text).toMatch(/L3 {2}\d+0 to \d+0 g/);
  expect(text).toMatch(/L1 {2}\d\.\d to \d\.\d N/);
});

test('newtons and grams stand side by side', () => {
  const row = text.split('\n').find((line) => line.startsWith('  L1 ')) ?? '';
  const [, , , from] = /(\d\.\d) to (\d\.\d) N +(\d+) to (\d+) g/.exec(row.slice(20)) ?? [];
  const newtons = Number(/(\d\.\d) to/.exec(row)?.[1]);
  expect(Math.abs(Number(from) * 0.00980665 - newtons)).toBeLessThan(0.05);
});

test('held still there is a band and not one figure', () => {
  expect(text).toMatch(/L4 .* \d\.\d–\d\.\d N .*held still/);
});

test('a scale upside down with its old zero is the first reason why the schoolbook differs', () => {
  expect(whyText('en', setupNamed(sheet, 'L1'))).toMatch(
    /^The scale hangs upside down with its zero set hook down, .* less than the pull; /,
  );
  expect(whyText('en', setupNamed(sheet, 'L2'))).not.toContain('zero');
});

test('the comma-separated key has one row a setup and as many cells as headings', () => {
  const rows = keyCsv(predictions).trimEnd().split('\r\n');
  expect(rows).toHaveLength(predictions.length + 1);
  const cells = rows.map((row) => row.split(',').length);
  expect(new Set(cells).size).toBe(1);
  expect(rows[0]).toContain('from,to,unit,from N,to N,from gf,to gf');
});

test('a cell with a comma or a quote is quoted, and turns have no newtons', () => {
  const [first] = predictions;
  const jack = setupNamed(sheet, 'J1').prediction;
  expect(first).toBeDefined();
  const csv = keyCsv([{ ...jack, table: 'oak, "old"' }]);
  expect(csv).toContain('"oak, ""old""",J1,screw,turns');
  expect(csv).toMatch(/turns,,,,,/);
});

test('every outcome is a whole sentence under its row, with the figures that show it', () => {
  const setup = setupNamed(sheet, 'L1');
  const keyOf = (outcome: Prediction['outcome']): string => {
    const changed = { ...setup, prediction: { ...setup.prediction, outcome } };
    const table = {
      mark: '1',
      title: 'One',
      titled: { title: 'One', titles: {} },
      machine: 'lever',
      setups: [changed],
    };
    return keyTable('en', { ...sheet, tables: [table] }).replace(/\n\s+/g, ' ');
  };
  expect(keyOf({ kind: 'on its stop', wouldShow: -0.12, stop: 0 })).toContain(
    'On its stop: the pointer would have to show -0.12 N, below its stop at 0.0 N. The value is lost; it is not zero.',
  );
  expect(keyOf({ kind: 'off the scale', wouldShow: 6.81, range: 5, overloads: true })).toContain(
    'Off the scale: the pull would show 6.8 N, and the scale ends at 5.0 N. A pull like that stretches its spring for good.',
  );
  expect(
    keyOf({
      kind: 'moves under the scale',
      needed: 0.243,
      ownWeight: 0.74,
      shows: 0.4,
      u: 0.05,
      good: { from: 0.3, to: 0.5 },
    }),
  ).toContain(
    "Moves under the scale: 0.243 N would do, and the scale's own weight pulls with 0.74 N. The scale then shows about 0.4 N; a group will write 0.3 to 0.5 N.",
  );
  expect(keyOf({ kind: 'scale on the other side', force: 0.16 })).toContain(
    'Scale on the other side: it runs by itself and has to be held back with 0.16 N.',
  );
  expect(keyOf({ kind: 'ease', order: 1, of: 2 })).toContain('Number 1 of 2, the easiest first.');
  const undefinedHere = keyOf({ kind: 'not-defined', because: 'setup.does-not-come-back', facts: {} });
  expect(undefinedHere).toContain('Not defined here, because it does not come back by itself.');
  expect(undefinedHere).toMatch(/ L1 {2}not defined /);
});

test('a band that lies within one mark is one figure', () => {
  const { prediction } = setupNamed(sheet, 'L4');
  const band = { kind: 'band', lower: 2.21, upper: 2.23, u: 0.1, good: { from: 2, to: 2.4 } } as const;
  expect(expectedText('en', { ...prediction, outcome: band })).toBe('2.2');
});
