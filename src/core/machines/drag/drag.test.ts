import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balanceUnder, dragOf } from '../../../../test/stations/incline.ts';
import { baseOf, rollersOf, stringAt, wheelsOf } from '../../../../test/stations/ride.ts';
import { recompute } from '../../../../test/stations/working.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { idealAdvantage } from './drag.ts';

const seeded = { seed: 24 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const ride = fc.oneof(
  fc.record({ mu: real(0, 0.8), deadMass: real(0, 0.5) }).map(baseOf),
  fc
    .record({ wheel: real(0.01, 0.1), friction: real(0, 0.4), arm: real(0, 0.0005), deadMass: real(0, 0.2) })
    .map((said) => wheelsOf({ ...said, axle: said.wheel / 10 })),
  fc.record({ diameter: real(0.005, 0.06), below: real(0, 0.001), above: real(0, 0.001) }).map(rollersOf),
);
const string = fc.oneof(
  real(-0.5, 0.5).map((lean) => stringAt(lean)),
  fc
    .record({ lean: real(-0.5, 0.5), share: real(0, 0.3), constant: real(0, 0.02) })
    .map(({ lean, ...drag }) => stringAt(lean, drag)),
);
const station = fc.record({ ride, string }).map((said) => dragOf(said.ride, said.string));
const load = real(0.2, 50);
const direction = fc.constantFrom('raise' as const, 'lower' as const);

describe('a load on the level', () => {
  test('closes its work account: all that the hand gives is lost', () => {
    fc.assert(
      fc.property(station, load, direction, (each, W, way) => {
        const { work, effort } = balanceUnder(each, W, way);
        fc.pre(effort !== 0);
        const largest = Math.max(...work.map(({ rate }) => Math.abs(rate)));
        expect(Math.abs(work.reduce((sum, { rate }) => sum + rate, 0)) / largest).toBeLessThan(1e-9);
        expect(work.some(({ by }) => by === 'load' || by === 'dead weight')).toBe(false);
      }),
      seeded,
    );
  });

  test('has no advantage and no velocity ratio, since nothing is raised, and says why', () => {
    const { velocityRatio } = balanceUnder(dragOf(baseOf({ mu: 0.3 })), 2);
    expect(isNotDefined(velocityRatio) && velocityRatio.because).toBe('drag.no-useful-work');
    expect(idealAdvantage().because).toBe('drag.no-useful-work');
  });

  test('does not come back by itself: letting it back would need a push', () => {
    fc.assert(
      fc.property(ride, load, (each, W) => {
        expect(balanceUnder(dragOf(each), W, 'lower').effort).toBeLessThanOrEqual(0);
      }),
      seeded,
    );
  });

  test('moves at no pull at all where nothing rubs', () => {
    expect(balanceUnder(dragOf(baseOf({ mu: 0.3 })), 2, 'raise', 'none').effort).toBe(0);
  });

  test('rubs with its friction as a share of its weight, whatever that weight is', () => {
    fc.assert(
      fc.property(load, real(0, 0.8), (W, mu) => {
        expect(balanceUnder(dragOf(baseOf({ mu })), W).effort / W).toBeCloseTo(mu, 12);
      }),
      seeded,
    );
  });

  test('rolls more easily on larger rollers and on larger wheels', () => {
    const onRollers = (diameter: number) =>
      balanceUnder(dragOf(rollersOf({ diameter, below: 0.0005, above: 0.0005 })), 2).effort;
    const onWheels = (wheel: number) =>
      balanceUnder(dragOf(wheelsOf({ wheel, axle: 0.002, friction: 0.25, arm: 0.0005 })), 2).effort;
    expect(onRollers(0.02)).toBeCloseTo(onRollers(0.01) / 2, 12);
    expect(onWheels(0.05)).toBeCloseTo(onWheels(0.025) / 2, 12);
  });

  test('starts hard where the faces or the axles have a starting value; a rolling arm has none', () => {
    const start = (each: Parameters<typeof dragOf>[0]) =>
      balanceUnder(dragOf(each), 2, 'raise', 'starting').effort - balanceUnder(dragOf(each), 2).effort;
    expect(start(baseOf({ mu: 0.3, muStarting: 0.4 }))).toBeCloseTo(0.2, 12);
    expect(start(wheelsOf({ axle: 0.0025, friction: 0.2, frictionStarting: 0.3 }))).toBeCloseTo(0.02, 12);
    expect(start(wheelsOf({ arm: 0.0005 }))).toBe(0);
  });

  test('is dragged most easily with the string at the friction angle above the floor', () => {
    const pull = (lean: number) => balanceUnder(dragOf(baseOf({ mu: 0.6 }), stringAt(lean)), 2).effort;
    const best = Math.atan(0.6);
    expect(pull(best)).toBeCloseTo(2 * Math.sin(best), 12);
    expect(pull(best - 0.05)).toBeGreaterThan(pull(best));
    expect(pull(best + 0.05)).toBeGreaterThan(pull(best));
  });

  test('means one number by each name of its working', () => {
    fc.assert(
      fc.property(station, load, (each, W) => {
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
      fc.property(station, load, direction, (each, W, way) => {
        const balance = balanceUnder(each, W, way);
        const lines = balance.working();
        expect(lines.at(-1)?.value).toBe(balance.effort);
        for (const line of lines) {
          const size = line.unit === 'N' ? Math.max(W, Math.abs(line.value)) : 1;
          expect(Math.abs(recompute(line) - line.value) / size, line.what).toBeLessThan(1e-9);
          expect(Math.abs(recompute(line, 6) - line.value) / size, line.what).toBeLessThan(1e-4);
        }
      }),
      seeded,
    );
  });
});
