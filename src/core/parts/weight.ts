import type { Filled } from '../description/fields.ts';
import { dimensionIn, measuredIn } from '../description/filled.ts';
import type { PartKind } from '../description/part.ts';
import { type Kilograms, type MetresPerSecondSquared, type Newtons, newtons } from '../quantities/brands.ts';
import { exactly, type Measured } from '../uncertainty/measured.ts';
import type { At } from '../uncertainty/propagate.ts';

/** A load to hang on or carry: written as a mass, or as a weight that no gravity touches. */
export const weight: PartKind = {
  kind: 'weight',
  meaning: 'part.weight',
  fields: {
    of: {
      type: 'quantity',
      dimensions: ['mass', 'force'],
      above: 0,
      required: true,
      meaning: 'field.weight-of',
      example: '200 g',
    },
  },
};

/** A load as a mass or as a weight. */
export type Load =
  | { readonly kind: 'mass'; readonly mass: Measured<Kilograms> }
  | { readonly kind: 'weight'; readonly weight: Measured<Newtons> };

export const noLoad: Load = { kind: 'weight', weight: exactly(newtons(0)) };

/** The load that a `weight` part is. */
export function loadOf(fields: Filled): Load {
  return dimensionIn(fields, 'of') === 'force'
    ? { kind: 'weight', weight: measuredIn<Newtons>(fields, 'of') ?? exactly(newtons(0)) }
    : { kind: 'mass', mass: measuredIn<Kilograms>(fields, 'of') ?? exactly(0 as Kilograms) };
}

/** Force of a load: mass times local gravity, or the weight as written. */
export const forceOf = (load: Load, at: At, gravity: MetresPerSecondSquared): Newtons =>
  load.kind === 'mass' ? newtons(at(load.mass) * gravity) : at(load.weight);

export const measuredOf = (load: Load): Measured => (load.kind === 'mass' ? load.mass : load.weight);
