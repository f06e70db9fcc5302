import { expect, test } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { setupNamed } from '../review.ts';
import { judge } from './single-reading.ts';
import { tellingFigures } from './telling-figure.ts';

const prepared = demoPrepared();
const marks = prepared.tables.flatMap((table) => table.setups.map(({ setup }) => setup.mark));
const at = (mark: string) => {
  const found = setupNamed(prepared, mark);
  if (found === null) throw new Error(`no setup ${mark}`);
  return found;
};
const figures = (mark: string) => tellingFigures(at(mark).setup, at(mark).prediction);

test('no telling figure lies in the good range', () => {
  const all = marks.flatMap((mark) => {
    const { prediction } = at(mark);
    if (!('good' in prediction.outcome)) return [];
    const { from, to } = prediction.outcome.good;
    const si = prediction.graduations?.unitSi ?? 1;
    return figures(mark).map(({ number }) => ({ number, from: from / si, to: to / si }));
  });
  expect(all.length).toBeGreaterThan(20);
  for (const { number, from, to } of all)
    if (number !== null) expect(number < from || number > to).toBe(true);
});

test('a written telling figure is looked at again, and its cause is the first or second that is named', () => {
  let judged = 0;
  for (const mark of marks) {
    const { setup, prediction } = at(mark);
    for (const { number, codes, rate } of figures(mark)) {
      if (number === null || rate < 0.02) continue;
      const reading = { group: 'A', setup: mark, written: String(number), note: '', line: null };
      const { causes } = judge(reading, setup, prediction);
      const likely = causes.filter(({ kind }) => kind !== 'good').slice(0, 2);
      expect(
        likely.some(({ code }) => codes.includes(code)),
        `${mark} ${number} ${codes.join()}`,
      ).toBe(true);
      judged += 1;
    }
  }
  expect(judged).toBeGreaterThan(10);
});

test('grams are named only where the scale has a column in grams', () => {
  expect(figures('L1').some(({ codes }) => codes.includes('reading.in-grams'))).toBe(true);
  expect(figures('S1').some(({ codes }) => codes.includes('reading.in-grams'))).toBe(false);
});

test('two causes of one figure stand together, the likelier first', () => {
  const together = marks.flatMap((mark) => [...figures(mark)]).filter(({ codes }) => codes.length > 1);
  expect(together.length).toBeGreaterThan(0);
  for (const mark of marks)
    for (const [n, figure] of figures(mark).entries()) {
      const next = figures(mark)[n + 1];
      if (next !== undefined) expect(figure.rate).toBeGreaterThanOrEqual(next.rate);
    }
});

test('where nothing is read there is no telling figure', () => {
  expect(figures('G1')).toEqual([]);
});
