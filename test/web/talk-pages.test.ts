import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { rehearse } from '../../src/core/rehearse.ts';
import { talkSheets, toldTalk } from '../../src/documents/discussion/talk-told.ts';
import { demoPrepared } from '../documents/demo-prepared.ts';
import { openChromium } from './chromium.ts';
import { axeFaults, tooWide } from './group-page.ts';

const folder = mkdtempSync(join(tmpdir(), 'handspike-talk-'));
let browser: Browser | undefined;
beforeEach(async (context) => {
  browser ??= await openChromium(context);
}, 60_000);
afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true });
});

const prepared = demoPrepared();
const { review } = rehearse(prepared, { groups: 6, mistakes: 4, seed: 3 });

test.each([
  ['en', 360, 'dark'],
  ['es', 820, 'light'],
  ['en', 1440, 'light'],
] as const)(
  'wall and notes in %s, %i px wide and %s, have no fault that axe knows and nothing beside the window',
  async (language, width, colorScheme) => {
    if (browser === undefined) throw new Error('the browser is not open');
    const sheets = talkSheets(
      language,
      toldTalk(language, prepared, review, { of: 'rehearsal', names: false }),
    );
    const context = await browser.newContext({ viewport: { width, height: 900 }, colorScheme });
    const page = await context.newPage();
    for (const html of Object.values(sheets)) {
      const file = join(folder, 'talk.html');
      writeFileSync(file, html);
      await page.goto(pathToFileURL(file).href);
      for (const answer of await page.locator('.cover label').all()) await answer.click();
      expect(await axeFaults(page)).toEqual([]);
      expect(await tooWide(page)).toBe(0);
    }
    await context.close();
  },
  120_000,
);

test('an answer on the wall is covered until it is wanted, by keyboard too, and always printed', async () => {
  if (browser === undefined) throw new Error('the browser is not open');
  const { wall } = talkSheets('en', toldTalk('en', prepared, review, { of: 'rehearsal', names: false }));
  const file = join(folder, 'covered.html');
  writeFileSync(file, wall);
  const page = await (await browser.newContext()).newPage();
  await page.goto(pathToFileURL(file).href);
  const answers = page.locator('.cover > div');
  const seen = () => answers.evaluateAll((each) => each.filter((one) => one.checkVisibility()).length);
  expect(await answers.count()).toBeGreaterThan(4);
  expect(await seen()).toBe(0);
  await page.keyboard.press('Tab');
  while ((await page.evaluate(() => document.activeElement?.nodeName)) !== 'INPUT')
    await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  expect(await seen()).toBe(1);
  await page.emulateMedia({ media: 'print' });
  expect(await seen()).toBe(await answers.count());
});
