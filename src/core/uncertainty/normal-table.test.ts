import { describe, expect, it } from 'vitest';
import { tabledNormalQuantile, tabledNormalShare } from './normal-table.ts';
import { normalShare } from './probability.ts';

describe('the table of the normal law', () => {
  const places = Array.from({ length: 2001 }, (_, n) => -5 + n / 200.3);

  it('lies within 5e-7 of the law', () => {
    for (const z of places) expect(Math.abs(tabledNormalShare(z) - normalShare(z))).toBeLessThan(5e-7);
  });

  it('is read backwards to where it was read from', () => {
    for (const z of places) expect(tabledNormalQuantile(tabledNormalShare(z))).toBeCloseTo(z, 6);
  });

  it('ends at six deviations instead of running away', () => {
    expect([tabledNormalQuantile(0), tabledNormalQuantile(1)]).toEqual([-6, 6]);
    expect(tabledNormalShare(1e9)).toBeCloseTo(1, 8);
  });
});
