import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import type { Prepared } from '../../src/core/prepare.ts';
import { keyJson } from '../../src/documents/text/key-json.ts';
import { demoAsFound, demoPrepared } from '../documents/demo-prepared.ts';
import { axeFaults, tooWide } from './group-page.ts';
import { pagesOnHost, settled, textOf } from './pages-on-host.ts';

const soon = { timeout: 15_000, interval: 50 };
const { opened, address, asked, complaints } = pagesOnHost('prepare');

const figure = (page: Page, what: string) => page.locator(`[data-figure="${what}"]`).textContent();
const field = (page: Page, name: string) => page.locator(`.fields [data-field="${name}"]`).first();

/** What `handspike key --json` says of a setup, in the scale's own marks. */
function marksIn(prepared: Prepared, table: string, setup: string): { expected: number; unit: string } {
  const { tables } = JSON.parse(keyJson(prepared));
  const found = tables.find((each: { table: string }) => each.table === table);
  return found.setups.find((each: { setup: string }) => each.setup === setup).marks;
}

describe('preparing on a host of files alone', () => {
  test('the demo is at work, and nothing is asked of any other host', async () => {
    const page = await opened();
    const { expected, unit } = marksIn(demoPrepared(), '1', 'L1');
    expect(await figure(page, 'expected')).toBe(`${expected.toFixed(1)} ${unit}`);
    expect(await page.locator('.setup-list button').count()).toBe(
      demoPrepared().tables.flatMap(({ setups }) => setups).length,
    );
    expect(await page.locator('.picture svg').count()).toBeGreaterThanOrEqual(2);
    expect(asked.filter((each) => !each.startsWith(address()))).toEqual([]);
    expect(complaints).toEqual([]);
  });

  test('an edit moves strip, drawing and figures, to the digit of the key of the edited file', async () => {
    const page = await opened();
    const strip = await page.locator('.picture').first().innerHTML();
    const before = await textOf(page, 'activity');
    await field(page, 'load at').fill('hole 2');
    await expect.poll(() => page.locator('.picture').first().innerHTML(), soon).not.toBe(strip);
    await settled(page);
    const changed = demoAsFound((text, kind) =>
      kind === 'activity' ? text.replace('load at: hole 3', 'load at: hole 2') : text,
    );
    const { expected, unit } = marksIn(changed, '1', 'L1');
    expect(expected).not.toBe(marksIn(demoPrepared(), '1', 'L1').expected);
    expect(await figure(page, 'expected')).toBe(`${expected.toFixed(1)} ${unit}`);
    // Comments, order and every other letter stay.
    expect(await textOf(page, 'activity')).toBe(before.replace('load at: hole 3', 'load at: hole 2'));
  });

  test('undo and redo go through the texts, and a reload keeps them', async () => {
    const page = await opened();
    const before = await textOf(page, 'activity');
    await field(page, 'load at').fill('hole 2');
    await expect.poll(() => textOf(page, 'activity'), soon).not.toBe(before);
    const after = await textOf(page, 'activity');
    await page.keyboard.press('Control+z');
    await expect.poll(() => textOf(page, 'activity'), soon).toBe(before);
    await expect.poll(() => field(page, 'load at').inputValue(), soon).toBe('hole 3');
    await page.keyboard.press('Control+y');
    await expect.poll(() => textOf(page, 'activity'), soon).toBe(after);
    await settled(page);
    await page.reload();
    await settled(page);
    expect(await textOf(page, 'activity')).toBe(after);
    expect(await field(page, 'load at').inputValue()).toBe('hole 2');
  });

  test('a reload in the very moment in which something is typed loses nothing of it', async () => {
    const page = await opened();
    for (const [n, delay] of [0, 4, 8, 16, 24, 32, 48, 64].entries()) {
      const hole = `hole ${[2, 1, 4, 3][n % 4]}`;
      const reloaded = page.waitForEvent('load');
      await field(page, 'load at').evaluate(
        (input, [value, after]) => {
          (input as HTMLInputElement).value = String(value);
          input.dispatchEvent(new Event('input', { bubbles: true }));
          if (after === 0) location.reload();
          else setTimeout(() => location.reload(), Number(after));
        },
        [hole, delay] as const,
      );
      await reloaded;
      await settled(page);
      await expect.poll(() => field(page, 'load at').inputValue(), soon).toBe(hole);
      expect(await textOf(page, 'activity')).toContain(`load at: ${hole}`);
    }
  });

  test('a broken file is opened, shown with line and column, and repaired in its text', async () => {
    const page = await opened();
    const whole = await textOf(page, 'kit');
    const broken = whole.replace('range: 5 N', 'range: 5 Nn');
    const buffer = Buffer.from(broken);
    const summary = page.locator('[data-file="kit"] summary');
    await summary.click();
    await page
      .locator('[data-file="kit"] input[type="file"]')
      .setInputFiles({ name: 'broken.kit.yaml', mimeType: 'text/yaml', buffer });
    const line = broken.split('\n').findIndex((each) => each.includes('5 Nn')) + 1;
    const jump = page.locator('[data-file="kit"] .found button', { hasText: `Line ${line},` }).first();
    await jump.click();
    const at = await page
      .locator('[data-file="kit"] textarea')
      .evaluate((area) => (area as HTMLTextAreaElement).selectionStart);
    expect(broken.slice(0, at).split('\n').length).toBe(line);
    await page.locator('[data-file="kit"] textarea').fill(whole);
    await expect.poll(() => page.getByText('cannot be built').count(), soon).toBe(0);
    await settled(page);
    const { expected, unit } = marksIn(demoPrepared(), '1', 'L1');
    expect(await figure(page, 'expected')).toBe(`${expected.toFixed(1)} ${unit}`);
  });

  test('a saved file is the text to the letter, under its own name', async () => {
    const page = await opened();
    await page.locator('[data-file="visit"] summary').click();
    const [saved] = await Promise.all([
      page.waitForEvent('download'),
      page.locator('[data-file="visit"] button', { hasText: 'Save' }).click(),
    ]);
    expect(saved.suggestedFilename()).toBe('harbour-day.visit.yaml');
    const parts: Buffer[] = [];
    for await (const part of await saved.createReadStream()) parts.push(part as Buffer);
    expect(Buffer.concat(parts).toString('utf8')).toBe(await textOf(page, 'visit'));
  });

  test('by keyboard alone: another setup is chosen and its load moved', async () => {
    const page = await opened();
    await page.locator('.setup-list button').nth(1).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('#setup-in-hand').textContent(), soon).toBe('Setup L2');
    await settled(page);
    for (let n = 0; n < 60; n += 1) {
      await page.keyboard.press('Tab');
      const name = await page.evaluate(() => (document.activeElement as HTMLElement | null)?.dataset.field);
      if (name === 'load at') break;
    }
    await page.keyboard.press('Control+a');
    await page.keyboard.type('hole 4');
    const changed = demoAsFound((text, kind) => {
      if (kind !== 'activity') return text;
      const at = text.indexOf('setup: L2');
      return text.slice(0, at) + text.slice(at).replace('load at: hole 3', 'load at: hole 4');
    });
    const { expected, unit } = marksIn(changed, '1', 'L2');
    await expect.poll(() => figure(page, 'expected'), soon).toBe(`${expected.toFixed(1)} ${unit}`);
  });

  test('at three widths, light and dark, axe finds nothing and nobody scrolls sideways', async () => {
    for (const width of [360, 820, 1440])
      for (const colorScheme of ['light', 'dark'] as const) {
        const page = await opened({ viewport: { width, height: 900 }, colorScheme });
        for (const summary of await page.locator('summary').all()) await summary.click();
        expect([width, colorScheme, await axeFaults(page), await tooWide(page)]).toEqual([
          width,
          colorScheme,
          [],
          0,
        ]);
        if (process.env.PICTURES !== undefined)
          await page.screenshot({ path: `${process.env.PICTURES}/prepare-${width}-${colorScheme}.png` });
      }
  }, 120_000);
});
