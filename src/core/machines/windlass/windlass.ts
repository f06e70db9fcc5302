import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import { workingLine as line, type WorkingLine } from '../../description/working.ts';
import { newtons } from '../../quantities/brands.ts';
import { type Asked, type Balance, signOf } from '../../statics/balance.ts';
import { pinReaction, pullOnDryPin } from '../../statics/dry-pin.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Ideal } from '../machine.ts';
import type { Windlass } from './station.ts';

/** A layer settles into the grooves of the one below: it lies sin 60° of its thickness higher. */
const NEST = Math.sin(Math.PI / 3);

/**
 * The windlass at the limit of turning.
 *
 *     F (R + tw/2) = W (r + ta/2 + z ta sin 60°) ± mu |Q| rb,    Q = W + D - F as vectors
 *
 * with R the wheel, r the axle, tw and ta the lines on them (their force runs along their middle), z
 * full layers below, D the weight of the drum and rb the radius of its bearing. A crank takes the
 * place of R + tw/2. Q holds F, and the equation is solved as for any dry pin (`statics/dry-pin.ts`).
 *
 * Source: moments about the axle, OpenStax College Physics 2e, 9.5; rope to its middle, Bhavikatti,
 * Mechanics of Solids, example 6.11. Holds for a load between two bearings that share it, and a pull
 * square to the crank. Neglects the stiffness of the line and a helix that climbs.
 */
export function balanceWindlass(windlass: Windlass, at: At, asked: Asked): Balance | NotDefined {
  const { a, c } = arms(windlass, at);
  const { drumMass, bearingRadius } = windlass.inputs;
  const W = asked.load;
  const D = at(drumMass) * asked.gravity;
  const mu = friction(windlass, at, asked.grip);
  const rb = at(bearingRadius);
  const upright = Math.sin(directionOf(windlass, at));
  const sense = signOf(asked.direction);
  const F = pullOnDryPin({ moment: W * a, arm: c, circle: sense * mu * rb, weight: W + D, upright });
  if (F === null)
    return notDefined('windlass.jams', {
      arm: { si: c, dimension: 'length' },
      circle: { si: mu * rb, dimension: 'length' },
    });
  const Q = pinReaction(W + D, F, upright);
  return {
    kind: 'balance',
    effort: newtons(F),
    velocityRatio: c / a,
    work: [
      { by: 'effort', cause: 'effort', rate: sense * F },
      { by: 'load', cause: 'load', rate: (-sense * W * a) / c },
      { by: 'loss', cause: 'windlass.bearing-friction', rate: (-mu * rb * Q) / c },
    ],
    working: () => [
      ...armLines(windlass, at),
      line(
        'windlass.drum-weight',
        'D',
        'mD*g',
        { mD: at(drumMass), g: asked.gravity },
        D,
        'N',
        'weight = mass x local gravity',
      ),
      line(
        'windlass.bearing-force',
        'Q',
        'hypot(F*cos(p), W + D - F*sin(p))',
        { F, W, D, p: directionOf(windlass, at) },
        Q,
        'N',
        'balance of forces on the drum',
      ),
      line(
        'windlass.effort',
        'F',
        `(W*a ${sense === 1 ? '+' : '-'} mu*rb*Q)/c`,
        { W, a, mu, rb, Q, c },
        F,
        'N',
        'OpenStax College Physics 2e, 9.5; friction circle of a dry pin',
      ),
    ],
  };
}

/** Wheel radius over axle radius, lines without thickness: the schoolbook's wheel and axle. */
export function idealAdvantage(windlass: Windlass, at: At): Ideal {
  const R = at(windlass.inputs.wheelRadius);
  const r = at(windlass.inputs.axleRadius);
  return {
    advantage: R / r,
    working: [
      line('windlass.ideal-advantage', 'A', 'R/r', { R, r }, R / r, '1', 'OpenStax College Physics 2e, 9.5'),
    ],
  };
}

/** Arms of load and pull about the axle, to the middle of the lines. */
export function arms(windlass: Windlass, at: At): { readonly a: number; readonly c: number } {
  const { wheelRadius, axleRadius, wheelLine, axleLine } = windlass.inputs;
  const t = at(axleLine);
  return {
    a: at(axleRadius) + t / 2 + windlass.layers * t * NEST,
    c: at(wheelRadius) + (windlass.turnedBy === 'crank' ? 0 : at(wheelLine) / 2),
  };
}

/** Direction of the pull above the level, in radians. */
export function directionOf(windlass: Windlass, at: At): number {
  const stated = { down: -Math.PI / 2, level: 0, up: Math.PI / 2 }[windlass.pull];
  return stated + at(windlass.inputs.lean);
}

function friction({ inputs }: Windlass, at: At, grip: Asked['grip']): number {
  if (grip === 'none') return 0;
  return at(grip === 'moving' ? inputs.bearingFriction : inputs.bearingStarting);
}

function armLines(windlass: Windlass, at: At): readonly WorkingLine[] {
  const { a, c } = arms(windlass, at);
  const { wheelRadius, axleRadius, wheelLine, axleLine } = windlass.inputs;
  const [R, r, tw, ta, z] = [at(wheelRadius), at(axleRadius), at(wheelLine), at(axleLine), windlass.layers];
  const ROPE = 'the force of a line runs along its middle (Bhavikatti, Mechanics of Solids, example 6.11)';
  return [
    z === 0
      ? line('windlass.load-arm', 'a', 'r + ta/2', { r, ta }, a, 'm', ROPE)
      : line('windlass.load-arm', 'a', 'r + ta/2 + z*ta*sin(pi/3)', { r, ta, z }, a, 'm', ROPE),
    windlass.turnedBy === 'crank'
      ? line('windlass.crank-arm', 'c', 'R', { R }, c, 'm', 'pull square to the crank')
      : line('windlass.pull-arm', 'c', 'R + tw/2', { R, tw }, c, 'm', ROPE),
  ];
}
