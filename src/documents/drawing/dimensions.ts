import type { Point } from '../../core/description/drawing.ts';
import { besideSide, dimensionRows, fitsWithin, type Measure } from './dimension-rows.ts';
import { type Box, curve, type Ink, LETTERING, lettersWidth, mm, path, together, words } from './ink.ts';

/** Rows of dimension lines stand this far apart, the first one this far from what it measures. */
const ROW = 6.2;
const FIRST = 5;
const TICK = 1.1;
const OVERSHOOT = 1.4;
/** Room on the left of an upright dimension: its words, and what keeps them clear. */
const UPRIGHT_WORDS = 5;
/** Least opening of an angle where its size is written between the legs. */
const ROOM_IN_ANGLE = 6;
/** Where along a slanted dimension its words stand, from the lower end. */
const WORDS_AT = 0.64;

/** Boxes that dimensions keep clear of. The box of something slanted reaches far beyond the thing itself. */
export interface InTheWay {
  readonly all: readonly Box[];
  /** All but cords, which may pass over an extension line. */
  readonly solid: readonly Box[];
  /** Words only: slanted dimensions stand beyond these. */
  readonly written: readonly Box[];
}

/**
 * Dimensions as on a workshop drawing: extension lines, a narrow line with oblique ticks, the measure
 * above it. Level ones are moved out beyond everything that is in their way, all to the same side;
 * upright ones into the nearest gap; slanted ones stand beside their line.
 */
export function dimensionInks(
  measures: readonly Measure[],
  { all: obstacles, solid, written }: InTheWay,
): readonly Ink[] {
  const level = measures.filter(isLevel);
  const wished = level.reduce((sum, each) => sum + Math.sign(each.row || 1), 0) >= 0 ? -1 : 1;
  const side = clearerSide(level, obstacles, wished);
  const edge = edgeOf(level, obstacles, side);
  const rows = dimensionRows(level);
  return measures.map((each) => {
    if (isLevel(each)) {
      const y = edge + side * (FIRST + ROW * (rows.get(each) ?? 0));
      return dimension(each, [each.from[0], y], [each.to[0], y], obstacles, side, besideSide(each, level));
    }
    if (isUpright(each)) return uprightDimension(each, solid);
    return slantedDimension(each, written);
  });
}

const isLevel = ({ from, to }: Measure): boolean =>
  Math.abs(to[1] - from[1]) < 0.02 * Math.abs(to[0] - from[0]);
const isUpright = ({ from, to }: Measure): boolean =>
  Math.abs(to[0] - from[0]) < 0.02 * Math.abs(to[1] - from[1]);

/** Below or above, whichever needs the shorter extension lines; the wished side where it hardly matters. */
function clearerSide(measures: readonly Measure[], obstacles: readonly Box[], wished: 1 | -1): 1 | -1 {
  if (measures.length === 0) return wished;
  const depth = (side: 1 | -1) =>
    Math.max(
      ...measures.map((each) => side * (edgeOf(measures, obstacles, side) - (each.from[1] + each.to[1]) / 2)),
    );
  return depth(wished) > depth(-wished as 1 | -1) + 12 ? (-wished as 1 | -1) : wished;
}

/** How far out everything reaches that lies between the ends of the measures. */
function edgeOf(measures: readonly Measure[], obstacles: readonly Box[], side: 1 | -1): number {
  const left = Math.min(...measures.flatMap((each) => [each.from[0], each.to[0]]));
  const right = Math.max(...measures.flatMap((each) => [each.from[0], each.to[0]]));
  const own = measures.flatMap((each) => [each.from[1], each.to[1]]);
  const inTheWay = obstacles
    .filter((box) => box.right > left - 1 && box.left < right + 1)
    .map((box) => (side > 0 ? box.bottom : box.top));
  return side > 0 ? Math.max(...own, ...inTheWay) : Math.min(...own, ...inTheWay);
}

function dimension(
  measure: Measure,
  a: Point,
  b: Point,
  obstacles: readonly Box[],
  side: 1 | -1,
  beside: 1 | -1,
): Ink {
  const start = (point: Point): number => clearOf(point, obstacles, side) + side * 0.8;
  const y = a[1];
  const middle = (a[0] + b[0]) / 2;
  return together([
    path(
      [
        [a[0], start(measure.from)],
        [a[0], y + side * OVERSHOOT],
      ],
      'thin',
    ),
    path(
      [
        [b[0], start(measure.to)],
        [b[0], y + side * OVERSHOOT],
      ],
      'thin',
    ),
    path([a, b], 'thin'),
    tick(a),
    tick(b),
    fitsWithin(measure)
      ? words([middle, y - 1.1], measure.text)
      : beside > 0
        ? words([Math.max(a[0], b[0]) + 1.6, y - 1.1], measure.text, { anchor: 'start' })
        : words([Math.min(a[0], b[0]) - 1.6, y - 1.1], measure.text, { anchor: 'end' }),
  ]);
}

/** An extension line starts where nothing is drawn over it: beyond what hangs straight from its point. */
function clearOf([x, y]: Point, obstacles: readonly Box[], side: 1 | -1): number {
  const hit = obstacles.filter(
    (box) => box.left <= x + 0.3 && box.right >= x - 0.3 && (side > 0 ? box.bottom > y : box.top < y),
  );
  return side > 0 ? Math.max(y, ...hit.map((box) => box.bottom)) : Math.min(y, ...hit.map((box) => box.top));
}

function uprightDimension(measure: Measure, obstacles: readonly Box[]): Ink {
  const side = Math.sign(measure.row || 1);
  const top = Math.min(measure.from[1], measure.to[1]);
  const bottom = Math.max(measure.from[1], measure.to[1]);
  const besides = obstacles.filter((box) => box.bottom > top && box.top < bottom);
  const own = [measure.from[0], measure.to[0]];
  const start = side > 0 ? Math.max(...own) : Math.min(...own);
  const edge =
    side > 0
      ? Math.max(start, ...besides.map((box) => box.right))
      : Math.min(start, ...besides.map((box) => box.left));
  const first = Math.abs(edge - start) + FIRST;
  // The nearest gap that takes the line with its words: what stands farther out needn't be gone round.
  let away = FIRST;
  const [left, right] = uprightRoom(measure, bottom - top, side);
  const isTaken = (x: number): boolean => besides.some((box) => box.right > x - left && box.left < x + right);
  while (away < first && isTaken(start + side * away)) away += 1;
  const x = start + side * (Math.min(away, first) + ROW * (Math.abs(measure.row || 1) - 1));
  const a: Point = [x, measure.from[1]];
  const b: Point = [x, measure.to[1]];
  return together([
    path(
      [
        [measure.from[0] + side * 0.8, a[1]],
        [x + side * OVERSHOOT, a[1]],
      ],
      'thin',
    ),
    path(
      [
        [measure.to[0] + side * 0.8, b[1]],
        [x + side * OVERSHOOT, b[1]],
      ],
      'thin',
    ),
    path([a, b], 'thin'),
    tick(a),
    tick(b),
    bottom - top > lettersWidth(measure.text, LETTERING.normal)
      ? words([x - 1.1, (top + bottom) / 2], measure.text, { turn: -90 })
      : words([x + side * 1.8, (top + bottom) / 2 + 1.4], measure.text, {
          anchor: side > 0 ? 'start' : 'end',
        }),
  ]);
}

/** What an upright dimension takes on either side of its line: turned words on its left, others on its outer side. */
function uprightRoom({ text }: Measure, long: number, side: number): readonly [left: number, right: number] {
  const width = lettersWidth(text, LETTERING.normal);
  if (long > width) return [UPRIGHT_WORDS, OVERSHOOT + 0.5];
  return side > 0 ? [OVERSHOOT, width + 2.3] : [width + 2.3, OVERSHOOT];
}

function slantedDimension(measure: Measure, written: readonly Box[]): Ink {
  const { from, to } = measure;
  const along = Math.hypot(to[0] - from[0], to[1] - from[1]);
  let nx = -(to[1] - from[1]) / along;
  let ny = (to[0] - from[0]) / along;
  if (ny > 0) [nx, ny] = [-nx, -ny];
  const side = Math.sign(measure.row || 1);
  const corners = written.flatMap(({ left, top, right, bottom }): readonly Point[] => [
    [left, top],
    [right, top],
    [left, bottom],
    [right, bottom],
  ]);
  const inTheWay = corners.flatMap(([x, y]) => {
    const [dx, dy] = [x - from[0], y - from[1]];
    const share = (dx * (to[0] - from[0]) + dy * (to[1] - from[1])) / along ** 2;
    return share > 0 && share < 1 ? [side * (dx * nx + dy * ny) + 1.2] : [];
  });
  const first = Math.max(FIRST + 2, ...inTheWay);
  const away = side * (first + ROW * (Math.abs(measure.row || 1) - 1));
  const at = ([x, y]: Point, distance: number): Point => [x + nx * distance, y + ny * distance];
  const a = at(from, away);
  const b = at(to, away);
  let turn = (Math.atan2(to[1] - from[1], to[0] - from[0]) * 180) / Math.PI;
  if (turn > 90) turn -= 180;
  if (turn <= -90) turn += 180;
  // Nearer to the upper end: an angle is written at the lower one.
  const share = from[1] > to[1] ? WORDS_AT : 1 - WORDS_AT;
  const middle: Point = [a[0] + (b[0] - a[0]) * share, a[1] + (b[1] - a[1]) * share];
  return together([
    path([at(from, side * 0.8), at(from, away + side * OVERSHOOT)], 'thin'),
    path([at(to, side * 0.8), at(to, away + side * OVERSHOOT)], 'thin'),
    path([a, b], 'thin'),
    tick(a, turn),
    tick(b, turn),
    words(at(middle, 1.1), measure.text, { turn }),
  ]);
}

/** An oblique stroke across the end of a dimension line, as draughtsmen make it. */
function tick([x, y]: Point, turn = 0): Ink {
  const angle = (turn * Math.PI) / 180 - Math.PI / 4;
  const dx = TICK * Math.cos(angle);
  const dy = TICK * Math.sin(angle);
  return path(
    [
      [x - dx, y - dy],
      [x + dx, y + dy],
    ],
    'cord',
  );
}

/** An angle between two directions (radians clockwise on paper) with its size beside the arc. */
export function angleInk(at: Point, from: number, to: number, radius: number, text: string): Ink {
  const on = (angle: number, r: number): Point => [at[0] + r * Math.cos(angle), at[1] + r * Math.sin(angle)];
  const [a, b] = [on(from, radius), on(to, radius)];
  const large = Math.abs(to - from) > Math.PI ? 1 : 0;
  const sweep = to > from ? 1 : 0;
  const middle = (from + to) / 2;
  const half = (Math.abs(Math.cos(middle)) * lettersWidth(text, LETTERING.normal)) / 2;
  // In a narrow angle the words go out to where they have room between its legs, thick as these may be.
  const spread = Math.abs(to - from);
  const wideEnough = spread < 1 ? ROOM_IN_ANGLE / Math.max(Math.tan(spread), 0.05) : 0;
  const label = on(middle, Math.max(radius + 2, wideEnough) + half);
  return together([
    curve(
      `M${mm(a[0])} ${mm(a[1])}A${mm(radius)} ${mm(radius)} 0 ${large} ${sweep} ${mm(b[0])} ${mm(b[1])}`,
      [a, b, on(middle, radius)],
      'thin',
    ),
    words([label[0], label[1] + 1.9], text),
  ]);
}
