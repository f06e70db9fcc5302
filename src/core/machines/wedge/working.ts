import type { WorkingLine } from '../../description/working.ts';
import { type Asked, signOf } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import { frictions } from './friction.ts';
import type { LiftingForces } from './lifting-forces.ts';
import type { SplittingForces } from './splitting-forces.ts';
import type { Wedge } from './station.ts';

const FREE_BODIES = 'Baker and Haynes, Engineering Statics: Open and Interactive, 9.3 (free bodies)';
const WEIGHT = 'weight = mass x local gravity';

/** The lines from angle and friction to the push of a lifting wedge; the last is the effort. */
export function liftingWorking(
  wedge: Wedge,
  at: At,
  asked: Asked,
  forces: LiftingForces,
): readonly WorkingLine[] {
  const raise = signOf(asked.direction) > 0;
  const { a, phi, faceForce: R, weight: w, base: mub, stop: mus, push } = forces;
  const lean = raise ? 'a + phi' : 'a - phi';
  return [
    {
      what: 'wedge.slope',
      symbol: 'a',
      formula: 'atan(t/l)',
      values: { t: at(wedge.inputs.thickness), l: at(wedge.inputs.length) },
      value: a,
      unit: 'rad',
      source: 'geometry',
    },
    frictionAngleLine(wedge, at, asked, phi),
    weightLine(wedge, at, asked, w),
    {
      what: 'wedge.face-force',
      symbol: 'R',
      formula: raise ? `W/(cos(${lean}) - mus*sin(${lean}))` : `W/(cos(${lean}) + mus*abs(sin(${lean})))`,
      values: { W: asked.load, a, phi, mus },
      value: R,
      unit: 'N',
      source: FREE_BODIES,
    },
    {
      what: raise ? 'wedge.push-in' : 'wedge.hold-back',
      symbol: 'P',
      formula: `R*sin(${lean}) ${raise ? '+' : '-'} mub*(R*cos(${lean}) + w)`,
      values: { R, a, phi, mub, w },
      value: push,
      unit: 'N',
      source: FREE_BODIES,
    },
  ];
}

/** The lines from cords and friction to the push of a splitting wedge; the last is the effort. */
export function splittingWorking(
  wedge: Wedge,
  at: At,
  asked: Asked,
  forces: SplittingForces,
): readonly WorkingLine[] {
  const raise = signOf(asked.direction) > 0;
  const { length, thickness, advance, preTension, stiffness } = wedge.inputs;
  const { h, phi, opening: o, side: S, weight: w, base: mub, push } = forces;
  const faces = raise ? '2*S*tan(h + phi)' : '2*S*tan(h - phi)';
  const down = wedge.pushed === 'down';
  const rubs = raise ? ' + mub*w' : ' - mub*w';
  return [
    {
      what: 'wedge.half-angle',
      symbol: 'h',
      formula: 'atan(t/(2*l))',
      values: { t: at(thickness), l: at(length) },
      value: h,
      unit: 'rad',
      source: 'geometry',
    },
    {
      what: 'wedge.opening',
      symbol: 'o',
      formula: 'x*t/l',
      values: { x: at(advance), t: at(thickness), l: at(length) },
      value: o,
      unit: 'm',
      source: 'geometry',
    },
    {
      what: 'wedge.side-force',
      symbol: 'S',
      formula: 'S0 + k*o + W',
      values: { S0: at(preTension), k: at(stiffness), o, W: asked.load },
      value: S,
      unit: 'N',
      source: 'own definition: whole side force against the whole opening',
    },
    frictionAngleLine(wedge, at, asked, phi),
    weightLine(wedge, at, asked, w),
    {
      what: raise ? 'wedge.push-in' : 'wedge.hold-back',
      symbol: 'P',
      formula: `${faces}${down ? ' - w' : rubs}`,
      values: down ? { S, h, phi, w } : { S, h, phi, mub, w },
      value: push,
      unit: 'N',
      source: FREE_BODIES,
    },
  ];
}

const frictionAngleLine = (wedge: Wedge, at: At, asked: Asked, phi: number): WorkingLine => ({
  what: 'wedge.friction-angle',
  symbol: 'phi',
  formula: 'atan(mu)',
  values: { mu: frictions(wedge, at, asked.grip).face },
  value: phi,
  unit: 'rad',
  source: 'definition of the friction angle',
});

const weightLine = (wedge: Wedge, at: At, asked: Asked, w: number): WorkingLine => ({
  what: 'wedge.weight',
  symbol: 'w',
  formula: 'm*g',
  values: { m: at(wedge.inputs.mass), g: asked.gravity },
  value: w,
  unit: 'N',
  source: WEIGHT,
});
