import { describe, expect, test } from 'vitest';
import {
  angle,
  block,
  cart,
  DEGREE,
  guide,
  hole,
  length,
  made,
  make,
} from '../../../../test/stations/board.ts';
import { quantity, sourced } from '../../../../test/stations/filled.ts';
import { balanceUnder } from '../../../../test/stations/incline.ts';
import type { Filled } from '../../description/fields.ts';
import { standardUncertainty, type Unknown } from '../../uncertainty/measured.ts';
import { atBest, unknownsOf } from '../../uncertainty/propagate.ts';
import type { Part } from '../machine.ts';
import { slots } from './fields.ts';
import { angleOf } from './station.ts';

const codes = (...args: Parameters<typeof make>) => make(...args).diagnostics.map(({ code }) => code);

describe('the slope of a board', () => {
  test('comes from the pin it rests on, at the distance of the prop along the board', () => {
    expect(angleOf(made(hole(3)), atBest)).toBeCloseTo(Math.asin(0.2 / 0.8), 12);
    expect(angleOf(made({ 'propped at': length('s/propped at', 0.4) }), atBest)).toBeCloseTo(Math.PI / 6, 12);
  });

  test('comes from its rise over the whole board, or over the stated length', () => {
    expect(angleOf(made({ rise: length('s/rise', 0.45) }), atBest)).toBeCloseTo(Math.PI / 6, 12);
    const stated = { rise: length('s/rise', 0.3), 'slope length': length('s/slope length', 0.6) };
    expect(angleOf(made(stated), atBest)).toBeCloseTo(Math.PI / 6, 12);
  });

  test('comes from its angle as measured', () => {
    expect(angleOf(made({ angle: angle(20) }), atBest)).toBeCloseTo(20 * DEGREE, 12);
  });

  test('has to be stated once, and not as a level, an upright or an unreachable one', () => {
    expect(codes({})).toEqual(['incline.no-slope']);
    expect(codes({ ...hole(3), angle: angle(20) })).toEqual(['incline.two-slopes']);
    expect(codes({ angle: angle(0) })).toEqual(['incline.level']);
    expect(codes({ angle: angle(95) })).toEqual(['incline.upright']);
    expect(codes({ rise: length('s/rise', 0) })).toEqual(['incline.level']);
    expect(codes({ rise: length('s/rise', 0.9) })).toEqual(['incline.too-high']);
    expect(codes(hole(7))).toEqual(['no-such-hole']);
    expect(codes({ angle: angle(20), 'slope length': length('s/slope length', 0.6) })).toEqual([
      'incline.length-unused',
    ]);
  });

  test('says the number that shows it, where it was written', () => {
    expect(make({ rise: length('s/rise', 0.95) }).diagnostics).toMatchObject([
      { at: { path: ['rise'] }, facts: { rise: { si: 0.95 }, length: { si: 0.9 }, part: 'b1' } },
    ]);
  });
});

describe('what rides on the board', () => {
  test('is a cart whose axle and rolling are assumed where nobody measured them', () => {
    const station = made(hole(3));
    expect(station.rides).toBe('wheels');
    const assumed = unknownsOf(Object.values(station.inputs)).filter(
      (each: Unknown) => each.origin === 'assumed',
    );
    expect(assumed.map(({ id }) => id).sort()).toEqual([
      'c1/axle diameter',
      'kind:cart with hard tyres on a good floor',
      'kind:dry pin',
    ]);
  });

  test('rolls by its stated arm in place of the coefficient that would be assumed', () => {
    const station = made(hole(3), {
      ...cart,
      fields: { ...cart.fields, 'rolling arm': sourced(0.0005, 0.0005) },
    });
    if (station.rides !== 'wheels') throw new Error(station.rides);
    expect(station.inputs.rollingArm.value).toBe(0.0005);
    expect(station.inputs.rollingShare.value).toBe(0);
  });

  test('is refused with a rolling stated twice, or an axle as thick as its wheel', () => {
    const twice = { 'rolling arm': sourced(0.0005, 0.0005), 'rolling coefficient': sourced(0.02, 0.02) };
    expect(codes(hole(3), { ...cart, fields: { ...cart.fields, ...twice } })).toEqual([
      'carriage.two-rollings',
    ]);
    const thick = { 'axle diameter': length('c1/axle diameter', 0.03) };
    expect(codes(hole(3), { ...cart, fields: { ...cart.fields, ...thick } })).toEqual([
      'carriage.axle-too-thick',
    ]);
  });

  test('is a block that rubs with the pair of faces of the setup, before its own', () => {
    const own = made(hole(3), block);
    const here = made({ ...hole(3), faces: sourced(0.2, 0.3) }, block);
    if (own.rides !== 'bare base' || here.rides !== 'bare base') throw new Error('no base');
    expect([own.inputs.faces.value, own.inputs.facesStarting.value]).toEqual([0.4, 0.5]);
    expect([here.inputs.faces.value, here.inputs.facesStarting.value]).toEqual([0.2, 0.3]);
    expect(codes({ ...hole(3), faces: sourced(0.2, 0.3) })).toEqual(['carriage.faces-unused']);
  });

  test('is a plank on rollers, with a rolling arm on either side', () => {
    const rollers: Part = {
      mark: 'r1',
      kind: 'rollers',
      fields: {
        mass: quantity('r1/mass', 0.1, 'mass'),
        diameter: length('r1/diameter', 0.012),
        'arm below': sourced(0.0004, 0.0004),
        'arm above': sourced(0.0002, 0.0002),
      },
    };
    const plain = balanceUnder(made(hole(3), rollers), 2, 'raise', 'none').effort;
    const extra = balanceUnder(made(hole(3), rollers), 2).effort - plain;
    const W = 2 + 0.1 * 9.80665;
    expect(extra).toBeCloseTo(0.05 * W * Math.cos(Math.asin(0.25)), 12);
  });
});

describe('the string', () => {
  test('runs along the board where nothing is said of it', () => {
    const station = made(hole(3));
    expect(station.string === 'leans' && station.inputs.lean.value).toBe(0);
    expect(station.guide).toBeNull();
  });

  test('comes down from a guide pulley unless it is led elsewhere', () => {
    const led = (more: Filled) => made({ ...hole(3), ...more }, cart, { 'guide pulley': guide }).guide;
    expect(led({})).toEqual({ leaves: 'down', angle: -Math.PI / 2 });
    expect(led({ 'after the pulley': { type: 'choice', choice: 'level' } })?.angle).toBe(0);
    expect(led({ 'string leaves at': angle(-60) })).toEqual({ leaves: 'stated', angle: -60 * DEGREE });
  });

  test('is refused where it contradicts itself', () => {
    const high = { 'pulley above the hook': length('s/pulley', 0.03) };
    const near = { 'read at': length('s/read at', 0.4) };
    const lean = { 'string leans': angle(5) };
    const pulley = { 'guide pulley': guide };
    expect(codes({ ...hole(3), ...high, ...near })).toEqual(['string.no-pulley']);
    expect(codes({ ...hole(3), ...high }, cart, pulley)).toEqual(['string.no-distance']);
    expect(codes({ ...hole(3), ...high, ...near, ...lean }, cart, pulley)).toEqual(['string.two-leans']);
    expect(codes({ ...hole(3), 'string leans': angle(90) })).toEqual(['string.leans-too-far']);
    const down: Filled = { 'after the pulley': { type: 'choice', choice: 'down' } };
    expect(codes({ ...hole(3), ...down, 'string leaves at': angle(0) }, cart, pulley)).toEqual([
      'string.two-directions',
    ]);
    expect(codes({ ...hole(3), ...high, ...near }, cart, pulley)).toEqual([]);
  });
});

test('a guide pulley fits the slot, and every uncertain number of the parts is among the inputs', () => {
  expect(slots['guide pulley']?.kinds).toEqual(['guide pulley']);
  const station = made(hole(3), cart, { 'guide pulley': guide });
  const ids = unknownsOf(Object.values(station.inputs)).map(({ id }) => id);
  for (const id of ['b1/first pin', 'b1/pin spacing', 'b1/prop at', 'c1/mass', 'c1/wheel diameter'])
    expect(ids).toContain(id);
  expect(standardUncertainty(station.inputs.guideShare)).toBeGreaterThan(0);
});
