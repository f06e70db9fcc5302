import type { Point } from '../../core/description/drawing.ts';
import { hatching } from './hatching.ts';
import { type Ink, LETTERING, lettersWidth, path, together, words } from './ink.ts';
import { svgSheet } from './svg-sheet.ts';

/** Work put in and work got out as two areas: force upward, distance sideways. SI. */
export interface WorkShapes {
  readonly out: WorkShape;
  readonly given: WorkShape;
  /** Least and most that the pull may be, 19 of 20. */
  readonly between: { readonly from: number; readonly to: number };
  /** Force that would do if nothing were left over: what is above it is hatched. `null` hides that. */
  readonly needed: { readonly force: number; readonly text: string } | null;
  /** What the whiskers say. */
  readonly betweenText: string;
  readonly title: string;
  readonly description: string;
  /** Names the picture on its page. */
  readonly name: string;
  /** Millimetres of paper. */
  readonly width: number;
}

export interface WorkShape {
  readonly heading: string;
  readonly force: number;
  readonly way: number;
  readonly forceText: string;
  readonly wayText: string;
  /** The area in words; empty while it is asked for. */
  readonly areaText: string;
}

const HIGHEST = 46;
const LEFT = 21;
const GAP = 30;
const RIGHT = 13;
const ABOVE = 8;

/**
 * The work account as two shapes to one scale: as much area, another shape. What went in and did not come
 * out is hatched and named, and how well the pull is known stands beside its shape.
 */
export function workShapes(shapes: WorkShapes): string {
  const { out, given, between, needed, width } = shapes;
  const perMetre = (gap: number): number => (width - LEFT - gap - RIGHT) / (out.way + given.way);
  // A narrow shape leaves room for its heading before the next one begins.
  const gap = Math.max(
    GAP,
    lettersWidth(out.heading, LETTERING.normal, true) + 6 - out.way * perMetre(2 * GAP),
  );
  const across = perMetre(gap);
  const up = HIGHEST / Math.max(out.force, given.force, between.to);
  const second = LEFT + out.way * across + gap;
  const right = second + given.way * across;
  const inks: Ink[] = [
    ...shapeInks(out, LEFT, across, up),
    ...(needed === null ? [] : restInks(needed, given, second, across, up)),
    ...shapeInks(given, second, across, up),
    ...whisker(right + 3, -between.from * up, -between.to * up),
    words([right, 12], shapes.betweenText, { size: 'small', anchor: 'end' }),
  ];
  return svgSheet(together(inks), 1.5, shapes);
}

function shapeInks(shape: WorkShape, left: number, across: number, up: number): readonly Ink[] {
  const [wide, high] = [shape.way * across, shape.force * up];
  const middle = left + wide / 2;
  const area = shape.areaText;
  const isRoomy = lettersWidth(area, LETTERING.normal, true) < wide - 2 && high > 7;
  return [
    path(corners(left, 0, wide, high), 'outline', true),
    words([left, -HIGHEST - ABOVE], shape.heading, { anchor: 'start', bold: true }),
    words([left - 2, -high / 2 + 1], shape.forceText, { anchor: 'end' }),
    words([middle, 5.4], shape.wayText),
    ...(area === ''
      ? []
      : isRoomy
        ? [words([middle, -Math.min(high / 2, high - 6) + 1.4], area, { bold: true })]
        : [words([left, -high - 2.4], area, { anchor: 'start', bold: true })]),
  ];
}

/** The part of the work put in that did not come out, above the force that would have done. */
function restInks(
  { force, text }: NonNullable<WorkShapes['needed']>,
  given: WorkShape,
  left: number,
  across: number,
  up: number,
): readonly Ink[] {
  const [wide, high, least] = [given.way * across, given.force * up, force * up];
  if (high <= least) return [];
  return [
    hatching(corners(left, -least, wide, high - least), 1.3),
    path(
      [
        [left, -least],
        [left + wide, -least],
      ],
      'accent',
    ),
    words([left + wide / 2, -high - 2.4], text, { bold: true }),
  ];
}

const whisker = (x: number, y1: number, y2: number): readonly Ink[] => [
  path(
    [
      [x, y1],
      [x, y2],
    ],
    'outline',
  ),
  ...[y1, y2].map((y) =>
    path(
      [
        [x - 1.4, y],
        [x + 1.4, y],
      ],
      'outline',
    ),
  ),
];

const corners = (left: number, foot: number, wide: number, high: number): readonly Point[] => [
  [left, foot],
  [left + wide, foot],
  [left + wide, foot - high],
  [left, foot - high],
];
