import type { Drawing, Point, Shape } from '../../core/description/drawing.ts';
import type { DrawnLoad } from '../drawing/describe-drawing.ts';
import { type DrawingOptions, paintDrawing, reductionOf } from '../drawing/paint-drawing.ts';
import type { ScaleSheet } from '../pages/sheet.ts';
import { trimmed } from '../printing/quantity-text.ts';
import { markText } from '../printing/reading-text.ts';
import { type Language, languagePack } from '../sentences/language.ts';
import type { Block } from './block.ts';
import { paperSvg } from './paper-svg.ts';

export type Figure = Extract<Block, { block: 'figure' }>;

/** What is drawn, and the room that it may take, in millimetres. */
export interface Drawn {
  readonly what: string;
  readonly drawing: Drawing;
  readonly load: DrawnLoad | null;
  readonly scale: ScaleSheet | null;
  readonly width: number;
  readonly height: number;
  /** Drawn no larger than one to so many. */
  readonly leastReduction?: number;
  readonly isUnscaled?: true;
}

/**
 * A drawing on paper, at the very size that its scale is true for; its words for whoever can't see it
 * are those that the picture itself carries.
 */
export function drawingFigure(language: Language, drawn: Drawn): Figure {
  const svg = paintDrawing(drawn.drawing, optionsOf(language, drawn));
  return { block: 'figure', svg: paperSvg(svg), alt: altOf(svg), width: widthOf(svg) };
}

/** The scale that a drawing would be given in its room: one to so many. */
export const reductionIn = (language: Language, drawn: Drawn): number =>
  reductionOf(drawn.drawing, optionsOf(language, drawn));

const optionsOf = (language: Language, { drawing, scale, ...drawn }: Drawn): DrawingOptions => ({
  language,
  scaleEnds: scale === null ? null : endsOf(language, scale),
  ...drawn,
});

function endsOf(language: Language, { graduations, stop, range }: ScaleSheet): readonly [string, string] {
  const { decimal } = languagePack(language);
  const end = (si: number): string => trimmed(markText(graduations, si, decimal));
  return [end(stop), end(range)];
}

/** The width that a picture states for itself, in millimetres. */
export const widthOf = (svg: string): number => Number(/\bwidth="([\d.]+)mm"/.exec(svg)?.[1] ?? 0);

/** Its height, in millimetres. */
export const heightOf = (svg: string): number => Number(/\bheight="([\d.]+)mm"/.exec(svg)?.[1] ?? 0);

/** Title and description of a picture as one text. */
export const altOf = (svg: string): string =>
  ['title', 'desc']
    .map((name) => new RegExp(`<${name}[^>]*>([^<]*)</${name}>`).exec(svg)?.[1] ?? '')
    .filter((text) => text !== '')
    .map((text) => (/[.!?]$/.test(text) ? text : `${text}.`))
    .join(' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&');

/** The apparatus before anybody touches it: no load, no scale, no hand, and nothing measured. */
export function atRest(drawing: Drawing): Drawing {
  const pins = drawing.shapes.flatMap((shape) => (shape.shape === 'pivot' ? [shape.at] : []));
  const left = drawing.shapes.filter(
    (shape) =>
      !['effort', 'load', 'link', 'measure', 'angle'].includes(shape.shape) &&
      !(shape.shape === 'label' && shape.key.endsWith('.load')),
  );
  return { ...drawing, shapes: left.map((shape) => (shape.shape === 'hole' ? freed(shape, pins) : shape)) };
}

/** On a bar that turns on a pin, no hole but the pin's own is in use. */
function freed(hole: Extract<Shape, { shape: 'hole' }>, pins: readonly Point[]): Shape {
  const [x, y] = hole.centre;
  const isPinned = pins.some(([px, py]) => Math.hypot(px - x, py - y) <= hole.radius);
  const { used, ...free } = hole;
  return used === true && (pins.length === 0 || isPinned) ? hole : free;
}

/** The machine at work, without a workshop's lengths. */
export const unmeasured = (drawing: Drawing): Drawing => ({
  ...drawing,
  shapes: drawing.shapes.filter((shape) => shape.shape !== 'measure' && shape.shape !== 'angle'),
});
