import type { Point } from '../../core/description/drawing.ts';
import { circle, type Ink, path, together, words } from './ink.ts';

const LONG = 13;
/** Half of the two strokes that break the line off, and how they slant. */
const BREAK = 1.5;

/** The line to another picture: tied on here, broken off there, with words that say where it goes. */
export function linkInk(from: Point, direction: number, text: string): Ink {
  const along: Point = [Math.cos(direction), -Math.sin(direction)];
  const at = (distance: number, aside = 0): Point => [
    from[0] + along[0] * distance - along[1] * aside,
    from[1] + along[1] * distance + along[0] * aside,
  ];
  const stroke = (distance: number): Ink =>
    path([at(distance - BREAK / 2, -BREAK), at(distance + BREAK / 2, BREAK)], 'cord');
  return together([
    path([from, at(LONG)], 'cord'),
    circle(from, 0.7, 'cord', 'solid'),
    stroke(LONG),
    stroke(LONG + 1),
    named(at(LONG + 3), along, text),
  ]);
}

/** Beside the end of an upright line below or above it, else on in its direction. */
function named([x, y]: Point, [dx, dy]: Point, text: string): Ink {
  if (Math.abs(dx) < 0.4) return words([x, dy > 0 ? y + 2.6 : y - 0.6], text, { size: 'small' });
  return words([x, y + 1], text, { size: 'small', anchor: dx > 0 ? 'start' : 'end' });
}
