import type { Kilograms, Metres, Newtons, NewtonsPerMetre, Radians, Ratio } from '../../quantities/brands.ts';
import type { Measured } from '../../uncertainty/measured.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Station } from '../machine.ts';

/**
 * A wedge pushed under a load (lifting), or between two faces that cords hold together (splitting).
 */
export interface Wedge extends Station {
  readonly machine: 'wedge';
  readonly form: 'lifting' | 'splitting';
  /** Way of the push: level, or down into an upright gap. */
  readonly pushed: 'level' | 'down';
  readonly inputs: {
    readonly length: Measured<Metres>;
    /** Thickness at the back. */
    readonly thickness: Measured<Metres>;
    readonly mass: Measured<Kilograms>;
    readonly faceFriction: Measured<Ratio>;
    readonly faceStarting: Measured<Ratio>;
    /** Lifting only: under the wedge, and at the stop that keeps the load from sliding along. */
    readonly baseFriction: Measured<Ratio>;
    readonly baseStarting: Measured<Ratio>;
    readonly stopFriction: Measured<Ratio>;
    readonly stopStarting: Measured<Ratio>;
    /** Splitting only: side force before the wedge goes in, and stiffness, all cords together. */
    readonly preTension: Measured<Newtons>;
    readonly stiffness: Measured<NewtonsPerMetre>;
    /** How far the wedge is in, from the first touch. */
    readonly advance: Measured<Metres>;
    /** What strikes, how far it falls and what share of its energy arrives; absent where nothing strikes. */
    readonly malletMass?: Measured<Kilograms>;
    readonly malletFalls?: Measured<Metres>;
    readonly blowShare?: Measured<Ratio>;
    /** Opening that the cords must not be stretched past, where the kit names one. */
    readonly mostOpening?: Measured<Metres>;
  };
  readonly hasCords: boolean;
  readonly hasMark: boolean;
}

/**
 * The slope of one working face against the way of the push: the whole angle of a lifting wedge,
 * half the angle of a splitting one.
 */
export function faceAngle(wedge: Wedge, at: At): Radians {
  const { thickness, length } = wedge.inputs;
  const whole = at(thickness) / at(length);
  return Math.atan(wedge.form === 'lifting' ? whole : whole / 2) as Radians;
}

/** How far the faces are apart, or the load is up: thickness of the wedge where it now stands. */
export const opening = (wedge: Wedge, at: At): Metres => {
  const { thickness, length, advance } = wedge.inputs;
  return ((at(advance) * at(thickness)) / at(length)) as Metres;
};

/**
 * What drives the wedge: a scale pulls it by a string from its edge; where no scale is there the hand
 * pushes its back, or strikes it where the setup has a mallet. Steps and drawing take their word from here.
 */
export function driveOf(wedge: Wedge, isFelt: boolean): 'pulled' | 'pushed' | 'struck' {
  if (!isFelt) return 'pulled';
  return wedge.inputs.malletMass === undefined ? 'pushed' : 'struck';
}
