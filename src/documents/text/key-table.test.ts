import { expect, test } from 'vitest';
import { boathouse, setupNamed } from '../../../test/documents/boathouse.ts';
import { keyCsv } from './key-csv.ts';
import { keyTable, whyText } from './key-table.ts';

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
