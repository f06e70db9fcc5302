import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planeOf } from '../../../test/stations/incline.ts';
import { leverStation } from '../../../test/stations/lever.ts';
import { wheelsOf } from '../../../test/stations/ride.ts';
import { setupOf } from '../../../test/stations/setup.ts';
import { tackleStation } from '../../../test/stations/tackle.ts';
import { windlassStation } from '../../../test/stations/windlass.ts';
import { inclinedPlane } from '../machines/incline/index.ts';
import { lever } from '../machines/lever/index.ts';
import { tackle } from '../machines/tackle/index.ts';
import { windlass } from '../machines/windlass/index.ts';
import { kilograms, metres } from '../quantities/brands.ts';
import type { Setup } from '../setups/setup.ts';
import { exactly } from '../uncertainty/measured.ts';
import { type Reckoned, reckonedFrom } from './reckoning.ts';
import type { ComputedColumns } from './written-reading.ts';

const G = 9.80665;
const load = { kind: 'mass', mass: exactly(kilograms(1)) } as const;
const lift = exactly(metres(0.1));

/** 1 kg, four parts of line: 2.45 N without friction, 40 cm of line for 10 cm of lift. */
const four = setupOf(tackle, tackleStation({ parts: 4 }), { load, lift });
/** 200 g on a cart of 50 g up a slope of 3 in 5. */
const slope = setupOf(inclinedPlane, planeOf({ rise: 0.3, length: 0.5 }, wheelsOf({ deadMass: 0.05 })), {
  lift,
  hang: 'along the slope',
});

const found = (setup: Setup, reading: number, computed: ComputedColumns): Reckoned => {
  const [only] = reckonedFrom({ computed }, reading, setup);
  if (only === undefined) throw new Error('nothing was reckoned');
  return only;
};
const said = (setup: Setup, reading: number, computed: ComputedColumns) => {
  const { verdict, ways } = found(setup, reading, computed);
  return [verdict, ways[0]?.code];
};

describe('an advantage that a group reckoned', () => {
  it('is held against its own reading, whatever that was', () => {
    expect(said(four, 2.9, { advantage: '3.4' })).toEqual(['as the key', 'reckoning.load-over-pull']);
    expect(said(four, 5.1, { advantage: '1,9' })).toEqual(['as the key', 'reckoning.load-over-pull']);
    expect(found(four, 2.9, { advantage: '3.4' }).shouldBe).toBeCloseTo(G / 2.9, 9);
  });

  it('may be reckoned with 10 for g', () => {
    expect(said(four, 2.9, { advantage: '3.45' })).toEqual(['as the key', 'reckoning.load-over-pull']);
  });

  it('may be the ideal one: another figure, and no slip', () => {
    expect(said(four, 2.9, { advantage: '4.0' })).toEqual(['another way', 'reckoning.ideal']);
  });

  it.each([
    ['tackle.fall-counted', '5', four],
    ['tackle.parts-doubled', '8', four],
    ['reckoning.upside-down', '0.30', four],
    ['reckoning.grams-over-newtons', '345', four],
    ['reckoning.kilograms-over-newtons', '0.345', four],
  ] as const)('is told by the slip that gives its number: %s', (code, advantage, setup) => {
    expect(said(setup, 2.9, { advantage })).toEqual(['slip', code]);
  });

  it('can take the run for the slope, or for the rise', () => {
    // 3, 4, 5: slope over rise is 1.667, run over rise 1.333, slope over run 1.25.
    expect(said(slope, 1.8, { advantage: '1.33' })).toEqual(['slip', 'incline.run-for-slope']);
    expect(said(slope, 1.8, { advantage: '1.25' })).toEqual(['slip', 'incline.run-for-rise']);
    expect(said(slope, 1.8, { advantage: '1.67' })).toEqual(['another way', 'reckoning.ideal']);
  });

  it('may count the cart in: another figure, and no slip', () => {
    const advantage = ((0.25 * G) / 1.6).toFixed(2);
    expect(said(slope, 1.6, { advantage })).toEqual(['another way', 'reckoning.carriage-counted-in']);
  });

  it('can divide a radius by a diameter', () => {
    const setup = setupOf(windlass, windlassStation({ wheel: 0.05, axle: 0.01 }), { load });
    expect(said(setup, 2.9, { advantage: '2.5' })).toEqual(['slip', 'windlass.radius-for-diameter']);
    expect(said(setup, 2.9, { advantage: '10' })).toEqual(['slip', 'windlass.diameter-for-radius']);
  });

  it('can measure the arms from the end of the bar', () => {
    const station = leverStation({ load: 0.15, fulcrum: 0.25, pull: 0.55 });
    const setup = setupOf(lever, station, { load });
    expect(said(setup, 3.6, { advantage: (0.55 / 0.15).toFixed(2) })).toEqual([
      'slip',
      'lever.arms-from-the-end',
    ]);
  });

  it('that nothing gives is said to be just that', () => {
    expect(said(four, 2.9, { advantage: '77' })).toEqual(['not found', undefined]);
  });
});

describe('work that a group reckoned', () => {
  it('is right where pull and way of the hand, or load and lift, were taken', () => {
    expect(said(four, 2.9, { workIn: '1.16 J' })).toEqual(['as the key', 'reckoning.pull-by-travel']);
    expect(said(four, 2.9, { workOut: '0,98 J' })).toEqual(['as the key', 'reckoning.load-lift']);
    expect(said(four, 2.9, { workOut: '98 N cm' })).toEqual(['as the key', 'reckoning.load-lift']);
  });

  it.each([
    ['reckoning.load-travel', { workIn: '0.29' }],
    ['tackle.fall-counted', { workIn: '1.45' }],
    ['reckoning.load-for-pull', { workIn: '3.92' }],
    ['reckoning.centimetres-for-metres', { workIn: '116 J' }],
    ['reckoning.kilograms-for-newtons', { workOut: '0.1 J' }],
    ['reckoning.pull-travel', { workOut: '3.9' }],
    ['reckoning.pull-for-load', { workOut: '0.29' }],
  ] as const)('is told by the slip that gives its number: %s', (code, computed) => {
    const { verdict, ways } = found(four, 2.9, computed);
    expect(verdict).toBe('slip');
    expect(ways.map((way) => way.code)).toContain(code);
  });

  it('on a slope says where the cart was left out and where it was counted in', () => {
    expect(said(slope, 1.6, { workOut: '0.196' })).toEqual(['as the key', 'reckoning.carriage-left-out']);
    expect(said(slope, 1.6, { workOut: '0.245' })).toEqual(['another way', 'reckoning.carriage-counted-in']);
  });

  it('is not judged where the setup states no lift', () => {
    const { verdict, because } = found({ ...four, lift: null }, 2.9, { workIn: '1.2' });
    expect([verdict, because?.because]).toEqual(['not judged', 'reckoning.no-lift']);
  });
});

describe('a computed column', () => {
  it('that is blank says nothing', () => {
    expect(reckonedFrom({ computed: { advantage: ' ', workIn: '-' } }, 2.9, four)).toEqual([]);
    expect(reckonedFrom({}, 2.9, four)).toEqual([]);
  });

  it.each(['three', '3 or 4', '2.9 J', '3.1 N'])('that is no ratio stays unreadable: %s', (advantage) => {
    expect(found(four, 2.9, { advantage }).verdict).toBe('unreadable');
  });

  it('is not judged without a reading', () => {
    const [only] = reckonedFrom({ computed: { advantage: '3' } }, null, four);
    expect([only?.verdict, only?.because?.because]).toEqual(['not judged', 'reckoning.no-reading']);
  });

  it('reckoned rightly is never told to be a slip, however it is rounded', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 9, noNaN: true }),
        fc.integer({ min: 0, max: 3 }),
        fc.constantFrom(9.8, 9.81, 10),
        (reading, decimals, g) => {
          const advantage = (g / reading).toFixed(decimals);
          expect(found(four, reading, { advantage }).verdict).toBe('as the key');
        },
      ),
      { seed: 4, numRuns: 300 },
    );
  });
});
