import { dimensionIn, measuredIn } from '../description/filled.ts';
import { type Kilograms, kilograms } from '../quantities/brands.ts';
import { type Measured, times } from '../uncertainty/measured.ts';
import type { KitPart } from './kit.ts';

/** A load that is marked in newtons weighs so much at the standard acceleration of free fall (exact). */
const STANDARD_GRAVITY = 9.80665;

/**
 * What a part weighs as it lies in its box: as weighed whole, else the mass that its kind states, else
 * what a load is marked with. `null` where the kit says nothing; the head of a screw is not the screw.
 */
export function massOfPart(part: KitPart): Measured<Kilograms> | null {
  const whole = part.weighs ?? measuredIn<Kilograms>(part.fields, 'mass');
  if (whole !== undefined) return whole;
  const of = measuredIn(part.fields, 'of');
  if (of === undefined) return null;
  return dimensionIn(part.fields, 'of') === 'force'
    ? times<Kilograms>(of, 1 / STANDARD_GRAVITY)
    : { ...of, value: kilograms(of.value) };
}
