import type { Interval } from '../../src/core/uncertainty/coverage-interval.ts';
import {
  arcSine,
  type Draws,
  gaussian,
  gaussians,
  inexactLimits,
  rectangular,
  student,
} from '../../src/core/uncertainty/distribution.ts';
import { monteCarlo } from '../../src/core/uncertainty/monte-carlo.ts';

type Figures = Readonly<Record<string, number>>;

const ends = (name: string, { from, to }: Interval): Figures => ({
  [`${name}[0]`]: from,
  [`${name}[1]`]: to,
});

/** A law of single numbers, trial by trial. */
export function byTrials(
  inputs: readonly Draws[],
  law: (x: readonly number[]) => number,
  more: { readonly trials?: number; readonly coverage?: number } = {},
) {
  const found = monteCarlo({
    inputs,
    law: (blocks, out) => {
      const x = new Array<number>(blocks.length);
      for (let n = 0; n < out.length; n += 1) {
        for (const [k, block] of blocks.entries()) x[k] = block[n] ?? 0;
        out[n] = law(x);
      }
    },
    seed: 101,
    trials: more.trials ?? 1_000_000,
    coverage: more.coverage ?? 0.95,
  });
  if (found === null) throw new Error('no result');
  return found;
}

/** Comparison loss (JCGM 101, 9.4). The place of a shortest interval is found with the cube root of the trials. */
function loss(x1: number, r: number): Figures {
  const inputs = gaussians(
    [x1, 0],
    [
      [0.005 ** 2, r * 0.005 ** 2],
      [r * 0.005 ** 2, 0.005 ** 2],
    ],
  );
  if (inputs === null) throw new Error('no inputs');
  const found = byTrials([inputs], ([a = 0, b = 0]) => a * a + b * b, { trials: 8_000_000 });
  return { 'exact.y': found.value, 'exact.u': found.u, ...ends('exact.shortest_interval95', found.shortest) };
}

/** Mass by comparison in air (JCGM 101, 9.3). */
export const massInAir = () =>
  byTrials(
    [
      gaussian(100000, 0.05),
      gaussian(1.234, 0.02),
      rectangular(1.1, 1.3),
      rectangular(7000, 9000),
      rectangular(7950, 8050),
    ],
    ([mR = 0, dmR = 0, air = 0, W = 1, R = 1]) => (mR + dmR) * (1 + (air - 1.2) * (1 / W - 1 / R)) - 100000,
    { trials: 4_000_000 },
  );

/** What trials say of each example, by the names of its figures. */
export const trialAnswers: Readonly<Record<string, () => Figures>> = {
  's1-9.2.3-rectangular-sum': () => {
    const four = [1, 2, 3, 4].map(() => rectangular(-Math.sqrt(3), Math.sqrt(3)));
    return ends('interval95', byTrials(four, (x) => x.reduce((sum, each) => sum + each, 0)).symmetric);
  },
  's1-9.4-loss-x1=0-r=0': () => loss(0, 0),
  's1-9.4-loss-x1=0.05-r=0': () => loss(0.05, 0),
  's1-9.4-loss-x1=0.01-r=0.9': () => loss(0.01, 0.9),
  's1-9.5-gauge-block': () => {
    const found = byTrials(
      [
        student(50000623, 25, 18),
        student(215, 6, 24),
        student(0, 4, 5),
        student(0, 7, 8),
        rectangular(9.5e-6, 13.5e-6),
        gaussian(-0.1, 0.2),
        arcSine(-0.5, 0.5),
        inexactLimits(-1e-6, 1e-6, 0.1e-6),
        inexactLimits(-0.05, 0.05, 0.025),
      ],
      ([L = 0, D = 0, d1 = 0, d2 = 0, alpha = 0, mean = 0, swing = 0, dalpha = 0, dtheta = 0]) =>
        L + D + d1 + d2 - L * (dalpha * (mean + swing) + alpha * dtheta) - 50000000,
      { coverage: 0.99 },
    );
    return { u_mc: found.u, ...ends('interval99_mc', found.symmetric) };
  },
  'npl-log-rectangular': () => {
    const found = byTrials([rectangular(0.1, 1.1)], ([x = 1]) => Math.log(x), { trials: 8_000_000 });
    return {
      'mc.y': found.value,
      'mc.u': found.u,
      ...ends('mc.shortest_interval95', found.shortest),
      ...ends('mc.exact_shortest_interval95', found.shortest),
    };
  },
  'tn1900-E3-viscometer': () => {
    const found = byTrials(
      [
        gaussian(4.63, 0.0463),
        gaussian(61, 6.1),
        gaussian(36.6, 5.49),
        gaussian(2217, 0.5),
        gaussian(1180, 0.5),
        gaussian(810, 0.5),
      ],
      ([muC = 0, tM = 0, tC = 1, B = 0, M = 0, C = 0]) => (muC * tM * (B - M)) / (tC * (B - C)),
    );
    return { 'mc.y': found.value, 'mc.u': found.u, ...ends('mc.interval95', found.symmetric) };
  },
};
