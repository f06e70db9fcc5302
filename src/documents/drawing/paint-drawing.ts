import type { Drawing, Point, Shape } from '../../core/description/drawing.ts';
import { quantityText } from '../printing/quantity-text.ts';
import type { Language } from '../sentences/language.ts';
import { sentence } from '../sentences/sentence.ts';
import { bodyInk, type Hole, holeInk, holeNumbers, wheelInk } from './bodies.ts';
import { describeDrawing } from './describe-drawing.ts';
import { angleInk, dimensionInks, type Measure } from './dimensions.ts';
import { DRAWING_SCALES, scaleBarLength, scaleText } from './drawing-scale.ts';
import { type Box, type Ink, path, together, words } from './ink.ts';
import { loadInk } from './load-block.ts';
import { PLAIN_ARROW, scaleInk } from './spring-scale.ts';
import { groundInk, pivotInk } from './supports.ts';
import { svgSheet } from './svg-sheet.ts';

export interface DrawingOptions {
  readonly language: Language;
  /** What is drawn, for its title: "Setup 1 A: Lever". */
  readonly what: string;
  /** Room on the paper in millimetres, everything included. */
  readonly width: number;
  readonly height: number;
  readonly load: { readonly label: string; readonly mass: number | null } | null;
  /** Numbers at the scale's first and last mark. */
  readonly scaleEnds: readonly [string, string] | null;
  /** Where the force may be shown: its size, and millimetres of arrow for a newton. */
  readonly force?: { readonly newtons: number; readonly millimetresPerNewton: number };
}

const MARGIN = 2;

/**
 * A setup as a workshop drawing in SVG, true to scale when printed at its size, in `currentColor` on
 * no ground, so that it prints in grey and turns with a dark page. The scale is the largest round one
 * that fits the room.
 */
export function paintDrawing(drawing: Drawing, options: DrawingOptions): string {
  const { language, what } = options;
  const { ink, reduction } = fittingInk(drawing, options);
  const full = together([ink, scaleBar(ink.box, reduction, options)]);
  return svgSheet(full, MARGIN, {
    name: what,
    title: sentence(language, 'drawing.title', { what, scale: scaleText(reduction) }),
    description: describeDrawing(drawing, options),
  });
}

function fittingInk(
  drawing: Drawing,
  options: DrawingOptions,
): { readonly ink: Ink; readonly reduction: number } {
  const room = { width: options.width - 2 * MARGIN, height: options.height - 2 * MARGIN - 9 };
  const tried = DRAWING_SCALES.map((reduction) => {
    const ink = drawingInk(drawing, reduction, options);
    const { left, top, right, bottom } = ink.box;
    return { ink, reduction, width: right - left, height: bottom - top };
  });
  const fitting = tried.find((each) => each.width <= room.width && each.height <= room.height);
  // Signs have a size of their own: where they alone are too high, the width decides.
  return fitting ?? tried.find((each) => each.width <= room.width) ?? { ink: together([]), reduction: 1 };
}

/** Everything at one scale: apparatus first, then what is written on it, dimensions outside of all that. */
function drawingInk(drawing: Drawing, reduction: number, options: DrawingOptions): Ink {
  const perMetre = 1000 / reduction;
  const on = ([x, y]: Point): Point => [x * perMetre, -y * perMetre];
  const apparatus: Ink[] = [];
  const holes: Hole[] = [];
  const measures: Measure[] = [];
  const lettering: Ink[] = [];
  for (const shape of drawing.shapes) {
    if (shape.shape === 'measure')
      measures.push({
        from: on(shape.from),
        to: on(shape.to),
        row: shape.offset,
        text: quantityText({ si: shape.metres, dimension: 'length' }),
      });
    else if (shape.shape === 'label')
      lettering.push(words(on(shape.at), sentence(options.language, shape.key, shape.facts)));
    else {
      if (shape.shape === 'hole') holes.push(holeOf(shape, on, perMetre));
      apparatus.push(shapeInk(shape, on, perMetre, options));
    }
  }
  const numbers = holeNumbers(holes, aboveHoles(drawing, perMetre), busyAbove(drawing, on));
  const drawn = [...apparatus, ...numbers, ...lettering];
  const all = [
    ...drawn,
    ...dimensionInks(
      measures,
      drawn.map((ink) => ink.box),
    ),
  ];
  return together(all.filter((ink) => ink.svg !== ''));
}

type PaintedShape = Exclude<Shape, { shape: 'measure' } | { shape: 'label' }>;

function shapeInk(
  shape: PaintedShape,
  on: (point: Point) => Point,
  perMetre: number,
  options: DrawingOptions,
): Ink {
  const { language, load, force } = options;
  switch (shape.shape) {
    case 'body':
      return bodyInk(shape.outline.map(on), shape.role);
    case 'wheel':
      return wheelInk(on(shape.centre), shape.radius * perMetre, shape.role);
    case 'hole':
      return holeInk(holeOf(shape, on, perMetre));
    case 'line':
      return path(shape.path.map(on), 'cord');
    case 'ground':
      return groundInk(on(shape.from), on(shape.to));
    case 'pivot':
      return pivotInk(on(shape.at), shape.stand);
    case 'load': {
      const mass = shape.mass ?? load?.mass ?? null;
      return loadInk(
        on(shape.hook),
        load?.label ?? sentence(language, 'drawing.load'),
        mass === null ? '' : quantityText({ si: mass, dimension: 'mass' }),
      );
    }
    case 'effort':
      return scaleInk(
        on(shape.from),
        Math.PI / 2 - shape.direction,
        force === undefined ? PLAIN_ARROW : Math.max(4, force.newtons * force.millimetresPerNewton),
        options.scaleEnds,
        {
          pull: sentence(language, 'drawing.pull'),
          hook: sentence(language, 'drawing.hook'),
          ring: sentence(language, 'drawing.ring'),
          hangs: sentence(language, `drawing.hangs.${shape.scale}`),
        },
      );
    case 'angle':
      return angleInk(
        on(shape.at),
        -shape.from,
        -shape.to,
        Math.max(8, shape.radius * perMetre),
        quantityText({ si: Math.abs(shape.to - shape.from), dimension: 'angle' }),
      );
  }
}

const holeOf = (
  shape: Extract<Shape, { shape: 'hole' }>,
  on: (point: Point) => Point,
  perMetre: number,
): Hole => ({
  centre: on(shape.centre),
  radius: shape.radius * perMetre,
  number: shape.number ?? null,
  used: shape.used === true,
});

/** Where a scale or a hanger stands over the bar, a number finds no room above it. */
const busyAbove = (drawing: Drawing, on: (point: Point) => Point): readonly Point[] =>
  drawing.shapes.flatMap((shape) => {
    if (shape.shape === 'effort' && Math.sin(shape.direction) > 0) return [on(shape.from)];
    return shape.shape === 'pivot' && shape.stand === 'above' ? [on(shape.at)] : [];
  });

/** Numbers stand clear of the bar they belong to. */
function aboveHoles(drawing: Drawing, perMetre: number): number {
  const bar = drawing.shapes.find((each) => each.shape === 'body' && each.role === 'bar');
  if (bar?.shape !== 'body') return 2.4;
  const [first, , , last] = bar.outline;
  if (first === undefined || last === undefined) return 2.4;
  return (Math.hypot(last[0] - first[0], last[1] - first[1]) * perMetre) / 2 + 1.5;
}

/** A bar of a round length with the scale beside it: it stays true when the drawing is printed smaller. */
function scaleBar(box: Box, reduction: number, options: DrawingOptions): Ink {
  const length = scaleBarLength(reduction, 30);
  const long = (length * 1000) / reduction;
  const { left, bottom } = box;
  const y = bottom + 6.5;
  const parts = 5;
  const bars = Array.from({ length: parts }, (_, n) => {
    const [x1, x2] = [left + (n * long) / parts, left + ((n + 1) * long) / parts];
    return path(
      [
        [x1, y],
        [x2, y],
        [x2, y - 1.2],
        [x1, y - 1.2],
      ],
      'thin',
      true,
      n % 2 === 0 ? 'solid' : 'none',
    );
  });
  const text = `${quantityText({ si: length, dimension: 'length' })} · ${sentence(options.language, 'drawing.scale', { scale: scaleText(reduction) })}`;
  return together([...bars, words([left + long + 2, y], text, { size: 'small', anchor: 'start' })]);
}
