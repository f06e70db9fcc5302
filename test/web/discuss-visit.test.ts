import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { review } from '../../src/core/review.ts';
import { talkSheets, toldTalk } from '../../src/documents/discussion/talk-told.ts';
import { readingsCsv } from '../../src/server/visits/visit-export.ts';
import { demoPrepared } from '../documents/demo-prepared.ts';
import { classInBrowser } from './class-in-browser.ts';
import { PLAIN_HOST } from './class-in-hand.ts';
import { joined, pressed } from './group-page.ts';

const soon = { timeout: 15_000, interval: 50 };
const at = classInBrowser();

const savedWall = async (page: Page): Promise<string> => {
  const [file] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save the wall as a page' }).click(),
  ]);
  const parts: Buffer[] = [];
  for await (const part of await file.createReadStream()) parts.push(part as Buffer);
  return Buffer.concat(parts).toString('utf8');
};

test('the teacher talks about what the class has written by now; a group is given nothing of it', async () => {
  const page = await (await at.browser.newContext()).newPage();
  await page.goto(at.room.link(PLAIN_HOST));
  await page.waitForSelector('.table');
  const seat = await at.browser.newContext();
  const group = await joined(seat, at.room, 'B');
  await group.waitForSelector('.keys');
  await pressed(group, '2.2');
  await expect.poll(async () => (await at.room.stored()).length, soon).toBeGreaterThan(0);

  await page.getByRole('link', { name: 'Talk about it' }).click();
  await page.waitForSelector('[data-numbers="visit"]');
  const wallNow = async (): Promise<string> => {
    const prepared = demoPrepared();
    const text = readingsCsv(await at.room.stored());
    const found = review(prepared, { name: 'visit.csv', text });
    return talkSheets('en', toldTalk('en', prepared, found, { of: 'class', names: false })).wall;
  };
  await page.waitForSelector('[data-state="settled"]');
  expect(await savedWall(page)).toBe(await wallNow());

  const before = (await at.room.stored()).length;
  await pressed(group, '2.3');
  await expect.poll(async () => (await at.room.stored()).length, soon).toBeGreaterThan(before);
  await page.getByRole('button', { name: 'Take the readings as they are now' }).click();
  await expect.poll(() => savedWall(page), soon).toBe(await wallNow());

  const visit = new URL(page.url()).hash.replace('#visit=', '');
  const status = await group.evaluate(
    async (path) => (await fetch(path)).status,
    `/api/teacher/visits/${visit}/talk`,
  );
  expect(status).toBe(401);
}, 60_000);
