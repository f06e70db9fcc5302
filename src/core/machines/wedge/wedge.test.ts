import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liftingWedge, splittingWedge } from '../../../../test/stations/wedge.ts';
import { recompute } from '../../../../test/stations/working.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { metresPerSecondSquared, newtons } from '../../quantities/brands.ts';
import type { Asked, Balance } from '../../statics/balance.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import type { Wedge } from './station.ts';
import { balanceWedge, holdingMargin, idealAdvantage, isSelfHolding, tally } from './wedge.ts';

const ask = (
  load: number,
  direction: Asked['direction'] = 'raise',
  grip: Asked['grip'] = 'moving',
): Asked => ({ load: newtons(load), gravity: metresPerSecondSquared(9.80665), direction, grip });

function balance(wedge: Wedge, asked: Asked): Balance {
  const found = balanceWedge(wedge, atBest, asked);
  if (isNotDefined(found)) throw new Error(found.because);
  return found;
}
const effort = (wedge: Wedge, asked: Asked): number => balance(wedge, asked).effort;
const degrees = (value: number): number => (value * Math.PI) / 180;

const friction = fc.double({ min: 0, max: 0.5, noNaN: true });
const plain = {
  angle: fc.double({ min: degrees(2), max: degrees(25), noNaN: true }),
  mass: fc.double({ min: 0, max: 0.3, noNaN: true }),
  friction,
  more: fc.double({ min: 0, max: 0.2, noNaN: true }),
  base: friction,
};
const anyLifting = fc
  .record({ ...plain, stop: friction })
  .map(({ more, ...said }) => ({ ...said, starting: said.friction + more }));
const anySplitting = fc
  .record({
    ...plain,
    preTension: fc.double({ min: 0.5, max: 20, noNaN: true }),
    stiffness: fc.double({ min: 0, max: 2000, noNaN: true }),
    advance: fc.double({ min: 0, max: 0.1, noNaN: true }),
    pushed: fc.constantFrom('level' as const, 'down' as const),
  })
  .map(({ more, ...said }) => ({ ...said, starting: said.friction + more }));
const anyLoad = fc.double({ min: 0.5, max: 200, noNaN: true });
const anyDirection = fc.constantFrom('raise' as const, 'lower' as const);
const anyWedge = fc.oneof(anyLifting.map(liftingWedge), anySplitting.map(splittingWedge));

describe('the wedge with friction', () => {
  it('gives back every joule: the work terms sum to nothing, in and out', () => {
    fc.assert(
      fc.property(anyWedge, anyLoad, anyDirection, (wedge, load, direction) => {
        const { work } = balance(wedge, ask(load, direction));
        const largest = Math.max(...work.map((term) => Math.abs(term.rate)));
        const sum = work.reduce((total, term) => total + term.rate, 0);
        expect(Math.abs(sum)).toBeLessThanOrEqual(1e-9 * largest);
        for (const term of work) if (term.by === 'loss') expect(term.rate).toBeLessThanOrEqual(0);
      }),
      { seed: 31 },
    );
  });

  it('is the schoolbook wedge where nothing rubs: load over push is length over thickness', () => {
    fc.assert(
      fc.property(anyLifting, anyLoad, (said, load) => {
        const wedge = liftingWedge({ ...said, friction: 0, base: 0, stop: 0 });
        const { advantage } = idealAdvantage(wedge, atBest);
        expect(load / effort(wedge, ask(load))).toBeCloseTo(advantage, 9);
        expect(balance(wedge, ask(load)).velocityRatio).toBeCloseTo(advantage, 9);
      }),
      { seed: 32 },
    );
  });

  it('gives a smooth splitting wedge its side force as length over thickness times the push', () => {
    fc.assert(
      fc.property(anySplitting, (said) => {
        const wedge = splittingWedge({ ...said, friction: 0, base: 0, mass: 0 });
        const { advantage } = idealAdvantage(wedge, atBest);
        const found = balance(wedge, ask(0));
        expect((found.overcomes ?? 0) / found.effort / advantage).toBeCloseTo(1, 9);
        expect(found.velocityRatio).toBeCloseTo(advantage, 9);
      }),
      { seed: 33 },
    );
  });

  it('never asks for less to push in than to let out, nor for less to start than to keep moving', () => {
    fc.assert(
      fc.property(anyWedge, anyLoad, (wedge, load) => {
        const raise = effort(wedge, ask(load));
        expect(effort(wedge, ask(load, 'lower'))).toBeLessThanOrEqual(raise + 1e-12);
        expect(effort(wedge, ask(load, 'raise', 'starting'))).toBeGreaterThanOrEqual(raise - 1e-12);
      }),
      { seed: 34 },
    );
  });

  it('asks for more where any face rubs more', () => {
    fc.assert(
      fc.property(anyLifting, anyLoad, (said, load) => {
        const base = effort(liftingWedge(said), ask(load));
        for (const rubs of ['friction', 'base', 'stop'] as const)
          expect(effort(liftingWedge({ ...said, [rubs]: said[rubs] + 0.05 }), ask(load))).toBeGreaterThan(
            base,
          );
      }),
      { seed: 35 },
    );
  });

  it('equals W tan(a + 2 phi) where slope, base and stop rub alike', () => {
    const mu = Math.tan(degrees(12));
    const wedge = liftingWedge({ angle: degrees(18), friction: mu, base: mu, stop: mu });
    expect(effort(wedge, ask(50))).toBeCloseTo(50 * Math.tan(degrees(18 + 24)), 10);
  });

  it('multiplies the push by 1.4, 1.9, 2.4 and 3.5 at 30 degrees, for friction of 0.1, 0.2, 0.3 and 0.5', () => {
    const times = (mu: number) => {
      const wedge = liftingWedge({ angle: degrees(30), friction: mu, base: mu });
      return (effort(wedge, ask(10)) / effort(wedge, ask(10, 'raise', 'none'))).toFixed(1);
    };
    expect([0.1, 0.2, 0.3, 0.5].map(times)).toEqual(['1.4', '1.9', '2.4', '3.5']);
  });

  it('hardly gains by pushing wood on wood: 1.1 of the push at 0.3, 0.9 at 0.4, for 15 degrees', () => {
    const gain = (mu: number) => {
      const found = balance(splittingWedge({ angle: degrees(7.5), friction: mu, preTension: 10 }), ask(0));
      return (found.overcomes ?? 0) / found.effort;
    };
    expect(gain(0.3)).toBeCloseTo(1.1, 1);
    expect(gain(0.4)).toBeCloseTo(0.9, 1);
  });

  it('pulls harder on its cords the further it is in', () => {
    const at = (advance: number) =>
      balance(splittingWedge({ angle: degrees(7.5), preTension: 3, stiffness: 250, advance }), ask(0))
        .overcomes;
    expect(at(0)).toBeCloseTo(3, 12);
    expect(at(0.06)).toBeCloseTo(3 + 250 * 2 * 0.06 * Math.tan(degrees(7.5)), 12);
  });

  it('is helped by its own weight where it goes down, and rubs with it where it lies level', () => {
    const said = { angle: degrees(7.5), friction: 0.3, base: 0.25, mass: 0.1, preTension: 10 };
    const light = effort(splittingWedge({ ...said, mass: 0 }), ask(0));
    expect(effort(splittingWedge({ ...said, pushed: 'down' }), ask(0))).toBeCloseTo(light - 0.980665, 10);
    expect(effort(splittingWedge(said), ask(0))).toBeCloseTo(light + 0.25 * 0.980665, 10);
  });
});

describe('a wedge left alone', () => {
  it('stays in exactly where the force that lets it out is below zero', () => {
    fc.assert(
      fc.property(anyWedge, anyLoad, (wedge, load) => {
        const weightless = { ...wedge, inputs: { ...wedge.inputs, mass: { value: 0 as never, parts: [] } } };
        const margin = holdingMargin(weightless, atBest);
        fc.pre(Math.abs(margin) > 1e-6);
        expect(isSelfHolding(weightless, atBest)).toBe(effort(weightless, ask(load, 'lower')) < 0);
      }),
      { seed: 36 },
    );
  });
});

describe('what a wedge cannot say', () => {
  it('jams where slope and friction make a right angle together', () => {
    const steep = { angle: degrees(50), friction: 1.2 };
    expect(balanceWedge(liftingWedge(steep), atBest, ask(1))).toMatchObject({ because: 'wedge.jams' });
    const split = splittingWedge({ ...steep, preTension: 1 });
    expect(balanceWedge(split, atBest, ask(1))).toMatchObject({ because: 'wedge.jams' });
  });

  it('has no push where nothing holds the faces together', () => {
    const loose = splittingWedge({ angle: 0.1, preTension: 0 });
    expect(balanceWedge(loose, atBest, ask(0))).toMatchObject({ because: 'wedge.nothing-to-part' });
  });

  it('opens by its thickness at the mark, and says nothing where there is no mark', () => {
    const wedge = splittingWedge({ angle: degrees(7.5), preTension: 1, advance: 0.06 });
    const opened = tally(wedge, atBest);
    if (isNotDefined(opened)) throw new Error(opened.because);
    expect(opened.value).toBeCloseTo(2 * 0.06 * Math.tan(degrees(7.5)), 12);
    expect(opened.working.map((line) => recompute(line))[0]).toBeCloseTo(opened.value, 12);
    expect(tally(liftingWedge({ angle: 0.1 }), atBest)).toMatchObject({ because: 'wedge.no-mark' });
  });
});

describe('the working of a wedge', () => {
  it('can be recomputed line by line, also from the six figures that are printed', () => {
    fc.assert(
      fc.property(anyWedge, anyLoad, anyDirection, (wedge, load, direction) => {
        const found = balance(wedge, ask(load, direction));
        const lines = found.working();
        const largest = Math.abs(effort(wedge, ask(load))) + 2 * load;
        for (const line of lines) {
          expect(recompute(line)).toBeCloseTo(line.value, 9);
          const slack = line.symbol === 'P' ? largest : Math.abs(line.value);
          expect(Math.abs(recompute(line, 6) - line.value)).toBeLessThanOrEqual(1e-4 * slack + 1e-12);
        }
        expect(lines.at(-1)?.value).toBeCloseTo(found.effort, 9);
      }),
      { seed: 37 },
    );
  });
});
