import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach } from 'vitest';
import { buildPagesWhereStale } from './built-pages.ts';
import { openChromium } from './chromium.ts';
import { staticHost } from './static-host.ts';

/** A browser, and a host that has nothing but the built files, under some path. */
export interface PagesOnHost {
  /** Opens the page in a context of its own, and waits until its engine is done. */
  readonly opened: (options?: BrowserContextOptions) => Promise<Page>;
  /** Where the host's files are. */
  readonly address: () => string;
  /** What was asked for since the last page was opened. */
  readonly asked: readonly string[];
  /** What the browser complained of since then: a strict host refuses styles that stand in the markup. */
  readonly complaints: readonly string[];
}

export const settled = (page: Page) => page.waitForSelector('[data-state="settled"]');

/** What stands in one of the files on the page for preparing. */
export const textOf = (page: Page, file: string): Promise<string> =>
  page.locator(`[data-file="${file}"] textarea`).inputValue();

/** To be called where a test file begins: opens both before its tests and closes them after. */
export function pagesOnHost(name: 'prepare' | 'discuss'): PagesOnHost {
  let browser: Browser | undefined;
  let host: Awaited<ReturnType<typeof staticHost>> | undefined;
  beforeAll(async () => {
    await buildPagesWhereStale();
    host = await staticHost('/some/where/');
  }, 120_000);
  beforeEach(async (context) => {
    browser ??= await openChromium(context);
  }, 60_000);
  afterEach(async () => {
    for (const context of browser?.contexts() ?? []) await context.close();
  });
  afterAll(async () => {
    await browser?.close();
    await host?.stop();
  });
  const asked: string[] = [];
  const complaints: string[] = [];
  const address = (): string => {
    if (host === undefined) throw new Error('the host is not open');
    return host.address;
  };
  return {
    address,
    asked,
    complaints,
    opened: async (options = {}) => {
      if (browser === undefined) throw new Error('the browser is not open');
      const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
      const page = await context.newPage();
      asked.length = 0;
      complaints.length = 0;
      page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
      page.on('request', (request) => asked.push(request.url()));
      await page.goto(`${address()}${name}.html`);
      await settled(page);
      return page;
    },
  };
}
