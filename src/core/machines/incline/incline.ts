import { isNotDefined, type NotDefined } from '../../description/not-defined.ts';
import type { WorkingLine } from '../../description/working.ts';
import { type Asked, type Balance, signOf } from '../../statics/balance.ts';
import { keyOf, resistance } from '../../statics/carriage.ts';
import { leanLines, leanOf, throughGuide } from '../../statics/guided-pull.ts';
import { heldOnSlope } from '../../statics/slope.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Ideal } from '../machine.ts';
import { angleOf, type InclinedPlane } from './station.ts';

/**
 * The inclined plane at the limit of moving: a longer way for a smaller pull.
 *
 *     N = G cos(a + d)/(cos d + k sin d),   P = (G sin a + k N)/cos d,   k = +C up, -C down
 *
 * with G the weight of the load and what it rides on, a the slope, d the string's angle above the board, C the drag
 * of bare base, rollers or wheels. Over a guide pulley the scale reads the hauled tension.
 *
 * Source: OpenStax College Physics 2e, 5.1 and 9.5; Bansal, Engineering Mechanics, example 8.12.
 * Holds for a stiff flat board and a slow, even pull. Neglects the sag of the board and tipping.
 */
export function balanceIncline(plane: InclinedPlane, at: At, asked: Asked): Balance | NotDefined {
  const a = angleOf(plane, at);
  const d = leanOf(plane, at);
  const drag = resistance(plane, at, asked.grip);
  const mD = at(plane.inputs.deadMass);
  const dead = mD * asked.gravity;
  const G = asked.load + dead;
  const C = drag.coefficient;
  const held = heldOnSlope({ weight: G, angle: a, lean: d, coefficient: C, direction: asked.direction });
  if (isNotDefined(held)) return held;
  const { pull: P, normal: N } = held;
  const guided = throughGuide(plane, at, asked, P);
  const sense = signOf(asked.direction);
  // A metre of string moves the load 1/cos d along the board and sin a/cos d up.
  const along = 1 / Math.cos(d);
  const up = Math.sin(a) * along;
  return {
    kind: 'balance',
    effort: guided.effort,
    velocityRatio: 1 / up,
    work: [
      { by: 'effort', cause: 'effort', rate: sense * guided.effort },
      { by: 'load', cause: 'load', rate: -sense * asked.load * up },
      { by: 'dead weight', cause: `carriage.${keyOf(plane)}`, rate: -sense * dead * up },
      ...drag.losses.map(({ cause, share }) => ({ by: 'loss', cause, rate: -share * N * along }) as const),
      ...(plane.guide === null
        ? []
        : [{ by: 'loss', cause: 'string.guide-pulley', rate: -guided.drag } as const]),
    ],
    working: () => [
      ...angleLines(plane, at),
      ...leanLines(plane, at),
      drag.line,
      {
        what: 'slope.weight',
        symbol: 'G',
        formula: 'W + mD*g',
        values: { W: asked.load, mD, g: asked.gravity },
        value: G,
        unit: 'N',
        source: 'weight = mass x local gravity',
      },
      {
        what: 'slope.normal',
        symbol: 'N',
        formula: `G*cos(a + d)/(cos(d) ${sense > 0 ? '+' : '-'} C*sin(d))`,
        values: { G, a, d, C },
        value: N,
        unit: 'N',
        source: 'balance of forces square to the board',
      },
      {
        what: sense > 0 ? 'slope.pull-up' : 'slope.let-down',
        symbol: 'P',
        formula: `(G*sin(a) ${sense > 0 ? '+' : '-'} C*N)/cos(d)`,
        values: { G, a, C, N, d },
        value: P,
        unit: 'N',
        source: 'OpenStax College Physics 2e, 5.1: balance of forces along the board',
      },
      ...guided.lines,
    ],
  };
}

const angleLines = (plane: InclinedPlane, at: At): readonly WorkingLine[] =>
  plane.steep === 'measured'
    ? []
    : [
        {
          what: 'incline.angle',
          symbol: 'a',
          formula: 'asin(H/L)',
          values: { H: at(plane.inputs.rise), L: at(plane.inputs.slopeLength) },
          value: angleOf(plane, at),
          unit: 'rad',
          source: 'geometry',
        },
      ];

/** Length along the slope over its rise: the schoolbook's inclined plane. */
export function idealAdvantage(plane: InclinedPlane, at: At): Ideal {
  const value = 1 / Math.sin(angleOf(plane, at));
  const line = { what: 'incline.ideal-advantage', symbol: 'A', unit: '1' } as const;
  const source = 'OpenStax College Physics 2e, 9.5';
  if (plane.steep === 'measured') {
    const a = at(plane.inputs.angle);
    return { advantage: value, working: [{ ...line, formula: '1/sin(a)', values: { a }, value, source }] };
  }
  const H = at(plane.inputs.rise);
  const L = at(plane.inputs.slopeLength);
  return { advantage: L / H, working: [{ ...line, formula: 'L/H', values: { L, H }, value: L / H, source }] };
}
