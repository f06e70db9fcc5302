import {
  element,
  identity,
  inverseOfPositive,
  type Matrix,
  multiply,
  times,
  transpose,
} from '../uncertainty/matrix.ts';
import type { Measured, Part, Unknown } from '../uncertainty/measured.ts';
import { type Knowledge, NOTHING_KNOWN } from './knowledge.ts';
import { noiseOf, type Persistent, persistentOf } from './persistence.ts';

/** How far each unknown lies from its value in the files, in its own SI unit. */
export type Shift = ReadonlyMap<string, number>;

/** One bench reading, with the law of what it should have shown. */
export interface Observation {
  /** How the reading is told of: its place in the book. */
  readonly name: string;
  readonly date: string;
  /** What was read; SI. */
  readonly value: number;
  /** What should be read where the unknowns lie so, with what scatters it; `null` where it has no figure. */
  readonly figureAt: (shift: Shift) => Measured | null;
  /** Mark of the setup that was built for it; its own settings are made anew each day. */
  readonly setting: string | null;
  /** What the teacher decided about it; `null` where nothing was said. */
  readonly decided: 'use' | 'leave out' | null;
}

/** One reading beside what was expected of it before, and what the others make one expect. */
export interface FittedReading {
  readonly observation: Observation;
  /** As the files have it, before any reading, with the standard uncertainty of one such reading. */
  readonly expected: number;
  readonly u: number;
  /** How many u it lies off what the files make one expect. */
  readonly off: number;
  /** The same against what the other readings and the files together make one expect. */
  readonly offOthers: number | null;
  /** Figure of the law after the fit. */
  readonly fitted: number;
  readonly isUsed: boolean;
  readonly because: SetAside | null;
}

/** Why a reading is not used: too far from the files, at odds with the rest, or by the teacher's word. */
export type SetAside = 'far from the files' | 'at odds with the others' | 'left out' | 'no figure';

/** One unknown before and after. */
export interface FittedUnknown {
  readonly unknown: Unknown;
  readonly shift: number;
  /** Standard uncertainty now; before it was the unknown's own. */
  readonly u: number;
}

export interface BenchFit {
  readonly knowledge: Knowledge;
  readonly unknowns: readonly FittedUnknown[];
  readonly readings: readonly FittedReading[];
  /** Set aside for being far from the files, yet at one with each other: the files are likelier wrong. */
  readonly agreeing: readonly FittedReading[];
  readonly isConverged: boolean;
}

/** Of a thousand honest readings three lie further off: such a one is told, and not taken in unasked. */
const FAR = 3;

/**
 * What bench readings tell of the apparatus: the most probable state of its unknowns and the normal law
 * around it (Laplace), with the ranges of the files as prior, taken as normal ones of the same u.
 *
 *     least of  x' x + (y - f(x))' R^-1 (y - f(x)),  covariance = (I + H' R^-1 H)^-1,  x = shift / u
 *
 * by Gauss-Newton steps with H = df/dx taken anew at each. R is what scatters the readings (hand,
 * graduation, pointer sticking in its tube, settings of the day), as expected before. A reading far from
 * the files, or at odds with the others, is set aside and told; the teacher decides.
 *
 * Source: Gelman et al., Bayesian Data Analysis, 4.1 (normal approximation at the mode), from memory;
 * left-out residuals from the inverse covariance: Rasmussen and Williams, Gaussian Processes, 5.4.2, from
 * memory. Neglects the sharp ends of evenly spread priors.
 */
export function benchFit(observations: readonly Observation[]): BenchFit {
  const prior = observations.map((observation) => ({ observation, ...priorOf(observation) }));
  let used = prior.filter(
    ({ observation, off }) =>
      off !== null &&
      observation.decided !== 'leave out' &&
      (observation.decided === 'use' || Math.abs(off) <= FAR),
  );
  const atOdds = new Map<Observation, number>();
  let fit = fitOf(used.map((each) => each.observation));
  // One at a time: a reading that is far off makes its honest neighbours look odd as well.
  for (;;) {
    const worst = used
      .map(({ observation }, n) => ({ observation, off: fit.offOthers[n] ?? 0 }))
      .filter(({ observation, off }) => observation.decided !== 'use' && Math.abs(off) > FAR)
      .sort((a, b) => Math.abs(b.off) - Math.abs(a.off))[0];
    if (worst === undefined) break;
    atOdds.set(worst.observation, worst.off);
    used = used.filter(({ observation }) => observation !== worst.observation);
    fit = fitOf(used.map((each) => each.observation));
  }
  const readings = prior.map((each): FittedReading => {
    const place = used.indexOf(each);
    const { observation, off } = each;
    return {
      observation,
      expected: each.expected,
      u: each.u,
      off: off ?? 0,
      offOthers: place >= 0 ? (fit.offOthers[place] ?? null) : (atOdds.get(observation) ?? null),
      fitted: observation.figureAt(fit.shift)?.value ?? each.expected,
      isUsed: place >= 0,
      because: place >= 0 ? null : whyNot(observation, off, atOdds),
    };
  });
  return {
    knowledge: fit.knowledge,
    unknowns: fit.knowledge.unknowns.map((unknown, n) => ({
      unknown,
      shift: fit.knowledge.shift[n] ?? 0,
      u: Math.sqrt(element(fit.knowledge.covariance, n, n)),
    })),
    readings,
    agreeing: agreeingOf(readings),
    isConverged: fit.isConverged,
  };
}

function whyNot(
  observation: Observation,
  off: number | null,
  atOdds: ReadonlyMap<Observation, number>,
): SetAside {
  if (off === null) return 'no figure';
  if (observation.decided === 'leave out') return 'left out';
  return atOdds.has(observation) ? 'at odds with the others' : 'far from the files';
}

const NOWHERE: Shift = new Map();

function priorOf(observation: Observation) {
  const figure = observation.figureAt(NOWHERE);
  if (figure === null) return { expected: 0, u: 0, off: null };
  const u = Math.hypot(...figure.parts.map((part) => part.slope * part.unknown.u));
  return { expected: figure.value, u, off: (observation.value - figure.value) / u };
}

/** Two and more far readings that the fit with all of them takes for honest. */
function agreeingOf(readings: readonly FittedReading[]): readonly FittedReading[] {
  const far = readings.filter(({ because }) => because === 'far from the files');
  if (far.length < 2) return [];
  const all = [...readings.filter(({ isUsed }) => isUsed), ...far];
  const { offOthers } = fitOf(all.map(({ observation }) => observation));
  return far.filter((each) => Math.abs(offOthers[all.indexOf(each)] ?? Number.POSITIVE_INFINITY) <= FAR)
    .length === far.length
    ? far
    : [];
}

interface Fit {
  readonly knowledge: Knowledge;
  readonly shift: Shift;
  readonly offOthers: readonly number[];
  readonly isConverged: boolean;
}

const MOST_STEPS = 50;
/** In shares of each unknown's own u. */
const CLOSE = 1e-9;

function fitOf(observations: readonly Observation[]): Fit {
  const first = linearAt(observations, NOWHERE);
  if (first === null || observations.length === 0)
    return { knowledge: NOTHING_KNOWN, shift: NOWHERE, offOthers: [], isConverged: first !== null };
  const { unknowns } = first;
  const y = observations.map(({ value }) => value);
  let at = first;
  let x: readonly number[] = unknowns.map(() => 0);
  let isConverged = false;
  for (let step = 0; step < MOST_STEPS && !isConverged; step += 1) {
    const next = bestFrom(at, x, y);
    let share = 1;
    let moved = towards(x, next, share);
    let there = linearAt(observations, shiftOf(unknowns, moved), first);
    // Where the law ends on the way, half of the step is tried.
    while (there === null && share > CLOSE) {
      share /= 2;
      moved = towards(x, next, share);
      there = linearAt(observations, shiftOf(unknowns, moved), first);
    }
    if (there === null) break;
    isConverged = share === 1 && Math.max(...moved.map((each, n) => Math.abs(each - (x[n] ?? 0)))) < CLOSE;
    x = moved;
    at = there;
  }
  const shift = shiftOf(unknowns, x);
  const u = unknowns.map((unknown) => unknown.u);
  return {
    knowledge: {
      unknowns,
      shift: unknowns.map(({ id }) => shift.get(id) ?? 0),
      covariance: at.scaled.map((row, i) => row.map((each, j) => each * (u[i] ?? 0) * (u[j] ?? 0))),
    },
    shift,
    offOthers: leftOut(at, x, y),
    isConverged,
  };
}

interface Linear {
  readonly unknowns: readonly Unknown[];
  readonly figures: readonly number[];
  /** d figure / d x, x in shares of each unknown's u. */
  readonly H: Matrix;
  readonly noise: Matrix;
  /** Inverse of H H' + R. */
  readonly weight: Matrix;
  /** Inverse of I + H' R^-1 H: covariance of x. */
  readonly scaled: Matrix;
}

/**
 * The readings' figures and slopes at a state of the unknowns, with the noise of the first state; `null` where
 * one of them has no figure, or slopes so steep that nothing can be told from them.
 */
function linearAt(
  observations: readonly Observation[],
  shift: Shift,
  first: Linear | null = null,
): Linear | null {
  const found: Persistent[] = [];
  for (const [n, observation] of observations.entries()) {
    const figure = observation.figureAt(shift);
    if (figure === null) return null;
    found.push(persistentOf(figure, observation, n));
  }
  const unknowns = first?.unknowns ?? distinct(found.flatMap(({ parts }) => parts));
  const figures = found.map(({ value }) => value);
  const H = found.map(({ parts }) => unknowns.map((unknown) => slopeIn(parts, unknown.id) * unknown.u));
  const noise = first?.noise ?? noiseOf(found);
  // Of the size of the noise: where nothing is unknown, H has no columns.
  const weight = inverseOfPositive(added(noise, multiply(H, transpose(H))));
  const precision = inverseOfPositive(noise);
  if (weight === null || precision === null || !figures.every(Number.isFinite)) return null;
  const told = multiply(transpose(H), multiply(precision, H));
  const scaled = inverseOfPositive(added(identity(unknowns.length), told));
  return scaled === null ? null : { unknowns, figures, H, noise, weight, scaled };
}

const distinct = (parts: readonly Part[]): readonly Unknown[] => [
  ...new Map(
    parts.filter(({ unknown }) => unknown.u > 0).map(({ unknown }) => [unknown.id, unknown]),
  ).values(),
];
const slopeIn = (parts: readonly Part[], id: string): number =>
  parts.find(({ unknown }) => unknown.id === id)?.slope ?? 0;

/** Most probable state by the law as it is at x: H' S^-1 (y - f + H x), S = H H' + R. */
const bestFrom = (at: Linear, x: readonly number[], y: readonly number[]): readonly number[] =>
  times(transpose(at.H), times(at.weight, residual(at, x, y)));

/** How far each reading lies off what the others foretell: (S^-1 r) / root of the diagonal of S^-1. */
const leftOut = (at: Linear, x: readonly number[], y: readonly number[]): readonly number[] =>
  times(at.weight, residual(at, x, y)).map((each, n) => each / Math.sqrt(element(at.weight, n, n)));

function residual(at: Linear, x: readonly number[], y: readonly number[]): readonly number[] {
  const moved = times(at.H, x);
  return y.map((each, n) => each - (at.figures[n] ?? 0) + (moved[n] ?? 0));
}

const towards = (from: readonly number[], to: readonly number[], share: number): readonly number[] =>
  from.map((each, n) => each + share * ((to[n] ?? 0) - each));

const shiftOf = (unknowns: readonly Unknown[], x: readonly number[]): Shift =>
  new Map(unknowns.map(({ id, u }, n) => [id, (x[n] ?? 0) * u]));

const added = (a: Matrix, b: Matrix): Matrix =>
  a.map((row, i) => row.map((each, j) => each + element(b, i, j)));
