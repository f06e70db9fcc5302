import { expect, test } from 'vitest';
import { boathouse } from '../../../test/documents/boathouse.ts';
import { expectedText, goodRangeOf, rangeText, textbookText } from '../text/prediction-text.ts';
import { keySheet } from './key-sheet.ts';
import { tablePage } from './table-page.ts';

const sheet = boathouse();
const pages = sheet.tables.map((table) => tablePage('en', sheet, table));
const key = keySheet('en', sheet);

test('a page is one file: no script, nothing fetched', () => {
  for (const html of [...pages, key]) {
    expect(html).not.toMatch(/<script|<link|<img|\ssrc=|\shref=|url\(|@import/);
    expect(html.replaceAll('http://www.w3.org/2000/svg', '')).not.toMatch(/https?:/);
    expect(html).toMatch(/^<!doctype html>\n<html lang="en">/);
  }
});

test("a pupil's page says nothing of what will be read", () => {
  sheet.tables.forEach((table, n) => {
    const html = pages[n] ?? '';
    for (const { prediction } of table.setups) {
      const good = goodRangeOf(prediction);
      expect(good).not.toBeNull();
      if (good !== null) expect(html).not.toContain(rangeText('en', prediction, good));
      expect(html).not.toContain(`${expectedText('en', prediction)} N`);
      expect(html).not.toContain(textbookText('en', prediction.textbook));
    }
    expect(html).not.toMatch(/hatched|expected|Schoolbook/);
  });
});

test("a pupil's page stays the same when the prediction changes", () => {
  const [table] = sheet.tables;
  expect(table).toBeDefined();
  if (table === undefined) return;
  const other = {
    ...table,
    setups: table.setups.map((setup) => ({
      ...setup,
      prediction: {
        ...setup.prediction,
        outcome: { kind: 'scale on the other side', force: 3.21 } as const,
        pull: null,
      },
    })),
  };
  expect(tablePage('en', sheet, other)).toBe(pages[0]);
});

test('every heading cell says what it heads, and ids on a page are unique', () => {
  for (const html of [...pages, key]) {
    for (const [cell] of html.matchAll(/<th[ >][^>]*/g)) expect(cell).toMatch(/scope="(col|row|rowgroup)"/);
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map((match) => match[1]);
    expect(new Set(ids).size).toBe(ids.length);
  }
});

test('what a file says is text and never markup', () => {
  expect(key).toContain('Harbour &lt;bench&gt; &amp; slip');
  expect(key).not.toContain('<bench>');
});

test('the steps, the way the scale is held and its zero stand on the page', () => {
  expect(pages[0]).toContain('<li>Hang the load from hole 3.</li>');
  expect(pages[0]).toContain('Turn the scale upside down: hook up, ring in your hand.');
  expect(pages[0]).toContain('Set the pointer to 0 with the hook hanging down. Then leave the 0 alone.');
  expect(pages[0]).toContain('Set the pointer to 0 like this, with nothing on the hook.');
});

test('the key has range, expectation, newtons and grams, strip and schoolbook for every setup', () => {
  for (const { setups } of sheet.tables)
    for (const { mark, prediction } of setups) {
      const good = goodRangeOf(prediction);
      expect(key).toContain(`<th scope="row"><b>${mark}</b>`);
      if (good !== null) expect(key).toContain(rangeText('en', prediction, good));
    }
  expect([...key.matchAll(/is hatched\./g)].length).toBe(
    sheet.tables.flatMap((table) => table.setups).length,
  );
});

test('the back of the key has each reason once and leaves the figures to the front', () => {
  const [, back = ''] = key.split('<section class="why">');
  expect(back).toContain('the pin rubs in its hole');
  expect(back).not.toMatch(/Schoolbook: \d/);
  expect(key.split('<section class="why">')[0]).toContain('rests on an assumed value');
});
