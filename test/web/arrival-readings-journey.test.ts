import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { trialOnArrival } from '../../src/core/arrival.ts';
import { isError } from '../../src/core/diagnostics/diagnostic.ts';
import { prepare } from '../../src/core/prepare.ts';
import { arrivedTold, checkTold } from '../../src/documents/text/arrival-check-text.ts';
import { expectedText } from '../../src/documents/text/prediction-text.ts';
import {
  add,
  answer,
  book,
  expectKeyOf,
  give,
  on,
  openBench,
  openSlipway,
  slipway,
  soon,
} from './bench-page.ts';
import { axeFaults, tooWide } from './group-page.ts';
import { pagesOnHost, settled, textOf } from './pages-on-host.ts';

const { opened, complaints } = pagesOnHost('prepare');

const atTable = (page: Page, table: string) => page.locator(`[data-arrival="${table}"]`);

describe('the one reading of each table on arrival', () => {
  test('what was read is entered there, tells what follows, and the key follows it once that is wanted', async () => {
    const page = await opened();
    await openSlipway(page);
    await page.locator('[data-part="arrival"] > summary').click();
    const table = atTable(page, '1');
    await table.waitFor();
    const said = prepare(slipway);
    const [first] = said.tables;
    const check = first === undefined ? null : checkTold('en', first);
    expect(check?.setup).toBe('S1');
    expect(await table.textContent()).toContain(check?.text);
    const input = table.getByLabel(`Read at setup ${check?.setup}`);
    await input.fill('2.45');
    await table.getByRole('button', { name: 'What follows for table 1' }).click();
    await table.getByText('no key is made to follow it').waitFor();
    await input.fill('about there');
    await input.press('Enter');
    await table.getByText('is no reading').waitFor();
    const [at] = first?.setups.filter(({ setup }) => setup.mark === check?.setup) ?? [];
    if (at === undefined) throw new Error('nothing to check');
    const reading = expectedText('en', at.prediction) ?? '';
    await input.fill(reading);
    await input.press('Enter');
    const trial = trialOnArrival(said, check?.setup ?? '', reading);
    if (trial.kind !== 'taken') throw new Error(trial.kind);
    const told = arrivedTold('en', trial.table, trial.at, trial.reading);
    expect([told.isFollowed, told.rows.length]).toEqual([true, 2]);
    await table.getByText(told.verdict).waitFor();
    for (const { setup, text } of told.rows)
      expect(await table.locator(`[data-follows="${setup}"]`).textContent()).toBe(`${setup} ${text}`);
    await table.getByRole('button', { name: `Let the key of table 1 follow ${reading} N` }).click();
    const visit = `${slipway.visit.text}arrival:\n  ${check?.setup}: ${reading} N\n`;
    await expect.poll(() => textOf(page, 'visit'), soon).toBe(visit);
    const followed = { ...slipway, visit: { ...slipway.visit, text: visit } };
    expect(prepare(followed).diagnostics.filter(isError)).toEqual([]);
    await expectKeyOf(page, { ...followed, bench: { ...book, text: '' } });
    await table.getByRole('button', { name: `Take ${reading} N out of the visit file` }).click();
    await expect.poll(() => textOf(page, 'visit'), soon).toBe(slipway.visit.text);
    await expectKeyOf(page, { ...slipway, bench: { ...book, text: '' } });
    expect(complaints).toEqual([]);
  }, 60_000);
});

describe('everybody can do it', () => {
  test('by keyboard alone: a line is added, and left out again', async () => {
    const page = await opened();
    const press = async (key: string, isThere: () => Promise<boolean>): Promise<void> => {
      for (let n = 0; n < 120 && !(await isThere()); n += 1) await page.keyboard.press(key);
      expect(await isThere()).toBe(true);
    };
    const focused = (selector: string) => () =>
      page.evaluate((each) => document.activeElement?.matches(each) === true, selector);
    await page.locator('.setup-list button').first().focus();
    await press('Tab', focused('[data-part="bench"] > summary'));
    await page.keyboard.press('Enter');
    await on(page, 'what').waitFor();
    await press('Tab', focused('[data-bench="what"]'));
    await page.keyboard.type('turn');
    await press('Tab', focused('[data-bench="reading"]'));
    await page.keyboard.type('0.3 N');
    await press('Tab', focused('[data-bench="by"]'));
    await page.keyboard.type('bench helper');
    await page.keyboard.press('Enter');
    await answer(page).waitFor();
    expect(await textOf(page, 'bench')).toMatch(/,bench helper,,amber turned over,,0\.3 N,,,\n$/);
    const leave = page.getByRole('button', { name: 'Leave line 2 out' });
    await leave.waitFor();
    await press('Tab', () => leave.evaluate((each) => each === document.activeElement));
    await page.keyboard.press('Enter');
    await expect.poll(() => textOf(page, 'bench'), soon).toMatch(/0\.3 N,no,2,\n$/);
    // The key that was pressed is gone with its line: one goes on at the answer, and from there to the next line.
    await expect.poll(focused('[data-answer="given"]'), soon).toBe(true);
    const right = page.getByRole('button', { name: 'Put line 3 right' });
    await press('Tab', () => right.evaluate((each) => each === document.activeElement));
    await page.keyboard.press('Enter');
    await expect.poll(focused('[data-bench="reading"]'), soon).toBe(true);
  }, 60_000);

  test('nothing is added before it is said who read, which is asked for as a label', async () => {
    const page = await opened();
    await openBench(page);
    await on(page, 'reading').fill('2.2 N');
    await page.locator('.bench button[type="submit"]').click();
    await page.getByText('Write first who reads: a label, no name.').waitFor();
    expect(await textOf(page, 'bench')).toBe('');
  });

  test('at three widths, light and dark, in English and Spanish, axe finds nothing and nobody scrolls sideways', async () => {
    for (const [width, colorScheme, locale] of [
      [360, 'light', 'es'],
      [820, 'dark', 'en'],
      [1440, 'light', 'en'],
      [1440, 'dark', 'es'],
    ] as const) {
      const page = await opened({ viewport: { width, height: 900 }, colorScheme, locale });
      await openSlipway(page);
      await give(page, 'bench', book);
      await expect.poll(() => textOf(page, 'bench'), soon).toBe(book.text);
      await add(page, 'S1', '2.1 N');
      await answer(page).waitFor();
      await page.locator('[data-part="arrival"] > summary').click();
      const input = atTable(page, '1').locator('input');
      await input.fill('1.50');
      await input.press('Enter');
      await atTable(page, '1').locator('[data-follows]').first().waitFor();
      await settled(page);
      await page.locator('[data-line="11"]').waitFor();
      for (const summary of await page.locator('.bench details summary, .arrival li summary').all())
        await summary.click();
      expect([width, locale, await axeFaults(page), await tooWide(page)]).toEqual([width, locale, [], 0]);
      if (process.env.PICTURES !== undefined)
        await page.screenshot({
          path: `${process.env.PICTURES}/bench-${width}-${colorScheme}-${locale}.png`,
          fullPage: true,
        });
    }
  }, 120_000);
});
