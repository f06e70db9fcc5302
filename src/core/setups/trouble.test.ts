import { describe, expect, it } from 'vitest';
import { leverStation } from '../../../test/stations/lever.ts';
import { scaleOf, setupOf } from '../../../test/stations/setup.ts';
import { lever } from '../machines/lever/index.ts';
import { newtons } from '../quantities/brands.ts';
import { predict } from './predict.ts';
import type { Setup } from './setup.ts';
import { standsWell, troublesOf } from './trouble.ts';

/** 200 g at 0.2 m, pulled at 0.4 m with 0.980665 N; nothing rubs. */
const half = (said: Partial<Setup>): Setup => setupOf(lever, leverStation({ load: 0.2, pull: 0.4 }), said);
const codesOf = (said: Partial<Setup>): readonly string[] =>
  troublesOf(half(said), predict(half(said))).map(({ code }) => code.replace('advice.trouble.', ''));
const hands = (most: number) => ({ scatter: 0, handLimit: newtons(most) });

describe('what stands in the way of a setup', () => {
  it.each<[string, Partial<Setup>]>([
    ['on its stop', { scale: scaleOf({ stop: 1 }) }],
    ['off the scale', { scale: scaleOf({ range: 0.9, graduation: 0.02 }) }],
    ['moves under the scale', { hang: 'upside down', scale: scaleOf({ grams: 120 }) }],
    ['near-its-weight', { hang: 'upside down', zeroed: 'in place', scale: scaleOf({ grams: 95 }) }],
    ['few-graduations', { scale: scaleOf({ graduation: 0.2 }) }],
    ['near-the-end', { scale: scaleOf({ range: 1.2 }) }],
    ['hand-limit', { reader: hands(0.9) }],
  ])('is %s, and nothing else', (code, said) => {
    expect(codesOf(said)).toEqual([code]);
  });

  it('is nothing where it stands five graduations above the stop and within four fifths of its scale', () => {
    // 0.980665 N: 4.9 graduations of 0.2 N are too few, 5.4 of 0.18 N are enough; 1.25 N is used by 78 %.
    expect(codesOf({ scale: scaleOf({ range: 1.25, graduation: 0.18 }) })).toEqual([]);
    expect(standsWell(half({ scale: scaleOf({ range: 1.25, graduation: 0.18 }) }), 0.980665)).toBe(true);
  });

  it('is both, where it is off the scale and beyond these hands', () => {
    const said = { scale: scaleOf({ range: 0.9, graduation: 0.02 }), reader: hands(0.9) };
    expect(codesOf(said)).toEqual(['off the scale', 'hand-limit']);
  });
});
