import { type MetresPerSecondSquared, metresPerSecondSquared } from '../quantities/brands.ts';

/** Standard acceleration of free fall, exact by definition (3rd CGPM, 1901): what graduations are made with. */
export const STANDARD_GRAVITY: MetresPerSecondSquared = metresPerSecondSquared(9.80665);

/**
 * Normal gravity of WGS 84: `ge` at the equator in m/s², Somigliana's constant `k`, first eccentricity
 * squared `e2` (NIMA TR8350.2, chapter 3).
 */
export const WGS84 = { ge: 9.7803253359, k: 0.00193185265241, e2: 0.00669437999013 } as const;
/** Change a metre of height, in 1/s²: the free-air gradient, first order. */
export const FREE_AIR = -3.086e-6;

/**
 * Gravity at a place: what a load of one kilogram weighs there.
 *
 *     g = ge (1 + k sin²φ) / √(1 − e² sin²φ) − 3.086e-6 h
 *
 * Source: Somigliana's formula with the constants of WGS 84 (NIMA TR8350.2, 4.2) and the free-air
 * gradient. Holds from pole to pole and to a few kilometres of height, to about 0.001 m/s².
 * Neglects hills, rock and tide; the second order of height is 1.2e-6 m/s² at 1000 m.
 *
 * @example normalGravity(0, 0) // => 9.7803253359
 */
export function normalGravity(latitude: number, height: number): MetresPerSecondSquared {
  const { ge, k, e2 } = WGS84;
  const s2 = Math.sin(latitude) ** 2;
  return metresPerSecondSquared((ge * (1 + k * s2)) / Math.sqrt(1 - e2 * s2) + FREE_AIR * height);
}
