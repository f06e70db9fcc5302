import type { Point } from '../../core/description/drawing.ts';
import { LETTERING, lettersWidth } from './ink.ts';

/** A dimension on paper, in millimetres. */
export interface Measure {
  readonly from: Point;
  readonly to: Point;
  /** Row: positive above (right of) what is measured, negative below (left). */
  readonly row: number;
  readonly text: string;
}

/** Whether the words of a level dimension stand within it. */
export const fitsWithin = (measure: Measure): boolean =>
  widthOf(measure) > lettersWidth(measure.text, LETTERING.normal) + 1;

/**
 * The row of each level dimension, from 0: as wished, or the next one out where two would run into
 * each other.
 */
export function dimensionRows(level: readonly Measure[]): ReadonlyMap<Measure, number> {
  const rows = new Map<Measure, number>();
  const taken: (readonly [number, number])[][] = [];
  const wishes = [...new Set(level.map(wishOf))].sort((a, b) => a - b);
  const nearestFirst = [...level].sort((a, b) => wishOf(a) - wishOf(b) || widthOf(a) - widthOf(b));
  for (const each of nearestFirst) {
    const [left, right] = roomOf(each);
    let row = wishes.indexOf(wishOf(each));
    while (taken[row]?.some(([from, to]) => left < to - 0.3 && right > from + 0.3)) row += 1;
    while (taken.length <= row) taken.push([]);
    taken[row]?.push([left, right]);
    rows.set(each, row);
  }
  return rows;
}

const wishOf = ({ row }: Measure): number => Math.abs(row || 1);
const widthOf = ({ from, to }: Measure): number => Math.abs(to[0] - from[0]);

/** From left to right all that a level dimension needs, its words beside it where they don't fit within. */
function roomOf(measure: Measure): readonly [number, number] {
  const left = Math.min(measure.from[0], measure.to[0]);
  const right = Math.max(measure.from[0], measure.to[0]);
  return fitsWithin(measure)
    ? [left, right]
    : [left, right + 2.2 + lettersWidth(measure.text, LETTERING.normal)];
}
