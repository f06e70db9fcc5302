import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { buildPagesWhereStale } from './built-pages.ts';
import { openChromium } from './chromium.ts';
import { type ClassAtWork, classAtWork } from './class-at-work.ts';

/** A browser for all tests of a file, and for each a class of its own. */
export interface ClassInBrowser {
  readonly browser: Browser;
  readonly room: ClassAtWork;
}

/** To be called where a test file begins: opens and closes both around its tests. */
export function classInBrowser(): ClassInBrowser {
  let browser: Browser | undefined;
  let room: ClassAtWork | undefined;
  beforeAll(buildPagesWhereStale);
  beforeEach(async (context) => {
    browser ??= await openChromium(context);
    room = await classAtWork();
  }, 60_000);
  afterEach(async () => {
    for (const context of browser?.contexts() ?? []) await context.close();
    await room?.stop();
  });
  afterAll(async () => {
    await browser?.close();
  });
  return {
    get browser() {
      if (browser === undefined) throw new Error('the browser is not open');
      return browser;
    },
    get room() {
      if (room === undefined) throw new Error('there is no class');
      return room;
    },
  };
}
