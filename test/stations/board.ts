import type { Filled } from '../../src/core/description/fields.ts';
import type { Part } from '../../src/core/description/part.ts';
import { makeIncline } from '../../src/core/machines/incline/make.ts';
import type { InclinedPlane } from '../../src/core/machines/incline/station.ts';
import { prepared, quantity, sourced } from './filled.ts';

/** A board with pins, and what may ride on it, as the kit file would hand them on. */
export const DEGREE = Math.PI / 180;
export const length = (id: string, value: number) => quantity(id, value, 'length');
export const board: Part = {
  mark: 'b1',
  kind: 'board',
  fields: {
    length: length('b1/length', 0.9),
    'prop at': length('b1/prop at', 0.8),
    'first pin': length('b1/first pin', 0.1),
    'pin spacing': length('b1/pin spacing', 0.05),
    pins: { type: 'count', count: 6 },
  },
};
export const cart: Part = {
  mark: 'c1',
  kind: 'cart',
  fields: {
    mass: quantity('c1/mass', 0.05, 'mass'),
    'wheel diameter': length('c1/wheel diameter', 0.025),
    'axle friction': sourced(0.25, 0.25, '', 'dry pin'),
    'rolling coefficient': sourced(0.02, 0.02, '', 'cart with hard tyres on a good floor'),
  },
};
export const block: Part = {
  mark: 'k1',
  kind: 'block',
  fields: { mass: quantity('k1/mass', 0.2, 'mass'), faces: sourced(0.4, 0.5, '', 'wood on wood') },
};
export const guide: Part = { mark: 'g1', kind: 'guide pulley', fields: {} };
export const hole = (n: number): Filled => ({ 'propped at': { type: 'hole', hole: n } });
export const angle = (degrees: number) => quantity('s/angle', degrees * DEGREE, 'angle');

export const make = (fieldsOf: Filled, rider: Part = cart, more: Record<string, Part> = {}) =>
  makeIncline(prepared({ board, 'rides on': rider, ...more }, fieldsOf));
export const made = (...args: Parameters<typeof make>): InclinedPlane => {
  const { station, diagnostics } = make(...args);
  if (station === null) throw new Error(JSON.stringify(diagnostics));
  return station;
};
