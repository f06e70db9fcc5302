import { coverageFactor } from '../uncertainty/coverage-factor.ts';
import { leastSquares } from '../uncertainty/least-squares.ts';
import { element, type Matrix } from '../uncertainty/matrix.ts';
import { COVERAGE_95 } from '../uncertainty/measured.ts';

/** One mass hung from the scale: what it weighs, and what the scale showed. */
export interface CheckPoint {
  readonly weight: number;
  readonly shown: number;
}

/** A scale against known masses: the straight line through its corrections. */
export interface ScaleCheck {
  /** What has to be added to a reading at `about`. */
  readonly zero: number;
  /** And more of it for each unit that a reading lies above `about`. */
  readonly slope: number;
  /** Of zero and slope, from the scatter about the line, or from the rounding where that is more. */
  readonly covariance: Matrix;
  /** How many standard uncertainties on either side hold 19 of 20: by t where only the scatter tells u. */
  readonly coverage: number;
  /** Standard deviation of a correction about the line. */
  readonly residual: number;
  readonly freedom: number;
  readonly about: number;
  /** Lowest and highest reading that was checked. */
  readonly from: number;
  readonly to: number;
}

/** Two points lie on a line whatever they are; the third begins to tell how well. */
const FEWEST = 3;

/** What the line is asked for: the reading it is hung up at, and what one graduation is worth. */
export interface CheckedHow {
  readonly about?: number;
  /** Readings can't be better than their rounding: three that lie on a line by luck still have that. */
  readonly graduation?: number;
}

/**
 * The calibration line of a scale: correction = weight - shown = zero + slope x (shown - about), by ordinary
 * least squares, with its covariance from the scatter, or from rounding to a graduation (step² / 12) where
 * that is more. `null` with fewer than three masses, or all alike.
 *
 * Source: JCGM 100:2008, H.3.1 to H.3.3. Holds where the scale is off by a straight line and every reading
 * scatters alike. Neglects what is not known about the masses, which is far less than a graduation.
 *
 * @example
 * const points = [1, 2, 3].map((weight) => ({ weight, shown: weight - 0.1 }));
 * Number(scaleCheck(points)?.zero.toFixed(9)) // => 0.1
 */
export function scaleCheck(
  points: readonly CheckPoint[],
  { about = 0, graduation = 0 }: CheckedHow = {},
): ScaleCheck | null {
  if (points.length < FEWEST) return null;
  const fit = leastSquares(
    points.map(({ shown }) => [1, shown - about]),
    points.map(({ weight, shown }) => weight - shown),
  );
  if (fit === null) return null;
  const shown = points.map((point) => point.shown);
  const [zero = 0, slope = 0] = fit.parameters;
  const rounding = graduation ** 2 / 12;
  const isByScatter = fit.deviation ** 2 > rounding;
  return {
    zero,
    slope,
    covariance: isByScatter ? fit.covariance : fit.unscaled.map((row) => row.map((each) => each * rounding)),
    coverage: isByScatter && fit.freedom > 0 ? coverageFactor(fit.freedom, 0.95) : COVERAGE_95,
    residual: fit.deviation,
    freedom: fit.freedom,
    about,
    from: Math.min(...shown),
    to: Math.max(...shown),
  };
}

/** What to add to a reading, how well that is known, and whether any mass was hung near it. */
export interface Correction {
  readonly correction: number;
  readonly u: number;
  /** Outside the readings that were checked: the line is taken on trust there. */
  readonly isBeyond: boolean;
}

/**
 * The correction at a reading: u² = u²(zero) + d² u²(slope) + 2 d cov(zero, slope), d from `about`
 * (JCGM 100:2008, H.3.4).
 */
export function correctionAt(
  { zero, slope, covariance, about, from, to }: ScaleCheck,
  shown: number,
): Correction {
  const d = shown - about;
  const variance =
    element(covariance, 0, 0) + d ** 2 * element(covariance, 1, 1) + 2 * d * element(covariance, 0, 1);
  return {
    correction: zero + slope * d,
    u: Math.sqrt(Math.max(0, variance)),
    isBeyond: shown < from || shown > to,
  };
}
