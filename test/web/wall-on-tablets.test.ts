import { expect, test } from 'vitest';
import { classInBrowser } from './class-in-browser.ts';
import { PLAIN_HOST } from './class-in-hand.ts';
import { axeFaults, joined, pressed, tooWide } from './group-page.ts';

const soon = { timeout: 15_000, interval: 50 };
const at = classInBrowser();

test("the groups' tablets follow the wall, go back to a table for a while, and are let go", async () => {
  const group = await joined(
    await at.browser.newContext({ viewport: { width: 360, height: 740 } }),
    at.room,
    'B',
  );
  await group.waitForSelector('.keys');
  await pressed(group, '2.2');
  await expect.poll(async () => (await at.room.stored()).length, soon).toBeGreaterThan(0);

  const notes = await (await at.browser.newContext()).newPage();
  await notes.goto(at.room.link(PLAIN_HOST));
  await notes.getByRole('link', { name: 'Talk about it' }).click();
  await notes.waitForSelector('[data-numbers="visit"]');
  await notes.waitForSelector('[data-state="settled"]');
  expect(await group.locator('.on-wall').count()).toBe(0);

  await notes.getByRole('checkbox', { name: "The groups' tablets follow the wall" }).check();
  await notes.waitForSelector('[data-tablets="told"]');
  const asked = () => notes.locator('.questions button[aria-current]').textContent();
  const onTablet = () => group.locator('.on-wall h1').textContent();
  const follows = async (): Promise<void> =>
    expect.poll(onTablet, soon).toBe((await asked())?.replace(/^\d+\. /, ''));
  await follows();
  expect(await group.locator('.answer').count()).toBe(0);
  await notes.getByRole('button', { name: 'Uncover the answer' }).click();
  await group.locator('.answer').waitFor();

  const many = await notes.locator('.questions button').count();
  for (let n = 1; n < many; n += 1) {
    await notes.keyboard.press('ArrowRight');
    await follows();
    expect([n, await axeFaults(group), await tooWide(group)]).toEqual([n, [], 0]);
  }

  await group.getByRole('button', { name: 'Back to our table' }).click();
  await group.waitForSelector('.card');
  await group.getByRole('button', { name: 'To the wall' }).click();
  await follows();
  await group.getByRole('button', { name: 'Back to our table' }).click();
  await group.waitForSelector('.card');
  await notes.keyboard.press('ArrowLeft');
  await follows();

  await notes.getByRole('checkbox', { name: "The groups' tablets follow the wall" }).uncheck();
  await group.waitForSelector('.card');

  await notes.getByRole('checkbox', { name: "The groups' tablets follow the wall" }).check();
  await follows();
  const [teacher] = await Promise.all([notes.context().newPage()]);
  await teacher.goto(`${at.room.address(PLAIN_HOST)}/teacher`);
  await teacher.getByRole('button', { name: 'Back to their tables' }).click();
  await group.waitForSelector('.card');
}, 90_000);
