import { atBest } from '../uncertainty/propagate.ts';
import { balanceFor, effortOf } from './pull.ts';
import type { Setup } from './setup.ts';
import { LEAST_GRADUATIONS, MOST_OF_RANGE } from './trouble.ts';

/** A scale that could read a setup, in the steps that scales are made in; SI. */
export interface WantedScale {
  readonly graduation: number;
  readonly range: number;
}

/**
 * The coarsest scale that shows the pull of a setup on enough graduations, and reaches far enough; scales
 * have graduations of 1, 2 or 5 and tenths of these (common practice, no source). `null` where no pull is
 * asked for.
 */
export function wantedScale(setup: Setup): WantedScale | null {
  const pull = setup.watched === 'pull' ? effortOf(balanceFor(setup, atBest, setup.way)) : null;
  if (pull === null || pull <= 0) return null;
  return { graduation: roundedDown(pull / LEAST_GRADUATIONS), range: pull / MOST_OF_RANGE };
}

/**
 * The next lower of 1, 2 and 5 with their tenths.
 *
 * @example roundedDown(0.037) // => 0.02
 * @example roundedDown(0.5) // => 0.5
 */
export function roundedDown(value: number): number {
  const power = Math.floor(Math.log10(value) + 1e-9);
  const lead = value / 10 ** power + 1e-9;
  const step = lead >= 5 ? 5 : lead >= 2 ? 2 : 1;
  return Number(`${step}e${power}`);
}
