import { cholesky, element, type Matrix } from './matrix.ts';
import type { RandomStream } from './random.ts';

/** Something to draw from: one column of numbers, or several that vary together. */
export interface Draws {
  readonly columns: number;
  /** Fills one block a column, all of one length. */
  readonly fill: (blocks: readonly Float64Array[], random: RandomStream) => void;
}

/** One quantity and what is known of it. Moments that the law does not have are `null`. */
export interface Distribution extends Draws {
  readonly mean: number | null;
  /** Standard deviation: the standard uncertainty that goes with this law. */
  readonly u: number | null;
}

/** Several quantities that vary together. */
export interface JointDistribution extends Draws {
  readonly means: readonly number[];
  readonly covariance: Matrix;
}

/**
 * Anywhere between two limits, evenly (JCGM 101:2008, 6.4.2).
 *
 * @example rectangular(0, 12).u // => 3.464102
 */
export function rectangular(low: number, high: number): Distribution {
  inOrder(low, high);
  return one((low + high) / 2, (high - low) / Math.sqrt(12), (block, random) => {
    random.fillEven(block);
    const width = high - low;
    for (let n = 0; n < block.length; n += 1) block[n] = low + width * (block[n] as number);
  });
}

/**
 * Between two limits that are themselves only known to ± d: a curvilinear trapezoid (JCGM 101, 6.4.3).
 *
 * @example inexactLimits(-1, 1, 0.1).u // => 0.578312
 */
export function inexactLimits(low: number, high: number, d: number): Distribution {
  inOrder(low, high);
  if (!(d >= 0 && d < (high - low) / 2))
    throw new RangeError(`limits ${low}..${high} can't be inexact by ${d}`);
  return one((low + high) / 2, Math.sqrt((high - low) ** 2 / 12 + d ** 2 / 9), (block, random) => {
    random.fillEven(block);
    for (let n = 0; n < block.length; n += 1) {
      const a = low - d + 2 * d * (block[n] as number);
      block[n] = a + (low + high - 2 * a) * random.even();
    }
  });
}

/**
 * A symmetric trapezoid whose top is `top` times as wide as its base (JCGM 101, 6.4.4).
 *
 * @example trapezoidal(0, 2, 1).u // => 0.577350
 */
export function trapezoidal(low: number, high: number, top: number): Distribution {
  inOrder(low, high);
  if (!(top >= 0 && top <= 1))
    throw new RangeError(`the top of a trapezoid is a share of its base, not ${top}`);
  const half = (high - low) / 2;
  return one((low + high) / 2, half * Math.sqrt((1 + top ** 2) / 6), (block, random) => {
    random.fillEven(block);
    for (let n = 0; n < block.length; n += 1)
      block[n] = low + half * ((1 + top) * (block[n] as number) + (1 - top) * random.even());
  });
}

/**
 * A symmetric triangle (JCGM 101, 6.4.5).
 *
 * @example triangular(0, 2).u // => 0.408248
 */
export const triangular = (low: number, high: number): Distribution => trapezoidal(low, high, 0);

/**
 * Something that swings between two limits like a sine, caught at any moment (JCGM 101, 6.4.6).
 *
 * @example arcSine(-1, 1).u // => 0.707107
 */
export function arcSine(low: number, high: number): Distribution {
  inOrder(low, high);
  const half = (high - low) / 2;
  return one((low + high) / 2, half * Math.SQRT1_2, (block, random) => {
    random.fillEven(block);
    for (let n = 0; n < block.length; n += 1)
      block[n] = low + half * (1 + Math.sin(2 * Math.PI * (block[n] as number)));
  });
}

/** A best estimate and its standard uncertainty (JCGM 101, 6.4.7). */
export function gaussian(mean: number, u: number): Distribution {
  notNegative(u);
  return one(mean, u, (block, random) => {
    random.fillNormal(block);
    for (let n = 0; n < block.length; n += 1) block[n] = mean + u * (block[n] as number);
  });
}

/**
 * A mean of few repeats: scaled and shifted t with so many degrees of freedom (JCGM 101, 6.4.9). It has
 * no mean with one degree of freedom, and no standard deviation with two or less.
 *
 * @example student(0, 1, 4).u // => 1.414214
 * @example student(0, 1, 2).u // => null
 */
export function student(mean: number, scale: number, freedom: number): Distribution {
  notNegative(scale);
  positive(freedom);
  const u = freedom > 2 ? scale * Math.sqrt(freedom / (freedom - 2)) : null;
  return one(freedom > 1 ? mean : null, u, (block, random) => {
    random.fillNormal(block);
    for (let n = 0; n < block.length; n += 1)
      block[n] =
        mean + (scale * (block[n] as number)) / Math.sqrt((2 * gammaDraw(freedom / 2, random)) / freedom);
  });
}

/** Not negative, with only its mean known (JCGM 101, 6.4.10). */
export function exponential(mean: number): Distribution {
  positive(mean);
  return one(mean, mean, (block, random) => {
    random.fillEven(block);
    for (let n = 0; n < block.length; n += 1) block[n] = -mean * Math.log(1 - (block[n] as number));
  });
}

/**
 * Not negative, of a shape and a scale; a count q of rare things gives the shape q + 1 (JCGM 101, 6.4.11).
 *
 * @example gamma(4, 0.25).mean // => 1
 */
export function gamma(shape: number, scale: number): Distribution {
  positive(shape);
  positive(scale);
  return one(shape * scale, Math.sqrt(shape) * scale, (block, random) => {
    for (let n = 0; n < block.length; n += 1) block[n] = scale * gammaDraw(shape, random);
  });
}

/**
 * Several normal quantities with their covariance (JCGM 101, 6.4.8), drawn through Cholesky's triangle.
 * `null` where the covariance is not positive definite.
 */
export function gaussians(means: readonly number[], covariance: Matrix): JointDistribution | null {
  const L = cholesky(covariance);
  if (L === null || L.length !== means.length) return null;
  return {
    columns: means.length,
    means,
    covariance,
    fill: (blocks, random) => {
      for (const block of blocks) random.fillNormal(block);
      // From the last to the first: each column needs only those before it, still as drawn.
      for (let i = means.length - 1; i >= 0; i -= 1) combine(blocks, L, i, means[i] ?? 0);
    },
  };
}

/** Column i becomes its mean and the row i of the triangle times the columns up to it. */
function combine(blocks: readonly Float64Array[], L: Matrix, i: number, mean: number): void {
  const into = blocks[i];
  if (into === undefined) return;
  const own = element(L, i, i);
  for (let n = 0; n < into.length; n += 1) into[n] = mean + own * (into[n] as number);
  for (const [j, from] of blocks.slice(0, i).entries()) {
    const factor = element(L, i, j);
    if (factor === 0) continue;
    for (let n = 0; n < into.length; n += 1) into[n] = (into[n] as number) + factor * (from[n] as number);
  }
}

/** Gamma of scale 1 (Marsaglia and Tsang, 2000); a shape under 1 is drawn one higher and brought back. */
function gammaDraw(shape: number, random: RandomStream): number {
  if (shape < 1) return gammaDraw(shape + 1, random) * (1 - random.even()) ** (1 / shape);
  const d = shape - 1 / 3;
  const c = 1 / Math.sqrt(9 * d);
  for (;;) {
    const x = random.normal();
    const v = (1 + c * x) ** 3;
    if (v > 0 && Math.log(1 - random.even()) < 0.5 * x * x + d - d * v + d * Math.log(v)) return d * v;
  }
}

function one(
  mean: number | null,
  u: number | null,
  fill: (block: Float64Array, random: RandomStream) => void,
): Distribution {
  return {
    columns: 1,
    mean,
    u,
    fill: ([block], random) => {
      if (block !== undefined) fill(block, random);
    },
  };
}

function inOrder(low: number, high: number): void {
  if (!(low <= high)) throw new RangeError(`limits ${low}..${high} are not in order`);
}

function notNegative(u: number): void {
  if (!(u >= 0)) throw new RangeError(`an uncertainty is not negative: ${u}`);
}

function positive(value: number): void {
  if (!(value > 0)) throw new RangeError(`${value} is not more than 0`);
}
