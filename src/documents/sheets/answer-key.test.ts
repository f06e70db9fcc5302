import { expect, test } from 'vitest';
import {
  demoAsFound,
  demoPrepared,
  paperJob,
  rowsOf,
  wordsOf,
} from '../../../test/documents/demo-prepared.ts';
import { goodRangeOf, rangeText, textbookInBoth } from '../text/prediction-text.ts';
import { answerKey } from './answer-key.ts';

const job = paperJob(demoPrepared());
const [key] = answerKey.build(job);
if (key === undefined) throw new Error('no key');
const words = wordsOf(key).join('\n');

test('the head of the key has kit, serial, activity, date, place and gravity', () => {
  for (const fact of [
    'Kit: Brackwater Boathouse, red kit (BB-03)',
    'Activity: Harbour day',
    'Date: 2026-05-12',
    'Place: latitude 54.3°, 10 m up',
    'Gravity: 9.81 m/s²',
  ])
    expect(words).toContain(fact);
  expect(key.foot).toBe('Brackwater Boathouse, red kit (BB-03) · Harbour day · 2026-05-12');
});

test('the key says first that a ringed row of the key that re-keys itself beats it', () => {
  const beats =
    /The row ringed after the arrival check, .* beats every printed range of its table; until a row/;
  expect(words).toMatch(beats);
  expect(words.search(beats)).toBeLessThan(words.indexOf('Table 1:'));
});

test('every setup has its good range, large, in the marks of its scale, and the schoolbook beside it', () => {
  for (const { setups } of job.sheet.tables)
    for (const { mark, prediction } of setups) {
      const row = rowsOf(key).find(([first]) => first?.startsWith(`${mark} `));
      expect(row).toBeDefined();
      const good = goodRangeOf(prediction);
      if (good !== null) expect(row?.[1]).toContain(rangeText('en', prediction, good));
      if ('value' in prediction.textbook)
        expect(row?.[4]).toContain(textbookInBoth('en', prediction.textbook, prediction.graduations).newtons);
    }
});

test('what rests on an assumed value has a star, what is known has none', () => {
  const good = (mark: string) => rowsOf(key).find(([first]) => first?.startsWith(`${mark} `))?.[1];
  expect(good('L1')).toMatch(/^2\.0 to 2\.4 N\* /);
  expect(good('P1')).toMatch(/^3\.75 to 4\.25 turns expected/);
});

test('a strip is drawn at the width that it says, with its good range in words', () => {
  const strips = key.blocks.flatMap((block) => (block.block === 'together' ? block.blocks : []));
  const cells = strips.flatMap((block) => (block.block === 'table' ? block.rows.flat() : []));
  const pictures = cells.filter((cell) => typeof cell !== 'string' && 'svg' in cell);
  expect(pictures.length).toBe(
    job.sheet.tables
      .flatMap((table) => table.setups)
      .filter(({ prediction }) => goodRangeOf(prediction) !== null).length,
  );
  for (const picture of pictures)
    if (typeof picture !== 'string' && 'svg' in picture) {
      expect(picture.svg).toContain(`width="${picture.width}mm"`);
      expect(picture.alt).toMatch(/good: [\d.]+ to [\d.]+/);
      expect(picture.svg).not.toMatch(/currentColor|var\(/);
    }
});

test('without a place gravity is the standard one and said to be assumed', () => {
  const [plain] = answerKey.build(
    paperJob(demoPrepared((text, file) => (file === 'visit' ? text.replace(/^place:.*\n/m, '') : text))),
  );
  expect(plain === undefined ? [] : wordsOf(plain)).toContain('Gravity: 9.81 m/s² (assumed)');
});

test('a table whose part is missing today is named with what can not be prepared', () => {
  const [without] = answerKey.build(
    paperJob(demoAsFound((text, file) => (file === 'visit' ? `${text}missing: [oar, long oar]\n` : text))),
  );
  const lines = without === undefined ? [] : wordsOf(without);
  expect(lines).toContain('Table 1: The oar that lifts · Lever');
  expect(lines).toContain('Not prepared today: L1, L2 and L3.');
});
