import type { Metres, Radians } from '../../quantities/brands.ts';
import type { Ride } from '../../statics/carriage.ts';
import type { StringPull } from '../../statics/guided-pull.ts';
import type { Measured } from '../../uncertainty/measured.ts';
import type { At } from '../../uncertainty/propagate.ts';

/** How steep the board stands: its rise over a length along it, or its angle as measured. */
export type Steepness =
  | {
      readonly steep: 'rise over length';
      readonly inputs: { readonly rise: Measured<Metres>; readonly slopeLength: Measured<Metres> };
    }
  | { readonly steep: 'measured'; readonly inputs: { readonly angle: Measured<Radians> } };

/** A board propped up at one end, a load that rides on it, and a string that pulls it up. */
export type InclinedPlane = Ride &
  StringPull &
  Steepness & {
    readonly machine: 'inclined plane';
    readonly inputs: { readonly boardLength: Measured<Metres> };
    /** Heights of the prop's pins above the board's foot, where it has pins; `pin` is the one used. */
    readonly pinHeights: readonly Measured<Metres>[];
    readonly pin: number | null;
    /** Whether the slope was written by where the board is propped. */
    readonly propped: boolean;
  };

export const angleOf = (plane: InclinedPlane, at: At): number =>
  plane.steep === 'measured'
    ? at(plane.inputs.angle)
    : Math.asin(at(plane.inputs.rise) / at(plane.inputs.slopeLength));
