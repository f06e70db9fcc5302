import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { classInBrowser } from './class-in-browser.ts';
import { PLAIN_HOST } from './class-in-hand.ts';
import { axeFaults, joined, pressed, tooWide } from './group-page.ts';

const at = classInBrowser();
const demo = (name: string): string => join('examples', 'brackwater', name);

async function visitsPage(options = {}): Promise<Page> {
  const page = await (await at.browser.newContext(options)).newPage();
  await page.goto(at.room.link(PLAIN_HOST));
  await page.goto(`${at.room.address(PLAIN_HOST)}/visits`);
  await page.waitForSelector('.visits li');
  return page;
}

describe('the list of visits in a browser', () => {
  test('a second visit is opened from its files, and each leads to its own class', async () => {
    const page = await visitsPage();
    await page.getByRole('button', { name: 'Open it' }).click();
    await page.getByText('Choose a kit file and an activity file.').waitFor();
    await page.getByLabel('Kit file').setInputFiles(demo('boathouse.kit.yaml'));
    await page.getByLabel('Activity file').setInputFiles(demo('harbour-day.activity.yaml'));
    await page.getByLabel('Visit file, if there is one').setInputFiles({
      name: 'other.visit.yaml',
      mimeType: 'text/yaml',
      buffer: Buffer.from(
        readFileSync(demo('harbour-day.visit.yaml'), 'utf8').replace(/^title: .*$/m, 'title: The other day'),
      ),
    });
    const [book] = readFileSync(join('examples', 'bench-book', 'slipway.bench.csv'), 'utf8').split('\n');
    await page.getByLabel('Bench book, if there is one').setInputFiles({
      name: 'boathouse.bench.csv',
      mimeType: 'text/csv',
      buffer: Buffer.from(`${book}\n`),
    });
    const [sent] = await Promise.all([
      page.waitForRequest((request) => request.method() === 'POST' && request.url().endsWith('/visits')),
      page.getByRole('button', { name: 'Open it' }).click(),
    ]);
    expect(sent.postDataJSON().files.bench).toEqual({ name: 'boathouse.bench.csv', text: `${book}\n` });
    await expect.poll(() => page.locator('.visits li').count(), { timeout: 20_000 }).toBe(2);
    // The first one, though the other was opened last.
    await page
      .locator('.visits li')
      .last()
      .getByRole('link', { name: /^To the class/ })
      .click();
    await page.waitForSelector('.table');
    expect(await page.locator('.code').textContent()).toBe(at.room.code);
  }, 60_000);

  test("a visit's readings come as a file, also once it is over, and its code then lets nobody in", async () => {
    const group = await joined(await at.browser.newContext(), at.room, 'E');
    await group.waitForSelector('.keys');
    await pressed(group, '2');
    await group.getByText('stored', { exact: true }).waitFor();
    const page = await visitsPage();
    await page.getByRole('button', { name: /^End this visit/ }).click();
    await page.getByRole('button', { name: 'Yes, end it' }).click();
    await page.locator('.visits li', { hasText: 'ended' }).waitFor();
    expect(await page.getByRole('link', { name: /^To the class/ }).count()).toBe(0);
    const [file] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('link', { name: 'Readings (CSV)' }).click(),
    ]);
    expect(readFileSync(await file.path(), 'utf8')).toMatch(
      /^group,setup,reading,note,ease,turns\r\nE,\w+,2 N,/,
    );
    await group.getByRole('heading', { name: 'This visit is over' }).waitFor();
  });

  test('at three widths, light and dark, in both languages, axe finds nothing and nobody scrolls sideways', async () => {
    for (const [width, colorScheme, locale] of [
      [360, 'dark', 'es'],
      [820, 'light', 'en'],
      [1440, 'dark', 'en'],
    ] as const) {
      const page = await visitsPage({ viewport: { width, height: 900 }, colorScheme, locale });
      expect([width, await axeFaults(page), await tooWide(page)]).toEqual([width, [], 0]);
    }
  });

  test('without a pass it says how the teacher comes in, and names no visit', async () => {
    const page = await (await at.browser.newContext()).newPage();
    await page.goto(`${at.room.address(PLAIN_HOST)}/visits`);
    await page.getByRole('heading', { name: 'This page is for the teacher' }).waitFor();
    expect(await page.locator('.visits').count()).toBe(0);
  });
});
