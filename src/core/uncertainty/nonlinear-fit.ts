import { type Fit, leastSquares } from './least-squares.ts';
import { type Matrix, transpose } from './matrix.ts';

/** A fit of a law that bends, with how it was reached. */
export interface NonlinearFit extends Fit {
  readonly steps: number;
  /** False where the steps ran out before the parameters stood still. */
  readonly hasSettled: boolean;
}

export interface Bending {
  /**
   * Reading less law for some parameters, each divided by the reading's u where that is known; `null` where
   * the law has no number there. What is known of a parameter beforehand is one more reading of it.
   */
  readonly residuals: (parameters: readonly number[]) => readonly number[] | null;
  readonly start: readonly number[];
  readonly mostSteps?: number;
}

/** Slopes are taken over the cube root of rounding, where cutting off and rounding weigh the same. */
const SLOPE_STEP = Math.cbrt(Number.EPSILON);
/** Parameters stand still when a step changes none of them by more than this share. */
const SETTLED = 1e-12;
/**
 * Damping at the start as a share of the curvature. Long steps come first; where they end in a flat place
 * that tells nothing of a parameter, the way is begun again with shorter ones.
 */
const DAMPINGS = [1e-3, 1, 1e3, 1e6] as const;
/** Nothing can be gained any more. */
const MOST_DAMPING = 1e20;

/**
 * Least squares of a law that is not linear in its parameters, by Levenberg and Marquardt: steps of the
 * straightened problem, damped in the scale of each parameter until they gain (gain ratio after Nielsen,
 * 1999). Finds the minimum beside its start, not the deepest. Covariance from the slopes at the end: the
 * linear law again. `null` where the law has no number at the start, or the readings can't tell the
 * parameters apart.
 *
 * @example nonlinearFit({ residuals: ([a]) => [4 - a ** 2, 4 - a ** 2], start: [1] }).parameters // => [2]
 */
export function nonlinearFit(bending: Bending): NonlinearFit | null {
  let found: NonlinearFit | null = null;
  for (const damping of DAMPINGS) {
    found = descent(bending, damping) ?? found;
    if (found?.hasSettled) return found;
  }
  return found;
}

function descent({ residuals, start, mostSteps = 2000 }: Bending, firstDamping: number): NonlinearFit | null {
  let parameters = [...start];
  let left = residuals(parameters);
  if (left === null || !isNumbers(left)) return null;
  let squares = sumOfSquares(left);
  let damping = firstDamping;
  let growth = 2;
  let hasSettled = false;
  let steps = 0;
  let scale = parameters.map(() => 0);
  for (; steps < mostSteps && !hasSettled; steps += 1) {
    const slopes = slopesOf(residuals, parameters);
    if (slopes === null) break;
    // The greatest curvature seen so far, so that a flat stretch does not set a parameter free.
    scale = scale.map((each, k) => Math.max(each, Math.hypot(...slopes.map((row) => row[k] ?? 0))));
    for (;;) {
      const step = dampedStep(slopes, left, scale, damping);
      const next = parameters.map((each, k) => each - (step?.[k] ?? 0));
      const isSmall = next.every(
        (each, k) => Math.abs(each - (parameters[k] ?? 0)) <= SETTLED * Math.abs(each),
      );
      const there = step === null ? null : residuals(next);
      const found = there === null || !isNumbers(there) ? Number.POSITIVE_INFINITY : sumOfSquares(there);
      if (there !== null && found <= squares) {
        const gain = (squares - found) / expectedGain(slopes, left, step ?? []);
        damping *= Math.max(1 / 3, 1 - (2 * Math.min(gain, 1) - 1) ** 3);
        growth = 2;
        [parameters, left, squares] = [next, there, found];
        hasSettled = isSmall;
        break;
      }
      if (isSmall || damping > MOST_DAMPING) {
        hasSettled = step !== null;
        break;
      }
      damping *= growth;
      growth *= 2;
    }
    if (damping > MOST_DAMPING) break;
  }
  return settled(residuals, parameters, left, steps, hasSettled);
}

/** The straightened problem, each parameter held to where it is by its damping. */
function dampedStep(
  slopes: Matrix,
  left: readonly number[],
  scale: readonly number[],
  damping: number,
): readonly number[] | null {
  const hold = Math.sqrt(damping);
  const held = scale.map((each, k) => scale.map((_, n) => (n === k ? hold * (each === 0 ? 1 : each) : 0)));
  return leastSquares([...slopes, ...held], [...left, ...scale.map(() => 0)])?.parameters ?? null;
}

/** What a step should gain if the law were straight. */
function expectedGain(slopes: Matrix, left: readonly number[], step: readonly number[]): number {
  const after = left.map((each, n) =>
    (slopes[n] ?? []).reduce((rest, slope, k) => rest - slope * (step[k] ?? 0), each),
  );
  return Math.max(sumOfSquares(left) - sumOfSquares(after), Number.MIN_VALUE);
}

/** Covariance at the end; a law that is flat there tells nothing. */
function settled(
  residuals: Bending['residuals'],
  parameters: readonly number[],
  left: readonly number[],
  steps: number,
  hasSettled: boolean,
): NonlinearFit | null {
  const slopes = slopesOf(residuals, parameters);
  const straight = slopes === null ? null : leastSquares(slopes, left);
  if (straight === null) return null;
  const freedom = left.length - parameters.length;
  const squares = sumOfSquares(left);
  const variance = freedom > 0 ? squares / freedom : 0;
  return {
    parameters,
    unscaled: straight.unscaled,
    covariance: straight.unscaled.map((row) => row.map((each) => each * variance)),
    residuals: left,
    sumOfSquares: squares,
    freedom,
    deviation: Math.sqrt(variance),
    steps,
    hasSettled,
  };
}

/** d residual / d parameter, one row a reading, between two points beside it; one side alone at an end. */
function slopesOf(residuals: Bending['residuals'], parameters: readonly number[]): Matrix | null {
  const here = residuals(parameters);
  const columns = parameters.map((each, k) => {
    const step = SLOPE_STEP * (each === 0 ? 1 : Math.abs(each));
    const moved = (by: number): readonly number[] | null =>
      residuals(parameters.map((value, n) => (n === k ? value + by : value)));
    const [above, below] = [moved(step), moved(-step)];
    const from = below ?? here;
    const to = above ?? here;
    const width = (above === null ? 0 : step) + (below === null ? 0 : step);
    return from === null || to === null || width === 0
      ? null
      : to.map((value, n) => (value - (from[n] ?? 0)) / width);
  });
  const found = columns.filter((each) => each !== null);
  return found.length === parameters.length && found.every(isNumbers) ? transpose(found) : null;
}

const sumOfSquares = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each * each, 0);
const isNumbers = (values: readonly number[]): boolean => values.every(Number.isFinite);
