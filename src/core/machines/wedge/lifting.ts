import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import { newtons } from '../../quantities/brands.ts';
import { type Asked, type Balance, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { frictions } from './friction.ts';
import { faceAngle, type Wedge } from './station.ts';
import { liftingWorking } from './working.ts';

/**
 * The single-slope wedge under a load that a stop keeps from sliding along.
 *
 *     R = W / (cos(a ± phi) ∓ mu_s |sin(a ± phi)|)
 *     P = R sin(a ± phi) ± mu_b (R cos(a ± phi) + w)
 *
 * with a the wedge angle, phi the friction angle of the slope, R the whole force between load and
 * slope, w the wedge's weight; upper signs push in (raise), lower signs hold back. Without a rubbing
 * stop and a heavy wedge it is P = W [tan(a + phi) + tan(phi_b)].
 *
 * Source: both free bodies, as in Baker and Haynes, Engineering Statics, 9.3; it gives the worked
 * examples of wedges in the references. Holds for a stiff wedge and block while both faces touch all
 * along. Neglects tipping of the block. A hold below zero: it stays by itself.
 */
export function balanceLifting(wedge: Wedge, at: At, asked: Asked): Balance | NotDefined {
  const forces = liftingForces(wedge, at, asked);
  if (forces === null)
    return notDefined('wedge.jams', {
      slope: { si: faceAngle(wedge, at), dimension: 'angle' },
      friction: { si: Math.atan(frictions(wedge, at, asked.grip).face), dimension: 'angle' },
    });
  const { a, push, rubbing, baseNormal, stopNormal, base, stop } = forces;
  const sense = signOf(asked.direction);
  const rise = Math.tan(a);
  return {
    kind: 'balance',
    effort: newtons(push),
    velocityRatio: 1 / rise,
    work: [
      { by: 'effort', cause: 'effort', rate: sense * push },
      { by: 'load', cause: 'load', rate: -sense * asked.load * rise },
      { by: 'loss', cause: 'wedge.face-friction', rate: -rubbing / Math.cos(a) },
      { by: 'loss', cause: 'wedge.base-friction', rate: -base * baseNormal },
      { by: 'loss', cause: 'wedge.stop-friction', rate: -stop * stopNormal * rise },
    ],
    working: () => liftingWorking(wedge, at, asked, forces),
  };
}

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
