import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exactSum, repeatsOf, serialCorrelation } from './repeats.ts';
import { analysisOfMeans, betweenGroups, varianceAnalysis } from './variance-analysis.ts';

const readings = fc.array(fc.double({ min: -10, max: 10, noNaN: true }), { minLength: 4, maxLength: 4 });
const groups = fc.array(readings, { minLength: 2, maxLength: 6 });

describe('repeats of one measurement', () => {
  it('tell nothing of their scatter when there is one, and nothing at all when there is none', () => {
    expect(repeatsOf([3])).toEqual({ count: 1, mean: 3, deviation: 0, u: 0 });
    expect(repeatsOf([])).toBeNull();
    expect(serialCorrelation([2, 2, 2])).toBeNull();
  });

  it('keep their scatter however large the value is that they share', () => {
    fc.assert(
      fc.property(readings, (values) => {
        const whole = values.map((each) => Math.round(each * 8) / 8);
        const [near, far] = [repeatsOf(whole), repeatsOf(whole.map((each) => each + 2 ** 40))];
        expect(far?.deviation).toBeCloseTo(near?.deviation ?? 9, 9);
      }),
      { seed: 210 },
    );
  });

  it('are summed with the rounding carried along', () => {
    expect(exactSum([1, 1e100, 1, -1e100])).toBe(2);
  });
});

describe('an analysis of variance', () => {
  it('leaves nothing out: what lies between and within groups is all there is', () => {
    fc.assert(
      fc.property(groups, (each) => {
        const found = varianceAnalysis(each);
        const all = repeatsOf(each.flat());
        if (found === null || all === null) throw new Error('no analysis');
        const total = all.deviation ** 2 * (all.count - 1);
        expect(found.between.squares + found.within.squares).toBeCloseTo(total, 8);
        expect(found.between.freedom + found.within.freedom).toBe(all.count - 1);
        expect(found.mean).toBeCloseTo(all.mean, 10);
      }),
      { seed: 211 },
    );
  });

  it('from means and deviations is that from the readings', () => {
    fc.assert(
      fc.property(groups, (each) => {
        const own = each.map(repeatsOf);
        const [a, b] = [
          varianceAnalysis(each),
          analysisOfMeans(
            own.map((of) => of?.mean ?? 0),
            own.map((of) => of?.deviation ?? 0),
            4,
          ),
        ];
        expect(a?.between.squares).toBeCloseTo(b?.between.squares ?? -1, 7);
        expect(a?.within.squares).toBeCloseTo(b?.within.squares ?? -1, 7);
      }),
      { seed: 212 },
    );
  });

  it('finds no scatter between groups that are alike', () => {
    const alike = varianceAnalysis([
      [1, 2, 3],
      [1, 2, 3],
    ]);
    if (alike === null) throw new Error('no analysis');
    expect(betweenGroups(alike, 3)).toBe(0);
    expect(alike.F).toBe(0);
  });

  it('is none for one group, an empty one, or single readings; and has no F where nothing scatters', () => {
    expect(varianceAnalysis([[1, 2]])).toBeNull();
    expect(varianceAnalysis([[1, 2], []])).toBeNull();
    expect(varianceAnalysis([[1], [2]])).toBeNull();
    expect(
      varianceAnalysis([
        [1, 1],
        [2, 2],
      ])?.F,
    ).toBeNull();
  });
});
