import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planeOf } from '../../../test/stations/incline.ts';
import { baseOf } from '../../../test/stations/ride.ts';
import { scaleOf, setupOf } from '../../../test/stations/setup.ts';
import { inclinedPlane } from '../machines/incline/index.ts';
import { radians } from '../quantities/brands.ts';
import { exactly, standardUncertainty } from '../uncertainty/measured.ts';
import { atBest } from '../uncertainty/propagate.ts';
import { predictScale } from './predict-scale.ts';
import type { Hang, Setup } from './setup.ts';
import { lagOf, shiftOf } from './shown.ts';

/** Turn-over figure D = 2 (11 g + 6 g/2) g of the scale used here. */
const D = 2 * 0.014 * 9.80665;
const SLOPE = Math.PI / 6;

/** A scale of 11 g moving part and 6 g spring on a board at 30 degrees, hanging and zeroed as said. */
function shift(hang: Hang, zeroed: Setup['zeroed']): number {
  const scale = scaleOf({ movingGrams: 11, springGrams: 6 });
  const setup = setupOf(inclinedPlane, planeOf({ angle: SLOPE }, baseOf({})), { scale, hang, zeroed });
  return shiftOf(setup, scale, atBest);
}

describe('what a scale shows too little, zeroed hook down', () => {
  it.each<[string, Hang, number]>([
    ['nothing while it hangs hook down', 'hook down', 0],
    ['half its turn-over figure while it lies level', 'level', D / 2],
    ['half of it less the sine of the slope along it', 'along the slope', (D / 2) * (1 - Math.sin(SLOPE))],
    ['all of it upside down', 'upside down', D],
    ['a quarter of it at 60 degrees', { angle: exactly(radians(Math.PI / 3)) }, D / 4],
  ])('is %s', (_, hang, expected) => {
    expect(shift(hang, 'hook down')).toBeCloseTo(expected, 12);
  });
});

describe('a zero set elsewhere', () => {
  it('in place leaves no shift, however the scale hangs', () => {
    for (const hang of ['hook down', 'level', 'along the slope', 'upside down'] as const)
      expect(shift(hang, 'in place')).toBe(0);
  });

  it('level leaves half the figure upside down, and shows too much hook down', () => {
    expect(shift('upside down', 'level')).toBeCloseTo(D / 2, 12);
    expect(shift('hook down', 'level')).toBeCloseTo(-D / 2, 12);
  });

  it('and read there and back adds up to nothing', () => {
    const hangs = fc.constantFrom<Hang & Setup['zeroed']>(
      'hook down',
      'level',
      'along the slope',
      'upside down',
    );
    fc.assert(
      fc.property(hangs, hangs, (a, b) => {
        expect(shift(a, b) + shift(b, a)).toBeCloseTo(0, 12);
      }),
      { seed: 20 },
    );
  });
});

describe('the rubbing of the tube', () => {
  const plane = planeOf({ angle: SLOPE }, baseOf({ mu: 0.2 }));
  const shown = (more: Partial<Setup>) => {
    const setup = setupOf(inclinedPlane, plane, {
      scale: scaleOf({ tubeFriction: 0.04 }),
      hang: 'along the slope',
      tapped: false,
      ...more,
    });
    const value = predictScale(setup).shown;
    if (value === null) throw new Error('nothing is shown');
    return value;
  };

  it('takes from a growing pull and adds to a falling one, half its bound on average', () => {
    expect(shown({ way: 'raise' }).value - shown({ way: 'raise', tapped: true }).value).toBeCloseTo(
      -0.02,
      12,
    );
    expect(shown({ way: 'lower' }).value - shown({ way: 'lower', tapped: true }).value).toBeCloseTo(0.02, 12);
  });

  it('is anywhere up to its bound in one reading, and gone when the tube is tapped', () => {
    expect(standardUncertainty(shown({ way: 'raise' }))).toBeCloseTo(0.04 / Math.sqrt(12), 12);
    expect(standardUncertainty(shown({ way: 'raise', tapped: true }))).toBe(0);
  });

  it('can be either way round where nothing moves', () => {
    const setup = setupOf(inclinedPlane, plane, { tapped: false });
    const lag = lagOf(setup, 'resting');
    expect(lag.value).toBe(0);
    expect(standardUncertainty(lag)).toBeCloseTo(1 / Math.sqrt(3), 12);
  });
});
