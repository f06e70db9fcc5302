import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { advise } from '../../src/core/advise.ts';
import { planPeriod } from '../../src/core/period.ts';
import { rehearse } from '../../src/core/rehearse.ts';
import { sheetKinds } from '../../src/documents/sheets/list.ts';
import { usualRehearsal } from '../../src/documents/sheets/rehearsal-sheet.ts';
import { adviceOutlines } from '../../src/documents/text/advice-text.ts';
import { sayingsOf } from '../../src/documents/text/period-said.ts';
import { wordsOfClasses } from '../../src/documents/text/period-words.ts';
import { prepareEn } from '../../src/web/words/prepare-en.ts';
import { demoAsFound, demoPrepared } from '../documents/demo-prepared.ts';
import { axeFaults, tooWide } from './group-page.ts';
import { pagesOnHost, textOf } from './pages-on-host.ts';

const soon = { timeout: 20_000, interval: 50 };
const { opened, complaints } = pagesOnHost('prepare');

const done = (page: Page) => page.waitForSelector('[data-study-stands="done"]');
async function ask(page: Page, kind: string): Promise<void> {
  await page.locator(`[data-study="${kind}"]`).click();
  await done(page);
}

/** What the command says of the same files, sentence by sentence. */
function periodSaid(prepared: ReturnType<typeof demoPrepared>): readonly string[] {
  const period = planPeriod(prepared);
  if (period === null) throw new Error('no period');
  return wordsOfClasses('en', prepared, period).flatMap((words) =>
    sayingsOf(words, prepared).flatMap(({ lines }) => lines),
  );
}

describe('what follows, asked for by name', () => {
  test('the timetable stands there with its chance, and follows by itself when groups or minutes change', async () => {
    const page = await opened();
    await ask(page, 'timetable');
    const sheets = page.locator('.found-out');
    for (const sentence of periodSaid(demoPrepared())) expect(await sheets.textContent()).toContain(sentence);
    expect(await page.locator('.paper svg').count()).toBeGreaterThanOrEqual(2);
    await page.locator('.fields [data-field="period"]').fill('45 min');
    await page.locator('.fields summary', { hasText: 'missing' }).click();
    await page.locator('.fields [data-field="missing"]').fill('block 1, block 2');
    const changed = demoAsFound((text, kind) =>
      kind === 'visit'
        ? text.replace('period: 60 min', 'period: 45 min').concat('\nmissing: "block 1, block 2"\n')
        : text,
    );
    await expect
      .poll(async () => {
        const said = await sheets.textContent();
        return periodSaid(changed).filter((sentence) => said?.includes(sentence) !== true);
      }, soon)
      .toEqual([]);
    expect(complaints).toEqual([]);
  });

  test('advice says what the command says, and what it offers is set up with one key, and undone', async () => {
    const page = await opened();
    await ask(page, 'advice');
    const prepared = demoPrepared();
    const [outline] = adviceOutlines('en', prepared, advise(prepared, { tables: ['1'] }));
    const said = await page.locator('.found-out').textContent();
    expect((outline?.lines ?? []).filter(({ text }) => said?.includes(text) !== true)).toEqual([]);
    const before = await textOf(page, 'activity');
    const use = page.locator('.found-out button');
    await use.last().click();
    await expect.poll(() => textOf(page, 'activity'), soon).not.toBe(before);
    const after = await textOf(page, 'activity');
    expect(
      after
        .split('\n')
        .filter((line, n) => line !== before.split('\n')[n])
        .join('\n'),
    ).toContain('hole 4');
    // It was made from the files as they were: it can't be put over those that stand there now.
    await page.getByText('The files have changed since', { exact: false }).waitFor();
    expect(await use.last().isDisabled()).toBe(true);
    await page.keyboard.press('Control+z');
    await expect.poll(() => textOf(page, 'activity'), soon).toBe(before);
  });

  test('all tables are told one by one, and the work can be stopped', async () => {
    const page = await opened();
    await ask(page, 'advice');
    await page.locator('.follows select').selectOption('');
    await page.getByRole('button', { name: 'Stop' }).click();
    await page.waitForSelector('[data-study-stands="stopped"]');
    await page.getByRole('button', { name: 'Advice', exact: true }).click();
    await done(page);
    await page.locator('.follows select').selectOption('');
    await page.locator('.found-out h3').nth(6).waitFor(soon);
    await done(page);
    expect(await page.locator('.found-out h3').count()).toBe(demoPrepared().tables.length);
  });

  test('a rehearsal covers its answers until they are wanted, and another class is another one', async () => {
    const page = await opened();
    await ask(page, 'rehearsal');
    const prepared = demoPrepared();
    const { rows } = rehearse(prepared, usualRehearsal(prepared));
    const cells = await page.locator('.paper tbody td.center').allTextContents();
    const written = rows.map(({ written: each }) => each).filter((each) => each !== '');
    expect(written.filter((each) => !cells.some((cell) => cell !== '' && each.startsWith(cell)))).toEqual([]);
    expect(
      await page
        .getByText('To the group', { exact: false })
        .isVisible()
        .catch(() => false),
    ).toBe(false);
    await page.locator('.paper summary').click();
    await page
      .getByText(/^The program: /)
      .first()
      .waitFor();
    await page.getByRole('button', { name: 'Another class' }).click();
    await done(page);
    expect(await page.locator('.paper details').getAttribute('open')).toBeNull();
    expect(await page.locator('.paper tbody td.center').allTextContents()).not.toEqual(cells);
  });

  test('every kind of sheet that is printed can be asked for by its name', () => {
    const named = Object.keys(prepareEn).flatMap((key) => /^prepare\.sheet\.(.+)$/.exec(key)?.[1] ?? []);
    expect([...named].sort()).toEqual(sheetKinds.map(({ name }) => name).sort());
  });

  test('a sheet stands there as it is printed, and only the sheets go to the printer', async () => {
    const page = await opened();
    await ask(page, 'sheets');
    await page.locator('.follows select').selectOption('key');
    await page.locator('[data-sheet="answer-key"]').waitFor(soon);
    await done(page);
    await page.evaluate(() => {
      document.body.dataset.prints = 'sheets';
    });
    await page.emulateMedia({ media: 'print' });
    expect(await page.locator('[data-sheet="answer-key"]').isVisible()).toBe(true);
    for (const other of ['.prepare-head', '.setup-list', '.fields', '.files', '.follows h2'])
      expect([other, await page.locator(other).first().isVisible()]).toEqual([other, false]);
    expect(complaints).toEqual([]);
  });

  test('a setup is kept beside another one, and beside itself of another kit', async () => {
    const page = await opened();
    const good = await page.locator('[data-figure="good"]').textContent();
    await page.locator('[data-act="keep-beside"]').click();
    await page.locator('.setup-list button').nth(1).click();
    await expect.poll(() => page.locator('#setup-in-hand').textContent(), soon).toBe('Setup L2');
    expect(await page.locator('[data-figure="good-beside"]').textContent()).toBe(good);
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Take it away' }).click();
    expect(await page.locator('.beside').count()).toBe(0);
  });

  test('at three widths, light and dark and in Spanish, axe finds nothing and nobody scrolls sideways', async () => {
    for (const [width, colorScheme, locale] of [
      [360, 'dark', 'en'],
      [820, 'light', 'es'],
      [1440, 'dark', 'es'],
    ] as const) {
      const page = await opened({ viewport: { width, height: 900 }, colorScheme, locale });
      for (const kind of ['timetable', 'advice', 'next', 'rehearsal', 'sheets']) {
        await ask(page, kind);
        expect([width, kind, await axeFaults(page), await tooWide(page)]).toEqual([width, kind, [], 0]);
      }
      expect(complaints).toEqual([]);
      await page.context().close();
    }
  }, 120_000);
});
