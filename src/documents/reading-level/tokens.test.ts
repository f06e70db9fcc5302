import { expect, test } from 'vitest';
import { sentencesOf, tokensOf } from './tokens.ts';

const kinds = (text: string): string =>
  tokensOf(text)
    .map(({ kind }) => kind[0])
    .join('');

test('a sentence ends at its stop before a capital, a figure or the end, and never inside a number', () => {
  expect(sentencesOf('Pull it. Read it! Is it level? Yes.')).toHaveLength(4);
  expect(sentencesOf('It ends at 2.5 N. Never pull past it.')).toEqual([
    'It ends at 2.5 N.',
    'Never pull past it.',
  ]);
  expect(sentencesOf('Read it. 5 N is good.')).toHaveLength(2);
  expect(sentencesOf('Tira. ¿Se mueve? «Sí.» Lee.')).toHaveLength(4);
});

test('a colon or a semicolon cuts no sentence in two, so that a long one stays long', () => {
  expect(sentencesOf('Turn it over: hook up, ring in hand; then read.')).toHaveLength(1);
});

test('a text without a stop is a sentence, and one without a word is none', () => {
  expect(sentencesOf('Hang the load')).toEqual(['Hang the load']);
  expect(sentencesOf(' - . … ')).toEqual([]);
});

test('numbers, units after them and marks with a digit are figures; all else is words', () => {
  expect(kinds('Hang W500 from hole 3.')).toBe('wfwwf');
  expect(kinds('Stop at 2.5 N or 1,5 kg.')).toBe('wwffwff');
  expect(kinds('Tilt it to 12° or 30 %.')).toBe('wwwfwf');
  expect(kinds('Use M10x1.25.')).toBe('wf');
  expect(kinds('A g is no unit without a number.')).toBe('wwwwwwww');
  expect(kinds('Hook hole 3 in the bar.')).toBe('wwfwww');
});

test('a hyphen or an apostrophe makes no second word', () => {
  expect(tokensOf("the wheel's half-way mark")).toHaveLength(4);
  expect(tokensOf('Don’t pull.')).toHaveLength(2);
});
