import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { element } from '../uncertainty/matrix.ts';
import { randomFrom } from '../uncertainty/random.ts';
import { correctionAt, scaleCheck } from './scale-check.ts';

interface Published {
  readonly id: string;
  readonly inputs: { readonly rows: readonly { t_degC: number; correction_degC: number }[] };
  readonly expected: Readonly<Record<string, { readonly value: number; readonly tol_abs: number }>>;
}
const { cases } = JSON.parse(
  readFileSync(new URL('../../../test/reference/measurement-uncertainty.json', import.meta.url), 'utf8'),
) as { readonly cases: readonly Published[] };
const published = (id: string): Published => {
  const found = cases.find((each) => each.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};
const pointsOf = ({ inputs }: Published) =>
  inputs.rows.map((row) => ({ weight: row.t_degC + row.correction_degC, shown: row.t_degC }));

describe('a scale against known masses', () => {
  it('gives the line, its covariance and its scatter as JCGM 100, H.3 prints them for a thermometer', () => {
    const line = published('gum-H3-fit');
    const check = scaleCheck(pointsOf(line), { about: 20 });
    if (check === null) throw new Error('no line');
    const [v1, v2, both] = [
      element(check.covariance, 0, 0),
      element(check.covariance, 1, 1),
      element(check.covariance, 0, 1),
    ];
    const got: Readonly<Record<string, number>> = {
      y1: check.zero,
      's(y1)': Math.sqrt(v1),
      y2: check.slope,
      's(y2)': Math.sqrt(v2),
      'r(y1,y2)': both / Math.sqrt(v1 * v2),
      s: check.residual,
    };
    for (const [name, value] of Object.entries(got)) {
      const wanted = line.expected[name];
      expect(Math.abs(value - (wanted?.value ?? Number.NaN)), name).toBeLessThanOrEqual(wanted?.tol_abs ?? 0);
    }
  });

  it('foretells a correction as H.3.4 does, and says that no reading was taken so far out', () => {
    const { expected, ...rest } = published('gum-H3-predicted-correction');
    const check = scaleCheck(pointsOf({ expected, ...rest }), { about: 20 });
    if (check === null) throw new Error('no line');
    const at30 = correctionAt(check, 30);
    expect(Math.abs(at30.correction - (expected['b(30)']?.value ?? 0))).toBeLessThanOrEqual(5e-5);
    expect(Math.abs(at30.u - (expected.u?.value ?? 0))).toBeLessThanOrEqual(5e-5);
    expect(at30.isBeyond).toBe(true);
    expect(correctionAt(check, 24).isBeyond).toBe(false);
    expect(check.freedom).toBe(9);
  });

  it('gives the same correction wherever its line is hung up', () => {
    const masses = fc.array(fc.double({ min: 0.1, max: 5, noNaN: true }), { minLength: 4, maxLength: 9 });
    fc.assert(
      fc.property(masses, fc.double({ min: 0, max: 5, noNaN: true }), fc.nat(), (weights, about, seed) => {
        const random = randomFrom(seed);
        fc.pre(Math.max(...weights) - Math.min(...weights) > 0.5);
        const points = weights.map((weight) => ({
          weight,
          shown: weight * 0.98 + 0.05 + 0.03 * random.normal(),
        }));
        const [one, other] = [scaleCheck(points), scaleCheck(points, { about })];
        if (one === null || other === null) throw new Error('no line');
        for (const shown of [0, 1.7, 4]) {
          expect(correctionAt(other, shown).correction).toBeCloseTo(correctionAt(one, shown).correction, 9);
          expect(correctionAt(other, shown).u).toBeCloseTo(correctionAt(one, shown).u, 7);
        }
      }),
      { seed: 213, numRuns: 100 },
    );
  });

  it('is never better than the rounding of its readings, however well they lie on a line', () => {
    const points = [1, 2, 5].map((weight) => ({ weight, shown: weight }));
    const lucky = scaleCheck(points, { graduation: 0.1 });
    if (lucky === null) throw new Error('no line');
    expect(lucky.residual).toBeLessThan(1e-12);
    // By hand: mean 8/3, sum of squares about it 26/3, so u^2 = (1/3 + (5 - 8/3)^2 / (26/3)) x 0.01 / 12.
    const u = Math.sqrt((1 / 3 + (5 - 8 / 3) ** 2 / (26 / 3)) * (0.01 / 12));
    expect(correctionAt(lucky, 5).u).toBeCloseTo(u, 12);
    expect(lucky.coverage).toBe(1.96);
    // Scattered by far more than a graduation, one reading left over tells next to nothing: t of one degree.
    const scattered = scaleCheck([{ weight: 1, shown: 0 }, ...points.slice(1)], { graduation: 0.1 });
    expect(scattered?.coverage).toBeCloseTo(12.706, 2);
  });

  it('says nothing of fewer than three masses, or of one mass hung again and again', () => {
    const point = { weight: 2, shown: 1.9 };
    expect(scaleCheck([point, { weight: 3, shown: 2.9 }])).toBeNull();
    expect(scaleCheck([point, point, point])).toBeNull();
  });
});
