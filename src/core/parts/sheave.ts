import type { Fields } from '../description/fields.ts';
import { choiceIn, measuredIn } from '../description/filled.ts';
import type { Part, PartKind } from '../description/part.ts';
import type { Diagnostic, Place } from '../diagnostics/diagnostic.ts';
import { type Newtons, newtons, type Ratio } from '../quantities/brands.ts';
import { dragShare, sheaveKind, sheaveKinds } from '../sources/sheave.ts';
import { heldWithin } from '../sources/source.ts';
import { between, exactly, type Measured, times } from '../uncertainty/measured.ts';

/** What is taken for a sheave of which nothing is said: the one that a school is likely to have. */
export const ASSUMED_SHEAVE = 'small pulley on a plain pin';

/** What a kit can say about a sheave; a stated efficiency or drag share wins over the kind. */
export const sheaveFields: Fields = {
  sheave: {
    type: 'choice',
    of: sheaveKinds.map((kind) => kind.name),
    meaning: 'sheave.field.sheave',
    example: ASSUMED_SHEAVE,
  },
  efficiency: {
    type: 'quantity',
    dimensions: ['ratio'],
    above: 0,
    most: 1,
    meaning: 'sheave.field.efficiency',
    example: '0.93 ± 0.02',
  },
  'drag share': {
    type: 'quantity',
    dimensions: ['ratio'],
    least: 0,
    most: 1.9,
    meaning: 'sheave.field.drag-share',
    example: '0.07 ± 0.02',
  },
  'constant drag': {
    type: 'quantity',
    dimensions: ['force'],
    least: 0,
    meaning: 'sheave.field.constant-drag',
    example: '0.01 N ± 0.005 N',
  },
};

/** A single sheave that only turns a line into another direction. */
export const guidePulley: PartKind = {
  kind: 'guide pulley',
  meaning: 'part.guide-pulley',
  fields: sheaveFields,
};

/** A line's drag over a sheave: a share of the mean of its two tensions, and a constant. */
export interface Sheave {
  readonly share: Measured<Ratio>;
  readonly constant: Measured<Newtons>;
}

/**
 * The drag of a sheave from what the kit says. Two sheaves of the same named kind share one unknown:
 * they come from the same box and are good or bad together.
 */
export function sheaveOf(part: Part): Sheave {
  const constant = measuredIn<Newtons>(part.fields, 'constant drag');
  const share = measuredIn<Ratio>(part.fields, 'drag share');
  const efficiency = measuredIn<Ratio>(part.fields, 'efficiency');
  const stated = share ?? (efficiency === undefined ? undefined : shareOf(efficiency));
  if (stated !== undefined) return { share: stated, constant: constant ?? exactly(newtons(0)) };
  const name = choiceIn(part.fields, 'sheave') ?? ASSUMED_SHEAVE;
  const kind = sheaveKind(name);
  if (kind === undefined) throw new RangeError(`no sheave kind '${name}' in the sourced table`);
  const [low, high] = kind.drag;
  const unknown = `kind:sheave/${name}`;
  return {
    share: between(`${unknown}/share`, ...heldWithin(kind.share), 'assumed', kind.source),
    constant:
      constant ??
      (high === 0
        ? exactly(newtons(0))
        : between(`${unknown}/constant`, low, high, 'assumed', kind.dragSource)),
  };
}

/** Two figures for one drag: nobody knows which of them is meant. */
export const sheaveFaults = (part: Part, place: (field: string) => Place): readonly Diagnostic[] =>
  part.fields.efficiency !== undefined && part.fields['drag share'] !== undefined
    ? [
        {
          code: 'sheave.stated-twice',
          severity: 'error',
          at: place('drag share'),
          facts: { part: part.mark },
        },
      ]
    : [];

/** s = 2 (1 - e) / (1 + e), with the slope ds/de = -4 / (1 + e)². */
const shareOf = (efficiency: Measured<Ratio>): Measured<Ratio> => ({
  ...times<Ratio>(efficiency, -4 / (1 + efficiency.value) ** 2),
  value: dragShare(efficiency.value),
});
