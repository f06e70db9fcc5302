import { measuredOfScale, ownWeight, type SpringScale, turnOverShift } from '../instruments/spring-scale.ts';
import { forceOf, type Load, measuredOf } from '../parts/weight.ts';
import { type MetresPerSecondSquared, newtons } from '../quantities/brands.ts';
import { asRead } from '../setups/good-range.ts';
import { type Change, figureAt, mapSetup } from '../setups/map-setup.ts';
import type { Setup } from '../setups/setup.ts';
import { type Measured, measured, plus, type Unknown } from '../uncertainty/measured.ts';
import { type At, propagate } from '../uncertainty/propagate.ts';
import type { Observation, Shift } from './bench-fit.ts';

/** A value where its unknowns lie somewhere else than in the files. */
export const movedBy =
  (shift: Shift): Change =>
  <Q extends number>(value: Measured<Q>): Measured<Q> =>
    shift.size === 0
      ? value
      : {
          ...value,
          value: value.parts.reduce(
            (sum, { unknown, slope }) => sum + slope * (shift.get(unknown.id) ?? 0),
            value.value as number,
          ) as Q,
        };

/** What a bench reading is of, before it is said what was read. */
export type Law = Pick<Observation, 'figureAt' | 'setting'>;

/** A reading at a setup, in the setup's own way of reading. */
export const lawOfSetup = (setup: Setup): Law => ({
  figureAt: (shift) => figureAt(mapSetup(setup, movedBy(shift))),
  setting: setup.mark,
});

export const observationAt = (setup: Setup, name: string, date: string, value: number): Observation => ({
  ...lawOfSetup(setup),
  name,
  date,
  value,
  decided: null,
});

/**
 * A known mass hung from the hook, scale upright with its zero set so: what its marks are off by, and how
 * far the pointer may stick either way. A mass at rest is not scattered by the hand.
 */
export const lawOfHungLoad = (
  scale: SpringScale,
  load: Load,
  gravity: Measured<MetresPerSecondSquared>,
): Law =>
  lawOf([measuredOf(load), gravity, ...measuredOfScale(scale)], scale, (at, sticks) =>
    newtons(
      forceOf(load, at, at(gravity)) + at(scale.inputs.accuracy) - sticks * at(scale.inputs.tubeFriction),
    ),
  );

/**
 * The turn-over test: the scale hangs upside down by its own hook and shows M g - D, less or more by what
 * its marks are off. With its weight, that gives D.
 */
export const lawOfTurnOver = (scale: SpringScale, gravity: Measured<MetresPerSecondSquared>): Law =>
  lawOf([gravity, ...measuredOfScale(scale)], scale, (at, sticks) =>
    newtons(
      ownWeight(scale, at, at(gravity)) -
        turnOverShift(scale, at, at(gravity)) +
        at(scale.inputs.accuracy) -
        sticks * at(scale.inputs.tubeFriction),
    ),
  );

/** Where between sticking one way and the other the pointer rests: anywhere. */
const STICKS = measured(0, {
  id: 'reading/tube friction',
  u: 2 / Math.sqrt(12),
  shape: 'even',
  origin: 'stated',
});

function lawOf(
  inputs: readonly Measured[],
  scale: SpringScale,
  law: (at: At, sticks: number) => number,
): Law {
  return {
    setting: null,
    figureAt: (shift) => {
      const moved = shiftedAt(shift);
      const shown = propagate((at) => law(moved(at), at(STICKS)), [...inputs, STICKS]);
      return shown === null ? null : asRead(shown, scale.graduations, 0);
    },
  };
}

/** Reads a value at some state, with its unknowns moved first. */
const shiftedAt =
  (shift: Shift) =>
  (at: At): At =>
  (value) =>
    at(movedBy(shift)(value));

/** What an instrument leaves unsaid about one measurement. */
export type Leaves = Pick<Unknown, 'u' | 'shape' | 'origin' | 'source'>;

/** Off by at most so much either way, evenly. */
export const within = (most: number, source: string): Leaves => ({
  u: most / Math.sqrt(3),
  shape: 'even',
  origin: 'assumed',
  source,
});

/** A part's field measured straight, with what the instrument leaves unsaid. */
export const lawOfField = (field: Measured, leaves: Leaves): Law => ({
  setting: null,
  figureAt: (shift) => plus(movedBy(shift)(field), measured(0, { id: 'reading/instrument', ...leaves })),
});
