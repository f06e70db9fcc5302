import type { Kilograms, Metres, Radians, Ratio } from '../../quantities/brands.ts';
import type { Measured } from '../../uncertainty/measured.ts';
import type { Station } from '../machine.ts';

export type PullDirection = 'down' | 'level' | 'up';

/** An axle that winds up the load, turned by a line on a wheel or by a crank, on a pin that rubs. */
export interface Windlass extends Station {
  readonly machine: 'windlass';
  readonly inputs: {
    /** Radius of the wheel, or length of the crank. */
    readonly wheelRadius: Measured<Metres>;
    readonly axleRadius: Measured<Metres>;
    /** Thickness of the line on the wheel; 0 for a crank. */
    readonly wheelLine: Measured<Metres>;
    readonly axleLine: Measured<Metres>;
    readonly drumMass: Measured<Kilograms>;
    readonly bearingRadius: Measured<Metres>;
    readonly bearingFriction: Measured<Ratio>;
    readonly bearingStarting: Measured<Ratio>;
    /** How far the pull is turned anticlockwise from its stated direction, the load seen on the left. */
    readonly lean: Measured<Radians>;
  };
  readonly turnedBy: 'wheel' | 'crank';
  readonly pull: PullDirection;
  /** What the lines are marked with, where the kit has them. */
  readonly lines?: { readonly axle?: string; readonly wheel?: string };
  /** Full layers of line on the axle below the one that carries the load. */
  readonly layers: number;
}
