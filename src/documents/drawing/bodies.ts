import type { Point, Role } from '../../core/description/drawing.ts';
import { hatching } from './hatching.ts';
import { type Box, circle, type Ink, overlap, path, together, words } from './ink.ts';

/** Bodies that stand fast are hatched lightly; those that move or are looked at stay blank. */
const HATCHED: ReadonlySet<Role> = new Set(['frame']);

/** A solid body by its outline. */
export const bodyInk = (outline: readonly Point[], role: Role): Ink =>
  together([path(outline, 'outline', true, 'paper'), ...(HATCHED.has(role) ? [hatching(outline, 2)] : [])]);

/** Something round: wheel, roller, drum, sheave, axle, with its centre lines. */
export function wheelInk(centre: Point, radius: number, role: Role): Ink {
  const [x, y] = centre;
  const over = radius + 1.6;
  const isSmall = radius < 2.2;
  return together([
    circle(centre, radius, 'outline', 'paper'),
    ...(role === 'sheave' && !isSmall ? [circle(centre, radius * 0.82, 'thin')] : []),
    ...(isSmall
      ? []
      : [
          path(
            [
              [x - over, y],
              [x + over, y],
            ],
            'centre',
          ),
          path(
            [
              [x, y - over],
              [x, y + over],
            ],
            'centre',
          ),
        ]),
    circle(centre, Math.min(0.8, radius / 3), 'thin', 'solid'),
  ]);
}

export interface Hole {
  readonly centre: Point;
  readonly radius: number;
  readonly number: number | null;
  readonly used: boolean;
}

/** A hole is told from a used one by shape: the used one carries a ring round it. */
export function holeInk({ centre, radius, used }: Hole): Ink {
  const size = Math.min(Math.max(radius, 0.55), 1.1);
  return together([
    circle(centre, size, 'thin', used ? 'solid' : 'paper'),
    ...(used ? [circle(centre, size + 0.7, 'thin')] : []),
  ]);
}

/**
 * Numbers above the holes (beside them where they stand in a column), all of them where there is room, else every second, fifth or tenth; those
 * in use always, in bold. Below the bar where something stands over it.
 */
export function holeNumbers(
  holes: readonly Hole[],
  above: number,
  busy: readonly Point[],
  scales: readonly Box[],
): readonly Ink[] {
  const numbered = holes.filter((hole) => hole.number !== null);
  const spacing = Math.min(
    ...numbered.slice(1).map((hole, n) => {
      const before = numbered[n]?.centre ?? hole.centre;
      return Math.hypot(hole.centre[0] - before[0], hole.centre[1] - before[1]);
    }),
  );
  const isColumn = numbered.length > 1 && Math.abs(xOf(numbered[1]) - xOf(numbered[0])) < 0.1;
  const least = isColumn ? 3.3 : 5.2;
  const crowded = isColumn ? USED_BELOW + 1 : least;
  const every = [1, 2, 5, 10].find((step) => spacing * step >= least) ?? 20;
  /** A number that nobody needs gives way to a scale that lies over it. */
  const clear = (used: boolean, ink: Ink): readonly Ink[] =>
    used || !scales.some((box) => overlap(ink.box, box)) ? [ink] : [];
  const usedNumbers = numbered.filter((hole) => hole.used).map((hole) => hole.number ?? 0);
  return numbered
    .filter((hole) => {
      if (hole.used) return true;
      const number = hole.number ?? 0;
      const isCrowded = usedNumbers.some((each) => Math.abs(each - number) * spacing < crowded);
      return number % every === 0 && !isCrowded;
    })
    .flatMap(({ centre: [x, y], number, used }) => {
      const weight = used ? { bold: true as const } : {};
      if (isColumn)
        return clear(
          used,
          // The board lies on the pin in use and runs on past it: that number stands below.
          words([x + 2, used ? y + USED_BELOW : y + 1], String(number), {
            size: 'small',
            anchor: 'start',
            ...weight,
          }),
        );
      const isBusy = busy.some(([left]) => Math.abs(left - x) < 4);
      const baseline = isBusy ? y + above + 2.2 : y - above;
      return clear(used, words([x, baseline], String(number), { size: 'small', ...weight }));
    });
}

const USED_BELOW = 4.6;
const xOf = (hole: Hole | undefined): number => hole?.centre[0] ?? 0;
