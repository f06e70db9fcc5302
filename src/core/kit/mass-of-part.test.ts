import { expect, test } from 'vitest';
import { kilograms } from '../quantities/brands.ts';
import { exactly, standardUncertainty } from '../uncertainty/measured.ts';
import type { KitPart } from './kit.ts';
import { massOfPart } from './mass-of-part.ts';

const part = (
  field: string,
  si: number,
  dimension: 'mass' | 'force',
  more: Partial<KitPart> = {},
): KitPart => ({
  mark: 'it',
  kind: 'weight',
  fields: { [field]: { type: 'quantity', measured: exactly(si), dimension, written: '' } },
  fits: null,
  isSpare: false,
  note: null,
  box: null,
  isFaulty: false,
  ...more,
});

test('a part weighs what its kind says of it, a load what it is marked with', () => {
  expect(massOfPart(part('mass', 0.118, 'mass'))?.value).toBe(0.118);
  expect(massOfPart(part('of', 0.5, 'mass'))?.value).toBe(0.5);
});

test('a load that is marked in newtons weighs its mark over standard gravity', () => {
  expect(massOfPart(part('of', 9.80665, 'force'))?.value).toBeCloseTo(1, 12);
});

test('the whole part on a balance goes before the mass that only some of it has', () => {
  const weighs = exactly(kilograms(0.31));
  expect(massOfPart(part('mass', 0.118, 'mass', { weighs }))?.value).toBe(0.31);
});

test('the head of a screw is not the screw, and nothing is guessed', () => {
  expect(massOfPart(part('head mass', 0.06, 'mass'))).toBeNull();
});

test('what is not known about a mass stays with it', () => {
  const known = massOfPart(part('of', 0.5, 'mass'));
  expect(known === null ? null : standardUncertainty(known)).toBe(0);
});
