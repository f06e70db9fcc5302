import { expect, it } from 'vitest';
import { linesLost, withBench } from './bench-texts.ts';
import { isTexts } from './kept-texts.ts';

const file = (name: string, text = '') => ({ name, text });
const kit = (text: string) => file('a.kit.yaml', text);
const others = { activity: file('a'), visit: file('v') };
const books = { 'BB-03': 'ours\n', 'BB-07': 'theirs\n' };

it('a kit that names a bench book brings its own, by its serial, and no other kit loses one', () => {
  const texts = { ...others, books, kit: kit('serial: BB-07 # blue\nbench book: "slip.bench.csv"\n') };
  expect(withBench(texts).bench).toEqual({ name: 'slip.bench.csv', text: 'theirs\n' });
  const red = withBench({ ...texts, kit: kit('serial: BB-03\nbench book: b.csv\n') });
  expect([red.bench, red.books]).toEqual([{ name: 'b.csv', text: 'ours\n' }, books]);
});

it('a kit that names none has none, and one that was never read for has an empty one', () => {
  expect(withBench({ ...others, books, kit: kit('serial: BB-03\n') }).bench).toBeNull();
  expect(withBench({ ...others, kit: kit('serial: X\nbench book: x.csv\n') }).bench).toEqual(file('x.csv'));
});

it('a line is lost where another text has not the same at its place', () => {
  expect(linesLost('', 'a\nb\n')).toBe(0);
  expect(linesLost('\uFEFFa\r\nb\r\n', 'a\nb\nc\n')).toBe(0);
  expect(linesLost('a\nb\nc\n', 'a\nx\nb\nc\n')).toBe(2);
  expect(linesLost('a\nb\n', '')).toBe(2);
});

it('what an older page kept is taken without books, and books that are none are not', () => {
  const kept = { ...others, kit: kit('serial: X\n') };
  expect([isTexts(kept), isTexts({ ...kept, books })]).toEqual([true, true]);
  expect([isTexts({ ...kept, books: { X: 3 } }), isTexts({ ...kept, books: null })]).toEqual([false, false]);
});
