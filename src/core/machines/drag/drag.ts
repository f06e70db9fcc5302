import { isNotDefined, type NotDefined, notDefined } from '../../description/not-defined.ts';
import { type Asked, type Balance, signOf } from '../../statics/balance.ts';
import { resistance } from '../../statics/carriage.ts';
import { leanLines, leanOf, throughGuide } from '../../statics/guided-pull.ts';
import { heldOnSlope } from '../../statics/slope.ts';
import type { At } from '../../uncertainty/propagate.ts';
import type { Drag } from './station.ts';

/**
 * Dragging or rolling a load along the level: all of the work goes into the surface and the axles.
 *
 *     P = C G/(cos d + C sin d),   N = G cos d/(cos d + C sin d)
 *
 * with G the weight of the load and what it rides on, d the string's angle above the floor, C the drag of base,
 * rollers or wheels. The same with -C where the pull would have to hold it back: below 0, it does not
 * come back by itself. Advantage and efficiency are not defined, since nothing is raised.
 *
 * Source: OpenStax College Physics 2e, 5.1; the pull at an angle, Bansal, Engineering Mechanics,
 * example 8.3. Holds for a flat level floor and a slow, even pull. Neglects tipping.
 */
export function balanceDrag(drag: Drag, at: At, asked: Asked): Balance | NotDefined {
  const d = leanOf(drag, at);
  const held = resistance(drag, at, asked.grip);
  const mD = at(drag.inputs.deadMass);
  const G = asked.load + mD * asked.gravity;
  const C = held.coefficient;
  const pulled = heldOnSlope({ weight: G, angle: 0, lean: d, coefficient: C, direction: asked.direction });
  if (isNotDefined(pulled)) return pulled;
  const { pull: P, normal: N } = pulled;
  const guided = throughGuide(drag, at, asked, P);
  const sense = signOf(asked.direction);
  // A metre of string moves the load 1/cos d along the floor.
  const along = 1 / Math.cos(d);
  return {
    kind: 'balance',
    effort: guided.effort,
    velocityRatio: notDefined('drag.no-useful-work'),
    work: [
      { by: 'effort', cause: 'effort', rate: sense * guided.effort },
      ...held.losses.map(({ cause, share }) => ({ by: 'loss', cause, rate: -share * N * along }) as const),
      ...(drag.guide === null
        ? []
        : [{ by: 'loss', cause: 'string.guide-pulley', rate: -guided.drag } as const]),
    ],
    working: () => [
      ...leanLines(drag, at),
      held.line,
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
        formula: `G*cos(d)/(cos(d) ${sense > 0 ? '+' : '-'} C*sin(d))`,
        values: { G, d, C },
        value: N,
        unit: 'N',
        source: 'balance of forces square to the floor',
      },
      {
        what: sense > 0 ? 'drag.pull' : 'drag.let-back',
        symbol: 'P',
        formula: sense > 0 ? 'C*N/cos(d)' : '(0 - C*N)/cos(d)',
        values: { C, N, d },
        value: P,
        unit: 'N',
        source: 'OpenStax College Physics 2e, 5.1: balance of forces along the floor',
      },
      ...guided.lines,
    ],
  };
}

/** No load is raised, so there is no advantage to speak of; pull per load is what can be compared. */
export const idealAdvantage = (): NotDefined => notDefined('drag.no-useful-work');
