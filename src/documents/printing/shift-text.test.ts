import { expect, test } from 'vitest';
import { gramMarks, newtonMarks } from './reading-text.ts';
import { shiftDecimals, shiftText } from './shift-text.ts';

const finest = { step: 0.01, unit: 'N', unitSi: 1 };
const coarse = { step: 0.2, unit: 'N', unitSi: 1 };

test('a shift is printed to a fifth of a mark or finer', () => {
  expect([finest, newtonMarks, coarse].map((marks) => 10 ** -shiftDecimals(marks) <= marks.step / 5)).toEqual(
    [true, true, true],
  );
  expect(shiftDecimals(coarse)).toBe(2);
  expect(shiftDecimals(finest)).toBe(3);
});

test('a scale with gram marks has its shift in whole grams, or in newtons beside them', () => {
  const grams = { ...gramMarks, step: gramMarks.unitSi * 10 };
  expect(shiftText('en', 0.216, grams)).toBe('22');
  expect(shiftText('es', 0.216, grams, newtonMarks)).toBe('0,22');
});

test('the sign is left to the sentence', () => {
  expect(shiftText('es', -0.216, coarse)).toBe('0,22');
});
