import type { Kilograms, Metres, Radians, Ratio } from '../../quantities/brands.ts';
import type { Measured } from '../../uncertainty/measured.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Station } from '../machine.ts';

/**
 * A screw that stands upright, turned by a pull at the end of its lever, with a load on its head; or
 * the same screw turned by fingers, of which only the turns and the travel are read.
 */
export interface Screw extends Station {
  readonly machine: 'screw';
  readonly inputs: {
    readonly diameter: Measured<Metres>;
    /** Diameter half-way up the thread, where the load is taken to rest. */
    readonly meanDiameter: Measured<Metres>;
    readonly pitch: Measured<Metres>;
    /** Half the angle between the flanks: 30 degrees for a V thread, 0 for a square one. */
    readonly flank: Measured<Radians>;
    readonly threadFriction: Measured<Ratio>;
    readonly threadStarting: Measured<Ratio>;
    /** Mean diameter of the ring on which the turning end rubs. */
    readonly collarDiameter: Measured<Metres>;
    readonly collarFriction: Measured<Ratio>;
    readonly collarStarting: Measured<Ratio>;
    /** What goes up with the load: nut, plate or the screw itself. */
    readonly headMass: Measured<Kilograms>;
    /** From the axis to the hook; absent where nothing pulls. */
    readonly arm?: Measured<Metres>;
    /** Advance before the measured face is touched. */
    readonly startGap: Measured<Metres>;
    /** Advance that is asked for, where the turns are counted. */
    readonly travel?: Measured<Metres>;
  };
  readonly starts: number;
  /** Name of the standard thread, where it is one. */
  readonly thread: string | null;
  /** Turns that are asked for, where the travel is measured. */
  readonly turns: number | null;
  /** How the turns are counted: `extra` turns too many or few, and how many counts make a turn. */
  readonly counting: { readonly extra: number; readonly perTurn: number };
}

/** How far the screw goes in one turn: starts times pitch. */
export const lead = (screw: Screw, at: At): number => screw.starts * at(screw.inputs.pitch);

/** Turns or travel are watched, and nothing pulls. */
export const isCounted = (screw: Screw): boolean => screw.turns !== null || screw.inputs.travel !== undefined;
