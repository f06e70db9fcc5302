import type { Point, Shape } from '../../core/description/drawing.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { type Box, type Ink, overlap, path, together } from './ink.ts';
import { handInk, PLAIN_ARROW, scaleInk } from './spring-scale.ts';

type Effort = Extract<Shape, { shape: 'effort' }>;

export interface EffortOptions {
  readonly language: Language;
  /** Numbers at the scale's first and last mark; `null` where no scale is hooked on. */
  readonly scaleEnds: readonly [string, string] | null;
  /** Where the force may be shown: its size, and millimetres of arrow for a newton. */
  readonly force?: { readonly newtons: number; readonly millimetresPerNewton: number };
}

/** Longer lines to try, in millimetres of paper. */
const LINES = [0, 2, 4, 6, 8, 12, 16, 20, 24, 28, 32, 36, 40] as const;

/** The pull through its scale. A scale that would cover a load hangs by a longer line: that changes no force. */
export function effortInk(
  shape: Effort,
  on: (point: Point) => Point,
  loads: readonly Box[],
  options: EffortOptions,
): Ink {
  // One after another: the first is nearly always clear, and a scale has many marks to draw.
  for (const line of LINES) {
    const ink = withLine(shape, on, line, options);
    if (!loads.some((box) => overlap(ink.box, box))) return ink;
  }
  return withLine(shape, on, 0, options);
}

/** Scale and arrow in the line of pull, so many millimetres of line beyond the place of the hook. */
function withLine(shape: Effort, on: (point: Point) => Point, line: number, options: EffortOptions): Ink {
  const { language, force, scaleEnds } = options;
  const say = (key: string) => sentence(language, key);
  const from = on(shape.from);
  const pushes = shape.pushes === true;
  const away = pushes ? -line : line;
  const hook: Point = [
    from[0] + away * Math.cos(shape.direction),
    from[1] - away * Math.sin(shape.direction),
  ];
  const arrow = force === undefined ? PLAIN_ARROW : Math.max(4, force.newtons * force.millimetresPerNewton);
  const hand = pushes ? 'push' : 'pull';
  if (scaleEnds === null || pushes)
    return handInk(hook, Math.PI / 2 - shape.direction, arrow, { hand, caption: say(`drawing.${hand}`) });
  const scale = scaleInk(hook, Math.PI / 2 - shape.direction, arrow, scaleEnds, {
    pull: say('drawing.pull'),
    hook: say('drawing.hook'),
    ring: say('drawing.ring'),
    hangs: say(`drawing.hangs.${shape.scale}`),
  });
  if (line === 0) return scale;
  return { ...together([path([from, hook], 'cord'), scale]), box: scale.box };
}
