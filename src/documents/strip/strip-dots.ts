import { circle, type Ink, LETTERING, lettersWidth, path, words } from '../drawing/ink.ts';

/** A group's reading with the group's label. */
export interface StripDot {
  readonly label: string;
  readonly si: number;
  /** A reading to look at again is an open ring with a cross, told by shape. */
  readonly lookAgain?: true;
}

const LIFT = 10.5;
const ROW = 4.2;

/** A dot beside the scale for each reading, labels stacked where they would run together. */
export function dotInks(
  dots: readonly StripDot[],
  on: (si: number) => number,
  length: number,
): readonly Ink[] {
  const taken: number[] = [];
  return [...dots]
    .sort((a, b) => a.si - b.si)
    .flatMap((dot) => {
      const x = Math.min(length + 1.5, Math.max(-1.5, on(dot.si)));
      const left = x - 1.2;
      const row = freeRow(taken, left);
      taken[row] = x + 2.4 + lettersWidth(dot.label, LETTERING.small);
      const y = -LIFT - row * ROW;
      return [
        path(
          [
            [x, 0],
            [x, y + 1],
          ],
          'thin',
        ),
        circle([x, y], 1, 'cord', dot.lookAgain === true ? 'paper' : 'solid'),
        ...(dot.lookAgain === true
          ? [
              path(
                [
                  [x - 1, y - 1],
                  [x + 1, y + 1],
                ],
                'thin',
              ),
              path(
                [
                  [x - 1, y + 1],
                  [x + 1, y - 1],
                ],
                'thin',
              ),
            ]
          : []),
        words([x + 1.8, y + 1], dot.label, { size: 'small', anchor: 'start' }),
      ];
    });
}

/** The lowest row whose last label ends before this one begins. */
function freeRow(taken: readonly number[], left: number): number {
  const row = taken.findIndex((right) => right <= left);
  return row === -1 ? taken.length : row;
}
