import type { Kilograms, Metres, Radians, Ratio } from '../../quantities/brands.ts';
import type { Measured } from '../../uncertainty/measured.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Station } from '../machine.ts';

/**
 * A bar on one pin, with a load hung from it and a pull that raises the load. Places are distances
 * from the left end of the bar.
 */
export interface Lever extends Station {
  readonly machine: 'lever';
  readonly inputs: {
    readonly fulcrum: Measured<Metres>;
    readonly load: Measured<Metres>;
    readonly pull: Measured<Metres>;
    readonly barLength: Measured<Metres>;
    readonly barMass: Measured<Kilograms>;
    readonly barCentre: Measured<Metres>;
    readonly pinRadius: Measured<Metres>;
    readonly pinFriction: Measured<Ratio>;
    readonly pinStarting: Measured<Ratio>;
    /** Height of the holes of load and pull above the line through the pin, square to the bar. */
    readonly holesAbove: Measured<Metres>;
    /** Tilt of the bar when it is read, positive with the load's end up. */
    readonly tilt: Measured<Radians>;
    /** Lean of the pull from the upright, or from square to the bar where it keeps square. */
    readonly lean: Measured<Radians>;
  };
  readonly pullKeepsSquare: boolean;
  /** Hole positions from the left end, where the bar has holes; `holes` says which are used. */
  readonly holePositions: readonly Measured<Metres>[];
  readonly holes: {
    readonly fulcrum?: number;
    readonly load?: number;
    readonly pull?: number;
  };
}

/** Which of the three classes, decided by the order on the bar. */
export type LeverClass = 'first' | 'second' | 'third';

export function classOf(lever: Lever, at: At): LeverClass {
  const load = at(lever.inputs.load) - at(lever.inputs.fulcrum);
  const pull = at(lever.inputs.pull) - at(lever.inputs.fulcrum);
  if (load * pull < 0) return 'first';
  return Math.abs(load) < Math.abs(pull) ? 'second' : 'third';
}

/** A pull on the other side of the pin from the load goes down; on the same side it goes up. */
export const pullsDown = (lever: Lever, at: At): boolean => classOf(lever, at) === 'first';
