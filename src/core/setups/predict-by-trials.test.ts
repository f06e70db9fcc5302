import { describe, expect, it } from 'vitest';
import { honestReadings } from '../../../test/stations/honest-lever.ts';
import { honestSetup, honestTables } from '../../../test/stations/honest-tables.ts';
import { planeOf } from '../../../test/stations/incline.ts';
import { leverStation } from '../../../test/stations/lever.ts';
import { baseOf } from '../../../test/stations/ride.ts';
import { scaleOf, setupOf, weightOf } from '../../../test/stations/setup.ts';
import { inclinedPlane } from '../machines/incline/index.ts';
import { lever } from '../machines/lever/index.ts';
import { newtons } from '../quantities/brands.ts';
import { quantileOf } from '../uncertainty/coverage-interval.ts';
import { type Measured, measured } from '../uncertainty/measured.ts';
import { predict } from './predict.ts';
import { type ByTrials, byTrialsOrLinear, nearALimit, predictByTrials } from './predict-by-trials.ts';
import type { Setup } from './setup.ts';

const trialsOf = (setup: Setup, seed = 1): ByTrials => {
  const found = predictByTrials(setup, { seed });
  if (found === null) throw new Error('no trial has a figure');
  return found;
};
const chosen = (setup: Setup) => byTrialsOrLinear(setup, predict(setup), { seed: 1 });

/** A bar that passes on what hangs on it: so many newtons, known to ±, straight on the scale. */
const straight = (force: number, u: number, more: Partial<Setup> = {}): Setup =>
  setupOf(lever, leverStation({ load: 0.3, pull: 0.3 }), {
    load: { kind: 'weight', weight: doubtful('weight', force, u) },
    ...more,
  });
const doubtful = (id: string, value: number, u: number): Measured<ReturnType<typeof newtons>> =>
  measured(newtons(value), { id, u, shape: 'normal', origin: 'stated' });

/** A board of 20 degrees on which something of 2 N slides: what is slow to start is easily held. */
const board = (more: Partial<Setup> = {}): Setup =>
  setupOf(inclinedPlane, planeOf({ angle: Math.PI / 9 }, baseOf({ mu: 0.2 })), {
    load: weightOf(2),
    scale: scaleOf({ range: 2.5, graduation: 0.05 }),
    hang: 'along the slope',
    ...more,
  });

describe('a setup by trials', () => {
  const COUNT = 200_000;
  it.each(Object.entries(honestTables))(
    'agrees with honest readings that another program draws: %s',
    (_, table) => {
      const found = trialsOf(honestSetup(table));
      const others = Float64Array.from(honestReadings(table, COUNT, 7)).sort();
      const mean = others.reduce((sum, each) => sum + each, 0) / COUNT;
      const deviation = Math.sqrt(others.reduce((sum, each) => sum + (each - mean) ** 2, 0) / COUNT);
      // Five standard errors of the difference of two samples, the smaller of 50,000.
      const error = 5 * deviation * Math.sqrt(1 / 50_000 + 1 / COUNT);
      expect(Math.abs(found.expected - mean)).toBeLessThan(error);
      expect(Math.abs(found.u - deviation)).toBeLessThan(error);
      // Ends stand on graduations: where chance is even between two marks they may be neighbours.
      for (const [end, share] of [
        [found.symmetric.from, 0.025],
        [found.symmetric.to, 0.975],
      ] as const)
        expect(Math.abs(end - quantileOf(others, share))).toBeLessThan(table.step * 1.001);
    },
  );

  it('is the same for the same seed', () => {
    expect(trialsOf(board(), 5)).toEqual(trialsOf(board(), 5));
    const some = straight(2, 0.1);
    expect(trialsOf(some, 5).expected).not.toBe(trialsOf(some, 6).expected);
  });

  it('spreads what is held still over the whole band, and widens the good range at its ends alone', () => {
    const setup = board({ way: 'held', scale: scaleOf({ range: 2.5, graduation: 0.05, accuracy: 0.02 }) });
    const prediction = predict(setup);
    if (prediction.outcome.kind !== 'band') throw new Error(prediction.outcome.kind);
    const { lower, upper } = prediction.outcome;
    const found = trialsOf(setup);
    expect(Math.abs(found.expected - (lower + upper) / 2)).toBeLessThan(0.01);
    // Evenly over its width, and rounded.
    expect(Math.abs(found.u - Math.hypot(upper - lower, 0.05) / Math.sqrt(12))).toBeLessThan(0.01);
    expect(found.symmetric.from).toBeGreaterThan(lower - 0.026);
    expect(found.good.from).toBeLessThanOrEqual(lower);
    expect(found.good.to).toBeGreaterThanOrEqual(upper);
  });

  it('writes the stop where the pointer does not leave it, and counts how often', () => {
    const setup = straight(0.1, 0.05, { scale: scaleOf({ range: 1, graduation: 0.02, stop: 0.1 }) });
    const found = trialsOf(setup);
    // Half of the trials less those that pull the other way: Φ(0) - Φ(-2).
    expect(found.fates['on its stop']).toBeCloseTo(0.477, 2);
    expect(found.fates['scale on the other side']).toBeCloseTo(0.023, 2);
    expect(found.symmetric.from).toBe(0.1);
    expect(Object.values(found.fates).reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 9);
  });

  it('writes nothing beyond the end of the scale', () => {
    const found = trialsOf(straight(1, 0.1, { scale: scaleOf({ range: 1, graduation: 0.02 }) }));
    expect(found.fates['off the scale']).toBeCloseTo(0.5, 2);
    expect(found.symmetric.to).toBeLessThanOrEqual(1);
  });

  it('has no figure where every trial is off the scale', () => {
    expect(predictByTrials(straight(9, 0.01), { seed: 1, atMost: 20_000 })).toBeNull();
  });

  it('lets every trial decide whether the weight of the scale moves the machine', () => {
    const setup = straight(0.7, 0.05, {
      scale: scaleOf({ grams: 70, movingGrams: 11, range: 2, graduation: 0.02 }),
      station: leverStation({ load: -0.3, pull: 0.3 }),
      hang: 'upside down',
    });
    const { fates } = trialsOf(setup);
    // 70 g weigh 0.6865 N: below it in a share Φ((0.6865 - 0.7) / 0.05) of the trials.
    expect(fates['moves under the scale']).toBeCloseTo(0.394, 2);
    expect((fates.reading ?? 0) + (fates['moves under the scale'] ?? 0)).toBeCloseTo(1, 9);
  });

  it('says so where something may not come back', () => {
    const steep = planeOf({ angle: Math.atan(0.2) }, baseOf({ mu: 0.2 }));
    const inputs = Object.entries(steep.inputs).map(([name, each]) => [
      name,
      name === 'angle' ? { ...each, parts: doubtful('angle', 0, 0.02).parts } : each,
    ]);
    const station = { ...steep, inputs: Object.fromEntries(inputs) };
    const found = predictByTrials(board({ way: 'lower', station }), { seed: 2 });
    expect(found?.fates['does not come back']).toBeCloseTo(0.5, 1);
  });
});

describe('the choice between the linear law and trials', () => {
  it('runs no trial far from every limit', () => {
    const found = chosen(straight(2.5, 0.2));
    expect(found).toMatchObject({ used: 'linear', because: 'far from every limit', trials: null, near: [] });
  });

  it('keeps the linear law where both ends agree to a graduation', () => {
    const setup = straight(2.5, 0.2);
    const found = byTrialsOrLinear(setup, predict(setup), { seed: 1, always: true });
    expect(found).toMatchObject({ used: 'linear', because: 'the linear law holds' });
    expect(found.check?.holds).toBe(true);
  });

  it('names the limit that a setup is near to', () => {
    const near = (setup: Setup) => nearALimit(setup, predict(setup));
    expect(near(straight(0.1, 0.1))).toContain('near the stop');
    expect(near(straight(4.9, 0.1))).toContain('near the end of the scale');
    expect(near(straight(0.1, 0.1))).toContain('near no pull');
    expect(near(straight(2, 0.001))).toContain('coarse graduations');
    expect(near(straight(9, 0.001))).toContain('no figure by the linear law');
    const heavy = { scale: scaleOf({ grams: 200 }), station: leverStation({ load: -0.3, pull: 0.3 }) };
    expect(near(straight(2, 0.1, { ...heavy, hang: 'upside down' }))).toContain(
      'near the weight of the scale',
    );
  });

  it('takes trials where only they have a figure: off the scale at best, and yet written by some', () => {
    const setup = straight(1.02, 0.04, { scale: scaleOf({ range: 1, graduation: 0.02 }) });
    const found = chosen(setup);
    expect(found).toMatchObject({ used: 'trials', because: 'only trials have a figure', linear: null });
    expect(found.good?.to).toBe(1);
  });

  it('takes trials where the scale cuts the readings, if the ends then differ by more than a graduation', () => {
    const setup = straight(0.95, 0.1, { scale: scaleOf({ range: 1, graduation: 0.01 }) });
    const found = chosen(setup);
    // Of the readings that can be written at all, a third being off the scale, 19 of 20 reach lower.
    expect(found.used).toBe('trials');
    expect(found.check?.low).toBeGreaterThan(0.01);
    expect(found.good?.from).toBeLessThan(found.linear?.from ?? 0);
  });

  it('has nothing to choose where nothing is read', () => {
    expect(chosen(straight(2, 0.1, { watched: 'ease' })).because).toBe('nothing is read');
    expect(chosen(straight(50, 0.1)).because).toBe('hardly any trial has a figure');
  });
});
