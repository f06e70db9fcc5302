import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { screwStation } from '../../../../test/stations/screw.ts';
import { recompute } from '../../../../test/stations/working.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { metresPerSecondSquared, newtons } from '../../quantities/brands.ts';
import type { Asked, Balance } from '../../statics/balance.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import { balanceScrew, idealAdvantage, isSelfLocking } from './screw.ts';
import type { Screw } from './station.ts';

const ask = (
  load: number,
  direction: Asked['direction'] = 'raise',
  grip: Asked['grip'] = 'moving',
): Asked => ({ load: newtons(load), gravity: metresPerSecondSquared(9.80665), direction, grip });

function balance(screw: Screw, asked: Asked): Balance {
  const found = balanceScrew(screw, atBest, asked);
  if (isNotDefined(found)) throw new Error(found.because);
  return found;
}
const effort = (screw: Screw, asked: Asked): number => balance(screw, asked).effort;

/** Screws as kits have them, and steeper: fine bolts to many-start presses. */
const anyScrew = fc
  .record({
    meanDiameter: fc.double({ min: 0.004, max: 0.06, noNaN: true }),
    pitchShare: fc.double({ min: 0.05, max: 0.4, noNaN: true }),
    starts: fc.integer({ min: 1, max: 4 }),
    flank: fc.double({ min: 0, max: 0.55, noNaN: true }),
    friction: fc.double({ min: 0, max: 0.5, noNaN: true }),
    more: fc.double({ min: 0, max: 0.2, noNaN: true }),
    collarShare: fc.double({ min: 0, max: 3, noNaN: true }),
    collarFriction: fc.double({ min: 0, max: 0.5, noNaN: true }),
    headMass: fc.double({ min: 0, max: 0.5, noNaN: true }),
    arm: fc.double({ min: 0.02, max: 0.5, noNaN: true }),
  })
  .map(({ pitchShare, collarShare, more, ...said }) => ({
    ...said,
    pitch: said.meanDiameter * pitchShare,
    collarDiameter: said.meanDiameter * collarShare,
    starting: said.friction + more,
  }));
const anyLoad = fc.double({ min: 0.5, max: 2000, noNaN: true });
const anyDirection = fc.constantFrom('raise' as const, 'lower' as const);

const M8 = { pitch: 0.00125, meanDiameter: 0.0071881, flank: Math.PI / 6, arm: 0.1 };

describe('the screw with friction', () => {
  it('asks an M8 screw with a 100 mm lever and dry threads for a tenth of a newton a kilogram', () => {
    expect(effort(screwStation({ ...M8, friction: 0.2 }), ask(9.80665))).toBeCloseTo(0.1022, 4);
  });

  it('gives back every joule: the work terms sum to nothing, up and down', () => {
    fc.assert(
      fc.property(anyScrew, anyLoad, anyDirection, (said, load, direction) => {
        const { work } = balance(screwStation(said), ask(load, direction));
        const largest = Math.max(...work.map((term) => Math.abs(term.rate)));
        const sum = work.reduce((total, term) => total + term.rate, 0);
        expect(Math.abs(sum)).toBeLessThanOrEqual(1e-9 * largest);
        for (const term of work) if (term.by === 'loss') expect(term.rate).toBeLessThanOrEqual(0);
      }),
      { seed: 11 },
    );
  });

  it('is the schoolbook screw where nothing rubs and nothing else goes up', () => {
    fc.assert(
      fc.property(anyScrew, anyLoad, anyDirection, (said, load, direction) => {
        const screw = screwStation({ ...said, friction: 0, collarFriction: 0, headMass: 0 });
        const ideal = idealAdvantage(screw, atBest);
        if (isNotDefined(ideal)) throw new Error(ideal.because);
        const found = balance(screw, ask(load, direction));
        expect(found.effort / (load / ideal.advantage)).toBeCloseTo(1, 10);
        expect(found.velocityRatio).toBeCloseTo(ideal.advantage, 6);
      }),
      { seed: 12 },
    );
  });

  it('without grip is what it is without friction, the head still to be raised', () => {
    fc.assert(
      fc.property(anyScrew, anyLoad, (said, load) => {
        const smooth = screwStation({ ...said, friction: 0, collarFriction: 0 });
        expect(effort(screwStation(said), ask(load, 'raise', 'none'))).toBeCloseTo(
          effort(smooth, ask(load)),
          12,
        );
      }),
      { seed: 13 },
    );
  });

  it('never asks for less to raise than to let down, nor for less to start than to keep moving', () => {
    fc.assert(
      fc.property(anyScrew, anyLoad, (said, load) => {
        const screw = screwStation(said);
        const raise = effort(screw, ask(load));
        expect(effort(screw, ask(load, 'lower'))).toBeLessThanOrEqual(raise);
        expect(effort(screw, ask(load, 'raise', 'starting'))).toBeGreaterThanOrEqual(raise);
      }),
      { seed: 14 },
    );
  });

  it('asks for more where the threads, the collar or the lead grow', () => {
    fc.assert(
      fc.property(anyScrew, anyLoad, (said, load) => {
        const base = effort(screwStation(said), ask(load));
        for (const grown of [
          { ...said, friction: said.friction + 0.05 },
          {
            ...said,
            collarDiameter: said.collarDiameter + 0.002,
            collarFriction: said.collarFriction + 0.01,
          },
          { ...said, pitch: said.pitch * 1.1 },
          { ...said, headMass: said.headMass + 0.1 },
        ])
          expect(effort(screwStation(grown), ask(load))).toBeGreaterThan(base);
      }),
      { seed: 15 },
    );
  });

  it('does not come back where the thread rubs more than it rises, and does where it rubs less', () => {
    const mu = 0.1;
    const pitch = (share: number) => Math.PI * 0.01 * mu * share;
    const held = screwStation({ pitch: pitch(0.99), meanDiameter: 0.01, friction: mu, arm: 0.1 });
    const slips = screwStation({ pitch: pitch(1.01), meanDiameter: 0.01, friction: mu, arm: 0.1 });
    expect([isSelfLocking(held, atBest), isSelfLocking(slips, atBest)]).toEqual([true, false]);
    expect(effort(held, ask(100, 'lower'))).toBeLessThan(0);
    expect(effort(slips, ask(100, 'lower'))).toBeGreaterThan(0);
  });

  it('may stay up by its collar alone, at more than half efficiency of the thread', () => {
    const said = { pitch: 0.005, meanDiameter: 0.01, friction: 0.02, arm: 0.1 };
    expect(isSelfLocking(screwStation(said), atBest)).toBe(false);
    expect(isSelfLocking(screwStation({ ...said, collarDiameter: 0.03, collarFriction: 0.3 }), atBest)).toBe(
      true,
    );
  });
});

describe('what a screw cannot say', () => {
  it('has no pull without a lever, and no advantage', () => {
    const bare = screwStation({ pitch: 0.001 });
    expect(balanceScrew(bare, atBest, ask(1))).toMatchObject({ because: 'screw.no-arm' });
    expect(idealAdvantage(bare, atBest)).toMatchObject({ because: 'screw.no-arm' });
  });

  it('jams where lead angle and friction angle make a right angle together', () => {
    const steep = { pitch: 0.06, meanDiameter: 0.01, arm: 0.1 };
    expect(balanceScrew(screwStation({ ...steep, friction: 0.6 }), atBest, ask(1))).toMatchObject({
      because: 'screw.jams',
      facts: {
        lead: { si: expect.closeTo(Math.atan(6 / Math.PI), 9) },
        friction: { si: expect.closeTo(Math.atan(0.6), 9) },
      },
    });
    expect(effort(screwStation({ ...steep, friction: 0.5 }), ask(1))).toBeGreaterThan(0);
  });

  it('has no law for a load that pulls', () => {
    expect(balanceScrew(screwStation(M8), atBest, ask(-1))).toMatchObject({ because: 'screw.no-thrust' });
  });
});

describe('the working of a screw', () => {
  it('can be recomputed line by line, also from the six figures that are printed', () => {
    fc.assert(
      fc.property(anyScrew, anyLoad, anyDirection, (said, load, direction) => {
        const found = balance(screwStation(said), ask(load, direction));
        const lines = found.working();
        const largest = effort(screwStation(said), ask(load));
        for (const line of lines) {
          expect(recompute(line)).toBeCloseTo(line.value, 9);
          const slack = line.symbol === 'E' || line.symbol === 'T' ? largest : Math.abs(line.value);
          expect(Math.abs(recompute(line, 6) - line.value)).toBeLessThanOrEqual(1e-4 * slack + 1e-12);
        }
        expect(lines.at(-1)?.value).toBeCloseTo(found.effort, 9);
      }),
      { seed: 16 },
    );
  });

  it('takes the tilt of the flank as it stands, within 0.3 % up to a lead angle of 8 degrees', () => {
    for (const degrees of [1, 4, 8])
      for (const mu of [0.05, 0.15, 0.3]) {
        const lam = (degrees * Math.PI) / 180;
        const pitch = Math.PI * 0.01 * Math.tan(lam);
        const here = effort(
          screwStation({ pitch, meanDiameter: 0.01, flank: Math.PI / 6, friction: mu, arm: 0.005 }),
          ask(1),
        );
        const normal = Math.atan(Math.tan(Math.PI / 6) * Math.cos(lam));
        const exact = Math.tan(lam + Math.atan(mu / Math.cos(normal)));
        expect(Math.abs(here / exact - 1)).toBeLessThan(0.003);
      }
  });
});
