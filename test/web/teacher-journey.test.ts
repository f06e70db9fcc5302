import type { BrowserContextOptions, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { classInBrowser } from './class-in-browser.ts';
import { PLAIN_HOST } from './class-in-hand.ts';
import { axeFaults, joined, listed, pressed, tooWide } from './group-page.ts';

const soon = { timeout: 15_000, interval: 50 };
const at = classInBrowser();

async function teacherPage(options: BrowserContextOptions = {}): Promise<Page> {
  const page = await (await at.browser.newContext(options)).newPage();
  await page.goto(at.room.link(PLAIN_HOST));
  await page.waitForSelector('.table');
  return page;
}

async function groupPage(label: string): Promise<Page> {
  return joined(await at.browser.newContext(), at.room, label);
}

const kinds = async (): Promise<readonly string[]> =>
  (await at.room.stored()).map(({ entry: { what } }) => what.kind);

describe("the teacher's page in a browser, over plain http", () => {
  test('a reading shows within a second, is struck through, put back and written anew, and a signal is given', async () => {
    const page = await teacherPage();
    expect(await page.evaluate(() => isSecureContext)).toBe(false);
    await page.getByRole('button', { name: 'Begin now' }).click();
    await page.getByRole('button', { name: 'Signal: all change' }).waitFor();
    const group = await groupPage('F');
    await group.waitForSelector('.keys');
    const setup = String(await group.locator('.setups button[aria-pressed="true"] strong').textContent());
    // A desk that has just begun plans first: what is timed here is a reading.
    await group.waitForTimeout(500);
    await pressed(group, '937');
    const written = performance.now();
    const row = page.locator(`#setup-${setup} li`, { hasText: '937' });
    await row.waitFor({ timeout: 10_000 });
    const took = performance.now() - written;

    expect(took).toBeLessThan(1000);
    await page.locator('.go li', { hasText: '937' }).waitFor();

    await row.getByRole('button', { name: /^Strike through: group F/ }).click();
    await row.locator('s').waitFor();
    await expect.poll(() => page.locator('.go li', { hasText: '937' }).count(), soon).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => row.locator('s').count(), soon).toBe(0);

    await row.getByText('stored', { exact: false }).waitFor();
    await row.getByRole('button', { name: /^Correct: group F/ }).click();
    await page.keyboard.type('9.37 N');
    await page.keyboard.press('Enter');
    await expect.poll(() => row.locator('b.num').textContent(), soon).toBe('9.37 N');
    expect(await row.locator('s').textContent()).toContain('937');

    await page.getByRole('button', { name: 'Signal: all change' }).click();
    await page.getByRole('button', { name: 'Yes, all change now' }).click();
    await expect.poll(() => page.locator('.time').textContent(), soon).toContain('Round 2 of');
    await page.getByRole('button', { name: 'Pause' }).click();
    await page.locator('.still').waitFor();
    await page.getByRole('button', { name: 'Go on' }).click();
    await expect.poll(() => page.locator('.still').count(), soon).toBe(0);
    const wrote = ['void', 'restore', 'correction', 'signal', 'paused', 'resumed'];
    expect((await kinds()).filter((kind) => wrote.includes(kind))).toEqual(wrote);
  });

  test('a table is closed and opened, a group comes late, and an arrival reading is judged', async () => {
    const page = await teacherPage();
    const first = page.locator('.table').first();
    await first.getByRole('button', { name: 'Close this table' }).click();
    await first.locator('.closed').waitFor();
    await first.getByRole('button', { name: 'Open it again' }).click();
    await expect.poll(() => first.locator('.closed').count(), soon).toBe(0);
    await page.getByRole('button', { name: 'Group A comes late' }).click();
    await page.getByRole('button', { name: 'Plan anew' }).click();
    await page.locator('.arrival input').first().fill('999');
    await page.keyboard.press('Enter');
    await expect
      .poll(() => page.locator('.arrival li').first().textContent(), soon)
      .toContain('outside, 999');
    await page.getByLabel('nothing').check();
    await expect.poll(kinds, soon).toEqual(['closed', 'opened', 'late', 'arrival', 'telling']);
  });

  test('a group is handed to another device: the old one is told, what it had not sent still comes, and once', async () => {
    const page = await teacherPage();
    const oldPlace = await at.browser.newContext();
    const old = await joined(oldPlace, at.room, 'E');
    await old.waitForSelector('.keys');
    await pressed(old, '1');
    await expect.poll(() => listed(old), soon).toEqual(['1 N: stored']);
    await oldPlace.setOffline(true);
    await pressed(old, '2');
    await page.getByRole('button', { name: 'Another device for group E' }).click();
    await page.getByRole('button', { name: 'Free the group' }).click();
    await page.getByText(`waits for another device: code ${at.room.code}`).waitFor();
    const next = await groupPage('E');
    await next.waitForSelector('.keys');
    await pressed(next, '3');
    await expect.poll(() => listed(next), soon).toEqual(['3 N: stored', '1 N: stored']);
    await oldPlace.setOffline(false);
    await expect.poll(() => listed(old), soon).toEqual(['3 N: stored', '2 N: stored', '1 N: stored']);
    await old.getByText('Another device writes for this group').waitFor();
    expect(await old.locator('.pad').count()).toBe(0);
    await expect.poll(() => listed(next), soon).toEqual(['3 N: stored', '2 N: stored', '1 N: stored']);
    expect((await kinds()).filter((kind) => kind === 'reading').length).toBe(3);
  });

  test('a freed group that no device has taken is told so, and goes back when that is undone', async () => {
    const page = await teacherPage();
    const group = await groupPage('E');
    await group.waitForSelector('.keys');
    await page.getByRole('button', { name: 'Another device for group E' }).click();
    await page.getByRole('button', { name: 'Free the group' }).click();
    await group.getByText('The teacher gives your group another device').waitFor();
    expect(await group.locator('.pad').count()).toBe(0);
    await page.getByRole('button', { name: 'Undo' }).click();
    await group.waitForSelector('.keys');
    await pressed(group, '1');
    await expect.poll(() => listed(group), soon).toEqual(['1 N: stored']);
  });

  test('what a tablet without network shows is pasted and typed, and counts once when the tablet comes back', async () => {
    const page = await teacherPage();
    const place = await at.browser.newContext({ viewport: { width: 360, height: 740 } });
    const tablet = await joined(place, at.room, 'E');
    await tablet.waitForSelector('.keys');
    await pressed(tablet, '1');
    await expect.poll(() => listed(tablet), soon).toEqual(['1 N: stored']);
    await expect.poll(() => page.locator('.groups').textContent(), soon).toContain('device heard');
    await place.setOffline(true);
    await pressed(tablet, '2');
    await pressed(tablet, '3');
    const offered = tablet.getByText('Not stored yet: 2. Bring them to the teacher');
    await offered.waitFor({ timeout: 40_000 });
    await offered.click();
    await tablet.getByRole('img', { name: 'The readings as a picture for a camera' }).waitFor();
    expect([await axeFaults(tablet), await tooWide(tablet)]).toEqual([[], 0]);
    const lines = await tablet.locator('.carry code').allTextContents();
    expect(lines.map((line) => line.split('; ')[3])).toEqual(['2 N', '3 N']);
    const field = page.getByLabel('What the tablet shows');
    const store = page.getByRole('button', { name: 'Store these' });
    await field.fill(String(lines[0]).replace('2 N', '2.5 N'));
    await store.click();
    await page.getByText('Does not fit its two letters').waitFor();
    for (const typed of [lines[0], lines.join('\n')]) {
      await field.fill(String(typed));
      await store.click();
      await page.getByText(`Stored: ${typed === lines[0] ? 1 : 2}.`).waitFor();
    }
    expect(await field.inputValue()).toBe('');
    await place.setOffline(false);
    await expect.poll(() => listed(tablet), soon).toEqual(['3 N: stored', '2 N: stored', '1 N: stored']);
    const told = (await at.room.stored()).flatMap(({ entry: { what } }) =>
      what.kind === 'reading' ? [what.written] : [],
    );
    expect([...told].sort()).toEqual(['1 N', '2 N', '3 N']);
  });

  test('the beginning, a signal and a late group are taken back, and stay in the journal', async () => {
    const page = await teacherPage();
    const undo = page.getByRole('button', { name: 'Undo' });
    const time = page.locator('.time');
    await page.getByRole('button', { name: 'Begin now' }).click();
    await expect.poll(() => time.textContent(), soon).toContain('Round 1 of');
    await page.getByRole('button', { name: 'Signal: all change' }).click();
    await page.getByRole('button', { name: 'Yes, all change now' }).click();
    await expect.poll(() => time.textContent(), soon).toContain('Round 2 of');
    await undo.click();
    await expect.poll(() => time.textContent(), soon).toContain('Round 1 of');
    const chart = await page.locator('.chart').innerHTML();
    await page.getByRole('button', { name: 'Group A comes late' }).click();
    await page.getByRole('button', { name: 'Plan anew' }).click();
    await expect.poll(() => page.locator('.chart').innerHTML(), soon).not.toBe(chart);
    await undo.click();
    await expect.poll(() => page.locator('.chart').innerHTML(), soon).toBe(chart);
    expect(await kinds()).toEqual(['begun', 'signal', 'recalled', 'late', 'recalled']);
  });

  test('at three widths, light and dark, axe finds nothing and nobody scrolls sideways', async () => {
    for (const [width, colorScheme] of [
      [360, 'light'],
      [360, 'dark'],
      [820, 'dark'],
      [820, 'light'],
      [1440, 'light'],
      [1440, 'dark'],
    ] as const) {
      const page = await teacherPage({ viewport: { width, height: 900 }, colorScheme });
      await page.waitForSelector('.chart svg');
      expect([width, await axeFaults(page), await tooWide(page)]).toEqual([width, [], 0]);
    }
  });

  test('without a pass it says how the teacher comes in, and shows nothing of the class', async () => {
    const page = await (await at.browser.newContext()).newPage();
    await page.goto(`${at.room.address(PLAIN_HOST)}/teacher`);
    await page.getByRole('heading', { name: 'This page is for the teacher' }).waitFor();
    expect(await page.locator('.table').count()).toBe(0);
  });
});
