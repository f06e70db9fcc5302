import { expect, test } from 'vitest';
import { sixFigures, substitute } from './substitute.ts';

test('names become numbers and words of the grammar stay', () => {
  expect(substitute('sqrt(a^2 + b^2)*cos(pi/6)', { a: 3, b: 4 })).toBe('sqrt(3^2 + 4^2)*cos(pi/6)');
});

test('a negative number stands in brackets, so that the line can still be worked out', () => {
  expect(substitute('W*a - k', { W: 2, a: 0.5, k: -0.25 })).toBe('2*0.5 - (-0.25)');
});

test('a name that begins with another one is left whole', () => {
  expect(substitute('mB*g + m', { m: 1, mB: 0.118, g: 9.80665 })).toBe('0.118*9.80665 + 1');
});

test('a value called like a word of the grammar wins', () => {
  expect(substitute('exp*2', { exp: 5 })).toBe('5*2');
});

test('a name without a value is a loud fault', () => {
  expect(() => substitute('W/A', { W: 1 })).toThrow('"A"');
});

test('six figures are enough to recompute, and no more are printed', () => {
  expect(sixFigures(1.96133000001)).toBe('1.96133');
  expect(sixFigures(0.3)).toBe('0.3');
  expect(sixFigures(123456.7)).toBe('123457');
  expect(sixFigures(-0)).toBe('0');
});
