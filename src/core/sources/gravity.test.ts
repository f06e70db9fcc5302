import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readCases, readTable } from '../../../test/reference/read-reference.ts';
import { FREE_AIR, normalGravity, STANDARD_GRAVITY, WGS84 } from './gravity.ts';

const radians = (degrees: number) => (degrees * Math.PI) / 180;
const cases = readCases('spring-scales-gravity', 'gravity_formula');
const published = cases.filter((each) => each.basis === 'published');
const own = cases.filter((each) => each.basis !== 'published');

/**
 * A second published formula, as a witness: 40 CFR 1065.630 (a), powers 2, 4, 6, 8 of the sine.
 * It rests on another reference ellipsoid and has no height in this part.
 */
function gravityByRule(latitude: number): number {
  const s2 = Math.sin(latitude) ** 2;
  return 9.7803267715 * (1 + s2 * (5.2790414e-3 + s2 * (2.32718e-5 + s2 * (1.262e-7 + s2 * 7e-10))));
}

describe('local gravity', () => {
  const table = readTable<{
    standard: number;
    wgs84: Readonly<Record<string, number>>;
    checks: Readonly<Record<string, number>>;
    free_air_per_m: number;
  }>('gravity');

  it('has the constants of the reference table digit for digit', () => {
    expect(STANDARD_GRAVITY).toBe(table.standard);
    expect(table.wgs84).toMatchObject(WGS84);
    expect(FREE_AIR).toBe(table.free_air_per_m);
  });

  it('the latitudes of the reference table come out to its last digit', () => {
    // One unit of that digit: at 45 degrees the same constants give 9.80619776937, printed as ...7693.
    expect(Object.keys(table.checks)).toHaveLength(4);
    for (const [degrees, g] of Object.entries(table.checks))
      expect(Math.abs(normalGravity(radians(Number(degrees)), 0) - g), degrees).toBeLessThan(1e-10);
  });

  it.each(published)('$id, published ($source.title): the witness reproduces it', ({ inputs, expected }) => {
    const g = expected.g;
    const got = gravityByRule(radians(inputs.latitude?.value ?? Number.NaN));
    expect(Math.abs(got - (g?.value ?? Number.NaN))).toBeLessThanOrEqual(g?.tol_abs ?? 0);
  });

  it('agrees with that published formula to 2e-6 m/s² from the equator to the poles', () => {
    // The ellipsoids differ by 1.4e-6 m/s² at the equator; their printed digits allow no more than 2e-6.
    fc.assert(
      fc.property(fc.double({ min: -Math.PI / 2, max: Math.PI / 2, noNaN: true }), (latitude) => {
        expect(Math.abs(normalGravity(latitude, 0) - gravityByRule(latitude))).toBeLessThan(2e-6);
      }),
    );
  });

  // Basis of these: own theory sheets with the published constants; not to be called published.
  it.each(own)('$id: $gist', ({ inputs, expected }) => {
    const got = normalGravity(radians(inputs.latitude?.value ?? 0), inputs.height?.value ?? 0);
    const figures = Object.entries(expected);
    expect(figures.length).toBeGreaterThan(0);
    for (const [name, figure] of figures)
      expect(Math.abs(got - figure.value), name).toBeLessThanOrEqual(figure.tol_abs);
  });

  it('grows towards the poles, alike north and south, and shrinks with height', () => {
    const latitudes = fc.double({ min: 0, max: Math.PI / 2, noNaN: true });
    fc.assert(
      fc.property(latitudes, latitudes, fc.double({ min: 0, max: 5000, noNaN: true }), (a, b, height) => {
        const [near, far] = [Math.min(a, b), Math.max(a, b)];
        expect(normalGravity(far, 0)).toBeGreaterThanOrEqual(normalGravity(near, 0));
        expect(normalGravity(-a, height)).toBe(normalGravity(a, height));
        expect(normalGravity(a, height)).toBeLessThanOrEqual(normalGravity(a, 0));
      }),
    );
  });
});
