import { isNotDefined, type NotDefined, notDefined } from '../description/not-defined.ts';
import { atBest } from '../uncertainty/propagate.ts';
import { offTheMarks } from './predict-scale.ts';
import { pullOf } from './pull.ts';
import type { Setup } from './setup.ts';
import { lagOf, senseOf, shiftOf } from './shown.ts';

/** The figures of a setup at the best values: quick to find, and enough to look among many setups. */
export interface BestFigure {
  /** What is compared: the force at the hook (the middle of a band), turns or metres. */
  readonly figure: number;
  /** What the instrument shows of it: its lower and its upper end. */
  readonly lower: number;
  readonly upper: number;
}

/**
 * What a setup comes to at the best values, or why there is no figure: `chance.on its stop`,
 * `chance.moves under the scale`, `chance.felt`, ...
 */
export function bestFigure(setup: Setup): BestFigure | NotDefined {
  switch (setup.watched) {
    case 'pull':
      return bestPull(setup);
    case 'turns':
    case 'travel':
      return bestTally(setup);
    case 'ease':
      return notDefined('chance.felt', { setup: setup.mark });
  }
}

function bestPull(setup: Setup): BestFigure | NotDefined {
  const { scale, mark } = setup;
  if (scale === null) return notDefined('chance.no scale', { setup: mark });
  const pull = pullOf(setup);
  if (isNotDefined(pull)) return notDefined(`chance.${reasonOf(pull)}`, { setup: mark });
  if (pull.kind !== 'force' && pull.kind !== 'band')
    return notDefined(`chance.${pull.kind}`, { setup: mark });
  const ends = pull.kind === 'band' ? [pull.lower(atBest), pull.upper(atBest)] : [pull.law(atBest)];
  const [low, high = low] = ends;
  if (low === null || low === undefined || high === null || high === undefined)
    return notDefined('chance.no figure', { setup: mark });
  const shift = shiftOf(setup, scale, atBest);
  const lag = lagOf(setup, senseOf(setup)).value * scale.inputs.tubeFriction.value;
  const [lower, upper] = [low - shift - lag, high - shift - lag];
  const off = offTheMarks(scale, lower, upper);
  if (off !== null) return notDefined(`chance.${off.kind}`, { setup: mark });
  return { figure: (low + high) / 2, lower, upper };
}

const reasonOf = ({ because }: NotDefined): string =>
  because === 'setup.does-not-come-back' ? 'does not come back' : 'no figure';

function bestTally({ machine, station, mark }: Setup): BestFigure | NotDefined {
  const tally = machine.tally?.(station, atBest);
  return tally === undefined || isNotDefined(tally)
    ? notDefined('chance.no figure', { setup: mark })
    : { figure: tally.value, lower: tally.value, upper: tally.value };
}
