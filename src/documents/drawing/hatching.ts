import type { Point } from '../../core/description/drawing.ts';
import { element } from '../markup.ts';
import { boxOf, type Ink, mm, turned } from './ink.ts';

/**
 * Parallel lines at 45 degrees inside an outline, as a drawing shows a cut face, the ground, or a
 * range. Lines and not a pattern: they print the same everywhere and need no names in the page.
 */
export function hatching(outline: readonly Point[], spacing: number, angle = -Math.PI / 4): Ink {
  const level = outline.map((point) => turned(point, -angle));
  const { top, bottom } = boxOf(level);
  let d = '';
  for (let y = Math.ceil(top / spacing) * spacing; y < bottom; y += spacing) {
    const crossings = crossingsAt(level, y);
    for (let n = 0; n + 1 < crossings.length; n += 2) {
      const [x1, y1] = turned([crossings[n] ?? 0, y], angle);
      const [x2, y2] = turned([crossings[n + 1] ?? 0, y], angle);
      d += `M${mm(x1)} ${mm(y1)}L${mm(x2)} ${mm(y2)}`;
    }
  }
  return {
    svg: d === '' ? '' : element('path', { d, 'stroke-width': 0.18 }),
    box: boxOf(outline),
  };
}

/** Where a level line meets the outline, from left to right. */
function crossingsAt(outline: readonly Point[], y: number): readonly number[] {
  return outline
    .flatMap(([x1, y1], n): number[] => {
      const [x2, y2] = outline[(n + 1) % outline.length] ?? [x1, y1];
      if (y1 < y === y2 < y) return [];
      return [x1 + ((y - y1) / (y2 - y1)) * (x2 - x1)];
    })
    .sort((a, b) => a - b);
}
