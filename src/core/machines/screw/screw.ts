import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import { newtons } from '../../quantities/brands.ts';
import { type Asked, type Balance, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Ideal } from '../machine.ts';
import { lead, type Screw } from './station.ts';
import { frictions, threadForces } from './thread-forces.ts';
import { workingOf } from './working.ts';

/**
 * The screw at the limit of turning: a slope wound round a cylinder.
 *
 *     E a = Q (d2/2) tan(lam ± phi) ± mu_c Q dc/2,   tan lam = L/(pi d2),   tan phi = mu/cos(beta)
 *
 * with Q the load and what goes up with it, d2 the mean diameter, L the lead (starts times pitch),
 * beta the flank half angle, dc the mean diameter of the collar and a the lever arm; plus to raise,
 * minus to lower. A lowering effort below zero means that it does not come back: self-locking.
 *
 * Source: Shigley, Mechanical Engineering Design, 8-2 (raising and lowering torque, thread angle,
 * collar), from memory; it gives the worked examples of screws in the references. Holds for a pull
 * square to the lever and a load along the axis. Takes the flank's tilt as beta itself, where the
 * normal stands at atan(tan(beta) cos(lam)): less than 0.3 % of the effort up to a lead angle of
 * 8 degrees. Neglects the side thrust of the one-sided pull and a nut that sits loose.
 */
export function balanceScrew(screw: Screw, at: At, asked: Asked): Balance | NotDefined {
  if (screw.inputs.arm === undefined) return notDefined('screw.no-arm');
  const a = at(screw.inputs.arm);
  const forces = threadForces(screw, at, asked);
  if (forces === null) return notDefined('screw.jams', steepness(screw, at, asked));
  if (forces.thrust < 0) return notDefined('screw.no-thrust');
  const { head, tangential, rubbing, slide, collarMoment } = forces;
  const sense = signOf(asked.direction);
  const effort = (tangential * forces.meanRadius + sense * collarMoment) / a;
  const L = lead(screw, at);
  const perMetre = 1 / (2 * Math.PI * a);
  return {
    kind: 'balance',
    effort: newtons(effort),
    velocityRatio: (2 * Math.PI * a) / L,
    work: [
      { by: 'effort', cause: 'effort', rate: sense * effort },
      { by: 'load', cause: 'load', rate: -sense * asked.load * L * perMetre },
      { by: 'dead weight', cause: 'screw.head', rate: -sense * head * L * perMetre },
      { by: 'loss', cause: 'screw.thread-friction', rate: -rubbing * slide * perMetre },
      { by: 'loss', cause: 'screw.collar-friction', rate: -collarMoment * 2 * Math.PI * perMetre },
    ],
    working: () => workingOf(screw, at, asked, forces),
  };
}

/** Way of the hand over way of the load: once round the lever's circle for one lead. */
export function idealAdvantage(screw: Screw, at: At): Ideal | NotDefined {
  if (screw.inputs.arm === undefined) return notDefined('screw.no-arm');
  const a = at(screw.inputs.arm);
  const L = lead(screw, at);
  return {
    advantage: (2 * Math.PI * a) / L,
    working: [
      {
        what: 'screw.ideal-advantage',
        symbol: 'A',
        formula: '2*pi*a/L',
        values: { a, L },
        value: (2 * Math.PI * a) / L,
        unit: '1',
        source: 'US Navy, Basic Machines (NAVEDTRA 14037), chapter 5',
      },
    ],
  };
}

/**
 * Whether the load stays up when the hand lets go: the thread's friction angle is more than its
 * lead angle, or the collar holds what the thread does not.
 */
export function isSelfLocking(screw: Screw, at: At): boolean {
  const one = {
    load: newtons(1),
    gravity: 0 as Asked['gravity'],
    direction: 'lower',
    grip: 'moving',
  } as const;
  const forces = threadForces(screw, at, one);
  return forces !== null && forces.tangential * forces.meanRadius - forces.collarMoment < 0;
}

function steepness(screw: Screw, at: At, asked: Asked) {
  const lam = Math.atan(lead(screw, at) / (Math.PI * at(screw.inputs.meanDiameter)));
  const { thread } = frictions(screw, at, asked.grip);
  return {
    lead: { si: lam, dimension: 'angle' },
    friction: { si: Math.atan(thread / Math.cos(at(screw.inputs.flank))), dimension: 'angle' },
  } as const;
}
