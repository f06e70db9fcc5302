import { expect, test } from 'vitest';
import { factText, fillIn, sentence } from './sentence.ts';
import { unknownName } from './unknown-name.ts';

test('a key without a sentence is a loud fault', () => {
  expect(() => sentence('en', 'no.such-key')).toThrow('no.such-key');
});

test('a sentence that lacks a fact is a loud fault', () => {
  expect(() => fillIn('en', 'through hole {hole}', {})).toThrow('hole');
});

test('quantities in a sentence take a unit that fits their size', () => {
  const text = (si: number, dimension: 'length' | 'mass' | 'force' | 'angle', u?: number) =>
    factText('en', u === undefined ? { si, dimension } : { si, dimension, u });
  expect(text(0.0015, 'length')).toBe('1.5 mm');
  expect(text(0.3, 'length')).toBe('30 cm');
  expect(text(2.5, 'length')).toBe('2.5 m');
  expect(text(0.118, 'mass')).toBe('118 g');
  expect(text(1.25, 'mass')).toBe('1.25 kg');
  expect(text(Math.PI / 6, 'angle')).toBe('30°');
  expect(text(1.61803, 'force', 0.04)).toBe('1.62 N');
  expect(text(1.61803, 'force', 0.3)).toBe('1.6 N');
});

test('lists are joined as they are spoken', () => {
  expect(factText('en', [])).toBe('nothing');
  expect(factText('en', ['red'])).toBe('red');
  expect(factText('en', ['red', 'blue', 'teal'])).toBe('red, blue and teal');
});

test('an unknown is named by its field and part, its kind, or its own name', () => {
  expect(unknownName('en', 'oak/pin diameter')).toBe('pin diameter of oak');
  expect(unknownName('en', 'kind:bearing/dry pin')).toBe('dry pin: friction of its kind');
  expect(unknownName('en', 'kind:friction/wood on wood/ratio')).toBe(
    'wood on wood: starting over moving friction',
  );
  expect(unknownName('en', 'reading/hand scatter')).toBe('hand scatter');
});
