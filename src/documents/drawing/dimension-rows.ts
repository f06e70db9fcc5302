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
    const [left, right] = roomOf(each, level);
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

/** Room for words beside a dimension, with what keeps them off the tick. */
const besideOf = (measure: Measure): number => 2.2 + lettersWidth(measure.text, LETTERING.normal);

/**
 * Where words go that don't fit within: to the right (1), or to the left where on the right an end of
 * another dimension would send its extension line through them.
 */
export function besideSide(measure: Measure, level: readonly Measure[]): 1 | -1 {
  const ends = level.filter((each) => each !== measure).flatMap(({ from, to }) => [from[0], to[0]]);
  const [left, right] = edgesOf(measure);
  const isCrossed = (low: number, high: number): boolean => ends.some((x) => x > low && x < high);
  const room = besideOf(measure);
  return isCrossed(right + 0.3, right + room) && !isCrossed(left - room, left - 0.3) ? -1 : 1;
}

const edgesOf = ({ from, to }: Measure): readonly [number, number] => [
  Math.min(from[0], to[0]),
  Math.max(from[0], to[0]),
];

/** From left to right all that a level dimension needs, its words beside it where they don't fit within. */
function roomOf(measure: Measure, level: readonly Measure[]): readonly [number, number] {
  const [left, right] = edgesOf(measure);
  if (fitsWithin(measure)) return [left, right];
  return besideSide(measure, level) > 0
    ? [left, right + besideOf(measure)]
    : [left - besideOf(measure), right];
}
