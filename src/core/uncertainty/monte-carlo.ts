import type { Interval } from './coverage-interval.ts';
import type { Draws } from './distribution.ts';
import { numericalTolerance } from './linear-check.ts';
import { type RandomStream, randomFrom } from './random.ts';
import { type ValueCounts, valueCounts } from './value-counts.ts';

/**
 * A law for a whole block of trials: one block of numbers a column of the inputs, in their order, and the
 * block to be filled. `NaN` marks a trial without a number; it is counted apart and never comes out.
 */
export type BlockLaw = (inputs: readonly Float64Array[], out: Float64Array) => void;

export interface MonteCarlo {
  readonly inputs: readonly Draws[];
  readonly law: BlockLaw;
  readonly seed: number;
  /** Share of the values that the intervals hold; 0.95 unless it is said. */
  readonly coverage?: number;
  /** A number of trials, or trials until the results stand still. */
  readonly trials: number | Adaptive;
  /** Told after each block, for whoever waits. */
  readonly progress?: (trials: number) => void;
}

/**
 * Until so many digits of u stand still, or all results do within a tolerance; at most as many as said, and
 * at least: two blocks of rounded values may well have the same ends by chance.
 */
export type Adaptive = ({ readonly digits: number } | { readonly tolerance: number }) & {
  readonly atLeast?: number;
  readonly atMost?: number;
};

export interface MonteCarloResult {
  readonly value: number;
  readonly u: number;
  readonly symmetric: Interval;
  readonly shortest: Interval;
  readonly coverage: number;
  /** Trials that gave a number, and those that gave none. */
  readonly trials: number;
  readonly withoutNumber: number;
  readonly seed: number;
  /** Of adaptive runs: the tolerance, and whether all four results stood still within it. */
  readonly tolerance: number | null;
  readonly stable: boolean | null;
}

/** Trials a block: the least that JCGM 101, 7.9.4 b) allows, unless the coverage needs more. */
export const BLOCK = 10_000;
const MOST_TRIALS = 1_000_000;

/**
 * Distributions through a law (JCGM 101:2008, clause 7): best value, standard uncertainty and both 95 %
 * intervals from random trials; with `digits` adaptively, as in 7.9.4: blocks until twice the standard
 * deviation of the means over the blocks of value, u and both ends is within the numerical tolerance.
 *
 * The memory is that of one block and a fixed grid of counts, however many trials there are; quantiles of
 * all trials together come from that grid, not from the means over blocks. `null` where hardly any trial
 * gives a number.
 */
export function monteCarlo(asked: MonteCarlo): MonteCarloResult | null {
  const coverage = asked.coverage ?? 0.95;
  const block = Math.max(BLOCK, Math.ceil(100 / (1 - coverage)));
  const run = startRun(asked, block, coverage);
  const { trials } = asked;
  const most = typeof trials === 'number' ? trials : (trials.atMost ?? MOST_TRIALS);
  let stable: boolean | null = typeof trials === 'number' ? null : false;
  while (run.done() < most) {
    run.next(Math.min(block, most - run.done()));
    asked.progress?.(run.done());
    if (typeof trials !== 'number' && run.standsStill(trials)) {
      stable = true;
      break;
    }
  }
  return run.result(stable, typeof trials === 'number' ? null : trials);
}

interface Run {
  readonly done: () => number;
  readonly next: (count: number) => void;
  readonly standsStill: (asked: Adaptive) => boolean;
  readonly result: (stable: boolean | null, asked: Adaptive | null) => MonteCarloResult | null;
}

const toleranceOf = (asked: Adaptive, u: number): number =>
  'tolerance' in asked ? asked.tolerance : numericalTolerance(u, asked.digits);

function startRun(asked: MonteCarlo, block: number, coverage: number): Run {
  const random = randomFrom(asked.seed);
  const isAdaptive = typeof asked.trials !== 'number';
  const columns = asked.inputs.reduce((sum, each) => sum + each.columns, 0);
  const blocks = Array.from({ length: columns }, () => new Float64Array(block));
  const out = new Float64Array(block);
  const sorted = new Float64Array(block);
  const all = moments();
  const stages = ['value', 'u', 'from', 'to'].map(() => moments());
  let counts: ValueCounts | null = null;
  let done = 0;
  let withoutNumber = 0;
  return {
    done: () => done,
    next: (count) => {
      const views = count === block ? blocks : blocks.map((each) => each.subarray(0, count));
      draw(asked.inputs, views, random);
      asked.law(views, count === block ? out : out.subarray(0, count));
      const own = withNumber(out, count);
      const found = out.subarray(0, own.count);
      done += count;
      withoutNumber += count - own.count;
      if (own.count < 2) return;
      all.merge(own);
      if (counts === null || isAdaptive) {
        const inOrder = sorted.subarray(0, found.length);
        inOrder.set(found);
        inOrder.sort();
        counts ??= valueCounts(inOrder);
        const ends = [(1 - coverage) / 2, (1 + coverage) / 2].map(
          (share) => inOrder[Math.min(found.length - 1, Math.floor(share * found.length))] ?? 0,
        );
        for (const [n, each] of [own.mean, Math.sqrt(own.squares / (own.count - 1)), ...ends].entries())
          stages[n]?.add(each);
      }
      counts.add(found);
    },
    standsStill: (adaptive) => {
      const tolerance = toleranceOf(adaptive, all.deviation());
      if (done < (adaptive.atLeast ?? 0)) return false;
      return (stages[0]?.count() ?? 0) > 1 && stages.every((each) => 2 * each.deviationOfMean() <= tolerance);
    },
    result: (stable, adaptive) =>
      counts === null
        ? null
        : {
            value: all.mean(),
            u: all.deviation(),
            symmetric: {
              from: counts.quantile((1 - coverage) / 2),
              to: counts.quantile((1 + coverage) / 2),
            },
            shortest: counts.shortest(coverage),
            coverage,
            trials: counts.count(),
            withoutNumber,
            seed: asked.seed,
            tolerance: adaptive === null ? null : toleranceOf(adaptive, all.deviation()),
            stable,
          },
  };
}

function draw(inputs: readonly Draws[], blocks: readonly Float64Array[], random: RandomStream): void {
  let first = 0;
  for (const each of inputs) {
    each.fill(blocks.slice(first, first + each.columns), random);
    first += each.columns;
  }
}

interface BlockMoments {
  readonly count: number;
  readonly mean: number;
  /** Sum of the squares about the mean. */
  readonly squares: number;
}

/**
 * The values that are numbers, moved to the front of the block, and their moments, in one pass: about the
 * first of them, so that a small spread of large values keeps its digits.
 */
function withNumber(out: Float64Array, count: number): BlockMoments {
  let kept = 0;
  let sum = 0;
  let squares = 0;
  let first = 0;
  for (let n = 0; n < count; n += 1) {
    const value = out[n] as number;
    if (!Number.isFinite(value)) continue;
    if (kept === 0) first = value;
    const apart = value - first;
    sum += apart;
    squares += apart * apart;
    out[kept] = value;
    kept += 1;
  }
  const mean = kept === 0 ? 0 : sum / kept;
  return { count: kept, mean: first + mean, squares: Math.max(0, squares - sum * mean) };
}

/** Mean and spread of what was added so far; blocks are merged without keeping them (Chan and others, 1983). */
function moments() {
  let count = 0;
  let mean = 0;
  let squares = 0;
  const merge = (other: BlockMoments): void => {
    const together = count + other.count;
    const apart = other.mean - mean;
    mean += (apart * other.count) / together;
    squares += other.squares + (apart * apart * count * other.count) / together;
    count = together;
  };
  const deviation = (): number => (count > 1 ? Math.sqrt(squares / (count - 1)) : 0);
  return {
    merge,
    add: (value: number): void => merge({ count: 1, mean: value, squares: 0 }),
    count: (): number => count,
    mean: (): number => mean,
    deviation,
    deviationOfMean: (): number => deviation() / Math.sqrt(count),
  };
}
