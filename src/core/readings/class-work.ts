import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import { forceOf } from '../parts/weight.ts';
import { newtons } from '../quantities/brands.ts';
import type { Predicted } from '../setups/difference.ts';
import type { Prediction } from '../setups/prediction.ts';
import { balanceFor, inputsOf } from '../setups/pull.ts';
import type { Setup } from '../setups/setup.ts';
import { shiftOf } from '../setups/shown.ts';
import { exactly, type Measured, measured } from '../uncertainty/measured.ts';
import { type At, propagate } from '../uncertainty/propagate.ts';

/**
 * The pull at the hook behind a figure on the scale: the figure and what the scale shows too little as it
 * hangs, which is what the chart adds. What the marks are off by and the rubbing of the tube (untapped:
 * anywhere up to its bound) are doubt only, as on the chart.
 */
export function pullBehind(setup: Setup, shown: Measured): Measured | null {
  const { scale } = setup;
  if (scale === null) return null;
  const rubbing = setup.tapped ? exactly(0) : RUBBING;
  return propagate(
    (at) =>
      newtons(
        at(shown) +
          shiftOf(setup, scale, at) -
          at(scale.inputs.accuracy) +
          at(rubbing) * at(scale.inputs.tubeFriction),
      ),
    [shown, rubbing, ...inputsOf(setup)],
  );
}

/** Anywhere from 0 to 1 of the tube's rubbing: its root mean square is 1/√3. */
const RUBBING: Measured = measured(0, {
  id: 'class/tube friction',
  u: 1 / Math.sqrt(3),
  shape: 'even',
  origin: 'stated',
});

/** Work in and out over one travel of the pull, from a pull that was found. Joules, metres. */
export interface FoundWork {
  /** Travel of the pull. */
  readonly travel: number;
  /** The pull's own work. */
  readonly pulled: Measured;
  /** What sinking parts and springs of the machine gave besides; mostly nothing. */
  readonly helped: Measured;
  /** Load times its rise. */
  readonly out: Measured;
  /** All that was given less what came out. */
  readonly rest: Measured;
  /** Work out over all that was given. */
  readonly efficiency: Measured;
}

/** Load over pull, as the class found it. */
export function advantageOf(at: Predicted, pull: Measured): Measured | NotDefined {
  const why = withoutForce(at.prediction, pull);
  if (why !== null) return why;
  return (
    propagate(
      (each) => {
        const against = againstOf(at.setup, each);
        return against === null ? null : against / each(pull);
      },
      [pull, ...inputsOf(at.setup)],
    ) ?? notDefined('setup.no-balance')
  );
}

/**
 * The work account of a pull that was found: pull times its travel and what sinking parts give, against load
 * times rise. Travels are the machine's own (its velocity ratio); friction goes into none of it, so that
 * what is left over is what the class found. Not defined where nothing moves, or where it isn't raised.
 */
export function workOf({ setup, prediction }: Predicted, pull: Measured): FoundWork | NotDefined {
  const { account } = prediction;
  const why = withoutForce(prediction, pull);
  if (why !== null) return why;
  if (isNotDefined(account)) return account;
  if (setup.way !== 'raise') return notDefined('setup.efficiency-only-raising');
  const travel = account.effortTravel;
  const through = (law: (rates: Rates, at: At) => number): Measured | null =>
    propagate(
      (at) => {
        const rates = ratesOf(setup, at);
        return rates === null ? null : law(rates, at);
      },
      [pull, ...inputsOf(setup)],
    );
  const pulled = through((_, at) => at(pull) * travel);
  const helped = through(({ helped }) => helped * travel);
  const out = through(({ useful }) => useful * travel);
  const rest = through(({ helped, useful }, at) => (at(pull) + helped - useful) * travel);
  const efficiency = through(({ helped, useful }, at) => useful / (at(pull) + helped));
  if (pulled === null || helped === null || out === null || rest === null || efficiency === null)
    return notDefined('setup.no-balance');
  return { travel, pulled, helped, out, rest, efficiency };
}

/** Joules a metre of the pull's travel. */
interface Rates {
  readonly helped: number;
  readonly useful: number;
}

function ratesOf(setup: Setup, at: At): Rates | null {
  const balance = balanceFor(setup, at, setup.way);
  if (isNotDefined(balance) || isNotDefined(balance.velocityRatio)) return null;
  const against = againstOf(setup, at);
  if (against === null) return null;
  const helped = balance.work.reduce(
    (sum, { by, rate }) => (by !== 'effort' && rate > 0 ? sum + rate : sum),
    0,
  );
  return { helped, useful: against / balance.velocityRatio };
}

/** What the job is done against: the load, or more where the machine says so. */
function againstOf(setup: Setup, at: At): number | null {
  const balance = balanceFor(setup, at, setup.way);
  if (isNotDefined(balance)) return null;
  return balance.overcomes ?? forceOf(setup.load, at, at(setup.gravity));
}

/** Why a figure on the scale is no force of the machine; `null` where it is one. */
function withoutForce({ outcome, watched, way }: Prediction, pull: Measured): NotDefined | null {
  if (watched !== 'pull') return notDefined('summary.not-pulled');
  if (outcome.kind === 'not-defined') return outcome;
  if (way === 'held') return notDefined('summary.held-still');
  if (outcome.kind === 'moves under the scale' || ('cutAtOwnWeight' in outcome && outcome.cutAtOwnWeight))
    return notDefined('summary.scale-pulls');
  if (outcome.kind !== 'reading') return notDefined('summary.no-figure');
  return pull.value > 0 ? null : notDefined('setup.no-pull-needed');
}
