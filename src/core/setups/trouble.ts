import { isNotDefined } from '../description/not-defined.ts';
import type { Diagnostic, Facts } from '../diagnostics/diagnostic.ts';
import { forceFact } from '../diagnostics/facts.ts';
import { atBest } from '../uncertainty/propagate.ts';
import type { Prediction } from './prediction.ts';
import { balanceFor, leastPull } from './pull.ts';
import type { Setup } from './setup.ts';

/** Least graduations above the stop, and the largest share of the scale, that advice offers. */
export const LEAST_GRADUATIONS = 5;
export const MOST_OF_RANGE = 0.8;

/** Why a setup can't be used as it stands, or hardly: a sentence key with its facts. */
export interface Trouble {
  readonly code: string;
  readonly facts: Facts;
  /** There is no figure to write at all; otherwise it can be read, but badly. */
  readonly isHopeless: boolean;
}

/** What stands in the way of a setup, worst first; empty where it can be used. */
export function troublesOf(setup: Setup, prediction: Prediction): readonly Trouble[] {
  const { outcome } = prediction;
  switch (outcome.kind) {
    case 'reading':
    case 'band':
      return readBadly(setup, outcome.kind === 'band' ? outcome.upper : outcome.expected);
    case 'ease':
      return handTroubles(setup);
    case 'not-defined':
      return [hopeless('not-defined', { ...outcome.facts, because: outcome.because })];
    case 'on its stop':
      return [hopeless(outcome.kind, { shows: forceFact(outcome.wouldShow), stop: forceFact(outcome.stop) })];
    case 'off the scale':
      return [
        hopeless(outcome.kind, { shows: forceFact(outcome.wouldShow), range: forceFact(outcome.range) }),
        ...handTroubles(setup),
      ];
    case 'moves under the scale':
      return [
        hopeless(outcome.kind, {
          needed: forceFact(outcome.needed),
          weight: forceFact(outcome.ownWeight),
        }),
      ];
    case 'scale on the other side':
      return [hopeless(outcome.kind, { force: forceFact(outcome.force) })];
  }
}

const hopeless = (kind: string, facts: Facts): Trouble => ({
  code: `advice.trouble.${kind}`,
  facts,
  isHopeless: true,
});

function readBadly(setup: Setup, shown: number): readonly Trouble[] {
  const found: Trouble[] = [...handTroubles(setup)];
  const use = useOf(setup, shown);
  if (use === null) return found;
  const say = (code: string, facts: Facts) =>
    found.push({ code: `advice.trouble.${code}`, facts, isHopeless: false });
  if (use.graduations < LEAST_GRADUATIONS)
    say('few-graduations', { graduations: Math.round(use.graduations * 10) / 10, least: LEAST_GRADUATIONS });
  if (use.ofRange > MOST_OF_RANGE)
    say('near-the-end', { share: `${Math.round(100 * use.ofRange)}`, most: `${100 * MOST_OF_RANGE}` });
  const least = setup.watched === 'pull' && setup.way !== 'lower' ? leastPull(setup, atBest) : 0;
  if (least > 0 && shown > 0 && mayMoveUnder(setup, least))
    say('near-its-weight', { weight: forceFact(least) });
  return found;
}

/** A pull less than this many times the weight of the scale is too near to it: common practice, no source. */
const NEAR_ITS_WEIGHT = 1.1;

function mayMoveUnder(setup: Setup, least: number): boolean {
  const balance = balanceFor(setup, atBest, setup.way);
  return !isNotDefined(balance) && balance.effort < NEAR_ITS_WEIGHT * least;
}

function handTroubles(setup: Setup): readonly Trouble[] {
  const pull = pullAtHand(setup);
  const limit = setup.reader.handLimit;
  if (pull === null || limit === null || pull <= limit) return [];
  return [
    {
      code: 'advice.trouble.hand-limit',
      facts: { pull: forceFact(pull), limit: forceFact(limit) },
      isHopeless: true,
    },
  ];
}

/** What the hand pulls with at the best values; `null` where nothing is pulled. */
function pullAtHand(setup: Setup): number | null {
  if (setup.watched !== 'pull' && setup.watched !== 'ease') return null;
  const balance = balanceFor(setup, atBest, setup.way);
  return isNotDefined(balance) ? null : balance.effort;
}

/** How much of an instrument a figure uses. */
export interface InstrumentUse {
  readonly graduations: number;
  /** Share of the range; 0 where there is no end. */
  readonly ofRange: number;
}

export function useOf({ watched, scale, marks }: Setup, shown: number): InstrumentUse | null {
  if (watched !== 'pull') return marks === null ? null : { graduations: shown / marks.step, ofRange: 0 };
  if (scale === null) return null;
  return {
    graduations: (shown - scale.stop) / scale.graduations.step,
    ofRange: shown / scale.range,
  };
}

/** Whether a figure stands well on its instrument and below what the hands may pull. */
export function standsWell(setup: Setup, upper: number): boolean {
  return useOf(setup, upper) !== null && readBadly(setup, upper).length === 0;
}

/** Findings that were not there before: an alternative may not bring any. */
export const newFindings = (
  diagnostics: readonly Diagnostic[],
  before: ReadonlySet<string>,
): readonly Diagnostic[] =>
  diagnostics.filter(
    ({ code, severity }) =>
      severity === 'error' || (severity === 'warning' && (!before.has(code) || CURED.includes(code))),
  );

/** What advice is there to cure is not excused because it was there before. */
const CURED: readonly string[] = [
  'few-graduations',
  'pull-below-the-stop',
  'scale-range',
  'scale-overload',
  'moves-under-the-scale',
  'may-move-under-the-scale',
  'scale-on-the-other-side',
  'no-reading',
  'may-not-come-back',
  'held-by-the-scale',
  'hand-limit',
  'range-says-nothing',
];
