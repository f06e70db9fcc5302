import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { windlassStation } from '../../../../test/stations/windlass.ts';
import { recompute } from '../../../../test/stations/working.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { metres, metresPerSecondSquared, newtons, ratio } from '../../quantities/brands.ts';
import type { Asked, Balance } from '../../statics/balance.ts';
import { measured, standardUncertainty } from '../../uncertainty/measured.ts';
import { atBest, propagate } from '../../uncertainty/propagate.ts';
import { differences, drawing, steps } from './paper.ts';
import { sentences } from './sentences.en.ts';
import { balanceWindlass, idealAdvantage } from './windlass.ts';

const seeded = { seed: 23 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const asked = (load: number, more: Partial<Asked> = {}): Asked => ({
  load: newtons(load),
  gravity: metresPerSecondSquared(9.81),
  direction: 'raise',
  grip: 'moving',
  ...more,
});
const said = fc.record({
  wheel: real(0.02, 0.2),
  axle: real(0.005, 0.05),
  wheelLine: real(0, 0.004),
  axleLine: real(0, 0.004),
  drumMass: real(0, 0.5),
  bearing: real(0, 0.004),
  friction: real(0, 0.4),
  lean: real(-1, 1),
  turnedBy: fc.constantFrom('wheel', 'crank'),
  pull: fc.constantFrom('down', 'level', 'up'),
  layers: fc.integer({ min: 0, max: 3 }),
});
const balanced = (...args: Parameters<typeof balanceWindlass>): Balance => {
  const balance = balanceWindlass(...args);
  if (isNotDefined(balance)) throw new Error(balance.because);
  return balance;
};

describe('a windlass', () => {
  test('with a 2 mm line on an 8 mm axle radius and a 60 mm wheel gains 61/9 and not 7.5', () => {
    // Own theory sheet on wheel and axle.
    const station = windlassStation({ wheel: 0.06, axle: 0.008, wheelLine: 0.002, axleLine: 0.002 });
    const { effort, velocityRatio } = balanced(station, atBest, asked(2));
    expect(2 / effort).toBeCloseTo(61 / 9, 12);
    expect(velocityRatio).toBeCloseTo(61 / 9, 12);
    expect(idealAdvantage(station, atBest).advantage).toBeCloseTo(7.5, 12);
  });

  test('on a 3 mm pin costs 3.6 percent at 200 g, and a drum of 150 g on a 6 mm pin five percent more', () => {
    // Own theory sheet on wheel and axle: mu (F + W) rp, and "adds about 5 percent".
    const station = { wheel: 0.05, axle: 0.01, friction: 0.2 };
    const load = asked(0.2 * 9.81);
    const costs = (more: { bearing: number; drumMass?: number }) =>
      balanced(windlassStation({ ...station, ...more }), atBest, load).effort / (load.load / 5) - 1;
    expect(costs({ bearing: 0.0015 })).toBeCloseTo(0.036, 3);
    const drum = costs({ bearing: 0.003, drumMass: 0.15 }) - costs({ bearing: 0.003 });
    expect(Math.abs(drum - 0.05)).toBeLessThan(0.006);
  });

  test('closes its work account, raising and lowering, whatever way it is pulled', () => {
    fc.assert(
      fc.property(said, real(0.5, 50), fc.constantFrom('raise', 'lower'), (each, load, direction) => {
        const { work } = balanced(windlassStation(each), atBest, asked(load, { direction }));
        const largest = Math.max(...work.map((term) => Math.abs(term.rate)));
        expect(Math.abs(work.reduce((sum, term) => sum + term.rate, 0)) / largest).toBeLessThan(1e-9);
      }),
      seeded,
    );
  });

  test('without friction and thickness asks for the load over its ideal advantage', () => {
    fc.assert(
      fc.property(said, real(0.5, 50), (each, load) => {
        const station = windlassStation({ ...each, wheelLine: 0, axleLine: 0 });
        const { effort } = balanced(station, atBest, asked(load, { grip: 'none' }));
        expect((effort * idealAdvantage(station, atBest).advantage) / load).toBeCloseTo(1, 12);
      }),
      seeded,
    );
  });

  test('asks for more to raise than to let back, more to start than to keep going, more with layers', () => {
    fc.assert(
      fc.property(said, real(0.5, 50), (each, load) => {
        const station = windlassStation({ ...each, starting: each.friction * 1.2 });
        const raise = balanced(station, atBest, asked(load)).effort;
        const least = raise * (1 - 1e-12);
        expect(balanced(station, atBest, asked(load, { direction: 'lower' })).effort).toBeLessThanOrEqual(
          raise * (1 + 1e-12),
        );
        expect(balanced(station, atBest, asked(load, { grip: 'starting' })).effort).toBeGreaterThanOrEqual(
          least,
        );
        const higher = windlassStation({ ...each, layers: each.layers + 1 });
        expect(balanced(higher, atBest, asked(load)).effort).toBeGreaterThanOrEqual(least);
      }),
      seeded,
    );
  });

  test('is known the worse, the worse its line and its bearing are known', () => {
    const station = windlassStation({
      wheel: 0.06,
      axle: 0.008,
      axleLine: 0.002,
      bearing: 0.003,
      friction: 0.25,
    });
    const spread = (u: number) => {
      const inputs = {
        ...station.inputs,
        axleLine: measured(metres(0.002), { id: 't', u: 0.0003 * u, shape: 'even', origin: 'stated' }),
        bearingFriction: measured(ratio(0.25), { id: 'mu', u: 0.06 * u, shape: 'even', origin: 'assumed' }),
      };
      const pull = propagate(
        (at) => balanced({ ...station, inputs }, at, asked(2)).effort,
        Object.values(inputs),
      );
      return pull === null ? 0 : standardUncertainty(pull);
    };
    fc.assert(
      fc.property(real(0, 1), real(0, 1), (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(spread(less)).toBeLessThanOrEqual(spread(more) * (1 + 1e-9));
      }),
      seeded,
    );
    expect(spread(1)).toBeGreaterThan(0);
  });

  test('pulled down loads its bearing more than pulled up, and so asks for more', () => {
    const station = { wheel: 0.06, axle: 0.01, bearing: 0.003, friction: 0.3, drumMass: 0.1 };
    const [down, level, up] = (['down', 'level', 'up'] as const).map(
      (pull) => balanced(windlassStation({ ...station, pull }), atBest, asked(2)).effort,
    );
    expect(down).toBeGreaterThan(level ?? 0);
    expect(level).toBeGreaterThan(up ?? 0);
  });

  test('jams where its crank is shorter than the friction circle of its bearing', () => {
    const station = windlassStation({
      wheel: 0.001,
      axle: 0.01,
      bearing: 0.01,
      friction: 0.3,
      turnedBy: 'crank',
    });
    expect(balanceWindlass(station, atBest, asked(2))).toMatchObject({ because: 'windlass.jams' });
  });

  test('prints lines from which each value can be found again, also from six digits', () => {
    fc.assert(
      fc.property(said, real(0.5, 50), fc.constantFrom('raise', 'lower'), (each, load, direction) => {
        const station = windlassStation(each);
        const balance = balanced(station, atBest, asked(load, { direction }));
        for (const line of [...balance.working(), ...idealAdvantage(station, atBest).working]) {
          const size = Math.max(Math.abs(line.value), line.unit === 'N' ? load / 100 : 0, 1e-9);
          expect(Math.abs(recompute(line) - line.value) / size).toBeLessThan(1e-9);
          expect(Math.abs(recompute(line, 6) - line.value) / size).toBeLessThan(1e-4);
          expect(Object.keys(sentences)).toContain(line.what);
        }
        expect(balance.working().at(-1)).toMatchObject({ symbol: 'F', value: balance.effort });
      }),
      seeded,
    );
  });
});

describe('on paper', () => {
  test('every step, difference and cause has its English sentence', () => {
    fc.assert(
      fc.property(said, (each) => {
        const station = windlassStation(each);
        const keys = [
          ...steps(station).map((step) => step.key),
          ...differences(station, atBest).map((difference) => difference.key),
          'windlass.bearing-friction',
        ];
        expect(Object.keys(sentences)).toEqual(expect.arrayContaining(keys));
      }),
      seeded,
    );
  });

  test('the pull is drawn where it turns the drum against the load', () => {
    fc.assert(
      fc.property(said, (each) => {
        const { shapes } = drawing(windlassStation(each), atBest);
        const effort = shapes.find((shape) => shape.shape === 'effort');
        const load = shapes.find((shape) => shape.shape === 'load');
        if (effort?.shape !== 'effort' || load?.shape !== 'load') throw new Error('no pull or no load drawn');
        const [x, y] = effort.from;
        const turn = x * Math.sin(effort.direction) - y * Math.cos(effort.direction);
        expect(turn).toBeLessThan(0);
        expect(-load.hook[0]).toBeGreaterThan(0);
      }),
      seeded,
    );
  });
});
