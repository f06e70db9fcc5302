import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { type PreparationFiles, prepare } from '../../src/core/prepare.ts';
import { keyJson } from '../../src/documents/text/key-json.ts';
import { expectedText, outcomeShort } from '../../src/documents/text/prediction-text.ts';

import { settled, textOf } from './pages-on-host.ts';

export const soon = { timeout: 15_000, interval: 50 };

const file = (name: string) => ({ name, text: readFileSync(`examples/${name}`, 'utf8') });
const named = (name: string) => ({ ...file(name), name: name.slice(name.indexOf('/') + 1) });
export const slipway = {
  kit: named('bench-book/slipway.kit.yaml'),
  activity: named('bench-book/slipway.activity.yaml'),
  visit: named('bench-book/slipway.visit.yaml'),
};
export const book = named('bench-book/slipway.bench.csv');

export const figure = (page: Page, what: string) => page.locator(`[data-figure="${what}"]`).textContent();
export const on = (page: Page, what: string) => page.locator(`[data-bench="${what}"]`);

/** Opens the three files of the example with a bench book, each at its place. */
export async function openSlipway(page: Page): Promise<void> {
  for (const kind of ['kit', 'activity', 'visit'] as const) await give(page, kind, slipway[kind]);
  await expect.poll(() => textOf(page, 'visit'), soon).toBe(slipway.visit.text);
  // The list is the one of these files: the demo has setups of the same marks at other tables.
  await expect.poll(() => page.locator('.setup-list button').count(), soon).toBe(4);
  await page.locator('.setup-list button', { hasText: 'S1' }).first().click();
  await settled(page);
}

export async function give(
  page: Page,
  kind: string,
  { name, text }: { name: string; text: string },
): Promise<void> {
  const buffer = Buffer.from(text);
  await page
    .locator(`[data-file="${kind}"] input[type="file"]`)
    .setInputFiles({ name, mimeType: 'text/plain', buffer });
}

/** What `handspike key --json` says of these files, and what the page shows of each setup of it. */
export async function expectKeyOf(page: Page, files: PreparationFiles): Promise<void> {
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

export async function openBench(page: Page): Promise<void> {
  const part = page.locator('[data-part="bench"]');
  if (!(await part.evaluate((each) => (each as HTMLDetailsElement).open)))
    await part.locator('summary').first().click();
  await on(page, 'reading').waitFor();
}

export async function add(page: Page, what: string, reading: string): Promise<void> {
  await openBench(page);
  await on(page, 'what').selectOption(what);
  await on(page, 'reading').fill(reading);
  await on(page, 'by').fill('bench helper');
  await on(page, 'date').fill('2026-05-02');
  await page.locator('.bench button[type="submit"]').click();
}

export const answer = (page: Page) => page.locator('[data-answer="given"]');
