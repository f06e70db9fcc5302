import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { unitLabel } from '../../src/documents/printing/reading-text.ts';
import { scratchFolder } from '../cli/scratch-folder.ts';
import { runCommand } from '../command-line.ts';
import { axeFaults, tooWide } from './group-page.ts';
import {
  addPart,
  answer,
  go,
  newKit,
  PARTS,
  picture,
  printedLike,
  savedTo,
  smallestKit,
} from './new-kit-answers.ts';
import { pagesOnHost, settled, textOf } from './pages-on-host.ts';

const scratch = scratchFolder();
const soon = { timeout: 15_000, interval: 50 };
const { opened } = pagesOnHost('prepare');

describe('a new kit by questions', () => {
  test('from a parts list to a key without an error, and the key is that of the saved files', async () => {
    const page = await opened();
    await newKit(page);
    await picture(page, '1-kit');
    await answer(page, '.sheet', 'serial', 'SH-1');
    await answer(page, '.sheet', 'name', 'Sallow Hythe ferry crates');
    await answer(page, '.sheet', 'latitude', '54.3 deg');
    await page.locator('#newkit-stem').fill('Ferry');
    await go(page, 'Parts');
    await picture(page, '2-parts-none');
    for (const part of PARTS) await addPart(page, part);
    await settled(page);
    await picture(page, '3-parts');
    await go(page, 'Tables');
    await picture(page, '4-tables-none');
    for (const machine of await page.locator('.machines button').all()) {
      const before = await page.locator('[data-table]').count();
      await machine.click();
      await expect.poll(() => page.locator('[data-table]').count(), soon).toBe(before + 1);
    }
    const wedge = page.locator('[data-table]').last();
    // A wedge that splits works against cords: the answer asks for the next one in words.
    await wedge.locator('[data-slot="cords"]').selectOption('elastics');
    await wedge.locator('.finding', { hasText: 'pushed in' }).first().waitFor();
    await wedge.locator('[data-slot="load"]').selectOption('');
    await answer(page, '[data-table="7"]', 'pushed in', '1.0 in');
    await wedge.locator('[data-slot="scale"]').selectOption('dual scale');
    await wedge.getByRole('button', { name: 'Another setup' }).click();
    await answer(page, '[data-setup="E2"]', 'pushed in', '3.0 in');
    await expect.poll(() => wedge.locator('.finding[data-severity="error"]').count(), soon).toBe(0);
    await settled(page);
    await picture(page, '5-tables');
    await go(page, 'Groups and time');
    await answer(page, '.sheet', 'groups', '6');
    await answer(page, '.sheet', 'period', '90 min');
    await answer(page, '.sheet', 'title', 'A day at the ferry landing');
    await picture(page, '6-visit');
    await go(page, 'Look back');
    await page.waitForSelector('[data-end="fine"]');
    await picture(page, '7-end');
    await savedTo(scratch, page);
    await page.getByRole('button', { name: 'To all setups and files' }).click();
    await settled(page);
    await picture(page, '8-prepare');
    const files = { kit: 'ferry.kit.yaml', activity: 'ferry.activity.yaml', visit: 'ferry.visit.yaml' };
    for (const [kind, name] of Object.entries(files))
      expect(await textOf(page, kind)).toBe(readFileSync(join(scratch, name), 'utf8'));
    const key = runCommand(['key', '--json', files.visit], { folder: scratch });
    expect(key.code).toBe(0);
    const { tables } = JSON.parse(key.out);
    const setups = tables.flatMap((table: { setups: unknown[] }) => table.setups);
    expect(setups.length).toBe(8);
    for (const { setup, marks } of setups) {
      await page.locator('.setup-list button', { hasText: setup }).click();
      await expect.poll(() => page.locator('#setup-in-hand').textContent(), soon).toBe(`Setup ${setup}`);
      // The page prints as many figures as the range bears: the key's own figure, rounded so.
      const said = (await page.locator('[data-figure="expected"]').textContent()) ?? '';
      expect([setup, said]).toEqual([setup, `${printedLike(said, marks.expected)} ${unitLabel(marks.unit)}`]);
    }
  }, 180_000);

  test('holes are counted, and the way from the first to the last is measured once', async () => {
    const page = await opened();
    await newKit(page);
    await go(page, 'Parts');
    await addPart(page, ['beam', 'bar', { length: '70 cm', mass: '180 g', 'first hole': '5 cm' }]);
    const place = '[data-part="beam"]';
    const spacing = page.locator(`${place} .question`, { has: page.locator('[data-field="hole spacing"]') });
    const whole = spacing.locator('.whole input');
    expect(await whole.isDisabled()).toBe(true);
    await answer(page, place, 'holes', '13');
    await expect.poll(() => whole.isDisabled(), soon).toBe(false);
    await whole.fill('60');
    expect(await spacing.locator('.whole small').textContent()).toContain('no length yet');
    await whole.fill('60 cm');
    const field = page.locator(`${place} [data-field="hole spacing"]`);
    await expect.poll(() => field.inputValue(), soon).toBe('5.00 cm ± 0.05 cm');
    expect(await spacing.locator('.whole small').textContent()).toBe(
      'From each to the next: 5.00 cm ± 0.05 cm.',
    );
    expect(await axeFaults(page)).toEqual([]);
  }, 60_000);

  test('an answer that cannot be read is told at its question, with what can be done', async () => {
    const page = await opened();
    await smallestKit(page);
    await go(page, 'Parts');
    const range = page.locator('[data-part="ounce scale"] .question', {
      has: page.locator('[data-field="range"]'),
    });
    await page.locator('[data-part="ounce scale"] > summary').click();
    await range.locator('input').fill('32 oz');
    await range.locator('.finding[data-severity="error"]').waitFor();
    expect(await range.locator('.finding em').textContent()).not.toBe('');
    await page.locator('.new-kit nav button', { hasText: 'Parts' }).locator('text=1 to answer').waitFor();
    await range.locator('input').fill('32 ozf');
    await expect.poll(() => range.locator('.finding').count(), soon).toBe(0);
  }, 60_000);

  test('a reload goes on where it was left, and every step is taken back to the boathouse', async () => {
    const page = await opened();
    await smallestKit(page);
    await page.reload();
    await page.waitForSelector('.new-kit[data-step="tables"] [data-setup="L1"]', { state: 'attached' });
    await settled(page);
    const undo = page.getByRole('button', { name: 'Undo' });
    expect(await undo.isDisabled()).toBe(true);
    await page.locator('[data-table="1"] > summary').click();
    await page.getByRole('button', { name: 'Take out Table 1: Lever' }).click();
    await page.getByRole('button', { name: 'Really take out' }).click();
    await expect.poll(() => page.locator('[data-table]').count(), soon).toBe(0);
    await undo.click();
    await expect.poll(() => page.locator('[data-table]').count(), soon).toBe(1);
    await newKit(page);
    await expect.poll(() => page.locator('#newkit-stem').inputValue(), soon).toBe('new-kit');
    await undo.click();
    await go(page, 'Parts');
    await expect.poll(() => page.locator('[data-part]').count(), soon).toBe(3);
  }, 60_000);

  test('a partner is found for the first setup, whose difference a class sees, and is taken back', async () => {
    const page = await opened();
    await smallestKit(page);
    await page.getByRole('button', { name: 'A partner for the setup at table 1' }).click();
    await page.waitForSelector('[data-setup="L2"]');
    await settled(page);
    const goodOf = (mark: string) => page.locator(`[data-setup="${mark}"] .good`).textContent();
    expect(await goodOf('L1')).not.toBe(await goodOf('L2'));
    expect(await page.locator('.sheet [role="status"]').textContent()).toMatch(
      /^L[12] asks for more than L[12]: (9\d|100) of 100 groups see that from one reading at each\./,
    );
    expect(await axeFaults(page)).toEqual([]);
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => page.locator('[data-setup="L2"]').count(), soon).toBe(0);
  }, 60_000);

  test('a part, a table and a setup are added to the demo, and every letter of its files stays', async () => {
    const page = await opened();
    const [kit, activity] = [await textOf(page, 'kit'), await textOf(page, 'activity')];
    await page.getByRole('button', { name: 'Add to this kit, by questions' }).click();
    await page.waitForSelector('.new-kit[data-step="parts"] #newkit-kind');
    await addPart(page, ['W900', 'weight', { of: '900 g' }]);
    await go(page, 'Tables');
    const before = await page.locator('[data-table]').count();
    await page.getByRole('button', { name: 'Add a table: Lever' }).click();
    await expect.poll(() => page.locator('[data-table]').count(), soon).toBe(before + 1);
    await page.locator('[data-table]').last().getByRole('button', { name: 'Another setup' }).click();
    await expect
      .poll(() => page.locator('[data-table]').last().locator('[data-setup]').count(), soon)
      .toBe(2);
    await settled(page);
    await page.getByRole('button', { name: 'To all setups and files' }).first().click();
    await settled(page);
    expect(await page.getByText('cannot be built').count()).toBe(0);
    for (const [was, is] of [
      [kit, await textOf(page, 'kit')],
      [activity, await textOf(page, 'activity')],
    ] as const) {
      const lines = is.split('\n');
      let at = -1;
      for (const line of was.split('\n')) {
        at = lines.indexOf(line, at + 1);
        expect([line, at >= 0]).toEqual([line, true]);
      }
    }
  }, 60_000);

  test('by keyboard alone: every answer is typed letter by letter, and the focus stays with it', async () => {
    const page = await opened();
    const to = async (selector: string): Promise<void> => {
      for (let n = 0; n < 120; n += 1) {
        if (await page.evaluate((wanted) => document.activeElement?.matches(wanted), selector)) return;
        await page.keyboard.press('Tab');
      }
      throw new Error(`no way by Tab to ${selector}`);
    };
    const type = async (selector: string, text: string): Promise<void> => {
      await to(selector);
      await page.keyboard.type(text, { delay: 15 });
    };
    const next = async (): Promise<void> => {
      await to('.sheet > .acts .main');
      await page.keyboard.press('Enter');
    };
    await to('.prepare-head .acts button:nth-of-type(4)');
    await page.keyboard.press('Enter');
    await page.waitForSelector('.new-kit[data-step="kit"] .question');
    await type('[data-field="serial"]', 'SH-2');
    await type('[data-field="name"]', 'Stick');
    await next();
    for (const [mark, kind, answers] of PARTS.filter(([, each]) =>
      ['bar', 'weight', 'spring scale'].includes(each),
    ).slice(0, 6)) {
      await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
      await to('#newkit-kind');
      const place = await page
        .locator(`#newkit-kind option`)
        .evaluateAll(
          (options, wanted) => options.findIndex((each) => (each as HTMLOptionElement).value === wanted),
          kind,
        );
      await page.keyboard.press('Home');
      for (let n = 0; n < place; n += 1) await page.keyboard.press('ArrowDown');
      await type('#newkit-mark', mark);
      await page.keyboard.press('Enter');
      await page.waitForSelector(`[data-part="${mark}"][open]`);
      for (const [name, value] of Object.entries(answers)) {
        const field = `[data-part="${mark}"] [data-field="${name}"]`;
        if (!(await page.locator(field).isVisible())) {
          await to(`[data-part="${mark}"] details > summary`);
          await page.keyboard.press('Enter');
        }
        await type(field, value);
        expect(await page.locator(field).inputValue()).toBe(value);
      }
    }
    await next();
    await to('.machines button');
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-setup="L1"]');
    await page.locator('.good', { hasText: 'Good range' }).waitFor();
    await next();
    await type('[data-field="title"]', 'A stick on an edge');
    await next();
    await page.waitForSelector('[data-end="fine"]');
  }, 120_000);

  test('in Spanish it asks in Spanish, also what machines and parts bring along', async () => {
    const page = await opened({ locale: 'es-ES' });
    await newKit(page, 'Kit nuevo, con preguntas');
    await picture(page, 'es-1');
    await go(page, 'Piezas');
    await page.locator('#newkit-kind').selectOption('bar');
    await page.locator('#newkit-mark').fill('remo');
    await page.keyboard.press('Enter');
    await page.waitForSelector('[data-part="remo"][open]');
    await page.getByText('Cuántos agujeros').first().waitFor({ state: 'attached' });
    await page.locator('[data-part="remo"] details > summary').click();
    await picture(page, 'es-2');
    await go(page, 'Mesas');
    expect(await page.locator('.machines').textContent()).toContain('Palanca');
    expect(await page.locator('.machines button:disabled').count()).toBeGreaterThan(0);
    await picture(page, 'es-3');
    expect(await axeFaults(page)).toEqual([]);
  }, 60_000);

  test('at three widths, light and dark, axe finds nothing and nobody scrolls sideways', async () => {
    const page = await opened();
    await smallestKit(page);
    const steps = ['Kit and place', 'Parts', 'Tables', 'Groups and time', 'Look back'];
    for (const [n, step] of steps.entries()) {
      await go(page, step);
      for (const summary of await page.locator('.new-kit details:not([open]) > summary').all())
        if (await summary.isVisible()) await summary.click();
      for (const width of [360, 820, 1440])
        for (const colorScheme of ['light', 'dark'] as const) {
          await page.setViewportSize({ width, height: 900 });
          await page.emulateMedia({ colorScheme });
          const faults = [await axeFaults(page), await tooWide(page)];
          expect([step, width, colorScheme, ...faults]).toEqual([step, width, colorScheme, [], 0]);
          if (colorScheme === 'dark' || width === 360) await picture(page, `w-${n}-${width}-${colorScheme}`);
        }
    }
  }, 120_000);
});
