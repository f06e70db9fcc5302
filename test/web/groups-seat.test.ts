import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type { GroupParts, TeacherParts } from '../../src/store/wire.ts';
import { tablesOf } from '../../src/web/teacher/call.ts';
import type { Change } from '../server/demo-desk.ts';
import { readEvents, type StreamEvent } from '../server/event-reader.ts';
import { buildPagesWhereStale } from './built-pages.ts';
import { openChromium } from './chromium.ts';
import { type ClassAtWork, classAtWork } from './class-at-work.ts';
import { PLAIN_HOST } from './class-in-hand.ts';
import { joined, pressed } from './group-page.ts';

let browser: Browser | undefined;
beforeAll(buildPagesWhereStale);
beforeEach(async (context) => {
  browser ??= await openChromium(context);
}, 60_000);
afterEach(async () => {
  for (const context of browser?.contexts() ?? []) await context.close();
});
afterAll(async () => {
  await browser?.close();
});

/** All that group E's device could get hold of, and what its teacher saw meanwhile. */
interface Seat {
  readonly texts: Readonly<Record<string, string>>;
  readonly ranges: readonly string[];
}

/** A class in which E reads alike in every world, and C does not. */
async function seatIn(changed: Change, ofC: string): Promise<Seat> {
  if (browser === undefined) throw new Error('the browser is not open');
  const room = await classAtWork('en', changed);
  try {
    const page = await joined(await browser.newContext(), room, 'E');
    const cookie = await cookieOf(page);
    const stream = await readEvents(`${room.address()}/api/stream?as=group`, { cookie, connection: 'close' });
    const c = await joined(await browser.newContext(), room, 'C');
    await pressed(c, ofC);
    for (const number of ['9.9', '0.1']) await pressed(page, number);
    await page.locator('.readings li').nth(1).getByText('stored', { exact: true }).waitFor();
    await page
      .getByText(/once more/i)
      .first()
      .waitFor();
    // The last that the stream has to tell: both readings, and that the second is to be read once more.
    await expect
      .poll(() => lastOf(stream.events).readings?.map(({ again }) => again !== null), { timeout: 15_000 })
      .toEqual([false, true]);
    // What was shown last is kept half a second later.
    await expect
      .poll(() => storageOf(page), { timeout: 15_000 })
      .toMatch(/"9\.9 N"[^{}]*"again":null\},\{[^{}]*"0\.1 N"[^{}]*"again":\{"say"/);
    const texts = {
      stream: sorted(lastOf(stream.events)),
      ...(await everyRoute(room, cookie)),
      storage: await storageOf(page),
      page: await page.locator('body').innerHTML(),
    };
    stream.close();
    return { texts, ranges: await rangesOf(room) };
  } finally {
    for (const context of browser.contexts()) await context.close();
    await room.stop();
  }
}

const cookieOf = async (page: Page): Promise<string> =>
  (await page.context().cookies()).map(({ name, value }) => `${name}=${value}`).join('; ');

/** The last of each part: in how many events they came is a matter of time. */
const lastOf = (events: readonly StreamEvent[]): Partial<GroupParts> =>
  Object.assign({}, ...events.filter(({ event }) => event === 'parts').map(({ data }) => data));

const sorted = (parts: object): string =>
  JSON.stringify(Object.entries(parts).sort(([one], [other]) => (one < other ? -1 : 1)));

/** Whatever may be asked without sending anything, with the group's pass. */
async function everyRoute(room: ClassAtWork, cookie: string): Promise<Record<string, string>> {
  const { paths } = (await (
    await fetch(`${room.address()}/openapi.json`, { headers: { connection: 'close' } })
  ).json()) as {
    readonly paths: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
  };
  const answers: Record<string, string> = {};
  for (const [path, methods] of Object.entries(paths)) {
    if (!('get' in methods) || path.includes('stream')) continue;
    const address = path.replace(/\{\w+\}/g, 'any').replace('*', 'any');
    const answer = await fetch(`${room.address()}${address}${path.startsWith('/api') ? '?as=group' : ''}`, {
      headers: { cookie, connection: 'close' },
      redirect: 'manual',
    });
    // Figures of the server itself: bytes, times, counts.
    if (!/metrics|health/.test(path)) answers[path] = `${answer.status} ${await answer.text()}`;
  }
  return answers;
}

const storageOf = (page: Page): Promise<string> =>
  page.evaluate(async () => {
    const found: unknown[] = [{ ...localStorage }, { ...sessionStorage }];
    for (const { name = '' } of await indexedDB.databases()) {
      const opened = await new Promise<IDBDatabase>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onsuccess = () => resolve(request.result);
        request.onerror = () => reject(request.error);
      });
      for (const store of opened.objectStoreNames) {
        const all = opened.transaction(store).objectStore(store).getAll();
        found.push(await new Promise((resolve) => (all.onsuccess = () => resolve(all.result))));
      }
      opened.close();
    }
    return JSON.stringify(found);
  });

/** What only grown-ups see, to know that the worlds differ. */
async function rangesOf(room: ClassAtWork): Promise<readonly string[]> {
  if (browser === undefined) throw new Error('the browser is not open');
  const teacher = await browser.newContext();
  const own = await teacher.newPage();
  await own.goto(room.link(PLAIN_HOST));
  const parts = await own.evaluate(
    async (): Promise<TeacherParts> => (await fetch('/api/parts?as=teacher')).json(),
  );
  return tablesOf(parts).flatMap(({ setups }) => setups.map(({ mark, range }) => `${mark} ${range}`));
}

/** Where two texts part, with what stands around it. */
function firstDifference(one: string, other: string): string | null {
  if (one === other) return null;
  let at = 0;
  while (one[at] === other[at]) at += 1;
  const around = (text: string): string => text.slice(Math.max(0, at - 80), at + 80);
  return `${around(one)}\n  or ${around(other)}`;
}

/** Names made by chance and times of day are another each time. */
const plain = (text: string): string =>
  text
    .replace(/\d{8,}(\.\d+)?/g, 'TIME')
    .replace(/\d{1,2}:\d{2}(:\d{2})?/g, 'CLOCK')
    .replace(/"(visit|device|id|of|tag)":"[^"]*"/g, '"$1":"NAME"')
    .replace(/[\w-]{16,}/g, 'NAME')
    .replace(/127\.0\.0\.1:\d+|bench-laptop\.test:\d+/g, 'ADDRESS');

const equator: Change = (text, file) =>
  file === 'visit' ? text.replace(/^place: .*$/m, 'place: { latitude: 0 deg, height: 4000 m }') : text;
/** Heavier by a graduation here and there, and smoother: no card says either. */
const pole: Change = (text, file) =>
  file === 'visit'
    ? text.replace(/^place: .*$/m, 'place: { latitude: 90 deg, height: 0 m }')
    : text
        .replaceAll('face friction: 0.22..0.32, wood on wood', 'face friction: 0.12..0.16, wood on wood')
        .replaceAll('tube friction: 0.02 N..0.04 N', 'tube friction: 0.06 N..0.10 N');

describe("all that a group's seat can get: pages, every route, stream, storage", () => {
  test('is the same to the letter where everything is expected to read otherwise, and another group read otherwise', async () => {
    const one = await seatIn(equator, '3.3');
    const other = await seatIn(pole, '7.7');
    const differing = one.ranges.filter((range, n) => range !== other.ranges[n]);
    expect(one.ranges.length).toBe(other.ranges.length);
    expect(differing.length).toBeGreaterThan(4);
    expect(Object.keys(one.texts).length).toBeGreaterThan(8);
    const found = Object.entries(one.texts).flatMap(([where, text]) => {
      const difference = firstDifference(plain(text), plain(other.texts[where] ?? ''));
      return difference === null ? [] : [`${where}: ${difference}`];
    });
    expect(found).toEqual([]);
  }, 120_000);

  test('no file that the pages load says what anything should read', () => {
    const files = readdirSync(join('dist', 'web'), { recursive: true, encoding: 'utf8' }).filter((name) =>
      /\.(js|css|html|json|svg)$/.test(name),
    );
    expect(files.length).toBeGreaterThan(5);
    const group = readFileSync(join('dist', 'web', 'group.html'), 'utf8');
    const own = files.filter((name) => group.includes(name));
    expect(own.length).toBeGreaterThan(1);
    for (const name of own)
      expect(readFileSync(join('dist', 'web', name), 'utf8')).not.toMatch(
        /\d[.,]\d+\s?(N|gf?|oz|lb)\b["'`< ]/,
      );
  });
});
