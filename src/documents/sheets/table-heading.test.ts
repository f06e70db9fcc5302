import { expect, test } from 'vitest';
import { demoPrepared, paperJob, wordsOf } from '../../../test/documents/demo-prepared.ts';
import { sheetIn } from '../pages/sheet-in.ts';
import { sheetKinds } from './list.ts';
import { tableHeading } from './table-heading.ts';

const prepared = demoPrepared();
const plain = paperJob(prepared, { languages: { cards: 'es', key: 'es' } });
const job = { ...plain, sheet: sheetIn('es', plain.sheet) };

test('a heading has the title that the activity gives in the language of the sheet', () => {
  const [first] = prepared.tables;
  if (first === undefined) throw new Error('no table');
  expect([tableHeading('en', first), tableHeading('es', first)]).toEqual([
    'Table 1: The oar that lifts',
    'Mesa 1: El remo que levanta',
  ]);
});

test('no sheet in Spanish calls a table by its English title', () => {
  const english = prepared.tables.map(({ title }) => title);
  expect(english.length).toBeGreaterThan(6);
  for (const sheet of sheetKinds.flatMap(({ build }) => build(job))) {
    if (!sheet.language.startsWith('es')) continue;
    const words = wordsOf(sheet).join('\n');
    expect(
      english.filter((title) => words.includes(title)),
      sheet.name,
    ).toEqual([]);
  }
});
