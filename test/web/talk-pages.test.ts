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
      for (const answer of await page.locator('summary').all()) await answer.click();
      expect(await axeFaults(page)).toEqual([]);
      expect(await tooWide(page)).toBe(0);
    }
    await context.close();
  },
  120_000,
);
