import { describe, expect, it } from 'vitest';
import { newtons } from '../quantities/brands.ts';
import { exactly } from '../uncertainty/measured.ts';
import type { KitPart } from './kit.ts';
import { candidates, fitOf, type Role } from './role.ts';

const part = (mark: string, kind: string, more: Partial<KitPart> = {}): KitPart => ({
  mark,
  kind,
  fields: {},
  fits: null,
  isSpare: false,
  note: null,
  box: null,
  isFaulty: false,
  ...more,
});
const quantity = (field: string, si: number, dimension: 'mass' | 'force') => ({
  fields: { [field]: { type: 'quantity', measured: exactly(newtons(si)), dimension, written: '' } } as const,
});
const weight = (mark: string, kilograms: number, more: Partial<KitPart> = {}) =>
  part(mark, 'weight', { ...quantity('of', kilograms, 'mass'), ...more });
const scale = (mark: string, range: number) => part(mark, 'spring scale', quantity('range', range, 'force'));
const role = (kind: string, asks?: 'of' | 'to', si = 0, dimension: 'mass' | 'force' = 'force'): Role => ({
  name: 'it',
  kind,
  size: asks === undefined ? null : { asks, si, dimension },
  text: '',
});
const marks = (parts: readonly KitPart[]) => parts.map((each) => each.mark);

describe('a part in a role', () => {
  it('fits a weight that is within one part in twenty of what is asked', () => {
    const asked = role('weight', 'of', 0.2, 'mass');
    expect(fitOf(weight('a', 0.205), asked)).toBe('exact');
    expect(fitOf(weight('b', 0.25), asked)).toBe('kind-only');
    expect(fitOf(part('c', 'bar'), asked)).toBe('other-kind');
  });

  it('compares a mass with a weight at standard gravity', () => {
    expect(fitOf(weight('a', 0.2), role('weight', 'of', 1.96, 'force'))).toBe('exact');
  });

  it('is good enough as a scale with a longer range, never with a shorter one', () => {
    const asked = role('spring scale', 'to', 2.5);
    expect(fitOf(scale('a', 2.5), asked)).toBe('exact');
    expect(fitOf(scale('b', 5), asked)).toBe('enough');
    expect(fitOf(scale('c', 1), asked)).toBe('kind-only');
  });

  it('is taken before a longer scale where it has just the range that is asked', () => {
    const parts = [scale('long', 10), scale('right', 5), scale('short', 1)];
    expect(marks(candidates(parts, role('spring scale', 'to', 5), ['lever']).best)).toEqual(['right']);
    expect(marks(candidates(parts, role('spring scale', 'to', 6), ['lever']).best)).toEqual(['long']);
  });

  it('is the longer scale that is kept for this machine, where none has just the range', () => {
    const kept = { ...scale('kept', 20), fits: ['lever'] };
    expect(
      marks(candidates([scale('any', 10), kept], role('spring scale', 'to', 5), ['lever']).best),
    ).toEqual(['kept']);
  });

  it('is not a spare, and not kept for another machine; one kept for this machine goes first', () => {
    const parts = [
      weight('any', 0.2),
      weight('spare', 0.2, { isSpare: true }),
      weight('other', 0.2, { fits: ['tackle'] }),
      weight('kept', 0.2, { fits: ['lever'] }),
    ];
    const asked = role('weight', 'of', 0.2, 'mass');
    expect(marks(candidates(parts, asked, ['lever']).best)).toEqual(['kept']);
    expect(marks(candidates(parts, asked, ['screw']).best)).toEqual(['any']);
  });
});
