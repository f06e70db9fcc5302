import { describe, expect, test } from 'vitest';
import {
  add,
  answer,
  book,
  expectKeyOf,
  give,
  on,
  openBench,
  openSlipway,
  slipway,
  soon,
} from './bench-page.ts';
import { pagesOnHost, settled, textOf } from './pages-on-host.ts';

const { opened, complaints } = pagesOnHost('prepare');

const HEADING = 'date,kit,by,activity,what,with,reading,use,replaces,note\n';

describe('readings on the bench, entered at the setup in hand', () => {
  test('the first reading begins a book that the kit then names, and the page has the key of all four files', async () => {
    const page = await opened();
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
    const page = await opened();
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
    const page = await opened();
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
    const page = await opened();
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
    const page = await opened();
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
    await page.getByText('the key does not follow them').waitFor();
    await page.locator('[data-file="bench"] summary').click();
    await page.getByRole('button', { name: 'Let the kit name the book that is kept' }).click();
    await expect.poll(() => textOf(page, 'bench'), soon).toBe(ours);
    await add(page, 'L1', '2.3 N');
    await expect.poll(() => textOf(page, 'bench'), soon).toContain('2.3 N');
    expect((await textOf(page, 'bench')).startsWith(ours)).toBe(true);
  }, 60_000);
});
