import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { rehearse } from '../../src/core/rehearse.ts';
import { review } from '../../src/core/review.ts';
import { talkSheets, toldTalk } from '../../src/documents/discussion/talk-told.ts';
import { demoAsFound } from '../documents/demo-prepared.ts';
import { axeFaults, tooWide } from './group-page.ts';
import { pagesOnHost, settled } from './pages-on-host.ts';

const soon = { timeout: 15_000, interval: 50 };
const READINGS = readFileSync(join('examples', 'brackwater', 'readings.csv'), 'utf8');
const prepared = demoAsFound((text) => text);
const { opened, address, asked, complaints } = pagesOnHost('discuss');

const take = (page: Page, text: string) =>
  page
    .locator('.choose > label.open input')
    .setInputFiles({ name: 'class.csv', mimeType: 'text/csv', buffer: Buffer.from(text) });
const ask = (page: Page) => page.locator('.wall h1').textContent();
const questions = (page: Page) => page.locator('.questions button').count();

async function saved(page: Page, button: string): Promise<string> {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: button }).click(),
  ]);
  const parts: Buffer[] = [];
  for await (const part of await file.createReadStream()) parts.push(part as Buffer);
  return Buffer.concat(parts).toString('utf8');
}

/** The talk about a readings file as the command tells it. */
const toldOf = (text: string, names = false) =>
  toldTalk('en', prepared, review(prepared, { name: 'class.csv', text }), { of: 'class', names });

describe('the talk on a host of files alone', () => {
  test('begins with a class that never was, and what is saved is what the command writes', async () => {
    const page = await opened();
    const { review: found } = rehearse(prepared, { groups: 6, mistakes: 4, seed: 1 });
    const { wall, notes } = talkSheets(
      'en',
      toldTalk('en', prepared, found, { of: 'rehearsal', names: false }),
    );
    expect(await saved(page, 'Save the wall as a page')).toBe(wall);
    expect(await saved(page, 'Save the notes as a page')).toBe(notes);
    expect(asked.filter((each) => !each.startsWith(address()))).toEqual([]);
    expect(complaints).toEqual([]);
  });

  test("a class's file is opened, the network goes, and every number on the wall is the command's", async () => {
    const page = await opened();
    await take(page, READINGS);
    const { talk } = toldOf(READINGS);
    await expect.poll(() => questions(page), soon).toBe(talk.pages.length);
    await settled(page);
    await page.context().setOffline(true);
    await page.getByRole('link', { name: 'Wall in this window' }).click();
    for (const told of talk.pages) {
      await expect.poll(() => ask(page), soon).toBe(told.ask);
      if (told.answer.length > 0) await page.getByRole('button', { name: 'Uncover the answer' }).click();
      const shown = ((await page.locator('.wall').textContent()) ?? '').replace(/\s+/g, ' ');
      for (const part of [...told.shown, ...told.answer]) {
        const texts =
          part.part === 'line' ? [part.text] : part.part === 'table' ? part.rows.flat() : [part.caption];
        for (const text of texts) expect(shown).toContain(text.replace(/\s+/g, ' '));
      }
      await page.keyboard.press('ArrowRight');
    }
    await page.goBack();
    await page.getByRole('checkbox', { name: /^Say which group/ }).check();
    await settled(page);
    await expect
      .poll(() => saved(page, 'Save the wall as a page'), soon)
      .toBe(talkSheets('en', toldOf(READINGS, true)).wall);
  });

  test('wall and notes in two windows follow each other, and a window opened late is where the talk is', async () => {
    const page = await opened();
    await page.keyboard.press('ArrowRight');
    const [wall] = await Promise.all([
      page.context().waitForEvent('page'),
      page.getByRole('link', { name: 'Wall in a window of its own' }).click(),
    ]);
    const second = await page.locator('.questions button[aria-current]').textContent();
    await expect.poll(() => ask(wall), soon).toBe(second?.replace(/^\d+\. /, ''));
    await page.getByRole('button', { name: 'Uncover the answer' }).click();
    await wall.locator('.answer').waitFor();
    await wall.keyboard.press('PageDown');
    await expect.poll(() => wall.locator('.answer').count(), soon).toBe(0);
    const third = await ask(wall);
    await expect
      .poll(() => page.locator('.questions button[aria-current]').textContent(), soon)
      .toBe(`3. ${third}`);
    await page.close();
    await wall.reload();
    await expect.poll(() => ask(wall), soon).toBe(third);
  });

  test('by keyboard alone: a class is made up by its number, and its answer uncovered', async () => {
    const page = await opened();
    const tabTo = async (found: () => Promise<boolean>): Promise<void> => {
      for (let n = 0; n < 60 && !(await found()); n += 1) await page.keyboard.press('Tab');
      expect(await found()).toBe(true);
    };
    const focused = (what: string) => () =>
      page.evaluate(
        (name) =>
          document.activeElement?.matches(`[name="${name}"]`) || document.activeElement?.textContent === name,
        what,
      ) as Promise<boolean>;
    await tabTo(focused('seed'));
    await page.keyboard.press('Control+a');
    await page.keyboard.type('7');
    await page.keyboard.press('Enter');
    const { review: found } = rehearse(prepared, { groups: 6, mistakes: 4, seed: 7 });
    const told = toldTalk('en', prepared, found, { of: 'rehearsal', names: false });
    await expect.poll(() => saved(page, 'Save the wall as a page'), soon).toBe(talkSheets('en', told).wall);
    await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    await tabTo(focused('Wall in this window'));
    await page.keyboard.press('Enter');
    await page.waitForSelector('.wall-acts');
    await page.keyboard.press('End');
    await expect.poll(() => ask(page), soon).toBe(told.talk.pages.at(-1)?.ask);
    await page.keyboard.press('Home');
    await tabTo(focused('Uncover the answer'));
    await page.keyboard.press('Space');
    await page.locator('.answer').waitFor();
  });

  test('prints all questions with their answers, a page each', async () => {
    const page = await opened();
    await page.evaluate(() => {
      const seen = { pages: 0, answers: 0 };
      Object.assign(globalThis, {
        seen,
        print: () => {
          seen.pages = document.querySelectorAll('.on-paper > section').length;
          seen.answers = document.querySelectorAll('.on-paper .answer').length;
        },
      });
    });
    await page.getByRole('button', { name: 'Print all questions' }).click();
    const seen = () =>
      page.evaluate(() => (globalThis as unknown as { seen: { pages: number; answers: number } }).seen);
    const many = await questions(page);
    await expect.poll(async () => (await seen()).pages, soon).toBe(many);
    expect((await seen()).answers).toBeGreaterThan(4);
    await expect.poll(() => page.locator('.on-paper').count(), soon).toBe(0);
  });

  test('a broken kit is told with its place, and the talk comes back with a whole one', async () => {
    const page = await opened();
    const kit = readFileSync(join('examples', 'brackwater', 'boathouse.kit.yaml'), 'utf8');
    const put = (text: string) =>
      page
        .locator('.choose details input[type="file"]')
        .first()
        .setInputFiles({ name: 'boathouse.kit.yaml', mimeType: 'text/yaml', buffer: Buffer.from(text) });
    await put(kit.replace('range: 5 N', 'range: 5 Nn'));
    await expect.poll(() => page.locator('.trouble').textContent(), soon).toContain('boathouse.kit.yaml');
    await put(kit);
    await expect.poll(() => page.locator('.trouble').count(), soon).toBe(0);
    expect(await questions(page)).toBeGreaterThan(5);
  });

  test('notes and wall, at each width, light and dark, have no fault that axe knows and nothing beside the window', async () => {
    for (const [width, height, colorScheme, locale] of [
      [360, 800, 'dark', 'en'],
      [820, 1100, 'light', 'es'],
      [720, 450, 'light', 'en'],
      [1440, 900, 'dark', 'es'],
      [1920, 1080, 'light', 'en'],
    ] as const) {
      const page = await opened({ viewport: { width, height }, colorScheme, locale });
      for (const summary of await page.locator('summary').all()) await summary.click();
      expect([width, 'notes', await axeFaults(page), await tooWide(page)]).toEqual([width, 'notes', [], 0]);
      const many = await questions(page);
      await page.goto(`${address()}discuss.html#wall`);
      for (let n = 0; n < many; n += 1) {
        await page.waitForSelector('.wall-acts');
        const answer = page.locator('.wall-acts .main');
        if ((await answer.count()) > 0) await answer.click();
        expect([width, n, await axeFaults(page), await tooWide(page)]).toEqual([width, n, [], 0]);
        await page.keyboard.press('ArrowRight');
      }
      await page.context().close();
    }
  }, 180_000);
});
