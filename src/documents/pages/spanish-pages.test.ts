import { expect, test } from 'vitest';
import { boathouse } from '../../../test/documents/boathouse.ts';
import { cautionRows } from '../../core/sources/cautions.ts';
import { explainText } from '../text/explain-text.ts';
import { keyTable } from '../text/key-table.ts';
import { keySheet } from './key-sheet.ts';
import { tablePage } from './table-page.ts';

const sheet = boathouse();
const pages = sheet.tables.map((table) => tablePage('es', sheet, table));
const key = keySheet('es', sheet);

/** What the files say themselves stands on a page as it was written, and so do the names of sources. */
const written = [
  sheet.kit,
  sheet.activity,
  ...sheet.tables.map(({ title }) => title),
  ...cautionRows.map(({ source }) => source),
];

/** All that is seen or read out: no tags, no styles, no numbers that place a line of a drawing. */
function wordsOf(html: string): string {
  const attributes = [...html.matchAll(/(?:aria-label|data-label)="([^"]*)"/g)].map(([, text]) => text ?? '');
  const text = [html.replace(/<style>[\s\S]*?<\/style>/g, ' ').replace(/<[^>]+>/g, ' '), ...attributes].join(
    ' ',
  );
  return written.reduce((rest, each) => rest.replaceAll(each, ' '), text);
}

const ENGLISH = /(?<!\p{L})(the|of|and|is|it|with|from|on|in|at|that|turns|hook|scale|pull|load)(?!\p{L})/giu;

test('a Spanish page says its language and nothing in English', () => {
  for (const html of [...pages, key]) {
    expect(html).toMatch(/^<!doctype html>\n<html lang="es">/);
    expect([...wordsOf(html).matchAll(ENGLISH)].map(([word]) => word)).toEqual([]);
  }
});

test('every number of a Spanish page has a decimal comma, in words and in drawings', () => {
  for (const html of [...pages, key]) {
    expect([...wordsOf(html).matchAll(/\d\.\d\S*/g)].map(([number]) => number)).toEqual([]);
    expect(wordsOf(html)).toMatch(/\d,\d/);
  }
});

test('key and explanation in the terminal are Spanish too', () => {
  const text = keyTable('es', sheet);
  expect(text).toContain('Rango bueno');
  expect(text).not.toMatch(/\d\.\d| turns| and /);
  const [first] = sheet.tables.flatMap((table) => table.setups);
  if (first === undefined) throw new Error('the demo has no setup');
  expect(explainText('es', first)).toContain('peso de la carga');
});

test('the two languages print the same figures', () => {
  const figures = (text: string): readonly string[] =>
    [...text.matchAll(/\d+(?:[.,]\d+)?/g)].map(([number]) => number.replace(',', '.')).sort();
  const spanish = figures(keyTable('es', sheet));
  expect(spanish.length).toBeGreaterThan(50);
  expect(spanish).toEqual(figures(keyTable('en', sheet)));
});
