import type { SpringScale } from '../instruments/spring-scale.ts';
import { ownShift, ownWeight, turnOverShift } from '../instruments/spring-scale.ts';
import { type Newtons, newtons, radians } from '../quantities/brands.ts';
import { type Measured, measured } from '../uncertainty/measured.ts';
import { type At, atBest } from '../uncertainty/propagate.ts';
import { hangAngle, type Setup } from './setup.ts';

/** What stands between the force at the hook and the number that a group writes. */
export type Sense = 'pulling more' | 'letting off' | 'resting';

/** How the pointer gets to where it is read. */
export function senseOf(setup: Setup): Sense {
  switch (setup.way) {
    case 'raise':
    case 'start':
      return 'pulling more';
    case 'lower':
      return 'letting off';
    case 'held':
      return 'resting';
  }
}

/** How much less than the force at the hook this scale shows, hanging and zeroed as it is. */
export function shiftOf(setup: Setup, scale: SpringScale, at: At): Newtons {
  const slope = setup.machine.slope?.(setup.station, at) ?? radians(0);
  const angle = hangAngle(setup.hang, slope, at);
  const zeroedAt = setup.zeroed === 'in place' ? angle : hangAngle(setup.zeroed, slope, at);
  return ownShift(turnOverShift(scale, at, at(setup.gravity)), angle, zeroedAt);
}

/**
 * What the scale shows for a force at its hook, before anybody rounds: own shift, what its marks are
 * off by, and the rubbing of its tube. The rubbing is anywhere up to its bound; it makes the pointer
 * lag, so it takes from a growing pull and adds to a falling one; a tap frees it.
 */
export function shownLaw(
  setup: Setup,
  scale: SpringScale,
  force: (at: At) => Newtons | null,
  lag: Measured,
): (at: At) => Newtons | null {
  return (at) => {
    const pull = force(at);
    if (pull === null) return null;
    return newtons(
      pull - shiftOf(setup, scale, at) + at(scale.inputs.accuracy) - at(lag) * at(scale.inputs.tubeFriction),
    );
  };
}

/** The figure that a scale shows when it hangs by its own hook and nothing else pulls. */
export const hangingFigure =
  (setup: Setup, scale: SpringScale): ((at: At) => Newtons) =>
  (at) =>
    ownWeight(scale, at, at(setup.gravity));

/** Share of the tube friction that this one reading carries, with the sign that it takes. */
export function lagOf(setup: Setup, sense: Sense): Measured {
  if (setup.tapped) return { value: 0, parts: [] };
  const middle = sense === 'pulling more' ? 0.5 : sense === 'letting off' ? -0.5 : 0;
  return measured(middle, {
    id: 'reading/tube friction',
    u: (sense === 'resting' ? 2 : 1) / Math.sqrt(12),
    shape: 'even',
    origin: 'stated',
  });
}

/** Slope of the line of pull at the best values, for the working. */
export const slopeOf = (setup: Setup) => setup.machine.slope?.(setup.station, atBest) ?? radians(0);
