import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { pdfOfSheet } from '../../src/cli/typesetter/pdf-of-sheet.ts';
import { sheetsOf, usualWishes } from '../../src/documents/sheets/sheets-of.ts';
import { demoPrepared } from '../documents/demo-prepared.ts';
import { readPdf } from '../paper/poppler.ts';
import { axeFaults } from './group-page.ts';
import { pagesOnHost } from './pages-on-host.ts';
import { STRICT, staticHost } from './static-host.ts';

const { opened, asked, complaints } = pagesOnHost('prepare');
const patience = { timeout: 60_000 };

async function askForSheets(page: Page, name: string): Promise<void> {
  await page.locator('[data-study="sheets"]').click();
  await page.waitForSelector('[data-study-stands="done"]');
  if (name === 'cards') return;
  await page.locator('.follows select').selectOption(name);
  await page.waitForSelector('[data-study-stands="done"]');
}

/** What the browser saves when one of the links is followed. */
async function saved(page: Page, name: string): Promise<Uint8Array> {
  const saving = page.waitForEvent('download');
  await page.locator(`.as-pdf a[download="${name}"]`).click();
  return new Uint8Array(readFileSync(await (await saving).path()));
}

const names = (page: Page): Promise<readonly string[]> => page.locator('.as-pdf a').allTextContents();

describe('sheets as PDF on the page for preparing', () => {
  test('the cards are those of the command, word by word and side by side, and come in one archive', async (context) => {
    const page = await opened();
    await askForSheets(page, 'cards');
    expect(asked.filter((url) => url.endsWith('.wasm'))).toEqual([]);
    await page.locator('.as-pdf button').click();
    await page.waitForSelector(':is([data-pdf="done"], [data-pdf="failed"])', patience);
    expect(await axeFaults(page)).toEqual([]);
    const prepared = demoPrepared();
    const sheets = sheetsOf(prepared, { ...usualWishes(prepared), only: ['cards'] });
    const [archive = '', ...others] = await names(page);
    expect(others).toEqual(sheets.map(({ name }) => `${name}.pdf`));
    const files = unzipSync(await saved(page, archive));
    expect(Object.keys(files)).toEqual(others);
    expect(files[others[1] ?? '']).toEqual(await saved(page, others[1] ?? ''));
    for (const sheet of sheets) {
      const here = readPdf(files[`${sheet.name}.pdf`] ?? new Uint8Array(), context);
      const there = readPdf(pdfOfSheet(sheet), context);
      const told = ({ text, pages, size, title, said }: typeof here) => ({ text, pages, size, title, said });
      expect(told(here)).toEqual(told(there));
      expect([here.isTagged, here.fonts.every(({ isEmbedded }) => isEmbedded)]).toEqual([true, true]);
    }
    expect(complaints).toEqual([]);
  }, 180_000);

  test('one sheet is one file; another question puts it away', async () => {
    const page = await opened({ locale: 'es' });
    await askForSheets(page, 'key');
    await page.locator('.as-pdf button').click();
    await page.waitForSelector(':is([data-pdf="done"], [data-pdf="failed"])', patience);
    expect(await names(page)).toEqual(['answer-key.pdf']);
    await page.locator('.follows select').selectOption('signs');
    await page.waitForSelector('[data-pdf="not asked"]');
    expect(complaints).toEqual([]);
  }, 180_000);

  test('where a host forbids WebAssembly that is said, and what to do instead', async () => {
    const strict = await staticHost('/strict/', STRICT);
    try {
      const page = await opened();
      await page.goto(`${strict.address}prepare.html`);
      await askForSheets(page, 'key');
      await page.locator('.as-pdf button').click();
      await page.waitForSelector('[data-pdf="failed"]', patience);
      expect(await page.locator('.as-pdf [role="status"]').textContent()).toContain(
        'from the browser instead',
      );
    } finally {
      await strict.stop();
    }
  }, 180_000);
});
