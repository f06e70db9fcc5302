import type { WorkingLine } from '../../description/working.ts';
import { type Asked, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { lead, type Screw } from './station.ts';
import { frictions, type ThreadForces } from './thread-forces.ts';

const POWER_SCREW = 'Shigley, Mechanical Engineering Design, 8-2 (from memory)';

/** The lines from pitch and friction to the pull at the lever; the last is the effort. */
export function workingOf(screw: Screw, at: At, asked: Asked, forces: ThreadForces): readonly WorkingLine[] {
  const { pitch, meanDiameter, flank, headMass, collarDiameter, arm } = screw.inputs;
  const s = signOf(asked.direction);
  const { thread, collar } = frictions(screw, at, asked.grip);
  const L = lead(screw, at);
  const d2 = at(meanDiameter);
  const { leadAngle: lam, frictionAngle: phi, thrust: Q, collarMoment: Tc } = forces;
  const T = forces.tangential * forces.meanRadius;
  const a = arm === undefined ? 0 : at(arm);
  return [
    {
      what: 'screw.lead',
      symbol: 'L',
      formula: 'k*P',
      values: { k: screw.starts, P: at(pitch) },
      value: L,
      unit: 'm',
      source: 'lead = starts x pitch',
    },
    {
      what: 'screw.lead-angle',
      symbol: 'lam',
      formula: 'atan(L/(pi*d2))',
      values: { L, d2 },
      value: lam,
      unit: 'rad',
      source: 'thread unrolled once round',
    },
    {
      what: 'screw.friction-angle',
      symbol: 'phi',
      formula: 'atan(mu/cos(beta))',
      values: { mu: thread, beta: at(flank) },
      value: phi,
      unit: 'rad',
      source: POWER_SCREW,
    },
    {
      what: 'screw.thrust',
      symbol: 'Q',
      formula: 'W + m*g',
      values: { W: asked.load, m: at(headMass), g: asked.gravity },
      value: Q,
      unit: 'N',
      source: 'weight = mass x local gravity',
    },
    {
      what: 'screw.thread-moment',
      symbol: 'T',
      formula: s > 0 ? 'Q*d2/2*tan(lam + phi)' : 'Q*d2/2*tan(lam - phi)',
      values: { Q, d2, lam, phi },
      value: T,
      unit: 'N·m',
      source: POWER_SCREW,
    },
    {
      what: 'screw.collar-moment',
      symbol: 'Tc',
      formula: 'muc*Q*dc/2',
      values: { muc: collar, Q, dc: at(collarDiameter) },
      value: Tc,
      unit: 'N·m',
      source: POWER_SCREW,
    },
    {
      what: s > 0 ? 'screw.effort-raise' : 'screw.effort-lower',
      symbol: 'E',
      formula: s > 0 ? '(T + Tc)/a' : '(T - Tc)/a',
      values: { T, Tc, a },
      value: (T + s * Tc) / a,
      unit: 'N',
      source: 'moments about the axis',
    },
  ];
}
