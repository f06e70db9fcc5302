import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isNotDefined } from '../../description/not-defined.ts';
import {
  kilograms,
  metres,
  metresPerSecondSquared,
  newtons,
  radians,
  ratio,
} from '../../quantities/brands.ts';
import type { Asked, Balance } from '../../statics/balance.ts';
import { exactly } from '../../uncertainty/measured.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import { balanceLever, idealAdvantage } from './lever.ts';
import { classOf, type Lever } from './station.ts';

const G = metresPerSecondSquared(9.80665);

interface Bare {
  readonly load: number;
  readonly pull: number;
  readonly barMass?: number;
  readonly barCentre?: number;
  readonly pinRadius?: number;
  readonly friction?: number;
  readonly starting?: number;
  readonly holesAbove?: number;
  readonly tilt?: number;
  readonly lean?: number;
  readonly keepsSquare?: boolean;
}

/** A lever from exact numbers, places measured from the fulcrum. */
function lever(bare: Bare): Lever {
  return {
    machine: 'lever',
    inputs: {
      fulcrum: exactly(metres(0)),
      load: exactly(metres(bare.load)),
      pull: exactly(metres(bare.pull)),
      barLength: exactly(metres(2)),
      barMass: exactly(kilograms(bare.barMass ?? 0)),
      barCentre: exactly(metres(bare.barCentre ?? 0)),
      pinRadius: exactly(metres(bare.pinRadius ?? 0)),
      pinFriction: exactly(ratio(bare.friction ?? 0)),
      pinStarting: exactly(ratio(bare.starting ?? bare.friction ?? 0)),
      holesAbove: exactly(metres(bare.holesAbove ?? 0)),
      tilt: exactly(radians(bare.tilt ?? 0)),
      lean: exactly(radians(bare.lean ?? 0)),
    },
    pullKeepsSquare: bare.keepsSquare ?? false,
    holePositions: [],
    holes: {},
  };
}

const ask = (
  load: number,
  direction: Asked['direction'] = 'raise',
  grip: Asked['grip'] = 'moving',
): Asked => ({
  load: newtons(load),
  gravity: G,
  direction,
  grip,
});

function balance(bare: Bare, asked: Asked): Balance {
  const found = balanceLever(lever(bare), atBest, asked);
  if (isNotDefined(found)) throw new Error(`no balance: ${found.because}`);
  return found;
}

const anyLever = fc.record({
  load: fc.oneof(
    fc.double({ min: 0.02, max: 0.9, noNaN: true }),
    fc.double({ min: -0.9, max: -0.02, noNaN: true }),
  ),
  pull: fc.oneof(
    fc.double({ min: 0.05, max: 0.9, noNaN: true }),
    fc.double({ min: -0.9, max: -0.05, noNaN: true }),
  ),
  barMass: fc.double({ min: 0, max: 1.5, noNaN: true }),
  barCentre: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  pinRadius: fc.double({ min: 0.0005, max: 0.006, noNaN: true }),
  friction: fc.double({ min: 0.01, max: 0.5, noNaN: true }),
  holesAbove: fc.double({ min: -0.01, max: 0.01, noNaN: true }),
  tilt: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
  lean: fc.double({ min: -0.3, max: 0.3, noNaN: true }),
  keepsSquare: fc.boolean(),
});
const anyLoad = fc.double({ min: 0.1, max: 20, noNaN: true });

describe('the lever', () => {
  it('takes its class from the order on the bar', () => {
    expect(classOf(lever({ load: -0.1, pull: 0.3 }), atBest)).toBe('first');
    expect(classOf(lever({ load: 0.1, pull: 0.3 }), atBest)).toBe('second');
    expect(classOf(lever({ load: 0.3, pull: 0.1 }), atBest)).toBe('third');
  });

  it('asks 0.243 N of a heavy centred bar whose pin rubs (own sheet: lever)', () => {
    const heavy: Bare = { load: -0.03, pull: 0.3, barMass: 1.2, pinRadius: 0.004, friction: 0.25 };
    expect(balance(heavy, ask(0.2 * G)).effort).toBeCloseTo(0.243, 3);
  });

  it('points the pin force down in the third class', () => {
    const third: Bare = {
      load: 0.3,
      pull: 0.1,
      barMass: 0.1,
      barCentre: 0.1,
      pinRadius: 0.003,
      friction: 0.3,
    };
    const { effort } = balance(third, ask(2));
    expect(effort).toBeGreaterThan(2 + 0.1 * G);
    const reaction = effort - 2 - 0.1 * G;
    expect(effort * 0.1).toBeCloseTo(2 * 0.3 + 0.1 * G * 0.1 + 0.3 * 0.003 * reaction, 12);
  });

  it('says that it jams where the arm of the pull lies inside the friction circle of the pin', () => {
    const found = balanceLever(
      lever({ load: -0.1, pull: 0.001, pinRadius: 0.01, friction: 0.5 }),
      atBest,
      ask(1),
    );
    expect(isNotDefined(found) && found.because).toBe('lever.jams');
  });

  it('gives a negative effort where the bar raises the load by itself', () => {
    expect(balance({ load: -0.05, pull: 0.3, barMass: 0.5, barCentre: 0.2 }, ask(1)).effort).toBeLessThan(0);
  });

  it('is not touched by tilt where loads hang and the holes lie in line with the pin', () => {
    const flat: Bare = { load: -0.1, pull: 0.3, barMass: 0.2, barCentre: -0.02 };
    expect(balance({ ...flat, tilt: 0.3 }, ask(2)).effort).toBeCloseTo(balance(flat, ask(2)).effort, 12);
  });

  it('asks less by cos(tilt) of a pull that keeps square to the bar', () => {
    const flat: Bare = { load: -0.1, pull: 0.3, keepsSquare: true };
    expect(balance({ ...flat, tilt: 0.3 }, ask(2)).effort).toBeCloseTo(
      balance(flat, ask(2)).effort * Math.cos(0.3),
      12,
    );
  });
});

describe('laws of the lever', () => {
  it('closes its work account to a billionth of the largest term, raising and lowering', () => {
    fc.assert(
      fc.property(anyLever, anyLoad, fc.constantFrom('raise', 'lower'), (bare, load, direction) => {
        const found = balanceLever(lever(bare), atBest, ask(load, direction as Asked['direction']));
        if (isNotDefined(found)) return;
        const largest = Math.max(...found.work.map((term) => Math.abs(term.rate)));
        const sum = found.work.reduce((total, term) => total + term.rate, 0);
        expect(Math.abs(sum)).toBeLessThanOrEqual(1e-9 * largest);
      }),
      { seed: 1, numRuns: 500 },
    );
  });

  it('returns load over ideal advantage without friction and bar', () => {
    fc.assert(
      fc.property(anyLever, anyLoad, (bare, load) => {
        const plain = { load: bare.load, pull: bare.pull };
        const { advantage } = idealAdvantage(lever(plain), atBest);
        expect(balance(plain, ask(load)).effort / (load / advantage)).toBeCloseTo(1, 10);
      }),
      { seed: 2 },
    );
  });

  it('never lowers with more than it raises with, and starts with no less', () => {
    fc.assert(
      fc.property(anyLever, anyLoad, (bare, load) => {
        const station = { ...bare, starting: bare.friction * 1.3 };
        const [raise, lower, start] = [
          balanceLever(lever(station), atBest, ask(load)),
          balanceLever(lever(station), atBest, ask(load, 'lower')),
          balanceLever(lever(station), atBest, ask(load, 'raise', 'starting')),
        ];
        if (isNotDefined(raise) || isNotDefined(lower) || isNotDefined(start)) return;
        expect(lower.effort).toBeLessThanOrEqual(raise.effort + 1e-12);
        expect(start.effort).toBeGreaterThanOrEqual(raise.effort - 1e-12);
      }),
      { seed: 3, numRuns: 500 },
    );
  });

  it('is the same machine seen from behind', () => {
    fc.assert(
      fc.property(anyLever, anyLoad, (bare, load) => {
        const behind = {
          ...bare,
          load: -bare.load,
          pull: -bare.pull,
          barCentre: -bare.barCentre,
          lean: -bare.lean,
        };
        const [here, there] = [
          balanceLever(lever(bare), atBest, ask(load)),
          balanceLever(lever(behind), atBest, ask(load)),
        ];
        if (isNotDefined(here) || isNotDefined(there)) return;
        expect(there.effort).toBeCloseTo(here.effort, 9);
      }),
      { seed: 4 },
    );
  });
});
