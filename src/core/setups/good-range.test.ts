import { describe, expect, it } from 'vitest';
import { type HonestLever, honestReadings } from '../../../test/stations/honest-lever.ts';
import { honestSetup, honestTables } from '../../../test/stations/honest-tables.ts';
import { exactly } from '../uncertainty/measured.ts';
import { asRead, goodRange } from './good-range.ts';
import { predictScale } from './predict-scale.ts';

const DRAWS = 20_000;

/** Share of honest readings in the good range, and their mean beside the expected figure. */
function coverage(table: HonestLever, seed: number) {
  const { outcome } = predictScale(honestSetup(table));
  if (outcome.kind !== 'reading') throw new Error(outcome.kind);
  const readings = honestReadings(table, DRAWS, seed);
  const slack = 1e-9;
  const inside = readings.filter((r) => r >= outcome.good.from - slack && r <= outcome.good.to + slack);
  const mean = readings.reduce((sum, each) => sum + each, 0) / DRAWS;
  const spread = Math.sqrt(readings.reduce((sum, each) => sum + (each - mean) ** 2, 0) / DRAWS);
  return { outcome, share: inside.length / DRAWS, mean, spread };
}

describe('the good range', () => {
  it.each(Object.entries(honestTables))('holds 19 of 20 honest readings of %s', (_, table) => {
    const { share } = coverage(table, 5);
    expect(share).toBeGreaterThanOrEqual(0.95);
  });

  it.each(Object.entries(honestTables))('stands about the mean of honest readings of %s', (_, table) => {
    const { outcome, mean, spread } = coverage(table, 6);
    // A tenth of the spread for the bend of the law, and 4 standard errors of the mean of the draws.
    expect(Math.abs(mean - outcome.expected)).toBeLessThan(spread * (0.1 + 4 / Math.sqrt(DRAWS)));
    // The linear law against the draws: 5 percent, of which 2 standard errors of a spread are 1.
    expect(outcome.u / spread).toBeGreaterThan(0.95);
    expect(outcome.u / spread).toBeLessThan(1.05);
  });

  it('is whole graduations outward', () => {
    const marks = { step: 0.1, unit: 'N', unitSi: 1 };
    // u = 0.1/√12 = 0.0289, so 1 ± 0.0566.
    const { from, to } = goodRange(asRead(exactly(1), marks, 0), marks, 0, 5);
    expect(from).toBeCloseTo(0.9, 12);
    expect(to).toBeCloseTo(1.1, 12);
  });

  it('is cut at the stop and at the last mark', () => {
    const marks = { step: 0.1, unit: 'N', unitSi: 1 };
    expect(goodRange(asRead(exactly(0.02), marks, 0), marks, 0, 5).from).toBe(0);
    expect(goodRange(asRead(exactly(4.99), marks, 0), marks, 0, 5).to).toBe(5);
  });
});
