import type { Point } from '../../core/description/drawing.ts';
import { hatching } from './hatching.ts';
import { circle, type Ink, path, together } from './ink.ts';

const GROUND_DEPTH = 2.6;
const STAND_HEIGHT = 9;
const STAND_HALF = 5;

/** The table top, a floor or a fixed support: a wide line, hatched on the side that is solid. */
export function groundInk(from: Point, to: Point, solid: 'below' | 'above' = 'below'): Ink {
  const along = Math.hypot(to[0] - from[0], to[1] - from[1]);
  if (along === 0) return together([]);
  const side = (solid === 'below' ? 1 : -1) * (to[0] >= from[0] ? 1 : -1) * GROUND_DEPTH;
  const nx = (-(to[1] - from[1]) / along) * side;
  const ny = ((to[0] - from[0]) / along) * side;
  const outline: readonly Point[] = [from, to, [to[0] + nx, to[1] + ny], [from[0] + nx, from[1] + ny]];
  return together([hatching(outline, 1.3), path([from, to], 'outline')]);
}

/** The fulcrum: a pin in a three-cornered stand on the ground, or hung from above. */
export function pivotInk([x, y]: Point, stand: 'below' | 'above'): Ink {
  const down = stand === 'below' ? 1 : -1;
  const base = y + down * STAND_HEIGHT;
  return together([
    path(
      [
        [x, y],
        [x - STAND_HALF, base],
        [x + STAND_HALF, base],
      ],
      'outline',
      true,
      'paper',
    ),
    groundInk([x - STAND_HALF - 3, base], [x + STAND_HALF + 3, base], stand),
    circle([x, y], 1.5, 'outline', 'paper'),
    circle([x, y], 0.35, 'thin', 'solid'),
  ]);
}
