import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { classInBrowser } from './class-in-browser.ts';
import { PLAIN_HOST } from './class-in-hand.ts';
import { axeFaults, joined, pressed, tooWide } from './group-page.ts';

const soon = { timeout: 15_000, interval: 50 };
const at = classInBrowser();

async function helperPage(table: string, options: BrowserContextOptions = {}): Promise<Page> {
  const page = await (await at.browser.newContext(options)).newPage();
  await page.goto(`${at.room.address(PLAIN_HOST)}/helper#${at.room.helperCode}`);
  await page.locator('.tables button', { hasText: `Table ${table}:` }).click();
  await page.waitForSelector('.setups-of-table');
  return page;
}

describe("a helper's page in a browser, over plain http", () => {
  test('the address lets in to a table: what a group reads there arrives with what to say, and what is read elsewhere does not', async () => {
    const teacher = await (await at.browser.newContext()).newPage();
    await teacher.goto(at.room.link(PLAIN_HOST));
    await teacher.getByRole('button', { name: 'Begin now' }).click();
    await teacher.getByRole('button', { name: 'Signal: all change' }).waitFor();
    const page = await helperPage('1');
    await page.getByText('Here now: F').waitFor();
    await page.getByText(/^Next: /).waitFor();
    const group = await joined(await at.browser.newContext(), at.room, 'F');
    await group.waitForSelector('.keys');
    await pressed(group, '93,7');
    const elsewhere = await joined(await at.browser.newContext(), at.room, 'E');
    await elsewhere.waitForSelector('.keys');
    await pressed(elsewhere, '55.5');
    await page.bringToFront();
    const row = page.locator('.setups-of-table li', { hasText: '93,7' });
    await row.waitFor();
    await expect.poll(() => row.textContent(), soon).toContain('Say:');
    expect(await page.getByText('55.5').count()).toBe(0);
    await row.getByRole('button', { name: /^Strike through: group F/ }).click();
    await row.locator('s').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => row.locator('s').count(), soon).toBe(0);
    const wrote = (await at.room.stored()).filter(({ entry }) => entry.seat.kind === 'helper');
    expect(wrote.map(({ entry }) => entry.what.kind)).toEqual(['void', 'restore']);
  });

  test('before the class it takes the reading on arrival, and has the card with its cautions', async () => {
    const page = await helperPage('1');
    await page.getByText('Nobody is here now').waitFor();
    await page.getByRole('heading', { name: 'Take care' }).waitFor();
    await page.locator('.arrival input').fill('999');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('.arrival li').textContent(), soon).toContain('outside, 999');
  });

  test("a group's code lets nobody in here, and without a code the door asks for one", async () => {
    const page = await (await at.browser.newContext()).newPage();
    await page.goto(`${at.room.address(PLAIN_HOST)}/helper`);
    await page.waitForSelector('#code');
    await page.goto(`${at.room.address(PLAIN_HOST)}/helper#${at.room.code}`);
    await page.waitForSelector('.labels');
    expect(await page.locator('.tables').count()).toBe(0);
    expect(await page.locator('.setups-of-table').count()).toBe(0);
  });

  test('at three widths, light and dark, axe finds nothing and nobody scrolls sideways', async () => {
    for (const [width, colorScheme] of [
      [360, 'light'],
      [360, 'dark'],
      [820, 'dark'],
      [820, 'light'],
      [1440, 'light'],
      [1440, 'dark'],
    ] as const) {
      const page = await helperPage('2', { viewport: { width, height: 900 }, colorScheme });
      expect([width, await axeFaults(page), await tooWide(page)]).toEqual([width, [], 0]);
    }
  });
});
