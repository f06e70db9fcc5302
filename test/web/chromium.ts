import { existsSync } from 'node:fs';
import { type Browser, chromium } from 'playwright-core';
import type { TestContext } from 'vitest';
import { notRun } from '../not-run.ts';
import { PLAIN_HOST } from './class-in-hand.ts';

const PLACES = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/snap/bin/chromium',
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** Where a Chromium lies: as the variable CHROMIUM says, or where systems put it. */
export const chromiumPath = (): string | null =>
  [process.env.CHROMIUM ?? '', ...PLACES, chromium.executablePath()].find(
    (path) => path !== '' && existsSync(path),
  ) ?? null;

/** A browser of its own, or the end of the test, which is said, where there is none. */
export async function openChromium(context: TestContext): Promise<Browser> {
  const executablePath = chromiumPath();
  if (executablePath === null)
    return notRun('web', 'no Chromium (apt-get install chromium, or CHROMIUM=its path)', context);
  // Root has no sandbox in Linux; the pages are our own.
  const sandbox = process.getuid?.() === 0 ? ['--no-sandbox'] : [];
  const args = [...sandbox, `--host-resolver-rules=MAP ${PLAIN_HOST} 127.0.0.1`];
  return chromium.launch({ executablePath, args });
}
