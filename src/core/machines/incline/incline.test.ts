import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balanceUnder, figureOf, planeOf } from '../../../../test/stations/incline.ts';
import { baseOf, rollersOf, stringAt, stringFrom, wheelsOf } from '../../../../test/stations/ride.ts';
import { recompute } from '../../../../test/stations/working.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { metresPerSecondSquared, newtons } from '../../quantities/brands.ts';
import type { Balance } from '../../statics/balance.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import { balanceIncline, idealAdvantage } from './incline.ts';
import type { InclinedPlane } from './station.ts';

const seeded = { seed: 23 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const DEGREE = Math.PI / 180;

const base = fc
  .record({ mu: real(0, 0.8), more: real(1, 1.6), deadMass: real(0, 0.5) })
  .map(({ mu, more, deadMass }) => baseOf({ mu, muStarting: mu * more, deadMass }));
const wheels = fc
  .record({
    wheel: real(0.01, 0.1),
    thin: real(0.02, 0.5),
    friction: real(0, 0.4),
    arm: real(0, 0.0005),
    share: real(0, 0.05),
    deadMass: real(0, 0.2),
  })
  .map((said) => wheelsOf({ ...said, axle: said.wheel * said.thin }));
const rollers = fc
  .record({
    diameter: real(0.005, 0.06),
    below: real(0, 0.001),
    above: real(0, 0.001),
    deadMass: real(0, 0.2),
  })
  .map(rollersOf);
const ride = fc.oneof(base, wheels, rollers);
const string = fc.oneof(
  real(-0.3, 0.3).map((lean) => stringAt(lean)),
  fc
    .record({ lean: real(-0.3, 0.3), share: real(0, 0.3), constant: real(0, 0.02) })
    .map(({ lean, ...drag }) => stringAt(lean, drag)),
  fc
    .record({ above: real(-0.02, 0.05), readAt: real(0.2, 0.6) })
    .map(({ above, readAt }) => stringFrom(above, readAt)),
);
const slope = fc.oneof(
  real(0.05, 1).map((angle) => ({ angle })),
  fc.record({ rise: real(0.05, 0.5), length: real(0.6, 1.5) }),
);
const plane = fc
  .record({ slope, ride, string })
  .map((said): InclinedPlane => planeOf(said.slope, said.ride, said.string));
const load = real(0.2, 50);
const direction = fc.constantFrom('raise' as const, 'lower' as const);

const sumOf = (balance: Balance): number => balance.work.reduce((sum, { rate }) => sum + rate, 0);
const largestOf = (balance: Balance): number => Math.max(...balance.work.map(({ rate }) => Math.abs(rate)));

describe('an inclined plane', () => {
  test('closes its work account, raising and lowering, whatever rides on it and however it is pulled', () => {
    fc.assert(
      fc.property(plane, load, direction, (station, W, way) => {
        const balance = balanceUnder(station, W, way);
        expect(Math.abs(sumOf(balance)) / largestOf(balance)).toBeLessThan(1e-9);
      }),
      seeded,
    );
  });

  test('takes its losses away and gives none back while the string is taut', () => {
    fc.assert(
      fc.property(plane, load, direction, (station, W, way) => {
        const balance = balanceUnder(station, W, way);
        fc.pre(balance.effort > 0);
        for (const { by, rate } of balance.work) if (by === 'loss') expect(rate).toBeLessThanOrEqual(0);
      }),
      seeded,
    );
  });

  test('without friction and dead weight, pulled along the board, asks for load over ideal advantage', () => {
    fc.assert(
      fc.property(slope, load, (each, W) => {
        const station = planeOf(each, baseOf({ mu: 0.4 }), stringAt(0, { share: 0.2, constant: 0.01 }));
        const { effort, velocityRatio } = balanceUnder(station, W, 'raise', 'none');
        const { advantage } = idealAdvantage(station, atBest);
        expect((effort * advantage) / W).toBeCloseTo(1, 12);
        expect(velocityRatio).toBeCloseTo(advantage, 10);
      }),
      seeded,
    );
  });

  test('never asks for more to let it back than to raise it, nor for less to start than to keep it moving', () => {
    fc.assert(
      fc.property(plane, load, (station, W) => {
        const raise = balanceUnder(station, W).effort;
        const small = 1e-9 * Math.abs(raise);
        expect(balanceUnder(station, W, 'lower').effort).toBeLessThanOrEqual(raise + small);
        expect(balanceUnder(station, W, 'raise', 'starting').effort).toBeGreaterThanOrEqual(raise - small);
      }),
      seeded,
    );
  });

  test('asks for more the heavier it is loaded and, pulled along the board, the more it drags', () => {
    fc.assert(
      fc.property(slope, load, real(0, 0.6), real(0.01, 0.2), (each, W, mu, more) => {
        const pull = (force: number, drag: number) =>
          balanceUnder(planeOf(each, baseOf({ mu: drag })), force).effort;
        expect(pull(W * (1 + more), mu)).toBeGreaterThan(pull(W, mu));
        expect(pull(W, mu + more)).toBeGreaterThan(pull(W, mu));
      }),
      seeded,
    );
  });

  test('means one number by each name of its working', () => {
    fc.assert(
      fc.property(plane, load, (each, W) => {
        const meant = new Map<string, number>();
        for (const { symbol, value, values } of balanceUnder(each, W).working())
          for (const [name, number] of [...Object.entries(values), [symbol, value] as const]) {
            expect(meant.get(name) ?? number, name).toBe(number);
            meant.set(name, number);
          }
      }),
      seeded,
    );
  });

  test('prints a working from which every line and the effort can be found again', () => {
    fc.assert(
      fc.property(plane, load, direction, (station, W, way) => {
        const balance = balanceUnder(station, W, way);
        const lines = balance.working();
        expect(lines.at(-1)?.value).toBe(balance.effort);
        const scale = Math.max(W, largestOf(balance));
        for (const line of lines) {
          const size = line.unit === 'N' ? scale : Math.max(1, Math.abs(line.value));
          expect(Math.abs(recompute(line) - line.value) / size, line.what).toBeLessThan(1e-9);
          expect(Math.abs(recompute(line, 6) - line.value) / size, line.what).toBeLessThan(1e-4);
        }
      }),
      seeded,
    );
  });

  test('that is as steep as its friction needs no holding back; a hair steeper and it slides', () => {
    const pull = (angle: number) => balanceUnder(planeOf({ angle }, baseOf({ mu: 0.3 })), 2, 'lower').effort;
    expect(pull(Math.atan(0.3))).toBeCloseTo(0, 12);
    expect(pull(Math.atan(0.3) - 0.01)).toBeLessThan(0);
    expect(pull(Math.atan(0.3) + 0.01)).toBeGreaterThan(0);
  });

  test('pulls 0.3, 4 and 17 percent harder at 40, 10 and 5 cm from a pulley 3 cm above the hook', () => {
    // Own theory sheet on the inclined plane; without friction the string angle alone counts.
    const more = [0.4, 0.1, 0.05].map((readAt) => {
      const from = planeOf({ angle: 0.5 }, baseOf({}), stringFrom(0.03, readAt));
      return balanceUnder(from, 2).effort / balanceUnder(planeOf({ angle: 0.5 }, baseOf({})), 2).effort - 1;
    });
    expect(more[0]).toBeCloseTo(0.003, 3);
    expect(more[1]).toBeCloseTo(0.044, 3);
    expect(more[2]).toBeCloseTo(0.166, 3);
  });

  test('over a guide pulley reads the hauled tension going up and the eased tension coming back', () => {
    // e = (1 - s/2)/(1 + s/2) either way, so lowering against raising differs by e squared.
    const share = 0.2;
    const e = (1 - share / 2) / (1 + share / 2);
    const plain = planeOf({ angle: 0.5 }, baseOf({}));
    const guided = planeOf({ angle: 0.5 }, baseOf({}), stringAt(0, { share, constant: 0 }));
    expect(balanceUnder(guided, 2).effort).toBeCloseTo(balanceUnder(plain, 2).effort / e, 12);
    expect(balanceUnder(guided, 2, 'lower').effort).toBeCloseTo(balanceUnder(plain, 2).effort * e, 12);
  });

  test('moves the string cos d over sin a as far as the load rises', () => {
    const { velocityRatio } = balanceUnder(planeOf({ angle: 0.4 }, baseOf({}), stringAt(0.2)), 2);
    expect(velocityRatio).toBeCloseTo(Math.cos(0.2) / Math.sin(0.4), 12);
  });

  test('is pressed on the board by less when the string leans up, and lifted off when it points to the sky', () => {
    const pressed = (lean: number) =>
      figureOf(balanceUnder(planeOf({ angle: 0.5 }, baseOf({ mu: 0.3 }), stringAt(lean)), 2), 'N');
    expect(pressed(0.3)).toBeLessThan(pressed(0));
    const asked = {
      load: newtons(2),
      gravity: metresPerSecondSquared(9.81),
      direction: 'raise',
      grip: 'moving',
    } as const;
    const off = balanceIncline(
      planeOf({ angle: 0.5 }, baseOf({ mu: 0.3 }), stringAt(80 * DEGREE)),
      atBest,
      asked,
    );
    expect(isNotDefined(off) && off.because).toBe('slope.lifts-off');
    const jams = balanceIncline(
      planeOf({ angle: 0.5 }, baseOf({ mu: 0.9 }), stringAt(-60 * DEGREE)),
      atBest,
      asked,
    );
    expect(isNotDefined(jams) && jams.because).toBe('slope.jams');
  });

  test('takes the weight of the cart along, by local gravity, on top of a load that is a force', () => {
    const cart = planeOf({ angle: 0.5 }, wheelsOf({ deadMass: 0.05 }));
    const bare = planeOf({ angle: 0.5 }, wheelsOf({}));
    const moon = balanceUnder(cart, 2, 'raise', 'moving', 1.6).effort;
    expect(moon - balanceUnder(bare, 2).effort).toBeCloseTo(0.05 * 1.6 * Math.sin(0.5), 12);
  });
});
