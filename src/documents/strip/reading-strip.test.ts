import { expect, test } from 'vitest';
import { readingStrip, type Strip } from './reading-strip.ts';
import { stripMarks } from './strip-marks.ts';

const scale: Strip = {
  graduations: { step: 0.1, unit: 'N', unitSi: 1 },
  from: 0,
  to: 5,
  ends: true,
  good: { from: 1.4, to: 1.8 },
  expected: [1.6],
  dots: [{ label: 'A', si: 1.5 }],
};
const options = { language: 'en', name: 'strip L1', length: 100, hideGood: false } as const;

test('every graduation stands where its value is', () => {
  const marks = stripMarks(scale, 100);
  expect(marks).toHaveLength(51);
  for (const { at, si } of marks) expect(at).toBeCloseTo(si * 20, 9);
  expect(
    marks.filter((mark) => mark.rank === 'numbered').map((mark) => Math.round(mark.si * 10) / 10),
  ).toEqual([0, 0.5, 1, 1.5, 2, 2.5, 3, 3.5, 4, 4.5, 5]);
});

test('graduations finer than print can tell are drawn at round multiples', () => {
  const fine = { graduations: { step: 0.01, unit: 'N', unitSi: 1 }, from: 0, to: 10 };
  const marks = stripMarks(fine, 100);
  expect(marks.length).toBeLessThan(200);
  expect(marks[1]?.si).toBeCloseTo(0.1, 9);
});

test('gram graduations count in grams, and quarter turns in turns', () => {
  const grams = { graduations: { step: 0.0980665, unit: 'gf', unitSi: 0.00980665 }, from: 0, to: 4.903325 };
  const numbered = stripMarks(grams, 100).filter((mark) => mark.rank === 'numbered');
  expect(numbered.map((mark) => Math.round(mark.si / 0.00980665))).toEqual([
    0, 50, 100, 150, 200, 250, 300, 350, 400, 450, 500,
  ]);
  const turns = { graduations: { step: 0.25, unit: 'turns', unitSi: 1 }, from: 0, to: 10 };
  expect(stripMarks(turns, 100)).toHaveLength(41);
});

test("a group's own strip tells neither the range nor what is expected", () => {
  const hidden = readingStrip(scale, { ...options, hideGood: true });
  const without = readingStrip({ ...scale, good: null, expected: [] }, options);
  expect(hidden).toBe(without);
  expect(readingStrip(scale, options)).not.toBe(without);
});

test('the strip says in words what it shows', () => {
  const svg = readingStrip(scale, options);
  expect(svg).toContain('The good range from 1.4 to 1.8 N is hatched.');
  expect(svg).toContain('Group A read 1.5 N.');
});

test('no unit is cut off: the picture is wide enough for its letters in the widest of the page fonts', () => {
  // Advance widths in thousandths of DejaVu Sans Bold, from memory: t 478, u 712, r 493, n 712, s 595.
  const turns = { ...scale, graduations: { step: 0.25, unit: 'turns', unitSi: 1 }, ends: false };
  const [left = 0, , width = 0] = (/viewBox="([^"]+)"/.exec(readingStrip(turns, options))?.[1] ?? '')
    .split(' ')
    .map(Number);
  const letters = ((478 + 712 + 493 + 712 + 595) / 1000) * 3.9;
  expect(left + width).toBeGreaterThan(options.length + 2.5 + letters);
});
