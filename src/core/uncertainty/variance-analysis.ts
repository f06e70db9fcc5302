import { exactSum, repeatsOf } from './repeats.ts';

/** One row of an analysis of variance. */
export interface Variation {
  readonly freedom: number;
  readonly squares: number;
  /** Mean square: squares over degrees of freedom. */
  readonly mean: number;
}

/** How much groups of readings differ, against how much readings of one group do. */
export interface VarianceAnalysis {
  readonly mean: number;
  readonly between: Variation;
  readonly within: Variation;
  /** Mean squares, one over the other; `null` where readings of one group do not differ at all. */
  readonly F: number | null;
  /** Share of all variation that lies between the groups. */
  readonly rSquared: number | null;
}

/**
 * One-way analysis of variance of readings in groups (JCGM 100:2008, H.5). Everything is taken from the
 * first reading on, so that digits which all readings share don't cost any. `null` for fewer than two
 * groups, or where no group has a second reading.
 *
 * @example varianceAnalysis([[1, 2], [3, 4]]).F // => 8
 */
export function varianceAnalysis(groups: readonly (readonly number[])[]): VarianceAnalysis | null {
  const first = groups[0]?.[0];
  const all = groups.flat();
  if (first === undefined || groups.length < 2 || groups.some((each) => each.length === 0)) return null;
  if (all.length <= groups.length) return null;
  const shifted = groups.map((group) => group.map((each) => each - first));
  const mean = exactSum(shifted.flat()) / all.length;
  const means = shifted.map((group) => exactSum(group) / group.length);
  const between = exactSum(shifted.map((group, n) => group.length * ((means[n] ?? 0) - mean) ** 2));
  const within = exactSum(shifted.flatMap((group, n) => group.map((each) => (each - (means[n] ?? 0)) ** 2)));
  return analysisOf(
    first + mean,
    variation(groups.length - 1, between),
    variation(all.length - groups.length, within),
  );
}

/** Groups of one size of which only mean and standard deviation are known, as in JCGM 100, H.5, table H.9. */
export function analysisOfMeans(
  means: readonly number[],
  deviations: readonly number[],
  perGroup: number,
): VarianceAnalysis | null {
  const found = repeatsOf(means);
  if (found === null || means.length < 2 || perGroup < 2 || deviations.length !== means.length) return null;
  const freedom = means.length * (perGroup - 1);
  const within = exactSum(deviations.map((each) => each * each * (perGroup - 1)));
  const between = perGroup * found.deviation ** 2 * (means.length - 1);
  return analysisOf(found.mean, variation(means.length - 1, between), variation(freedom, within));
}

const variation = (freedom: number, squares: number): Variation => ({
  freedom,
  squares,
  mean: squares / freedom,
});

function analysisOf(mean: number, between: Variation, within: Variation): VarianceAnalysis {
  const total = between.squares + within.squares;
  return {
    mean,
    between,
    within,
    F: within.mean > 0 ? between.mean / within.mean : null,
    rSquared: total > 0 ? between.squares / total : null,
  };
}

/**
 * The part of the scatter that lies between the groups themselves, as a standard deviation (JCGM 100,
 * H.5.2.5): 0 where readings of one group scatter as much as the groups do.
 */
export const betweenGroups = ({ between, within }: VarianceAnalysis, perGroup: number): number =>
  Math.sqrt(Math.max(0, (between.mean - within.mean) / perGroup));
