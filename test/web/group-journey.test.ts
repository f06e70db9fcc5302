import type { Browser, BrowserContext, BrowserContextOptions } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { buildPagesWhereStale } from './built-pages.ts';
import { openChromium } from './chromium.ts';
import { type ClassInHand, classInHand, PLAIN_HOST } from './class-in-hand.ts';
import { axeFaults, joined, listed, pressed, tooWide } from './group-page.ts';

const soon = { timeout: 15_000, interval: 100 };
/** One for all: each test has contexts of its own, which know nothing of each other. */
let browser: Browser | undefined;
let room: ClassInHand;

beforeAll(buildPagesWhereStale);
beforeEach(async (context) => {
  browser ??= await openChromium(context);
  room = await classInHand();
});
afterEach(async () => {
  for (const context of browser?.contexts() ?? []) await context.close();
  await room?.stop();
});
afterAll(async () => {
  await browser?.close();
});
const newContext = (options: BrowserContextOptions = {}): Promise<BrowserContext> => {
  if (browser === undefined) throw new Error('the browser is not open');
  return browser.newContext(options);
};

const readings = (): readonly string[] =>
  room.stored().flatMap(({ entry: { what } }) => (what.kind === 'reading' ? [what.written] : []));

describe("a group's page in a browser, over plain http", () => {
  test('a reading is on this device while there is no network, and stored once when there is', async () => {
    const context = await newContext({ viewport: { width: 360, height: 740 } });
    const page = await joined(context, room, 'B');
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    await pressed(page, '4.5');
    await expect.poll(() => listed(page), soon).toEqual(['4.5 N: stored']);
    await context.setOffline(true);
    await pressed(page, '4.6');
    await expect.poll(() => listed(page), soon).toEqual(['4.6 N: on this device', '4.5 N: stored']);
    await context.setOffline(false);
    await expect.poll(() => listed(page), soon).toEqual(['4.6 N: stored', '4.5 N: stored']);
    await page.reload();
    await expect.poll(() => listed(page), soon).toEqual(['4.6 N: stored', '4.5 N: stored']);
    expect(readings()).toEqual(['4.5 N', '4.6 N']);
  });

  test('what was written while the server was gone outlives the tab, and is sent by the next one', async () => {
    const context = await newContext();
    const page = await joined(context, room, 'A');
    await expect.poll(() => page.locator('.line').textContent(), soon).toContain('connected');
    await room.goAway();
    await pressed(page, '7');
    await expect.poll(() => listed(page), soon).toEqual(['7 N: on this device']);
    await page.close();
    await room.comeBack();
    const next = await context.newPage();
    await next.goto(`${room.address(PLAIN_HOST)}/group`);
    await expect.poll(() => listed(next), soon).toEqual(['7 N: stored']);
    expect(readings()).toEqual(['7 N']);
  });

  test('a second device on the same label is asked before it writes, and the first then looks on', async () => {
    const first = await joined(await newContext(), room, 'C');
    await pressed(first, '1');
    await expect.poll(() => listed(first), soon).toEqual(['1 N: stored']);
    const second = await joined(await newContext(), room, 'C');
    expect(await second.locator('.pad').count()).toBe(0);
    await second.getByRole('button', { name: 'Write on this device instead' }).click();
    await pressed(second, '2');
    await expect.poll(() => listed(second), soon).toEqual(['2 N: stored', '1 N: stored']);
    await expect.poll(() => first.locator('.pad').count(), soon).toBe(0);
    await expect.poll(() => listed(first), soon).toEqual(['2 N: stored', '1 N: stored']);
  });

  test('a reading is struck through, put back, written anew and undone, and nothing of it is lost', async () => {
    const page = await joined(await newContext(), room, 'A');
    await pressed(page, '3');
    await expect.poll(() => listed(page), soon).toEqual(['3 N: stored']);
    await page.getByRole('button', { name: 'Strike through, L1: 3 N' }).click();
    await expect.poll(() => page.locator('.what > s').textContent(), soon).toBe('3 N');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('.what > s').count(), soon).toBe(0);
    await page.getByRole('button', { name: 'Write anew, L1: 3 N' }).click();
    await pressed(page, '3.5');
    await expect.poll(() => listed(page), soon).toEqual(['3.5 N: stored']);
    expect(await page.locator('.what .hint s').textContent()).toBe('3 N ');
    expect(readings()).toEqual(['3 N']);
  });

  test('a reading that looks odd is asked for once more, with one thing to try and no figure', async () => {
    const page = await joined(await newContext(), room, 'A');
    await pressed(page, '99');
    await page.waitForSelector('.readings li.again');
    const told = await page.locator('.tell').textContent();
    expect(told).toContain('Read it once more.');
    expect(told).toContain('height of your eyes');
    expect(told).not.toMatch(/\d/);
  });
});

describe("a group's page on this machine itself", () => {
  test('opens without any server once it has been opened, and still sends what was written then', async () => {
    const context = await newContext();
    const page = await joined(context, room, 'A', '127.0.0.1');
    await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
    await pressed(page, '5');
    await expect.poll(() => listed(page), soon).toEqual(['5 N: stored']);
    await page.waitForTimeout(800);
    await room.goAway();
    await page.reload();
    await page.waitForSelector('.card');
    await pressed(page, '6');
    const gone = ['6 N: on this device', '5 N: stored'];
    await expect.poll(() => listed(page), soon).toEqual(gone);
    await page.reload();
    await expect.poll(() => listed(page), soon).toEqual(gone);
    await room.comeBack();
    await expect.poll(() => listed(page), soon).toEqual(['6 N: stored', '5 N: stored']);
    expect(readings()).toEqual(['5 N', '6 N']);
  });
});

describe("a group's page for everybody", () => {
  test("a helper's code typed at the groups' own door is told what it is, and lets nobody in there", async () => {
    const page = await (await newContext()).newPage();
    await page.goto(`${room.address()}/group`);
    await page.fill('#code', room.helperCode);
    await page.keyboard.press('Enter');
    await page.getByText('This code is for helpers.').waitFor();
    expect(await page.locator('.tables').count()).toBe(0);
  });

  test('can be used by keyboard alone, from the code to a reading', async () => {
    const page = await (await newContext()).newPage();
    await page.goto(room.address());
    await page.waitForSelector('#code');
    const tabTo = async (selector: string): Promise<void> => {
      for (let n = 0; n < 60; n += 1) {
        if (await page.evaluate((css) => document.activeElement?.matches(css) ?? false, selector)) return;
        await page.keyboard.press('Tab');
      }
      throw new Error(`no way by Tab to ${selector}`);
    };
    await tabTo('#code');
    await page.keyboard.type(room.code);
    await page.keyboard.press('Enter');
    await page.waitForSelector('.labels button');
    await tabTo('.labels button');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.pad');
    await tabTo('.setups li:nth-child(2) button');
    await page.keyboard.press('Space');
    await tabTo('.shown input');
    await page.keyboard.type('8.5');
    await tabTo('.choices input');
    await page.keyboard.press('Space');
    await tabTo('.pad button.main');
    await page.keyboard.press('Enter');
    await expect.poll(() => listed(page), soon).toEqual(['8.5 N: stored']);
  });

  test('has no fault that axe knows, light and dark, and is never wider than its window', async () => {
    for (const colorScheme of ['light', 'dark'] as const) {
      const context = await newContext({ colorScheme, reducedMotion: 'reduce' });
      const door = await context.newPage();
      await door.goto(room.address());
      await door.waitForSelector('#code');
      expect(await axeFaults(door)).toEqual([]);
      await door.close();
      const page = await joined(context, room, colorScheme === 'light' ? 'A' : 'B');
      await page.locator('.setups button').nth(2).click();
      await page.locator('.choices.ease input').first().check();
      await page.fill('.shown input', '99');
      await page.locator('.pad button.main').click();
      await page.waitForSelector('.readings li.again');
      for (const width of [320, 360, 640, 820, 1440]) {
        await page.setViewportSize({ width, height: 800 });
        expect([width, await tooWide(page)]).toEqual([width, 0]);
        if (width === 360 || width === 820 || width === 1440) expect(await axeFaults(page)).toEqual([]);
      }
      await context.close();
    }
  });
});
