import { describe, expect, it } from 'vitest';
import { linearCheck, numericalTolerance } from './linear-check.ts';

describe('the numerical tolerance', () => {
  it.each([
    // JCGM 101, 7.9.2: examples of c × 10^l (from memory).
    [0.00035, 2, 0.000005],
    [2, 1, 0.5],
    [2, 2, 0.05],
    [0.0996, 2, 0.005],
    [0, 2, 0],
  ])('of u = %d with %d digits is %d', (u, digits, tolerance) => {
    expect(numericalTolerance(u, digits)).toBeCloseTo(tolerance, 15);
  });
});

describe('the linear result', () => {
  it('holds where both ends lie within the tolerance', () => {
    expect(linearCheck({ from: 0, to: 10 }, { from: 0.04, to: 9.97 }, 0.05).holds).toBe(true);
  });

  it('fails by one end alone, and says by how much', () => {
    const check = linearCheck({ from: 0, to: 10 }, { from: 0.25, to: 10 }, 0.05);
    expect(check).toEqual({ low: 0.25, high: 0, tolerance: 0.05, holds: false });
  });
});
