import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import { newtons } from '../../quantities/brands.ts';
import { type Asked, type Balance, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { frictions } from './friction.ts';
import { splittingForces } from './splitting-forces.ts';
import { faceAngle, type Wedge } from './station.ts';
import { splittingWorking } from './working.ts';

/**
 * The two-sided wedge between faces that cords hold together, at the place where it now stands.
 *
 *     S = S0 + k o + W,   N = S / (cos h ∓ mu sin h),   P = 2 N (sin h ± mu cos h) = 2 S tan(h ± phi)
 *
 * with h half the whole angle, o the opening, S0 and k the cords' whole side force and stiffness,
 * W a side force besides the cords, N the force square to a face; upper signs push in, lower signs
 * let it come out. A wedge that lies level rubs with its weight on the table (± mu_b w); one that
 * goes down is helped by it (- w).
 *
 * Source: free body of the wedge, as in Baker and Haynes, Engineering Statics, 9.3, with the
 * cords' side force by our own definitions. Holds for stiff faces that lie along the wedge and open
 * alike. Neglects the faces' own rubbing on the table and any splitting
 * ahead of the tip. Coming out below zero: it stays in by itself.
 */
export function balanceSplitting(wedge: Wedge, at: At, asked: Asked): Balance | NotDefined {
  const forces = splittingForces(wedge, at, asked);
  if (forces === null)
    return notDefined('wedge.jams', {
      slope: { si: faceAngle(wedge, at), dimension: 'angle' },
      friction: { si: Math.atan(frictions(wedge, at, asked.grip).face), dimension: 'angle' },
    });
  if (forces.side <= 0) return notDefined('wedge.nothing-to-part');
  const { h, push, cords, faceNormal, face, weight, tableRubbing } = forces;
  const sense = signOf(asked.direction);
  const opens = 2 * Math.tan(h);
  const loss = (-face * faceNormal) / Math.cos(h);
  return {
    kind: 'balance',
    effort: newtons(push),
    overcomes: newtons(forces.side),
    velocityRatio: 1 / opens,
    work: [
      { by: 'effort', cause: 'effort', rate: sense * push },
      { by: 'load', cause: 'load', rate: -sense * asked.load * opens },
      { by: 'spring', cause: 'wedge.cords', rate: -sense * cords * opens },
      { by: 'dead weight', cause: 'wedge.wedge', rate: wedge.pushed === 'down' ? sense * weight : 0 },
      { by: 'loss', cause: 'wedge.first-face', rate: loss },
      { by: 'loss', cause: 'wedge.second-face', rate: loss },
      { by: 'loss', cause: 'wedge.base-friction', rate: -tableRubbing },
    ],
    working: () => splittingWorking(wedge, at, asked, forces),
  };
}
