import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { isError } from './diagnostics/diagnostic.ts';
import { type PreparationFiles, prepare } from './prepare.ts';
import { otherThanOnCards, preparedForCards, rolesForCards } from './prepare-cards.ts';

const text = (name: string) => readFileSync(`examples/brackwater/${name}`, 'utf8');
const visitText = text('harbour-day.visit.yaml');
const files = (visit: string | null): PreparationFiles => ({
  kit: { name: 'boathouse.kit.yaml', text: text('boathouse.kit.yaml') },
  activity: { name: 'harbour-day.activity.yaml', text: text('harbour-day.activity.yaml') },
  visit: visit === null ? null : { name: 'harbour-day.visit.yaml', text: visit },
});
const demo = prepare(files(visitText));

test('where several parts fit, the one kept for the table plays, then the first of the kit', () => {
  const { kit, activity } = demo;
  if (kit === null || activity === null) throw new Error('the demo could not be read');
  const roles = rolesForCards(kit, activity);
  expect(roles['3']).toMatchObject({ upper: 'block 1', lower: 'block 2' });
  expect(roles['7']).toMatchObject({ board: 'ramp', cart: 'dinghy', bar: 'long oar', scale: 'sand' });
});

test('the kit alone prepares every setup of the demo for its cards', () => {
  const cards = preparedForCards(prepare(files(null)));
  expect(cards.diagnostics.filter(isError)).toEqual([]);
  expect(cards.tables.map((table) => table.setups.length)).toEqual(
    demo.tables.map((table) => table.setups.length),
  );
});

test('no visit gets into what the cards are made from', () => {
  const elsewhere = visitText
    .replace('2026-05-12', '2027-01-09')
    .replace('{ latitude: 54.3 deg, height: 10 m }', '{ latitude: -3 deg, height: 2600 m }')
    .replace('groups: 6', 'groups: 12\nmissing: [amber, thole]')
    .replace('{ slim: thole, fat: chock }', '{ slim: chock, fat: thole }');
  const [one, other] = [demo, prepare(files(elsewhere))].map((prepared) =>
    JSON.stringify({ ...preparedForCards(prepared), diagnostics: [] }),
  );
  expect(elsewhere).toContain('2600 m');
  expect(other).toBe(one);
});

test('a part that stands in for the one on the card is told, with the table and the role', () => {
  expect(otherThanOnCards(demo)).toEqual([]);
  const swapped = visitText.replace('{ slim: thole, fat: chock }', '{ slim: chock, fat: thole }');
  expect(otherThanOnCards(prepare(files(`${swapped}\nmissing: [amber]\n`)))).toEqual([
    { table: '1', role: 'scale', onCard: 'amber', today: null },
    { table: '6', role: 'slim', onCard: 'thole', today: 'chock' },
    { table: '6', role: 'fat', onCard: 'chock', today: 'thole' },
  ]);
});
