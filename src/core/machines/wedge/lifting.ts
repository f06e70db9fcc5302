import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import { newtons } from '../../quantities/brands.ts';
import { type Asked, type Balance, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { frictions } from './friction.ts';
import { liftingForces } from './lifting-forces.ts';
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
