import { expect, test } from 'vitest';
import type { Texts } from '../engine/prepare-wire.ts';
import { historyFrom, redone, undone, withTexts } from './text-history.ts';

const texts = (kit: string): Texts => ({
  kit: { name: 'k', text: kit },
  activity: { name: 'a', text: '' },
  visit: { name: 'v', text: '' },
});

test('every step is taken back and made again; a new step forgets those taken back', () => {
  const two = withTexts(withTexts(historyFrom(texts('a')), texts('b')), texts('c'));
  const back = undone(two);
  expect(back?.now.kit.text).toBe('b');
  expect(back && redone(back)?.now.kit.text).toBe('c');
  expect(back && redone(withTexts(back, texts('d')))).toBeNull();
  expect(undone(historyFrom(texts('a')))).toBeNull();
});

test('what is typed in one stroke is one step, and what changes nothing is none', () => {
  const typed = withTexts(withTexts(historyFrom(texts('a')), texts('ab')), texts('abc'), true);
  expect(undone(typed)?.now.kit.text).toBe('a');
  expect(withTexts(typed, texts('abc'))).toBe(typed);
});
