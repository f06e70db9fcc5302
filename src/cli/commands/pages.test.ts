import { expect, test } from 'vitest';
import { fileWords } from './pages.ts';

test('each table has a page of its own, also where marks differ by a capital or a sign only', () => {
  expect(fileWords(['1', 'A b', 'a-b', 'a.B!'])).toEqual(['1', 'a-b', 'a-b-2', 'a-b-3']);
  expect(fileWords(['a-b', 'a-b-2', 'A B'])).toEqual(['a-b', 'a-b-2', 'a-b-3']);
});

test('a mark keeps its letters whatever their script, and one without any is called table', () => {
  expect(fileWords(['Újpest 2', 'гора', '…'])).toEqual(['újpest-2', 'гора', 'table']);
});
