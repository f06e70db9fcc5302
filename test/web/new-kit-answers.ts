import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { settled } from './pages-on-host.ts';

export const picture = async (page: Page, name: string): Promise<void> => {
  if (process.env.PICTURES !== undefined)
    await page.screenshot({ path: `${process.env.PICTURES}/new-kit-${name}.png`, fullPage: true });
};

/** The parts list of the ferry crates, as it is written on a sheet of paper. */
export const PARTS: readonly (readonly [
  mark: string,
  kind: string,
  answers: Readonly<Record<string, string>>,
])[] = [
  [
    'metre stick',
    'bar',
    { length: '100 cm', mass: '4 1/8 oz', 'mass centre': '49.8 cm', 'pin diameter': '1/8 in' },
  ],
  ['plank', 'board', { length: '36 in' }],
  ['cart', 'cart', { mass: '6 1/2 oz', 'wheel diameter': '1 1/4 in', 'axle diameter': '3/32 in' }],
  ['block', 'block', { mass: '5 3/4 oz', faces: 'wood on wood' }],
  ['single A', 'pulley block', { sheaves: '1', mass: '1 1/4 oz' }],
  ['double', 'pulley block', { sheaves: '2', mass: '2 3/8 oz' }],
  ['cord', 'line', { thickness: '1/16 in' }],
  [
    'reel',
    'windlass',
    {
      'axle diameter': '1 in ± 1/64 in',
      mass: '9 oz',
      'crank length': '3 8/16 in',
      'bearing diameter': '5/16 in',
    },
  ],
  [
    'bolt',
    'screw',
    { thread: '1/2-13', 'head mass': '3 oz', 'lever arm': '1 1/2 in', 'collar diameter': '5/8 in' },
  ],
  [
    'doorstop',
    'wedge',
    {
      'kind of wedge': 'splitting',
      length: '5.0 in',
      mass: '2 1/4 oz',
      thickness: '1 4/16 in',
      'face friction': '0.3 ± 0.03',
    },
  ],
  ['elastics', 'cords', { stiffness: '2.0 lbf/in', 'pre-tension': '0.50 lbf', 'most opening': '1 1/2 in' }],
  ['pound', 'weight', { of: '16.0 oz' }],
  ['two pounds', 'weight', { of: '2 lb 0.0 oz' }],
  ['W200', 'weight', { of: '200 g' }],
  ['ounce scale', 'spring scale', { range: '32 ozf', graduation: '1 ozf', mass: '2 1/2 oz' }],
  ['gram scale', 'spring scale', { range: '500 gf', graduation: '10 gf', mass: '55 g' }],
  ['dual scale', 'spring scale', { range: '10 N', graduation: '0.2 N', mass: '3 1/8 oz' }],
];

export const go = async (page: Page, step: string): Promise<void> => {
  await page.locator('.new-kit nav button', { hasText: step }).click();
};

/** Answers a question inside a place, opening what is folded if it has to. */
export async function answer(page: Page, place: string, name: string, value: string): Promise<void> {
  const field = page.locator(`${place} [data-field="${name}"]`).first();
  if (!(await field.isVisible())) await page.locator(`${place} .questions details > summary`).first().click();
  if ((await field.evaluate((node) => node.tagName)) === 'SELECT') await field.selectOption(value);
  else await field.fill(value);
}

export async function addPart(page: Page, [mark, kind, answers]: (typeof PARTS)[number]): Promise<void> {
  await page.locator('#newkit-kind').selectOption(kind);
  await page.locator('#newkit-mark').fill(mark);
  await page.keyboard.press('Enter');
  const place = `[data-part="${mark}"]`;
  await page.waitForSelector(place);
  for (const [name, value] of Object.entries(answers)) await answer(page, place, name, value);
}

/** The three files as the last sheet hands them over, in a folder of their own. */
export async function savedTo(folder: string, page: Page): Promise<void> {
  for (const button of await page.locator('.sheet .acts button', { hasText: '.yaml' }).all()) {
    const [file] = await Promise.all([page.waitForEvent('download'), button.click()]);
    await file.saveAs(join(folder, file.suggestedFilename()));
  }
}

export const newKit = async (page: Page, name = 'New kit, by questions'): Promise<void> => {
  await page.getByRole('button', { name }).click();
  await page.waitForSelector('.new-kit[data-step="kit"] .question');
};

/** Three parts that make a lever, and a table with it. */
export async function smallestKit(page: Page): Promise<void> {
  await newKit(page);
  await answer(page, '.sheet', 'serial', 'SH-2');
  await answer(page, '.sheet', 'name', 'Stick');
  await go(page, 'Parts');
  for (const part of PARTS.filter(([mark]) => ['metre stick', 'pound', 'ounce scale'].includes(mark)))
    await addPart(page, part);
  await go(page, 'Tables');
  await page.getByRole('button', { name: 'Add a table: Lever' }).click();
  await page.waitForSelector('[data-setup="L1"]');
  await settled(page);
}

/** A figure as the page prints its own: to the same place, tens and hundreds included. */
export function printedLike(said: string, figure: number): string {
  const [number = ''] = said.split(' ');
  const places = number.split('.')[1]?.length ?? 0;
  const zeros = places === 0 ? (/0*$/.exec(number)?.[0].length ?? 0) : 0;
  return (zeros === 0 ? figure : Math.round(figure / 10 ** zeros) * 10 ** zeros).toFixed(places);
}
