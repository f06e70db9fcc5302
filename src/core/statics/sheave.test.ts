import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newtons } from '../quantities/brands.ts';
import { dragShare } from '../sources/sheave.ts';
import { easeOver, efficiencyFromShare, haulOver, sheaveDrag } from './sheave.ts';

const seed = { seed: 20 };
const force = fc.double({ min: 0.01, max: 100, noNaN: true }).map(newtons);
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('a sheave', () => {
  test('that passes on nine tenths asks for 1/0.9 of the pull to haul and 0.9 of it to ease', () => {
    const s = dragShare(0.9);
    expect(haulOver(newtons(1), s, newtons(0))).toBeCloseTo(1 / 0.9, 12);
    expect(easeOver(newtons(1), s, newtons(0))).toBeCloseTo(0.9, 12);
  });

  test('without drag passes on the pull unchanged, both ways', () => {
    expect(haulOver(newtons(2), 0, newtons(0))).toBe(2);
    expect(easeOver(newtons(2), 0, newtons(0))).toBe(2);
  });

  test('has the same drag as the difference of its two tensions, both ways', () => {
    fc.assert(
      fc.property(force, share, force, (near, s, c) => {
        const hauled = haulOver(near, s, c);
        const eased = easeOver(near, s, c);
        expect(sheaveDrag(near, hauled, s, c) / (hauled - near)).toBeCloseTo(1, 6);
        expect(sheaveDrag(near, eased, s, c) / (near - eased)).toBeCloseTo(1, 6);
      }),
      seed,
    );
  });

  test('hauled and eased back again by turns gives the first tension', () => {
    fc.assert(
      fc.property(force, share, force, (near, s, c) => {
        expect(easeOver(haulOver(near, s, c), s, c) / near).toBeCloseTo(1, 9);
      }),
      seed,
    );
  });

  test('turns share into efficiency and back', () => {
    fc.assert(
      fc.property(share, (s) => {
        expect(dragShare(efficiencyFromShare(s))).toBeCloseTo(s, 12);
      }),
      seed,
    );
  });
});
