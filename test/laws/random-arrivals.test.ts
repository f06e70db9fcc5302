import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { arrivalCheckOf } from '../../src/core/calibration/arrival-check.ts';
import { rekeyTable } from '../../src/core/calibration/rekey-table.ts';
import { isError } from '../../src/core/diagnostics/diagnostic.ts';
import { prepare } from '../../src/core/prepare.ts';

const example = (name: string) => {
  const text = readFileSync(new URL(`../../examples/brackwater/${name}`, import.meta.url), 'utf8');
  return { name, text };
};
const kit = example('boathouse.kit.yaml');
const activity = example('harbour-day.activity.yaml');
const visit = example('harbour-day.visit.yaml');
const preparedWith = (arrival: string) =>
  prepare({ kit, activity, visit: { ...visit, text: `${visit.text}\n${arrival}` } });

/** Unit as it is written in a visit file. */
const written: Readonly<Record<string, string>> = { N: 'N', gf: 'g', mm: 'mm', turns: 'turns' };

it('two hundred arrival readings at random: the printed row and the program give the same ranges', () => {
  const asPacked = preparedWith('');
  const tables = asPacked.tables.flatMap((table) => {
    const arrival = arrivalCheckOf(table.setups);
    return arrival === null ? [] : [rekeyTable(table.setups, arrival)];
  });
  expect(tables.length).toBeGreaterThanOrEqual(5);
  const visits = Math.ceil(200 / tables.length);
  const draws = fc.sample(fc.array(fc.nat(), { minLength: tables.length, maxLength: tables.length }), {
    seed: 200,
    numRuns: visits,
  });
  let compared = 0;
  for (const draw of draws) {
    const rows = tables.map(({ rows }, n) => rows[(draw[n] ?? 0) % rows.length]);
    const lines = tables.map(({ arrival }, n) => {
      const { unit = 'N', unitSi = 1 } = arrival.prediction.graduations ?? {};
      const number = Number(((rows[n]?.reading ?? 0) / unitSi).toFixed(6));
      return `  ${arrival.setup.mark}: ${number} ${written[unit]}`;
    });
    const prepared = preparedWith(['arrival:', ...lines].join('\n'));
    expect(prepared.diagnostics.filter(isError)).toEqual([]);
    for (const [n, { arrival }] of tables.entries()) {
      const table = prepared.tables.find(({ mark }) => mark === arrival.setup.table);
      for (const { setup, good } of rows[n]?.good ?? []) {
        const prediction = table?.setups.find((each) => each.setup.mark === setup)?.prediction;
        const { outcome, graduations, rekeyedBy } = prediction ?? {};
        expect(rekeyedBy?.setup).toBe(arrival.setup.mark);
        const step = graduations?.step ?? 1;
        const now = outcome !== undefined && 'good' in outcome ? outcome.good : null;
        expect(inSteps(now, step), `${lines[n]} at ${setup}`).toEqual(inSteps(good, step));
      }
      compared += 1;
    }
  }
  expect(compared).toBeGreaterThanOrEqual(200);
});

const inSteps = (good: { from: number; to: number } | null, step: number) =>
  good === null ? null : [Math.round(good.from / step), Math.round(good.to / step)];
