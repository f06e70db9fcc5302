import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  gramMarks,
  markText,
  newtonMarks,
  otherDecimals,
  readingText,
  stepDecimals,
} from './reading-text.ts';

const tenths = { step: 0.1, unit: 'N', unitSi: 1 };
const tens = { step: 0.0980665, unit: 'gf', unitSi: 0.00980665 };
const quarters = { step: 0.25, unit: 'turns', unitSi: 1 };

test('a graduation prints with the decimals that it needs', () => {
  expect([tenths, tens, quarters].map(stepDecimals)).toEqual([1, 0, 2]);
  expect(markText(tens, 0.0980665 * 23)).toBe('230');
});

test('a reading prints to its graduation', () => {
  expect(readingText(tenths, 1.6432, 0.06)).toBe('1.6');
  expect(readingText(quarters, 8.4, 0.3)).toBe('8.50');
});

test('a reading prints coarser where its uncertainty allows no more', () => {
  expect(readingText({ step: 0.05, unit: 'N', unitSi: 1 }, 1.6432, 0.3)).toBe('1.6');
  expect(readingText(tenths, 38.24, 3)).toBe('38');
});

test('grams beside newtons are as fine as the scale is, and no finer', () => {
  expect(otherDecimals(tenths, gramMarks)).toBe(-1);
  expect(otherDecimals(tens, newtonMarks)).toBe(2);
});

test('a printed reading is never further from its value than one graduation or what is allowed', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 50, noNaN: true }),
      fc.double({ min: 0.01, max: 2, noNaN: true }),
      (value, u) => {
        const printed = Number(readingText(tenths, value, u));
        expect(Math.abs(printed - value)).toBeLessThanOrEqual(Math.max(0.05, u) + 1e-9);
      },
    ),
    { seed: 20260512 },
  );
});
