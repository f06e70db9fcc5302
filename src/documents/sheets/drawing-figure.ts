import type { Drawing } from '../../core/description/drawing.ts';
import type { DrawnLoad } from '../drawing/describe-drawing.ts';
import { paintDrawing } from '../drawing/paint-drawing.ts';
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
}

/**
 * A drawing on paper, at the very size that its scale is true for; its words for whoever can't see it
 * are those that the picture itself carries.
 */
export function drawingFigure(language: Language, drawn: Drawn): Figure {
  const { what, drawing, load, scale, width, height } = drawn;
  const scaleEnds = scale === null ? null : endsOf(language, scale);
  const svg = paintDrawing(drawing, { language, what, width, height, load, scaleEnds });
  return { block: 'figure', svg: paperSvg(svg), alt: altOf(svg), width: widthOf(svg) };
}

function endsOf(language: Language, { graduations, stop, range }: ScaleSheet): readonly [string, string] {
  const { decimal } = languagePack(language);
  const end = (si: number): string => trimmed(markText(graduations, si, decimal));
  return [end(stop), end(range)];
}

/** The width that a picture states for itself, in millimetres. */
export const widthOf = (svg: string): number => Number(/\bwidth="([\d.]+)mm"/.exec(svg)?.[1] ?? 0);

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
export const atRest = (drawing: Drawing): Drawing => ({
  ...drawing,
  shapes: drawing.shapes.filter(
    (shape) =>
      !['effort', 'load', 'link', 'measure', 'angle'].includes(shape.shape) &&
      !(shape.shape === 'label' && shape.key.endsWith('.load')),
  ),
});

/** The machine at work, without a workshop's lengths. */
export const unmeasured = (drawing: Drawing): Drawing => ({
  ...drawing,
  shapes: drawing.shapes.filter((shape) => shape.shape !== 'measure' && shape.shape !== 'angle'),
});
