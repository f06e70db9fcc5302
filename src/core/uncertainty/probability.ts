/**
 * Share of a normal law (mean 0, standard deviation 1) below a value.
 *
 * @example normalShare(1.96) // => 0.975002
 */
export function normalShare(z: number): number {
  const beyond = 0.5 * upperGamma(0.5, (z * z) / 2);
  return z > 0 ? 1 - beyond : beyond;
}

/** Height of a normal law (mean 0, standard deviation 1). */
export const normalDensity = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/**
 * Share of a gamma law of scale 1 below a value: the regularised incomplete gamma function.
 *
 * @example gammaShare(1, 1) // => 0.632121
 */
export const gammaShare = (shape: number, x: number): number => 1 - upperGamma(shape, x);

/** Height of a gamma law of scale 1. */
export const gammaDensity = (shape: number, x: number): number =>
  x <= 0 ? 0 : Math.exp((shape - 1) * Math.log(x) - x - logGamma(shape));

/** Share of t with so many degrees of freedom below a value. */
export function studentShare(t: number, freedom: number): number {
  const beyond = 0.5 * betaShare(freedom / 2, 0.5, freedom / (freedom + t * t));
  return t > 0 ? 1 - beyond : beyond;
}

/** Share of F with two degrees of freedom below a value. */
export const fisherShare = (f: number, above: number, below: number): number =>
  f <= 0 ? 0 : betaShare(above / 2, below / 2, (above * f) / (above * f + below));

/**
 * Where a rising share reaches a value, by halving; `high` is where the search begins and is doubled until
 * it lies beyond.
 *
 * @example quantileFrom(normalShare, 0.975, 0, 1) // => 1.959964
 */
export function quantileFrom(
  share: (x: number) => number,
  wanted: number,
  low: number,
  high: number,
): number {
  let [from, to] = [low, high];
  while (share(to) < wanted && to < 1e300) to = low + 2 * (to - low);
  for (let n = 0; n < 200 && to - from > 1e-14 * Math.abs(to); n += 1) {
    const middle = (from + to) / 2;
    if (share(middle) < wanted) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}

/** Coefficients of Lanczos (g = 7, n = 9; from memory), held by a test on factorials. */
const LANCZOS = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;

/** @example logGamma(5) // => 3.178054 */
export function logGamma(x: number): number {
  if (x < 0.5) return Math.log(Math.PI / Math.abs(Math.sin(Math.PI * x))) - logGamma(1 - x);
  const t = x + 6.5;
  const series = LANCZOS.reduce<number>((sum, each, n) => sum + (n === 0 ? each : each / (x - 1 + n)), 0);
  return 0.5 * Math.log(2 * Math.PI) + (x - 0.5) * Math.log(t) - t + Math.log(series);
}

const TINY = 1e-300;
const EPSILON = 1e-16;

/** Share of a gamma law of scale 1 above a value: by series near 0, by continued fraction beyond. */
function upperGamma(shape: number, x: number): number {
  if (x <= 0) return 1;
  const front = Math.exp(shape * Math.log(x) - x - logGamma(shape));
  if (x < shape + 1) {
    let term = 1 / shape;
    let sum = term;
    for (let n = 1; n < 1000 && term > sum * EPSILON; n += 1) {
      term *= x / (shape + n);
      sum += term;
    }
    return 1 - front * sum;
  }
  let b = x + 1 - shape;
  let c = 1 / TINY;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < 1000; n += 1) {
    const a = -n * (n - shape);
    b += 2;
    d = 1 / notZero(a * d + b);
    c = notZero(b + a / c);
    const step = c * d;
    h *= step;
    if (Math.abs(step - 1) < EPSILON) break;
  }
  return front * h;
}

/** Regularised incomplete beta function, by its continued fraction (Lentz). */
function betaShare(a: number, b: number, x: number): number {
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(logGamma(a + b) - logGamma(a) - logGamma(b) + a * Math.log(x) + b * Math.log(1 - x));
  return x < (a + 1) / (a + b + 2)
    ? (front * betaFraction(a, b, x)) / a
    : 1 - (front * betaFraction(b, a, 1 - x)) / b;
}

function betaFraction(a: number, b: number, x: number): number {
  let c = 1;
  let d = 1 / notZero(1 - ((a + b) * x) / (a + 1));
  let h = d;
  for (let m = 1; m < 1000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / notZero(1 + even * d);
    c = notZero(1 + even / c);
    h *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / notZero(1 + odd * d);
    c = notZero(1 + odd / c);
    h *= d * c;
    if (Math.abs(d * c - 1) < EPSILON) break;
  }
  return h;
}

const notZero = (x: number): number => (Math.abs(x) < TINY ? TINY : x);
