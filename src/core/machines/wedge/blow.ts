import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import type { Joules, Kilograms, Metres, MetresPerSecondSquared, Newtons } from '../../quantities/brands.ts';
import { STANDARD_GRAVITY } from '../../sources/gravity.ts';
import type { Asked } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { liftingForces } from './lifting-forces.ts';
import { splittingForces } from './splitting-forces.ts';
import type { Wedge } from './station.ts';

/** Share of a blow's energy that arrives: 0.3 to 0.9. Common practice, no source. */
export const BLOW_SHARE = [0.3, 0.9] as const;

/**
 * Speed after a fall.
 *
 * @example strikingSpeed(0.2, 9.81).toFixed(3) // => '1.981'
 */
export const strikingSpeed = (drop: number, gravity: number): number => Math.sqrt(2 * gravity * drop);

/**
 * Speed of both together when the striker stays on what it strikes: momentum is kept.
 *
 * @example commonSpeed(1500, 750, 3) // => 2
 */
export const commonSpeed = (striker: number, struck: number, speed: number): number =>
  (striker * speed) / (striker + struck);

/**
 * Share of the energy that is left after such a blow, m/(m + M).
 *
 * @example plasticShare(0.3, 0.1).toFixed(3) // => '0.750'
 */
export const plasticShare = (striker: number, struck: number): number => striker / (striker + struck);

/**
 * Mean force that an energy gives over an advance, F = e E/s: an order of magnitude only, since the
 * force is not constant and the share e is a guess.
 *
 * @example meanForce(0.3, 0.003) // => 100
 */
export const meanForce = (energy: number, advance: number): number => energy / advance;

/** A striker that falls on what it drives, both together from then on. */
export interface Drive {
  readonly striker: Kilograms;
  readonly struck: Kilograms;
  readonly drop: Metres;
  readonly gravity: MetresPerSecondSquared;
}

/**
 * Mean resistance of what is driven in, (R - (m + M) g) s = (m + M) V²/2 with V the common speed.
 * Source: momentum, then energy, as in the worked examples of pile driving in the references.
 */
export function meanResistance(drive: Drive, penetration: Metres): Newtons {
  const both = drive.striker + drive.struck;
  const V = commonSpeed(drive.striker, drive.struck, strikingSpeed(drive.drop, drive.gravity));
  return (both * (drive.gravity + V ** 2 / (2 * penetration))) as Newtons;
}

/** How far one blow drives against a resistance; not defined where the weight alone sinks in. */
export function penetration(drive: Drive, resistance: Newtons): Metres | NotDefined {
  const both = drive.striker + drive.struck;
  const left = resistance - both * drive.gravity;
  if (left <= 0) return notDefined('wedge.sinks-by-weight');
  const V = commonSpeed(drive.striker, drive.struck, strikingSpeed(drive.drop, drive.gravity));
  return ((both * V ** 2) / (2 * left)) as Metres;
}

/** What one blow adds at the place where the wedge now stands. An order of magnitude only. */
export interface Blow {
  readonly energy: Joules;
  readonly advance: Metres;
  readonly meanForce: Newtons;
}

/**
 * What one blow of the mallet adds: its delivered energy spent on the push of the way it drives.
 *
 *     e m g h = P s + c s²,   c = half the growth of the push a metre (cords)
 *
 * Standard gravity, since the share e is not known to a tenth. Source: work and energy; our own sheet.
 */
export function blowOn(wedge: Wedge, at: At, load: Newtons): Blow | NotDefined {
  const { malletMass, malletFalls, blowShare, stiffness } = wedge.inputs;
  if (malletMass === undefined || malletFalls === undefined || blowShare === undefined)
    return notDefined('wedge.no-mallet');
  const asked: Asked = { load, gravity: STANDARD_GRAVITY, direction: 'raise', grip: 'moving' };
  const energy = at(blowShare) * at(malletMass) * STANDARD_GRAVITY * at(malletFalls);
  const split = wedge.form === 'splitting' ? splittingForces(wedge, at, asked) : null;
  const push = wedge.form === 'splitting' ? split?.push : liftingForces(wedge, at, asked)?.push;
  if (push === undefined) return notDefined('wedge.jams-under-blows');
  if (push <= 0) return notDefined('wedge.sinks-by-weight');
  const growth = split === null ? 0 : 2 * at(stiffness) * Math.tan(split.h) * Math.tan(split.h + split.phi);
  const advance = (2 * energy) / (push + Math.sqrt(push ** 2 + 4 * growth * energy));
  return {
    energy: energy as Joules,
    advance: advance as Metres,
    meanForce: meanForce(energy, advance) as Newtons,
  };
}
