import type { Drawing, Point, Shape } from '../../core/description/drawing.ts';
import { languagePack } from '../sentences/language.ts';
import { factText, sentence } from '../sentences/sentence.ts';
import { bodyInk, type Hole, holeInk, holeNumbers, wheelInk } from './bodies.ts';
import { type DrawnLoad, describeDrawing, loadText } from './describe-drawing.ts';
import type { Measure } from './dimension-rows.ts';
import { angleInk, dimensionInks } from './dimensions.ts';
import { DRAWING_SCALES, scaleBarLength, scaleText } from './drawing-scale.ts';
import { type EffortOptions, effortInk } from './effort.ts';
import { type Box, boxOf, type Ink, path, together, words } from './ink.ts';
import { linkInk } from './link.ts';
import { loadInk } from './load-block.ts';
import { groundInk, pivotInk } from './supports.ts';
import { svgSheet } from './svg-sheet.ts';

export interface DrawingOptions extends EffortOptions {
  /** What is drawn, for its title: "Setup 1 A: Lever". */
  readonly what: string;
  /** Room on the paper in millimetres, everything included. */
  readonly width: number;
  readonly height: number;
  readonly load: DrawnLoad | null;
  /** What will be read there, for whoever hears the page; only where the key is shown. */
  readonly reads?: string;
  /** Drawn no larger than one to so many: pictures that are compared bear one scale. */
  readonly leastReduction?: number;
  /** For a picture that is made larger or smaller afterwards: it neither bears a scale nor speaks of one. */
  readonly isUnscaled?: true;
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
  const isSketch = drawing.isSketch === true;
  const foot = isSketch ? sketchNote(ink.box, options) : scaleBar(ink.box, reduction, options);
  const decimal = languagePack(language).decimal;
  const title = isSketch
    ? sentence(language, 'drawing.title.sketch', { what })
    : sentence(language, 'drawing.title', { what, scale: scaleText(reduction, decimal) });
  const isUnscaled = options.isUnscaled === true;
  return svgSheet(isUnscaled ? ink : together([ink, foot]), MARGIN, {
    name: what,
    title: isUnscaled ? what : title,
    description: describeDrawing(drawing, options),
  });
}

/** The scale that a drawing would be given: one to so many. */
export const reductionOf = (drawing: Drawing, options: DrawingOptions): number =>
  fittingInk(drawing, options).reduction;

/** Smaller than this on paper, in millimetres, an apparatus can't be told from its signs. */
const LEAST_APPARATUS = 30;

/** A picture may be so much higher than the lowest one where that makes it larger. */
const NEARLY = 1.05;

interface Fitted {
  readonly ink: Ink;
  readonly reduction: number;
}

/**
 * The largest round scale at which all fits the room. Signs keep their size, so they may be too high
 * at any scale: then the largest of the lowest pictures is taken, and the paper gets longer.
 */
function fittingInk(drawing: Drawing, options: DrawingOptions): Fitted {
  const room = { width: options.width - 2 * MARGIN, height: options.height - 2 * MARGIN - 9 };
  const size = apparatusSize(drawing);
  const { leastReduction = 0 } = options;
  const scales = DRAWING_SCALES.filter(
    (reduction) =>
      reduction === leastReduction ||
      (reduction > leastReduction && (size * 1000) / reduction >= LEAST_APPARATUS),
  );
  const tried: (Fitted & { readonly width: number; readonly height: number })[] = [];
  for (const reduction of scales) {
    const ink = drawingInk(drawing, reduction, options);
    const { left, top, right, bottom } = ink.box;
    const [width, height] = [right - left, bottom - top];
    // The first that fits is the largest: none of the smaller ones need be drawn.
    if (width <= room.width && height <= room.height) return { ink, reduction };
    tried.push({ ink, reduction, width, height });
  }
  const narrow = tried.filter((each) => each.width <= room.width);
  const among = narrow.length > 0 ? narrow : tried.slice(-1);
  const least = Math.min(...among.map((each) => each.height));
  const lowest = among.find((each) => each.height <= least * NEARLY);
  return lowest ?? { ink: drawingInk(drawing, 1, options), reduction: 1 };
}

/** Longer side of all that is drawn to scale, in metres. */
function apparatusSize(drawing: Drawing): number {
  const points = drawing.shapes.flatMap((shape): readonly Point[] => {
    switch (shape.shape) {
      case 'body':
        return shape.outline;
      case 'line':
        return shape.path;
      case 'ground':
        return [shape.from, shape.to];
      case 'wheel':
        return [
          [shape.centre[0] - shape.radius, shape.centre[1] - shape.radius],
          [shape.centre[0] + shape.radius, shape.centre[1] + shape.radius],
        ];
      default:
        return [];
    }
  });
  const { left, top, right, bottom } = boxOf(points);
  return points.length === 0 ? 1 : Math.max(right - left, bottom - top);
}

/** Everything at one scale: apparatus first, then what is written on it, dimensions outside of all that. */
function drawingInk(drawing: Drawing, reduction: number, options: DrawingOptions): Ink {
  const perMetre = 1000 / reduction;
  const on = ([x, y]: Point): Point => [x * perMetre, -y * perMetre];
  const apparatus: Ink[] = [];
  const holes: Hole[] = [];
  const measures: Measure[] = [];
  const lettering: Ink[] = [];
  const loads: Box[] = [];
  const scales: Box[] = [];
  const cords = new Set<Ink>();
  for (const shape of drawing.shapes) {
    if (shape.shape === 'measure')
      measures.push({
        from: on(shape.from),
        to: on(shape.to),
        row: shape.offset,
        text: factText(options.language, { si: shape.metres, dimension: 'length' }),
      });
    else if (shape.shape === 'label')
      lettering.push(
        words(on(shape.at), labelText(shape, options), {
          size: isOfLoad(shape) ? 'normal' : 'small',
          ...(shape.anchor === undefined ? {} : { anchor: shape.anchor }),
        }),
      );
    else {
      if (shape.shape === 'hole') holes.push(holeOf(shape, on, perMetre));
      const ink = shapeInk(shape, on, perMetre, loads, options);
      if (shape.shape === 'load') loads.push(ink.box);
      if (shape.shape === 'effort') scales.push(ink.box);
      if (shape.shape === 'line') cords.add(ink);
      apparatus.push(ink);
    }
  }
  const numbers = holeNumbers(holes, aboveHoles(drawing, perMetre), busyAbove(drawing, on), scales);
  const drawn = [...apparatus, ...numbers, ...lettering];
  // Dimensions first: where an extension line can't go round a thing, it passes behind it.
  const all = [
    ...dimensionInks(measures, {
      all: boxesOf(drawn),
      solid: boxesOf(drawn.filter((ink) => !cords.has(ink))),
      written: boxesOf(lettering),
    }),
    ...drawn,
  ];
  return together(all.filter((ink) => ink.svg !== '' || ink.letters !== undefined));
}

const isOfLoad = ({ key }: { readonly key: string }): boolean => key.endsWith('.load');

/** A load that isn't hung but carried is named with what it weighs. */
function labelText(
  { key, facts }: Extract<Shape, { shape: 'label' }>,
  { language, load }: DrawingOptions,
): string {
  if (!isOfLoad({ key }) || load === null) return sentence(language, key, facts);
  const written = loadText(language, load, undefined);
  return written === '' ? load.label : written;
}

const boxesOf = (inks: readonly Ink[]): readonly Box[] => inks.map((ink) => ink.box);

type PaintedShape = Exclude<Shape, { shape: 'measure' } | { shape: 'label' }>;

function shapeInk(
  shape: PaintedShape,
  on: (point: Point) => Point,
  perMetre: number,
  loads: readonly Box[],
  options: DrawingOptions,
): Ink {
  const { language, load } = options;
  switch (shape.shape) {
    case 'body':
      return bodyInk(shape.outline.map(on), shape.role);
    case 'wheel':
      return wheelInk(on(shape.centre), shape.radius * perMetre, shape.role);
    case 'hole':
      return holeInk(holeOf(shape, on, perMetre));
    case 'line':
      return path(shape.path.map(on), shape.dashed === true ? 'dashed cord' : 'cord');
    case 'ground':
      return groundInk(on(shape.from), on(shape.to));
    case 'pivot':
      return pivotInk(on(shape.at), shape.stand);
    case 'load': {
      return loadInk(
        on(shape.hook),
        load?.label ?? sentence(language, 'drawing.load'),
        loadText(language, load, shape.mass),
      );
    }
    case 'link':
      return linkInk(on(shape.from), shape.direction, sentence(language, shape.key, shape.facts));
    case 'effort':
      return effortInk(shape, on, loads, options);
    case 'angle':
      return angleInk(
        on(shape.at),
        -shape.from,
        -shape.to,
        Math.max(8, shape.radius * perMetre),
        factText(options.language, { si: Math.abs(shape.to - shape.from), dimension: 'angle' }),
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

/** Where sizes are nobody's, no bar pretends to measure them. */
const sketchNote = ({ left, bottom }: Box, { language }: DrawingOptions): Ink =>
  words([left, bottom + 6.5], sentence(language, 'drawing.sketch'), { size: 'small', anchor: 'start' });

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
  const text = `${factText(options.language, { si: length, dimension: 'length' })} · ${sentence(options.language, 'drawing.scale', { scale: scaleText(reduction, languagePack(options.language).decimal) })}`;
  return together([...bars, words([left + long + 2, y], text, { size: 'small', anchor: 'start' })]);
}
