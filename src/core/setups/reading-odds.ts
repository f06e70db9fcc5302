import { isNotDefined } from '../description/not-defined.ts';
import type { SpringScale } from '../instruments/spring-scale.ts';
import { tabledNormalShare } from '../uncertainty/normal-table.ts';
import type { At } from '../uncertainty/propagate.ts';
import { pullByChance } from './reading-by-chance.ts';
import type { Setup } from './setup.ts';
import { type Sense, shiftOf } from './shown.ts';

/**
 * How often each figure is written: figure `(low + n) x step` with share `shares[n]`. What is missing to 1
 * are the readings with no figure: off the scale, or the machine moved under the scale.
 */
export interface ReadingOdds {
  readonly step: number;
  readonly low: number;
  readonly shares: Float64Array;
}

/** Places in the tube's rubbing, and in a band, that a reading is summed over. */
const LAGS = 6;
const PLACES = 16;
/** A hand's scatter further out than this many deviations, and shares below this, are left out. */
const FAR = 5;
const NOTHING = 1e-9;

/**
 * What groups write at one apparatus whose unknowns are all given: summed over the graduations, with the
 * hand's scatter exactly and the rubbing of the tube (and the place in a held band) at evenly spread places.
 * The same reading as `readingChance` draws one by one. `null` where nobody writes anything.
 */
export function readingOdds(setup: Setup, at: At): ReadingOdds | null {
  return setup.watched === 'pull' ? pullOdds(setup, at) : tallyOdds(setup, at);
}

function pullOdds(setup: Setup, at: At): ReadingOdds | null {
  const { scale } = setup;
  if (scale === null) return null;
  const marks = marksOf(scale);
  const shares = new Float64Array(marks.highest - marks.lowest + 1);
  const offset = at(scale.inputs.accuracy) - shiftOf(setup, scale, at);
  const friction = at(scale.inputs.tubeFriction);
  const ends = pullEnds(setup, scale, at);
  if (ends === null) return null;
  const places = ends.from === ends.to ? 1 : PLACES;
  const lags = setup.tapped || friction === 0 ? 1 : LAGS;
  for (let place = 0; place < places; place += 1) {
    const force = ends.from + ((place + 0.5) / places) * (ends.to - ends.from);
    for (let n = 0; n < lags; n += 1) {
      const lag = setup.tapped ? 0 : lagAt(ends.sense, (n + 0.5) / lags);
      addReading(shares, marks, force + offset - lag * friction, setup.reader.scatter, 1 / (places * lags));
    }
  }
  return trimmed({ step: scale.graduations.step, low: marks.lowest, shares });
}

interface Marks {
  readonly step: number;
  readonly lowest: number;
  readonly highest: number;
  readonly stop: number;
  readonly range: number;
}

const marksOf = ({ graduations: { step }, stop, range }: SpringScale): Marks => ({
  step,
  lowest: Math.round(stop / step),
  highest: Math.round(range / step),
  stop,
  range,
});

/** The pull of a state of the apparatus, or both ends of its band. */
function pullEnds(setup: Setup, scale: SpringScale, at: At) {
  const lower = pullByChance(setup, scale, at, 0);
  if (typeof lower === 'string' || lower.moves) return null;
  if (setup.way !== 'held') return { from: lower.force, to: lower.force, sense: lower.sense };
  const upper = pullByChance(setup, scale, at, 1);
  return typeof upper === 'string' ? null : { from: lower.force, to: upper.force, sense: lower.sense };
}

/** Share of the tube's rubbing: it lags behind a growing pull, holds up a falling one. */
function lagAt(sense: Sense, share: number): number {
  switch (sense) {
    case 'pulling more':
      return share;
    case 'letting off':
      return -share;
    case 'resting':
      return 2 * share - 1;
  }
}

/** What a hand makes of one shown figure: beyond the range it writes nothing, at the stop the stop. */
function addReading(
  shares: Float64Array,
  marks: Marks,
  shown: number,
  scatter: number,
  weight: number,
): void {
  const { step, lowest, highest, stop, range } = marks;
  if (shown > range) return;
  const add = (mark: number, share: number): void => {
    const n = Math.min(Math.max(mark, lowest), highest) - lowest;
    shares[n] = (shares[n] ?? 0) + weight * share;
  };
  if (shown < stop) {
    add(lowest, 1);
    return;
  }
  const deviation = scatter * Math.abs(shown);
  const first = Math.round((shown - FAR * deviation) / step);
  const last = Math.round((shown + FAR * deviation) / step);
  let below = 0;
  for (let mark = first; mark < last; mark += 1) {
    const upTo = tabledNormalShare(((mark + 0.5) * step - shown) / deviation);
    add(mark, upTo - below);
    below = upTo;
  }
  add(last, 1 - below);
}

/** What is counted or measured along: no hand scatter, only the eye. */
function tallyOdds({ machine, station, marks }: Setup, at: At): ReadingOdds | null {
  const tally = machine.tally?.(station, at);
  if (tally === undefined || marks === null || isNotDefined(tally)) return null;
  const low = Math.max(0, Math.round(tally.value / marks.step));
  return { step: marks.step, low, shares: Float64Array.of(1) };
}

/** Figures that sums are taken over: 25 to a deviation of a hand's scatter. */
const MOST_FIGURES = 256;

/**
 * The same odds on marks so many times as far apart that sums of them end in time: each share goes to the
 * two marks around it, so that the mean stays. The variance grows by at most a quarter of the new step's
 * square, and an order that hangs on less than a step is lost: below 0.2 % of the groups where 19 of 20 see it.
 * As they are where they are few.
 *
 * @example coarserOdds({ step: 1, low: 2, shares: Float64Array.of(0.5, 0.5) }).step // => 1
 */
export function coarserOdds(
  odds: ReadingOdds,
  times = Math.ceil(odds.shares.length / MOST_FIGURES),
): ReadingOdds {
  if (times <= 1) return odds;
  const low = Math.floor(odds.low / times);
  const shares = new Float64Array(Math.ceil(odds.shares.length / times) + 2);
  for (const [n, share] of odds.shares.entries()) {
    const place = (odds.low + n) / times - low;
    const below = Math.floor(place);
    shares[below] = (shares[below] ?? 0) + share * (1 - (place - below));
    shares[below + 1] = (shares[below + 1] ?? 0) + share * (place - below);
  }
  return trimmed({ step: odds.step * times, low, shares });
}

/**
 * The mean of one more reading than `before` holds: sums of graduations, still counted in whole ones.
 *
 * @example [...sumOdds({ step: 1, low: 2, shares: Float64Array.of(0.5, 0.5) }, { step: 1, low: 2, shares: Float64Array.of(0.5, 0.5) }).shares] // => [0.25, 0.5, 0.25]
 */
export function sumOdds(before: ReadingOdds, one: ReadingOdds): ReadingOdds {
  const shares = new Float64Array(before.shares.length + one.shares.length - 1);
  for (let n = 0; n < before.shares.length; n += 1) {
    const share = before.shares[n] ?? 0;
    if (share === 0) continue;
    for (let k = 0; k < one.shares.length; k += 1)
      shares[n + k] = (shares[n + k] ?? 0) + share * (one.shares[k] ?? 0);
  }
  return trimmed({ step: one.step, low: before.low + one.low, shares });
}

function trimmed({ step, low, shares }: ReadingOdds): ReadingOdds {
  let first = 0;
  let last = shares.length - 1;
  while (first < last && (shares[first] ?? 0) < NOTHING) first += 1;
  while (last > first && (shares[last] ?? 0) < NOTHING) last -= 1;
  return { step, low: low + first, shares: shares.slice(first, last + 1) };
}
