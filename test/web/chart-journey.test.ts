import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { rehearse } from '../../src/core/rehearse.ts';
import { visitLog } from '../../src/store/visit-log.ts';
import { demoPrepared } from '../documents/demo-prepared.ts';
import { classAtWork } from './class-at-work.ts';
import { classInBrowser } from './class-in-browser.ts';
import { PLAIN_HOST } from './class-in-hand.ts';
import { axeFaults, joined, tooWide } from './group-page.ts';

const soon = { timeout: 15_000, interval: 50 };
const at = classInBrowser();

async function chartPage(width = 1440, colorScheme: 'light' | 'dark' = 'light'): Promise<Page> {
  const context = await at.browser.newContext({ viewport: { width, height: 900 }, colorScheme });
  const page = await context.newPage();
  await page.goto(at.room.link(PLAIN_HOST));
  await page.goto(`${at.room.address(PLAIN_HOST)}/chart`);
  await page.waitForSelector('input[data-setup]');
  return page;
}

const setupInHand = (page: Page): Promise<string | undefined> =>
  page.evaluate(() => (document.activeElement as HTMLInputElement | null)?.dataset?.setup);
const groupInHand = (page: Page): Promise<string | null> =>
  page.locator('.whose [aria-pressed="true"] b').textContent();

/** A class that never was: what each of its groups wrote at each setup. */
const writtenByClass = (groups: number): ReadonlyMap<string, string> =>
  new Map(
    rehearse(demoPrepared(), { groups, mistakes: 6, seed: 11 }).rows.map(({ group, at, written }) => [
      `${group} ${at.setup.mark}`,
      written,
    ]),
  );

/** Readings that hold, as `A L1: 2.2 N`. */
const holding = async (): Promise<readonly string[]> =>
  visitLog(await at.room.stored())
    .readings.filter(({ isVoid }) => !isVoid)
    .map(({ reading: { group, setup, written } }) => `${group} ${setup}: ${written}`)
    .sort();

describe('chart entry, by keyboard alone', () => {
  test('a whole class is typed, row after row, and what is stored is what stood on the paper', {
    timeout: 120_000,
  }, async () => {
    const page = await chartPage();
    const rows = await page.locator('input[data-setup]').evaluateAll((all) =>
      all.map((each) => ({
        setup: (each as HTMLInputElement).dataset.setup ?? '',
        unit: each.parentElement?.querySelector('.unit')?.textContent ?? '',
        isEase: each.getAttribute('aria-label')?.includes('place in the order') ?? false,
      })),
    );
    let keys = 0;
    const wanted: string[] = [];
    const groups = await page.locator('.whose b').allTextContents();
    const demo = writtenByClass(groups.length);
    for (const group of groups) {
      await expect.poll(() => groupInHand(page), soon).toBe(group);
      for (const { setup, unit, isEase } of rows) {
        const text = demo.get(`${group} ${setup}`) ?? '';
        expect(await setupInHand(page)).toBe(setup);
        await page.keyboard.type(text);
        await page.keyboard.press('Enter');
        keys += text.length + 1;
        if (text !== '')
          wanted.push(
            `${group} ${setup}: ${text}${/\d$/.test(text) && !isEase && unit !== '' ? ` ${unit}` : ''}`,
          );
      }
    }
    expect(wanted.length).toBeGreaterThan(60);
    await expect.poll(holding, soon).toEqual([...wanted].sort());
    // Ten minutes at a key a second.
    expect(keys).toBeLessThan(600);
    await expect.poll(() => page.getByText('on this device').count(), soon).toBe(0);
    await page.reload();
    await page.waitForSelector('input[data-setup]');
    const [{ setup: first = '', unit = '' } = {}] = rows;
    const shown = page.locator(`input[data-setup="${first}"]`);
    await expect
      .poll(async () => `${await shown.inputValue()} ${unit}`, soon)
      .toBe(demo.get(`${groups[0]} ${first}`));
  });

  test('arrows, pages, Escape and Ctrl+Z: every way about, and back', async () => {
    const page = await chartPage();
    const [first = '', second = ''] = await page
      .locator('input[data-setup]')
      .evaluateAll((all) => all.map((each) => (each as HTMLInputElement).dataset.setup ?? ''));
    const field = page.locator(`input[data-setup="${first}"]`);
    await page.keyboard.type('2.2');
    await page.keyboard.press('ArrowDown');
    expect(await setupInHand(page)).toBe(second);
    await expect.poll(holding, soon).toEqual([`A ${first}: 2.2 N`]);
    await page.keyboard.press('ArrowUp');
    await page.keyboard.type('9');
    await page.keyboard.press('Escape');
    expect(await field.inputValue()).toBe('2.2');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('ArrowUp');
    await page.keyboard.type('2.4');
    // What stands in the field is written before the page turns.
    await page.keyboard.press('PageDown');
    await expect.poll(() => groupInHand(page), soon).toBe('B');
    await expect.poll(holding, soon).toEqual([`A ${first}: 2.4 N`]);
    await page.keyboard.press('Control+z');
    await expect.poll(holding, soon).toEqual([`A ${first}: 2.2 N`]);
    await expect.poll(() => groupInHand(page), soon).toBe('A');
    await expect.poll(() => setupInHand(page), soon).toBe(first);
    await page.keyboard.press('Control+z');
    await expect.poll(holding, soon).toEqual([]);
    await expect.poll(() => field.inputValue(), soon).toBe('');
    const kinds = (await at.room.stored()).map(({ entry }) => entry.what.kind);
    expect(kinds).toEqual(['reading', 'correction', 'correction', 'void']);
  });

  test('what comes from a tablet while its row is being typed is written over by nobody, and both stand', async () => {
    const page = await chartPage();
    const [first = ''] = await page
      .locator('input[data-setup]')
      .evaluateAll((all) => all.map((each) => (each as HTMLInputElement).dataset.setup ?? ''));
    const tablet = await joined(await at.browser.newContext(), at.room, 'A');
    await page.bringToFront();
    await page.keyboard.type('2.2');
    await tablet.evaluate(
      async ({ setup }) => {
        const pass = await (await fetch('/api/pass?as=group')).json();
        const what = {
          kind: 'reading',
          group: 'A',
          setup,
          written: '5 N',
          ease: null,
          turns: null,
          note: null,
        };
        const entry = {
          id: `${pass.device}.900`,
          visit: pass.visit,
          device: pass.device,
          sequence: 900,
          made: Date.now(),
          seat: pass.seat,
          what,
        };
        await fetch('/api/entries?as=group', {
          method: 'POST',
          headers: { 'content-type': 'application/json' },
          body: JSON.stringify({ sent: Date.now(), entries: [entry] }),
        });
      },
      { setup: first },
    );
    await expect.poll(() => page.locator('.where').count(), soon).toBe(1);
    await page.keyboard.press('Enter');
    await expect.poll(holding, soon).toEqual([`A ${first}: 2.2 N`, `A ${first}: 5 N`]);
    await page.getByText('read 2 times, this is the last').waitFor();
  });

  test('with the server away it goes on: what is typed is on this device, and stored when the server is back', async () => {
    const context = await at.browser.newContext({ viewport: { width: 1440, height: 900 } });
    const page = await context.newPage();
    await page.goto(at.room.link(PLAIN_HOST));
    await page.goto(`${at.room.address(PLAIN_HOST)}/chart`);
    await page.waitForSelector('input[data-setup]');
    const first = await setupInHand(page);
    await context.setOffline(true);
    await page.keyboard.type('2.2');
    await page.keyboard.press('Enter');
    await page.getByText('on this device', { exact: false }).first().waitFor();
    expect(await holding()).toEqual([]);
    expect(await page.locator(`input[data-setup="${first}"]`).inputValue()).toBe('2.2');
    await context.setOffline(false);
    await expect.poll(holding, soon).toEqual([`A ${first}: 2.2 N`]);
  });

  test('in Spanish, and as wide as a window at 200 %, every row can be typed in and nobody scrolls sideways', async () => {
    const room = await classAtWork('es');
    try {
      // A window of 1280 at 200 % is one of 640 with two points a pixel.
      const context = await at.browser.newContext({
        viewport: { width: 640, height: 450 },
        deviceScaleFactor: 2,
        locale: 'es',
      });
      const page = await context.newPage();
      await page.goto(room.link(PLAIN_HOST));
      await page.goto(`${room.address(PLAIN_HOST)}/chart`);
      await page.waitForSelector('input[data-setup]');
      await page.getByRole('heading', { name: 'Hojas de papel' }).waitFor();
      expect([await axeFaults(page), await tooWide(page)]).toEqual([[], 0]);
      for (let n = 0; n < 8; n += 1) {
        const field = page.locator(':focus');
        const box = await field.boundingBox();
        expect(box !== null && box.y >= 0 && box.y + box.height <= 450).toBe(true);
        await page.keyboard.type('2,2');
        await page.keyboard.press('Enter');
      }
      await expect
        .poll(
          async () => (await room.stored()).filter(({ entry }) => entry.what.kind === 'reading').length,
          soon,
        )
        .toBe(8);
    } finally {
      for (const context of at.browser.contexts()) await context.close();
      await room.stop();
    }
  });

  test('at three widths, light and dark, axe finds nothing and nobody scrolls sideways', async () => {
    for (const [width, scheme] of [
      [360, 'dark'],
      [360, 'light'],
      [820, 'light'],
      [820, 'dark'],
      [1440, 'dark'],
      [1440, 'light'],
    ] as const) {
      const page = await chartPage(width, scheme);
      expect([width, await axeFaults(page), await tooWide(page)]).toEqual([width, [], 0]);
    }
  });
});
