import { readFileSync } from 'node:fs';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import { trialOnArrival } from '../../src/core/arrival.ts';
import { isError } from '../../src/core/diagnostics/diagnostic.ts';
import { type PreparationFiles, prepare } from '../../src/core/prepare.ts';
import { arrivedTold, checkTold } from '../../src/documents/text/arrival-check-text.ts';
import { keyJson } from '../../src/documents/text/key-json.ts';
import { expectedText, outcomeShort } from '../../src/documents/text/prediction-text.ts';
import { buildPagesWhereStale } from './built-pages.ts';
import { openChromium } from './chromium.ts';
import { axeFaults, tooWide } from './group-page.ts';
import { staticHost } from './static-host.ts';

const soon = { timeout: 15_000, interval: 50 };
let browser: Browser | undefined;
let host: Awaited<ReturnType<typeof staticHost>>;

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

const file = (name: string) => ({ name, text: readFileSync(`examples/${name}`, 'utf8') });
const named = (name: string) => ({ ...file(name), name: name.slice(name.indexOf('/') + 1) });
const slipway = {
  kit: named('bench-book/slipway.kit.yaml'),
  activity: named('bench-book/slipway.activity.yaml'),
  visit: named('bench-book/slipway.visit.yaml'),
};
const book = named('bench-book/slipway.bench.csv');

const complaints: string[] = [];

async function openPage(context?: BrowserContext, options = {}): Promise<Page> {
  if (browser === undefined) throw new Error('the browser is not open');
  const own = context ?? (await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options }));
  const page = await own.newPage();
  complaints.length = 0;
  page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()));
  await page.goto(`${host.address}prepare.html`);
  await settled(page);
  return page;
}

const settled = (page: Page) => page.waitForSelector('[data-state="settled"]');
const textOf = (page: Page, kind: string) => page.locator(`[data-file="${kind}"] textarea`).inputValue();
const figure = (page: Page, what: string) => page.locator(`[data-figure="${what}"]`).textContent();
const on = (page: Page, what: string) => page.locator(`[data-bench="${what}"]`);

/** Opens the three files of the example with a bench book, each at its place. */
async function openSlipway(page: Page): Promise<void> {
  for (const kind of ['kit', 'activity', 'visit'] as const) await give(page, kind, slipway[kind]);
  await expect.poll(() => textOf(page, 'visit'), soon).toBe(slipway.visit.text);
  // The list is the one of these files: the demo has setups of the same marks at other tables.
  await expect.poll(() => page.locator('.setup-list button').count(), soon).toBe(4);
  await page.locator('.setup-list button', { hasText: 'S1' }).first().click();
  await settled(page);
}

async function give(page: Page, kind: string, { name, text }: { name: string; text: string }): Promise<void> {
  const buffer = Buffer.from(text);
  await page
    .locator(`[data-file="${kind}"] input[type="file"]`)
    .setInputFiles({ name, mimeType: 'text/plain', buffer });
}

/** What `handspike key --json` says of these files, and what the page shows of each setup of it. */
async function expectKeyOf(page: Page, files: PreparationFiles): Promise<void> {
  const prepared = prepare(files);
  const { tables } = JSON.parse(keyJson(prepared));
  const marks = tables.flatMap((table: { setups: { setup: string; marks: object }[] }) => table.setups);
  for (const table of prepared.tables)
    for (const { setup, prediction } of table.setups) {
      await page.locator('.setup-list button', { has: page.getByText(setup.mark, { exact: true }) }).click();
      await expect.poll(() => page.locator('#setup-in-hand').textContent(), soon).toBe(`Setup ${setup.mark}`);
      await settled(page);
      expect([setup.mark, await figure(page, 'good')]).toEqual([setup.mark, outcomeShort('en', prediction)]);
      const found = marks.find((each: { setup: string }) => each.setup === setup.mark);
      const { from, to, unit } = found.marks;
      const shown = (await figure(page, 'good')) ?? '';
      expect([
        setup.mark,
        shown
          .split(/[^\d.]+/)
          .slice(0, 2)
          .map(Number),
      ]).toEqual([setup.mark, [from, to]]);
      expect(await figure(page, 'expected')).toBe(`${expectedText('en', prediction)} ${unit}`);
    }
}

async function openBench(page: Page): Promise<void> {
  const part = page.locator('[data-part="bench"]');
  if (!(await part.evaluate((each) => (each as HTMLDetailsElement).open)))
    await part.locator('summary').first().click();
  await on(page, 'reading').waitFor();
}

async function add(page: Page, what: string, reading: string): Promise<void> {
  await openBench(page);
  await on(page, 'what').selectOption(what);
  await on(page, 'reading').fill(reading);
  await on(page, 'by').fill('bench helper');
  await on(page, 'date').fill('2026-05-02');
  await page.locator('.bench button[type="submit"]').click();
}

const HEADING = 'date,kit,by,activity,what,with,reading,use,replaces,note\n';
const answer = (page: Page) => page.locator('[data-answer="given"]');

describe('readings on the bench, entered at the setup in hand', () => {
  test('the first reading begins a book that the kit then names, and the page has the key of all four files', async () => {
    const page = await openPage();
    await settled(page);
    const kit = await textOf(page, 'kit');
    await openBench(page);
    await add(page, 'amber turned over', '0.3 N');
    await answer(page).waitFor();
    const line = '2026-05-02,BB-03,bench helper,,amber turned over,,0.3 N,,,\n';
    expect(await textOf(page, 'bench')).toBe(`${HEADING}${line}`);
    expect(await textOf(page, 'kit')).toBe(`${kit}bench book: boathouse.bench.csv\n`);
    expect(await answer(page).textContent()).toContain('added to boathouse.bench.csv, line 2');
    expect(await page.locator('[data-line="2"]').textContent()).toContain('amber turned over: 0.3 N');
    expect(complaints).toEqual([]);
  });

  test('with a book of its own the key equals that of the command to the digit, after each line and after a reload', async () => {
    const page = await openPage();
    await openSlipway(page);
    await expectKeyOf(page, { ...slipway, bench: { ...book, text: '' } });
    await give(page, 'bench', book);
    await expect.poll(() => textOf(page, 'bench'), soon).toBe(book.text);
    await expectKeyOf(page, { ...slipway, bench: book });
    await page.locator('.setup-list button', { hasText: 'S1' }).first().click();
    await settled(page);
    await add(page, 'S1 lower', '0.45 N');
    await answer(page).waitFor();
    const text = `${book.text}2026-05-02,BB-07,bench helper,slipway.activity.yaml,S1 lower,slipway; trolley; W200; teal,0.45 N,,,\n`;
    expect(await textOf(page, 'bench')).toBe(text);
    await expectKeyOf(page, { ...slipway, bench: { ...book, text } });
    await page.reload();
    await settled(page);
    expect(await textOf(page, 'bench')).toBe(text);
    await expectKeyOf(page, { ...slipway, bench: { ...book, text } });
    await page.locator('.setup-list button', { hasText: 'S1' }).first().click();
    await openBench(page);
    expect(await on(page, 'by').inputValue()).toBe('bench helper');
    expect(complaints).toEqual([]);
  }, 60_000);

  test('a line is left out and put right by lines that stand for it; undo takes each back', async () => {
    const page = await openPage();
    await openSlipway(page);
    await give(page, 'bench', book);
    await expect.poll(() => textOf(page, 'bench'), soon).toBe(book.text);
    await openBench(page);
    await on(page, 'by').fill('bench helper');
    await on(page, 'date').fill('2026-05-02');
    await page.getByRole('button', { name: 'Leave line 2 out' }).click();
    await answer(page).waitFor();
    const left = `${book.text}2026-05-02,BB-07,bench helper,slipway.activity.yaml,S1,slipway; trolley; W200; teal,0.60 N,no,2,\n`;
    expect(await textOf(page, 'bench')).toBe(left);
    await expect
      .poll(() => page.locator('[data-line="2"]').textContent(), soon)
      .toContain('no: line 11 stands instead');
    await page.getByRole('button', { name: 'Put line 3 right' }).click();
    expect(await on(page, 'reading').inputValue()).toBe('0.40 N');
    await on(page, 'reading').fill('0.45 N');
    await page.locator('.bench button[type="submit"]').click();
    const right = `${left}2026-05-02,BB-07,bench helper,slipway.activity.yaml,S1 lower,slipway; trolley; W200; teal,0.45 N,,3,\n`;
    await expect.poll(() => textOf(page, 'bench'), soon).toBe(right);
    await expectKeyOf(page, { ...slipway, bench: { ...book, text: right } });
    for (const before of [left, book.text]) {
      await page.getByRole('button', { name: 'Undo' }).click();
      await expect.poll(() => textOf(page, 'bench'), soon).toBe(before);
    }
    await expectKeyOf(page, { ...slipway, bench: book });
  }, 60_000);

  test('what is no reading is not added, and what is far off is added and told', async () => {
    const page = await openPage();
    await openSlipway(page);
    await give(page, 'bench', book);
    await expect.poll(() => textOf(page, 'bench'), soon).toBe(book.text);
    await add(page, 'S1', '0.6');
    await answer(page).waitFor();
    expect(await answer(page).textContent()).toContain('"0.6" is not a number with a unit that fits');
    expect(await textOf(page, 'bench')).toBe(book.text);
    await on(page, 'reading').fill('2.1 N');
    await page.locator('.bench button[type="submit"]').click();
    await expect.poll(() => textOf(page, 'bench'), soon).not.toBe(book.text);
    expect(await answer(page).textContent()).toContain('a bench reading far from what the kit file says');
    await page.getByRole('button', { name: 'Use line 11 all the same' }).click();
    await expect.poll(() => textOf(page, 'bench'), soon).toContain('2.1 N,yes,11,');
  }, 60_000);

  test('each kit has a book of its own, and no file takes a kept line away unasked', async () => {
    const page = await openPage();
    await add(page, 'L1', '2.2 N');
    await answer(page).waitFor();
    const ours = await textOf(page, 'bench');
    await openSlipway(page);
    await give(page, 'bench', book);
    await expect.poll(() => textOf(page, 'bench'), soon).toBe(book.text);
    const shorter = { ...book, text: `${book.text.split('\n').slice(0, 4).join('\n')}\n` };
    await give(page, 'bench', shorter);
    await page.getByText('6 would be gone').waitFor();
    expect(await textOf(page, 'bench')).toBe(book.text);
    await page.getByRole('button', { name: 'Go on with the book' }).click();
    expect(await page.getByText('would be gone').count()).toBe(0);
    await give(page, 'bench', shorter);
    await page.getByRole('button', { name: 'Take the file all the same' }).click();
    await expect.poll(() => textOf(page, 'bench'), soon).toBe(shorter.text);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => textOf(page, 'bench'), soon).toBe(book.text);
    await page.getByRole('button', { name: 'Start again from the boathouse' }).click();
    await settled(page);
    await add(page, 'L1', '2.3 N');
    await expect.poll(() => textOf(page, 'bench'), soon).toContain('2.3 N');
    expect((await textOf(page, 'bench')).startsWith(ours)).toBe(true);
  }, 60_000);
});

const atTable = (page: Page, table: string) => page.locator(`[data-arrival="${table}"]`);

describe('the one reading of each table on arrival', () => {
  test('what was read is entered there, tells what follows, and the key follows it once that is wanted', async () => {
    const page = await openPage();
    await openSlipway(page);
    await page.locator('[data-part="arrival"] > summary').click();
    const table = atTable(page, '1');
    await table.waitFor();
    const said = prepare(slipway);
    const [first] = said.tables;
    const check = first === undefined ? null : checkTold('en', first);
    expect(check?.setup).toBe('S1');
    expect(await table.textContent()).toContain(check?.text);
    const input = table.getByLabel(`Read at setup ${check?.setup}`);
    await input.fill('2.45');
    await table.getByRole('button', { name: 'What follows for table 1' }).click();
    await table.getByText('no key is made to follow it').waitFor();
    await input.fill('about there');
    await input.press('Enter');
    await table.getByText('is no reading').waitFor();
    const [at] = first?.setups.filter(({ setup }) => setup.mark === check?.setup) ?? [];
    if (at === undefined) throw new Error('nothing to check');
    const reading = expectedText('en', at.prediction) ?? '';
    await input.fill(reading);
    await input.press('Enter');
    const trial = trialOnArrival(said, check?.setup ?? '', reading);
    if (trial.kind !== 'taken') throw new Error(trial.kind);
    const told = arrivedTold('en', trial.table, trial.at, trial.reading);
    expect([told.isFollowed, told.rows.length]).toEqual([true, 2]);
    await table.getByText(told.verdict).waitFor();
    for (const { setup, text } of told.rows)
      expect(await table.locator(`[data-follows="${setup}"]`).textContent()).toBe(`${setup} ${text}`);
    await table.getByRole('button', { name: `Let the key of table 1 follow ${reading} N` }).click();
    const visit = `${slipway.visit.text}arrival: { ${check?.setup}: ${reading} N }\n`;
    await expect.poll(() => textOf(page, 'visit'), soon).toBe(visit);
    const followed = { ...slipway, visit: { ...slipway.visit, text: visit } };
    expect(prepare(followed).diagnostics.filter(isError)).toEqual([]);
    await expectKeyOf(page, { ...followed, bench: { ...book, text: '' } });
    await table.getByRole('button', { name: `Take ${reading} N out of the visit file` }).click();
    await expect.poll(() => textOf(page, 'visit'), soon).toBe(slipway.visit.text);
    await expectKeyOf(page, { ...slipway, bench: { ...book, text: '' } });
    expect(complaints).toEqual([]);
  }, 60_000);
});

describe('everybody can do it', () => {
  test('by keyboard alone: a line is added, and left out again', async () => {
    const page = await openPage();
    const press = async (key: string, isThere: () => Promise<boolean>): Promise<void> => {
      for (let n = 0; n < 120 && !(await isThere()); n += 1) await page.keyboard.press(key);
      expect(await isThere()).toBe(true);
    };
    const focused = (selector: string) => () =>
      page.evaluate((each) => document.activeElement?.matches(each) === true, selector);
    await page.locator('.setup-list button').first().focus();
    await press('Tab', focused('[data-part="bench"] > summary'));
    await page.keyboard.press('Enter');
    await on(page, 'what').waitFor();
    await press('Tab', focused('[data-bench="what"]'));
    await page.keyboard.type('turn');
    await press('Tab', focused('[data-bench="reading"]'));
    await page.keyboard.type('0.3 N');
    await press('Tab', focused('[data-bench="by"]'));
    await page.keyboard.type('bench helper');
    await page.keyboard.press('Enter');
    await answer(page).waitFor();
    expect(await textOf(page, 'bench')).toMatch(/,bench helper,,amber turned over,,0\.3 N,,,\n$/);
    const leave = page.getByRole('button', { name: 'Leave line 2 out' });
    await leave.waitFor();
    await press('Tab', () => leave.evaluate((each) => each === document.activeElement));
    await page.keyboard.press('Enter');
    await expect.poll(() => textOf(page, 'bench'), soon).toMatch(/0\.3 N,no,2,\n$/);
  }, 60_000);

  test('nothing is added before it is said who read, which is asked for as a label', async () => {
    const page = await openPage();
    await openBench(page);
    await on(page, 'reading').fill('2.2 N');
    await page.locator('.bench button[type="submit"]').click();
    await page.getByText('Write first who reads: a label, no name.').waitFor();
    expect(await textOf(page, 'bench')).toBe('');
  });

  test('at three widths, light and dark, in English and Spanish, axe finds nothing and nobody scrolls sideways', async () => {
    for (const [width, colorScheme, locale] of [
      [360, 'light', 'es'],
      [820, 'dark', 'en'],
      [1440, 'light', 'en'],
      [1440, 'dark', 'es'],
    ] as const) {
      const page = await openPage(undefined, { viewport: { width, height: 900 }, colorScheme, locale });
      await openSlipway(page);
      await give(page, 'bench', book);
      await expect.poll(() => textOf(page, 'bench'), soon).toBe(book.text);
      await add(page, 'S1', '2.1 N');
      await answer(page).waitFor();
      await page.locator('[data-part="arrival"] > summary').click();
      const input = atTable(page, '1').locator('input');
      await input.fill('1.50');
      await input.press('Enter');
      await atTable(page, '1').locator('[data-follows]').first().waitFor();
      await settled(page);
      await page.locator('[data-line="11"]').waitFor();
      for (const summary of await page.locator('.bench details summary, .arrival li summary').all())
        await summary.click();
      expect([width, locale, await axeFaults(page), await tooWide(page)]).toEqual([width, locale, [], 0]);
      if (process.env.PICTURES !== undefined)
        await page.screenshot({
          path: `${process.env.PICTURES}/bench-${width}-${colorScheme}-${locale}.png`,
          fullPage: true,
        });
    }
  }, 120_000);
});
