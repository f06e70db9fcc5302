import type { WorkingLine } from '../description/working.ts';
import { type Metres, type Newtons, newtons, type Radians, type Ratio } from '../quantities/brands.ts';
import type { Measured } from '../uncertainty/measured.ts';
import type { At } from '../uncertainty/propagate.ts';
import type { Asked } from './balance.ts';
import { easeOver, haulOver, sheaveDrag } from './sheave.ts';

/** How a string comes to the load: at a stated lean above the plane, or from a pulley that stands higher. */
export type StringPull = Leaning | FromThePulley;

export interface Leaning {
  readonly string: 'leans';
  readonly guide: Guide | null;
  readonly inputs: { readonly lean: Measured<Radians> } & Sheave;
}

export interface FromThePulley {
  readonly string: 'comes from the pulley';
  readonly guide: Guide;
  readonly inputs: {
    /** Height of the string at the pulley above the hook, square to the plane. */
    readonly pulleyAbove: Measured<Metres>;
    /** Distance of the hook from the pulley along the plane when it is read. */
    readonly readAt: Measured<Metres>;
  } & Sheave;
}

/** The guide pulley's drag: nothing at all where the hand pulls directly. */
type Sheave = {
  readonly guideShare: Measured<Ratio>;
  readonly guideConstant: Measured<Newtons>;
};

/** The string after the pulley: where it goes, as an angle above the level in the drawing's plane. */
export interface Guide {
  readonly leaves: 'down' | 'up' | 'level' | 'stated';
  readonly angle: number;
}

/**
 * Lean of the string above the plane. It grows as the load nears a pulley that stands higher than its
 * hook: tan d = height/distance.
 */
export const leanOf = (pull: StringPull, at: At): number =>
  pull.string === 'leans'
    ? at(pull.inputs.lean)
    : Math.atan(at(pull.inputs.pulleyAbove) / at(pull.inputs.readAt));

/** The line that finds the lean, where it has to be found. */
export const leanLines = (pull: StringPull, at: At): readonly WorkingLine[] =>
  pull.string === 'leans'
    ? []
    : [
        {
          what: 'string.lean',
          symbol: 'd',
          formula: 'atan(h/x)',
          values: { h: at(pull.inputs.pulleyAbove), x: at(pull.inputs.readAt) },
          value: leanOf(pull, at),
          unit: 'rad',
          source: 'geometry',
        },
      ];

/** What the hand pulls with when the load needs `tension`, and what the guide pulley takes of it. */
export interface Guided {
  readonly effort: Newtons;
  readonly drag: number;
  readonly lines: readonly WorkingLine[];
}

/**
 * The pull beyond the guide pulley: more than the tension at the load when hauling, less when letting
 * it back, each by the drag c + s (mean of both tensions).
 *
 * Source: the sheave law of statics/sheave.ts. Holds for any direction after the pulley; neglects that
 * a small turn of the string loads the pulley's pin less than a half turn.
 */
export function throughGuide(pull: StringPull, at: At, asked: Asked, tension: number): Guided {
  const acts = asked.grip === 'none' ? 0 : 1;
  const s = acts * at(pull.inputs.guideShare);
  const c = acts * at(pull.inputs.guideConstant);
  const near = newtons(tension);
  if (pull.guide === null) return { effort: near, drag: 0, lines: [] };
  const hauls = asked.direction === 'raise';
  const effort = hauls ? haulOver(near, s, newtons(c)) : easeOver(near, s, newtons(c));
  return {
    effort,
    drag: sheaveDrag(near, effort, s, newtons(c)),
    lines: [
      {
        what: hauls ? 'string.hauled' : 'string.let-back',
        symbol: 'E',
        formula: hauls ? '(P*(1 + sG/2) + cG)/(1 - sG/2)' : '(P*(1 - sG/2) - cG)/(1 + sG/2)',
        values: { P: tension, sG: s, cG: c },
        value: effort,
        unit: 'N',
        source: 'drag of a sheave: c + s x mean of its two tensions',
      },
    ],
  };
}
