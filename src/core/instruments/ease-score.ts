/**
 * Two forces that differ by less than this share feel alike to a hand. From memory: a just noticeable
 * difference of force of about a tenth.
 */
export const FEEL = 0.1;

/**
 * How easy each of some setups felt, as an order and no more: 1 is the easiest. Setups whose forces
 * a hand can't tell apart share a place, and the next place counts on from there.
 *
 * A share of `feel` is compared with the easiest of a place, so that a chain of small steps does not
 * run on for ever. Source: ordinal ranking with ties; the share is an assumption (see `FEEL`).
 *
 * @example easeOrder([4, 1, 4.2, 9], 0.1) // => [2, 1, 2, 4]
 */
export function easeOrder(forces: readonly number[], feel: number): readonly number[] {
  const sorted = [...forces].sort((a, b) => a - b);
  const places = new Map<number, number>();
  let easiest = Number.NEGATIVE_INFINITY;
  let place = 0;
  sorted.forEach((force, index) => {
    if (index === 0 || force - easiest > feel * Math.abs(easiest)) {
      easiest = force;
      place = index + 1;
    }
    places.set(force, place);
  });
  return forces.map((force) => places.get(force) ?? 0);
}
