import { type NotDefined, notDefined } from '../../description/not-defined.ts';
import { type Radians, radians } from '../../quantities/brands.ts';
import type { Asked, Balance } from '../../statics/balance.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Ideal, Tally } from '../machine.ts';
import { balanceLifting } from './lifting.ts';
import { balanceSplitting } from './splitting.ts';
import { faceAngle, opening, type Wedge } from './station.ts';

/** The wedge at the limit of sliding: under a load, or between two faces. */
export function balanceWedge(wedge: Wedge, at: At, asked: Asked): Balance | NotDefined {
  switch (wedge.form) {
    case 'lifting':
      return balanceLifting(wedge, at, asked);
    case 'splitting':
      return balanceSplitting(wedge, at, asked);
  }
}

/**
 * Length over thickness: of a lifting wedge load over push, of a splitting one side force over push,
 * where nothing rubs. Two working faces share the push, so 1/(2 tan h) is the same length over thickness.
 */
export function idealAdvantage(wedge: Wedge, at: At): Ideal {
  const l = at(wedge.inputs.length);
  const t = at(wedge.inputs.thickness);
  return {
    advantage: l / t,
    working: [
      {
        what: wedge.form === 'lifting' ? 'wedge.ideal-lift' : 'wedge.ideal-side-force',
        symbol: 'A',
        formula: 'l/t',
        values: { l, t },
        value: l / t,
        unit: '1',
        source: 'OpenStax Physics (high school), 9.3',
      },
    ],
  };
}

/**
 * How far the wedge is inside the limit at which it holds itself: friction angles less face angle.
 * Below zero it springs out. Source: theory of the wedge as in `balanceLifting`, `balanceSplitting`;
 * neglects the wedge's own weight.
 */
export function holdingMargin(wedge: Wedge, at: At): Radians {
  const { faceFriction, baseFriction } = wedge.inputs;
  const face = Math.atan(at(faceFriction));
  const base = wedge.form === 'lifting' ? Math.atan(at(baseFriction)) : 0;
  return radians(face + base - faceAngle(wedge, at));
}

export const isSelfHolding = (wedge: Wedge, at: At): boolean => holdingMargin(wedge, at) >= 0;

/** How far the load is up, or the faces apart, when the wedge is pushed to its mark. */
export function tally(wedge: Wedge, at: At): Tally | NotDefined {
  if (!wedge.hasMark) return notDefined('wedge.no-mark');
  const { advance, thickness, length } = wedge.inputs;
  const value = opening(wedge, at);
  return {
    what: 'travel',
    value,
    textbook: value,
    working: [
      {
        what: wedge.form === 'lifting' ? 'wedge.rise' : 'wedge.opening',
        symbol: 'o',
        formula: 'x*t/l',
        values: { x: at(advance), t: at(thickness), l: at(length) },
        value,
        unit: 'm',
        source: 'geometry',
      },
    ],
  };
}
