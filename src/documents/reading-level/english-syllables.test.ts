import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { englishExceptions } from './english-exceptions.ts';
import { englishSyllables } from './english-syllables.ts';

/** Dictionary counts of the words that stand in English sentences here, with their source. */
const { words } = JSON.parse(
  readFileSync(new URL('../../../test/reference/tables/english_syllables.json', import.meta.url), 'utf8'),
) as { readonly words: Readonly<Record<string, number>> };

test('every word of the dictionary table has as many syllables as the dictionary says', () => {
  expect(Object.keys(words).length).toBeGreaterThan(700);
  const wrong = Object.entries(words).filter(([word, count]) => englishSyllables(word) !== count);
  expect(wrong).toEqual([]);
});

test('every exception is what the dictionary says', () => {
  for (const [word, count] of Object.entries(englishExceptions)) expect(words[word], word).toBe(count);
});

test('an ending is a syllable only where it is spoken', () => {
  const of = (text: string) => text.split(' ').map(englishSyllables);
  expect(of('pulled tied added lifted')).toEqual([1, 1, 2, 2]);
  expect(of('scales wedges axles boxes pulleys')).toEqual([1, 2, 2, 2, 2]);
  expect(of("wheel's wedge's don't isn't")).toEqual([1, 2, 1, 2]);
  expect(of('safely careful movement something')).toEqual([2, 2, 2, 2]);
});

test('capitals, curly apostrophes and hyphens change no count, and no word has none', () => {
  expect(englishSyllables('Lever')).toBe(2);
  expect(englishSyllables('wheel’s')).toBe(1);
  expect(englishSyllables('half-way')).toBe(2);
  expect(englishSyllables('brr')).toBe(1);
});
