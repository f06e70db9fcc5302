import type { NotDefined } from '../description/not-defined.ts';
import { notDefined } from '../description/not-defined.ts';
import { predict } from '../setups/predict.ts';
import type { GoodRange, Outcome, Prediction } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { type Cause, causesOf, unitsFor } from './causes.ts';
import { density } from './figure.ts';
import { meaningAt } from './meaning-at.ts';
import type { Meaning, ReadingUnit, WrittenReading } from './written-reading.ts';

/**
 * What is made of one reading. `good` lies in the good range; `a little off` lies outside it and is
 * not queried; `look again` is said only where a mistake, or no known cause at all, is more probable
 * than a good reading.
 */
export interface Judgement {
  readonly reading: WrittenReading;
  readonly meaning: Meaning;
  readonly verdict: 'good' | 'a little off' | 'look again' | 'no reading' | 'unreadable' | 'not judged';
  /** Why it could not be judged, where it was not. */
  readonly because: NotDefined | null;
  /** The reading in SI, as written or in the instrument's own unit. */
  readonly value: number | null;
  readonly good: GoodRange | null;
  /** Explanations with their probability, most probable first, those above 1 percent. */
  readonly causes: readonly LikelyCause[];
}

export interface LikelyCause {
  readonly code: string;
  readonly kind: Cause['kind'] | 'unexplained';
  readonly probability: number;
  /** What the instrument would have shown, SI; absent for `unexplained`. */
  readonly wouldShow: number | null;
}

/** Share of readings that nothing on the list explains: common practice, no source. */
export const UNEXPLAINED_RATE = 0.03;
/** Numbers that a slip of the pen can lead to: from a thousandth to a thousand times the figure. */
const DECADES = Math.log(1e6);
const LEAST_SHOWN = 0.01;

const UNEXPLAINED: LikelyCause = {
  code: 'unexplained',
  kind: 'unexplained',
  wouldShow: null,
  probability: 1,
};

/** Judges one reading against the setup it says it is from. */
export function judge(
  reading: WrittenReading,
  setup: Setup,
  prediction: Prediction = predict(setup),
): Judgement {
  const own = ownUnit(setup);
  const meaning = meaningAt(reading.written, { setup, outcome: prediction.outcome, own });
  const good = goodOf(prediction.outcome);
  const none = { reading, meaning, because: null, value: null, good, causes: [] };
  if (meaning.kind === 'blank') return { ...none, verdict: 'no reading' };
  if (meaning.kind === 'unreadable')
    return { ...none, verdict: 'unreadable', because: notDefined(meaning.why, meaning.facts) };
  if (meaning.kind === 'bound')
    return { ...none, verdict: 'not judged', because: notDefined('reading.bound') };
  if (meaning.kind === 'at the stop') return atTheStop(reading, meaning, setup, prediction);
  if (meaning.kind === 'off the scale') {
    const isOff = prediction.outcome.kind === 'off the scale';
    return { ...none, causes: isOff ? [] : [UNEXPLAINED], verdict: isOff ? 'good' : 'look again' };
  }
  const unit = meaning.unit ?? own;
  const value = meaning.number * unit.si;
  if (good === null && prediction.outcome.kind !== 'on its stop')
    return { ...none, value, verdict: 'not judged', because: whyNot(prediction.outcome) };
  const causes = posterior(causesOf(setup, unit, prediction), meaning.number, unit, setup);
  return { ...none, value, causes: shown(causes), verdict: verdictOf(causes, value, good) };
}

/** What the paper calls good is never queried: a mistake that lies within the range can't be told apart. */
function verdictOf(
  causes: readonly LikelyCause[],
  value: number,
  good: GoodRange | null,
): Judgement['verdict'] {
  // No range: the pointer rests on its stop, and so it was written.
  if (good === null) return causes[0]?.kind === 'good' ? 'good' : 'look again';
  const slack = 1e-9 * Math.abs(value);
  if (value >= good.from - slack && value <= good.to + slack) return 'good';
  return causes[0]?.kind === 'good' ? 'a little off' : 'look again';
}

/** Bayes over good, each mistake and "unexplained", in the measure d(ln number) so that units compare. */
function posterior(
  causes: readonly Cause[],
  number: number,
  unit: ReadingUnit,
  setup: Setup,
): readonly LikelyCause[] {
  const weighed = causes.map((cause) => ({
    code: cause.code,
    kind: cause.kind,
    wouldShow: cause.figure === null ? null : (cause.figure.low + cause.figure.high) / 2,
    weight: cause.rate * likelihood(cause, number, unit, setup),
  }));
  const span = (setup.scale?.range ?? 1) / unit.si;
  const unexplained =
    UNEXPLAINED_RATE *
    (0.5 / DECADES + (Math.abs(number) <= span ? (0.5 * grain(number, setup, unit)) / span : 0));
  const total = weighed.reduce((sum, each) => sum + each.weight, unexplained);
  return [
    ...weighed.map(({ weight, ...cause }) => ({ ...cause, probability: weight / total })),
    { code: 'unexplained', kind: 'unexplained' as const, wouldShow: null, probability: unexplained / total },
  ].sort((a, b) => b.probability - a.probability);
}

function likelihood(cause: Cause, number: number, unit: ReadingUnit, setup: Setup): number {
  const si = (cause.unit ?? unit).si;
  if (cause.figure === null)
    return Math.abs(number * si - (setup.scale?.stop ?? 0)) < halfStep(setup) ? 1 : 0;
  return density(cause.figure, number * si) * si * grain(number, setup, cause.unit ?? unit);
}

/** d number = number x d ln number; near 0 a graduation is the least that can be told apart. */
const grain = (number: number, setup: Setup, unit: ReadingUnit): number =>
  Math.max(Math.abs(number), halfStep(setup) / unit.si);

const halfStep = (setup: Setup): number => ((setup.marks ?? setup.scale?.graduations)?.step ?? 0) / 2;

/** "It rests on the stop": right where that is the outcome, else a reason to look again. */
function atTheStop(
  reading: WrittenReading,
  meaning: Meaning,
  setup: Setup,
  prediction: Prediction,
): Judgement {
  const none = { reading, meaning, because: null, value: null, good: goodOf(prediction.outcome), causes: [] };
  if (prediction.outcome.kind === 'on its stop') return { ...none, verdict: 'good' };
  const stopped = causesOf(setup, ownUnit(setup), prediction).filter((cause) => cause.figure === null);
  const total = stopped.reduce((sum, cause) => sum + cause.rate, UNEXPLAINED_RATE);
  const causes: LikelyCause[] = [
    ...stopped.map((cause) => ({
      code: cause.code,
      kind: cause.kind,
      wouldShow: null,
      probability: cause.rate / total,
    })),
    { code: 'unexplained', kind: 'unexplained', wouldShow: null, probability: UNEXPLAINED_RATE / total },
  ];
  causes.sort((a, b) => b.probability - a.probability);
  return { ...none, causes, verdict: 'look again' };
}

/** The unit that a bare number is in: the instrument's own marks. */
export function ownUnit(setup: Setup): ReadingUnit {
  const marks = setup.marks ?? setup.scale?.graduations;
  const units = unitsFor(setup);
  const near = units.find((unit) => marks !== undefined && Math.abs(unit.si / marks.unitSi - 1) < 1e-9);
  return near ?? (units[0] as ReadingUnit);
}

const goodOf = (outcome: Outcome): GoodRange | null => ('good' in outcome ? outcome.good : null);

const whyNot = (outcome: Outcome): NotDefined =>
  outcome.kind === 'not-defined' ? outcome : notDefined(`outcome.${outcome.kind.replaceAll(' ', '-')}`);

const shown = (causes: readonly LikelyCause[]): readonly LikelyCause[] =>
  causes.filter((cause) => cause.probability >= LEAST_SHOWN);
