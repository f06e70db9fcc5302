import { type Asked, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { frictions } from './friction.ts';
import { faceAngle, type Wedge } from './station.ts';

/** What the faces press with at the limit of sliding. */
export interface LiftingForces {
  readonly a: number;
  readonly phi: number;
  readonly base: number;
  readonly stop: number;
  readonly weight: number;
  /** Whole force between load and slope, square to the slope, and along it. */
  readonly faceForce: number;
  readonly faceNormal: number;
  readonly rubbing: number;
  readonly baseNormal: number;
  readonly stopNormal: number;
  readonly push: number;
}

/** `null` where slope and friction are so steep together that no push lifts anything. */
export function liftingForces(wedge: Wedge, at: At, asked: Asked): LiftingForces | null {
  const sense = signOf(asked.direction);
  const { face, base, stop } = frictions(wedge, at, asked.grip);
  const a = faceAngle(wedge, at);
  const phi = Math.atan(face);
  const lean = a + sense * phi;
  const carried = Math.cos(lean) - sense * stop * Math.abs(Math.sin(lean));
  if (carried <= 0) return null;
  const faceForce = asked.load / carried;
  const weight = at(wedge.inputs.mass) * asked.gravity;
  const baseNormal = faceForce * Math.cos(lean) + weight;
  return {
    a,
    phi,
    base,
    stop,
    weight,
    faceForce,
    faceNormal: faceForce * Math.cos(phi),
    rubbing: faceForce * Math.sin(phi),
    baseNormal,
    stopNormal: faceForce * Math.abs(Math.sin(lean)),
    push: faceForce * Math.sin(lean) + sense * base * baseNormal,
  };
}
