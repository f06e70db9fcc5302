import axe from 'axe-core';
import type { BrowserContext, Page } from 'playwright-core';
import { type ClassInHand, PLAIN_HOST } from './class-in-hand.ts';

/** Joins as a pupil would, by code and label; answers the page once its card is there. */
export async function joined(
  context: BrowserContext,
  room: Pick<ClassInHand, 'address' | 'code'>,
  group: string,
  host = PLAIN_HOST,
): Promise<Page> {
  const page = await context.newPage();
  await page.goto(room.address(host));
  await page.fill('#code', room.code.toLowerCase());
  await page.keyboard.press('Enter');
  await page.locator('.labels button', { hasText: group }).click();
  await page.waitForSelector('.card');
  return page;
}

/** Writes a reading with the keys on the screen. */
export async function pressed(page: Page, number: string): Promise<void> {
  for (const key of number) await page.locator('.keys button').getByText(key, { exact: true }).click();
  await page.locator('.pad button.main').click();
}

/** `4.5 N: stored` and so on, the last one first. */
export const listed = (page: Page): Promise<readonly string[]> =>
  page
    .locator('.readings li')
    .evaluateAll((rows) =>
      rows.map(
        (row) =>
          `${row.querySelector('.what > .num, .what > s')?.textContent}: ${row.querySelector('.where')?.textContent}`,
      ),
    );

/** What axe finds against WCAG 2.2 AA, as `rule: place`. It is handed in by the debugger, past the page's own rules. */
export async function axeFaults(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { axe: inside } = globalThis as unknown as { axe: typeof axe };
    const { violations } = await inside.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${target.join(' ')}`));
  });
}

/** How much wider than the window the page is: 0 where nobody has to scroll sideways. */
export const tooWide = (page: Page): Promise<number> =>
  page.evaluate(() => Math.max(0, document.documentElement.scrollWidth - innerWidth));
