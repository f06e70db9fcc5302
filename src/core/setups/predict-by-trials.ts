import { graduationsOutward } from '../instruments/graduations.ts';
import { decimalsFor } from '../quantities/print-quantity.ts';
import type { Interval } from '../uncertainty/coverage-interval.ts';
import { type LinearCheck, linearCheck } from '../uncertainty/linear-check.ts';
import { COVERAGE_95, type Measured, standardUncertainty } from '../uncertainty/measured.ts';
import { type MonteCarloResult, monteCarlo } from '../uncertainty/monte-carlo.ts';
import { atBest } from '../uncertainty/propagate.ts';
import type { GoodRange, Prediction } from './prediction.ts';
import { leastPull } from './pull.ts';
import { type Fate, type PlaceInBand, readingChance } from './reading-by-chance.ts';
import type { Setup } from './setup.ts';

/** What honest readings of a setup are, by trials; SI, of the trials that have something to write. */
export interface ByTrials {
  /** Mean and standard deviation of what groups write, rounded to graduations. */
  readonly expected: number;
  readonly u: number;
  /** 19 of 20 of what groups write. */
  readonly symmetric: Interval;
  readonly shortest: Interval;
  /** What a good reading lies within: the same, or for a band 19 of 20 at each of its ends. */
  readonly good: GoodRange;
  /** Share of all trials by what became of them. */
  readonly fates: Readonly<Partial<Record<Fate, number>>>;
  readonly trials: number;
  readonly seed: number;
  /** Twice the standard deviation of each result is at most this, where they stood still. */
  readonly tolerance: number;
  readonly stable: boolean;
}

export interface TrialOptions {
  readonly seed: number;
  readonly atMost?: number;
  readonly progress?: (trials: number) => void;
}

const LEAST_TRIALS = 50_000;
const MOST_TRIALS = 300_000;
/** Trials are to be five times as exact as the test of the linear law needs them (JCGM 101, 8.2). */
const FINER = 5;

/**
 * A setup by trials (JCGM 101): what the linear law can't do, that is rounding to graduations, the stop and
 * the end of the scale, a pull near nothing, and held-still bands spread over their width. Adaptive to a
 * fifth of a graduation. `null` where hardly any trial has anything to write.
 */
export function predictByTrials(setup: Setup, options: TrialOptions): ByTrials | null {
  const step = stepOf(setup);
  if (step === null) return null;
  const written = run(setup, 'anywhere', step, options);
  if (written.result === null) return null;
  const isBand = setup.watched === 'pull' && setup.way === 'held';
  const lower = isBand ? run(setup, 'lower end', step, options).result : written.result;
  const upper = isBand ? run(setup, 'upper end', step, options).result : written.result;
  const { value, u, symmetric, shortest, trials, stable } = written.result;
  return {
    expected: value,
    u,
    symmetric,
    shortest,
    good: { from: lower?.symmetric.from ?? symmetric.from, to: upper?.symmetric.to ?? symmetric.to },
    fates: written.fates,
    trials: trials + written.result.withoutNumber,
    seed: options.seed,
    tolerance: step / FINER,
    stable: stable === true,
  };
}

const stepOf = (setup: Setup): number | null =>
  (setup.watched === 'pull' ? setup.scale?.graduations.step : setup.marks?.step) ?? null;

function run(
  setup: Setup,
  place: PlaceInBand,
  step: number,
  { seed, atMost = MOST_TRIALS, progress }: TrialOptions,
): { readonly result: MonteCarloResult | null; readonly fates: ByTrials['fates'] } {
  const { inputs, read } = readingChance(setup, place);
  const counts = new Map<Fate, number>();
  let all = 0;
  const draws = new Float64Array(inputs.length);
  const result = monteCarlo({
    inputs,
    law: (blocks, out) => {
      for (let n = 0; n < out.length; n += 1) {
        for (let k = 0; k < draws.length; k += 1) draws[k] = blocks[k]?.[n] ?? 0;
        const { fate, written } = read(draws);
        counts.set(fate, (counts.get(fate) ?? 0) + 1);
        out[n] = written ?? Number.NaN;
      }
      all += out.length;
    },
    seed,
    trials: { tolerance: step / FINER, atLeast: Math.min(LEAST_TRIALS, atMost), atMost },
    ...(progress === undefined ? {} : { progress }),
  });
  return { result, fates: Object.fromEntries([...counts].map(([fate, count]) => [fate, count / all])) };
}

/** Why the linear law is doubtful for a setup. */
export type NearLimit =
  | 'near the stop'
  | 'near the end of the scale'
  | 'near the weight of the scale'
  | 'near no pull'
  | 'coarse graduations'
  | 'no figure by the linear law';

/** Graduations coarser than this share of all doubt: a reading is then one of two or three marks. */
const COARSE = 0.5;

/** The limits that a setup is near to: within 19 of 20 of its reading, or of its pull. Empty: none, or nothing is read. */
export function nearALimit(setup: Setup, prediction: Prediction): readonly NearLimit[] {
  if (stepOf(setup) === null) return [];
  const found: NearLimit[] = [];
  const { read, pull, outcome } = prediction;
  const spread = (value: Measured): number => COVERAGE_95 * standardUncertainty(value);
  if (read === null) found.push('no figure by the linear law');
  if (setup.watched === 'pull' && setup.scale !== null && read !== null) {
    const low = prediction.lower ?? read;
    if (low.value - spread(low) < setup.scale.stop) found.push('near the stop');
    if (read.value + spread(read) > setup.scale.range) found.push('near the end of the scale');
  }
  if (setup.watched === 'pull' && pull !== null) {
    const least = leastPull(setup, atBest);
    if (least > 0 && Math.abs(pull.value - least) < spread(pull)) found.push('near the weight of the scale');
    if (Math.abs(pull.value) < spread(pull)) found.push('near no pull');
  }
  const graduation = prediction.budget.find((row) => row.unknown === 'reading/graduation');
  if (outcome.kind === 'reading' && (graduation?.share ?? 0) > COARSE) found.push('coarse graduations');
  return found;
}

/** Which law a range comes from, and why. */
export interface ChosenRange {
  readonly used: 'linear' | 'trials' | 'neither';
  readonly because:
    | 'far from every limit'
    | 'the linear law holds'
    | 'the linear law does not hold'
    | 'only trials have a figure'
    | 'hardly any trial has a figure'
    | 'nothing is read';
  readonly near: readonly NearLimit[];
  readonly good: GoodRange | null;
  readonly linear: GoodRange | null;
  readonly trials: ByTrials | null;
  /** The test of JCGM 101, clause 8; `null` where there are not two results. */
  readonly check: LinearCheck | null;
}

/**
 * The range of a setup from the linear law or from trials, whichever holds. Trials run where the setup is
 * near a limit, or always if that is wished. The linear result stands where both its ends are within one
 * graduation of those by trials (or half the last digit that u is printed with, if that is more): JCGM 101,
 * clause 8, with the graduation as the last digit that means something, since what is written has no finer one.
 */
export function byTrialsOrLinear(
  setup: Setup,
  prediction: Prediction,
  options: TrialOptions & { readonly always?: boolean },
): ChosenRange {
  const step = stepOf(setup);
  const near = nearALimit(setup, prediction);
  const linear = 'good' in prediction.outcome ? prediction.outcome.good : null;
  const nothing = { near, linear, trials: null, check: null };
  if (step === null) return { ...nothing, used: 'neither', because: 'nothing is read', good: null };
  if (near.length === 0 && options.always !== true)
    return { ...nothing, used: 'linear', because: 'far from every limit', good: linear };
  const trials = predictByTrials(setup, options);
  if (trials === null)
    return linear === null
      ? { ...nothing, used: 'neither', because: 'hardly any trial has a figure', good: null }
      : { ...nothing, used: 'linear', because: 'hardly any trial has a figure', good: linear };
  const ends = linearEnds(setup, prediction);
  const good = outward(setup, trials.good);
  if (ends === null || linear === null)
    return { near, linear, trials, check: null, used: 'trials', because: 'only trials have a figure', good };
  const check = linearCheck(ends, trials.good, Math.max(step, halfLastDigit(setup, trials.u)));
  return check.holds
    ? { near, linear, trials, check, used: 'linear', because: 'the linear law holds', good: linear }
    : { near, linear, trials, check, used: 'trials', because: 'the linear law does not hold', good };
}

/**
 * Half the last digit that a u is printed with on the marks of its instrument: two digits where it begins
 * with a 1, since half of one digit would then be half of u itself.
 */
function halfLastDigit(setup: Setup, u: number): number {
  const { unitSi } = (setup.watched === 'pull' ? setup.scale?.graduations : setup.marks) ?? { unitSi: 1 };
  return u > 0 ? 0.5 * 10 ** -decimalsFor(u / unitSi) * unitSi : 0;
}

/** Ends of the linear law before they are rounded outward, cut at stop and end as what is written is. */
function linearEnds(setup: Setup, { read, lower }: Prediction): Interval | null {
  if (read === null) return null;
  const low = lower ?? read;
  const least = setup.watched === 'pull' ? (setup.scale?.stop ?? 0) : 0;
  const most = setup.watched === 'pull' ? (setup.scale?.range ?? Number.MAX_VALUE) : Number.MAX_VALUE;
  const onTheMarks = (figure: number): number => Math.min(Math.max(figure, least), most);
  return {
    from: onTheMarks(low.value - COVERAGE_95 * standardUncertainty(low)),
    to: onTheMarks(read.value + COVERAGE_95 * standardUncertainty(read)),
  };
}

/** Whole graduations: what is written stands on them, but the stop or the end of a scale may not. */
function outward(setup: Setup, { from, to }: GoodRange): GoodRange {
  const marks = setup.watched === 'pull' ? setup.scale?.graduations : setup.marks;
  if (marks === undefined || marks === null) return { from, to };
  const least = setup.watched === 'pull' ? (setup.scale?.stop ?? 0) : 0;
  const most = setup.watched === 'pull' ? (setup.scale?.range ?? to) : Number.MAX_VALUE;
  const whole = graduationsOutward(marks, from, to);
  return { from: Math.max(whole.from, least), to: Math.min(whole.to, most) };
}
