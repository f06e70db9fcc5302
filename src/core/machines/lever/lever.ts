import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import { lengthFact } from '../../diagnostics/facts.ts';
import { newtons } from '../../quantities/brands.ts';
import { type Asked, type Balance, signOf } from '../../statics/balance.ts';
import { pinReaction, pullOnDryPin } from '../../statics/dry-pin.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Ideal } from '../machine.ts';
import { type Lever, pullsDown } from './station.ts';

/**
 * The lever at the limit of turning.
 *
 *     E c = W a + B b + k |R|,   R = W + B - E as vectors,   k = ± mu r
 *
 * with a, b the level distances of load and bar centre from the pin (counted positive where they
 * turn against the raise), c the arm of the pull and mu r |R| the moment of a dry pin on its
 * radius. R holds E; the dry pin solves for it.
 *
 * Source: moments about the pivot, OpenStax College Physics 2e, 9.3 and 9.4; the friction circle of
 * a dry journal bearing (Meriam and Kraige, Statics, 6/6, from memory). Holds for a stiff bar, a
 * pin that slides in its hole, and loads that hang. Neglects the slip of hooks in their holes.
 */
export function balanceLever(lever: Lever, at: At, asked: Asked): Balance | NotDefined {
  const { raises, a, b, c, down, dx, dy } = arms(lever, at);
  const W = asked.load;
  const B = at(lever.inputs.barMass) * asked.gravity;
  const T = W + B;
  const mu = pinFriction(lever, at, asked.grip);
  const r = at(lever.inputs.pinRadius);
  const sense = signOf(asked.direction);
  const k = sense * mu * r;
  const M = W * a + B * b;
  const E = pullOnDryPin({ moment: M, arm: c, circle: k, weight: T, upright: dy });
  if (E === null) return notDefined('lever.jams', { arm: lengthFact(c), circle: lengthFact(Math.abs(k)) });
  const R = pinReaction(T, E, dy);
  return {
    kind: 'balance',
    effort: newtons(E),
    velocityRatio: c / Math.abs(a),
    work: [
      { by: 'effort', cause: 'effort', rate: sense * E },
      { by: 'load', cause: 'load', rate: (-sense * W * a) / c },
      { by: 'dead weight', cause: 'lever.bar', rate: (-sense * B * b) / c },
      { by: 'loss', cause: 'lever.pin-friction', rate: (-mu * r * R) / c },
    ],
    working: () => [
      {
        what: 'lever.load-arm',
        symbol: 'a',
        formula: 's*(xW - x0)*cos(t) - s*h*sin(t)',
        values: {
          s: raises,
          xW: at(lever.inputs.load),
          x0: at(lever.inputs.fulcrum),
          h: at(lever.inputs.holesAbove),
          t: tiltOf(lever, at, raises),
        },
        value: a,
        unit: 'm',
        source: 'geometry',
      },
      {
        what: 'lever.bar-arm',
        symbol: 'b',
        formula: 's*(xB - x0)*cos(t)',
        values: {
          s: raises,
          xB: at(lever.inputs.barCentre),
          x0: at(lever.inputs.fulcrum),
          t: tiltOf(lever, at, raises),
        },
        value: b,
        unit: 'm',
        source: 'geometry',
      },
      {
        what: 'lever.pull-arm',
        symbol: 'c',
        formula: 's*(X*dy - Y*dx)',
        values: { s: raises, X: arms(lever, at).X, Y: arms(lever, at).Y, dx, dy },
        value: c,
        unit: 'm',
        source: 'geometry',
      },
      {
        what: 'lever.bar-weight',
        symbol: 'B',
        formula: 'mB*g',
        values: { mB: at(lever.inputs.barMass), g: asked.gravity },
        value: B,
        unit: 'N',
        source: 'weight = mass x local gravity',
      },
      {
        what: 'lever.friction-circle',
        symbol: 'k',
        formula: 'v*mu*r',
        values: { v: sense, mu, r },
        value: k,
        unit: 'm',
        source: 'friction circle of a dry pin; v is 1 while raising and -1 while lowering',
      },
      {
        what: 'lever.reaction',
        symbol: 'R',
        formula: 'hypot(E*dx, W + B - E*dy)',
        values: { E, dx, W, B, dy },
        value: R,
        unit: 'N',
        source: 'balance of forces on the bar',
      },
      {
        what: down ? 'lever.effort-down' : 'lever.effort-up',
        symbol: 'E',
        formula: '(W*a + B*b + k*R)/c',
        values: { W, a, B, b, k, R, c },
        value: E,
        unit: 'N',
        source: 'OpenStax College Physics 2e, 9.3; friction circle of a dry pin',
      },
    ],
  };
}

/** Effort arm over load arm, measured along the bar: the schoolbook's lever. */
export function idealAdvantage(lever: Lever, at: At): Ideal {
  const { fulcrum, load, pull } = lever.inputs;
  const xE = Math.abs(at(pull) - at(fulcrum));
  const xW = Math.abs(at(load) - at(fulcrum));
  return {
    advantage: xE / xW,
    working: [
      {
        what: 'lever.ideal-advantage',
        symbol: 'A',
        formula: 'lE/lW',
        values: { lE: xE, lW: xW },
        value: xE / xW,
        unit: '1',
        source: 'OpenStax College Physics 2e, 9.5',
      },
    ],
  };
}

/** Level arms about the pin, positive where they turn against the raise; `c` is positive where the pull raises. */
export function arms(lever: Lever, at: At) {
  const { fulcrum, load, pull, barCentre, holesAbove, lean } = lever.inputs;
  const xW = at(load) - at(fulcrum);
  const raises = xW > 0 ? 1 : -1;
  const t = tiltOf(lever, at, raises);
  const h = at(holesAbove);
  const xE = at(pull) - at(fulcrum);
  const X = xE * Math.cos(t) - h * Math.sin(t);
  const Y = xE * Math.sin(t) + h * Math.cos(t);
  const down = pullsDown(lever, at);
  const turn = (lever.pullKeepsSquare ? t : 0) + at(lean);
  const dx = (down ? 1 : -1) * Math.sin(turn);
  const dy = (down ? -1 : 1) * Math.cos(turn);
  return {
    raises,
    a: raises * (xW * Math.cos(t) - h * Math.sin(t)),
    b: raises * (at(barCentre) - at(fulcrum)) * Math.cos(t),
    c: raises * (X * dy - Y * dx),
    X,
    Y,
    dx,
    dy,
    down,
  };
}

/** Tilt anticlockwise; the file counts it positive with the load's end up. */
const tiltOf = (lever: Lever, at: At, raises: number): number => raises * at(lever.inputs.tilt);

function pinFriction(lever: Lever, at: At, grip: Asked['grip']): number {
  if (grip === 'none') return 0;
  return grip === 'moving' ? at(lever.inputs.pinFriction) : at(lever.inputs.pinStarting);
}
