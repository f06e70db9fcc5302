import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { easeOrder, FEEL } from './ease-score.ts';

describe('the ease score', () => {
  it('puts the smallest force first', () => {
    expect(easeOrder([3, 1, 2], FEEL)).toEqual([3, 1, 2]);
  });

  it('gives setups that feel alike one place, and counts on after them', () => {
    expect(easeOrder([1, 1.05, 2], FEEL)).toEqual([1, 1, 3]);
  });

  it('does not let a chain of small steps run into one place', () => {
    expect(easeOrder([1, 1.08, 1.16, 1.24], FEEL)).toEqual([1, 1, 3, 3]);
  });

  it('never calls a harder setup easier', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 50, noNaN: true }), { minLength: 2 }), (forces) => {
        const order = easeOrder(forces, FEEL);
        forces.forEach((force, a) => {
          forces.forEach((other, b) => {
            if (force < other) expect(order[a]).toBeLessThanOrEqual(order[b] ?? 0);
          });
        });
      }),
      { seed: 7 },
    );
  });
});
