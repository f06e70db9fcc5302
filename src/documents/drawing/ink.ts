import type { Point } from '../../core/description/drawing.ts';
import { element, escapeText } from '../markup.ts';

/** Something drawn: its markup and the room it takes, in millimetres of paper, y downwards. */
export interface Ink {
  readonly svg: string;
  /** Lettering is painted after all lines, so that no line runs through a word. */
  readonly letters?: string;
  readonly box: Box;
}

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/**
 * What a stroke stands for; its width follows (ISO 128-2: wide lines twice the narrow ones). The
 * accent points at one thing only and is plain ink where the page sets no colour for it.
 */
export type Stroke = 'outline' | 'thin' | 'cord' | 'dashed cord' | 'hatch' | 'centre' | 'accent';

const STROKES: Readonly<Record<Stroke, Readonly<Record<string, string | number>>>> = {
  outline: { 'stroke-width': 0.5 },
  thin: { 'stroke-width': 0.22 },
  cord: { 'stroke-width': 0.35 },
  'dashed cord': { 'stroke-width': 0.35, 'stroke-dasharray': '1.6 0.8' },
  hatch: { 'stroke-width': 0.18 },
  centre: { 'stroke-width': 0.18, 'stroke-dasharray': '3 0.7 0.5 0.7' },
  accent: { 'stroke-width': 0.6, style: 'stroke:var(--brass,currentColor)' },
};

/** `paper` hides what lies behind, where the page names its paper; `solid` is ink. */
export type Filling = 'none' | 'paper' | 'solid';

const FILLINGS: Readonly<Record<Filling, string>> = {
  none: 'none',
  paper: 'var(--paper,none)',
  solid: 'currentColor',
};

/** Heights of lettering in millimetres (ISO 3098-1 has 2.5, 3.5, 5); 3.9 reads well on a phone too. */
export const LETTERING = { small: 2.9, normal: 3.9, large: 4.8 } as const;

const NOTHING: Box = { left: Infinity, top: Infinity, right: -Infinity, bottom: -Infinity };

export const path = (
  points: readonly Point[],
  stroke: Stroke,
  closed = false,
  fill: Filling = 'none',
): Ink => ({
  svg: element('path', {
    d: `M${points.map(([x, y]) => `${mm(x)} ${mm(y)}`).join('L')}${closed ? 'Z' : ''}`,
    ...withFill(stroke, fill),
  }),
  box: boxOf(points),
});

/** A curve that is drawn as given; `points` say how much room it takes. */
export const curve = (d: string, points: readonly Point[], stroke: Stroke, fill: Filling = 'none'): Ink => ({
  svg: element('path', { d, ...withFill(stroke, fill) }),
  box: boxOf(points),
});

export const circle = ([x, y]: Point, radius: number, stroke: Stroke, fill: Filling = 'none'): Ink => ({
  svg: element('circle', { cx: mm(x), cy: mm(y), r: mm(radius), ...withFill(stroke, fill) }),
  box: { left: x - radius, top: y - radius, right: x + radius, bottom: y + radius },
});

export interface Lettering {
  /** One of the usual heights, or millimetres where lettering grows with its room. */
  readonly size?: keyof typeof LETTERING | number;
  readonly anchor?: 'start' | 'middle' | 'end';
  /** Degrees clockwise. */
  readonly turn?: number;
  readonly bold?: true;
}

/** Words with their baseline at a point. A halo of paper keeps them clear of lines. */
export function words([x, y]: Point, text: string, lettering: Lettering = {}): Ink {
  const { size = 'normal', anchor = 'middle', turn = 0, bold } = lettering;
  const height = typeof size === 'number' ? mm(size) : LETTERING[size];
  const width = lettersWidth(text, height, bold === true);
  const left = anchor === 'start' ? 0 : anchor === 'end' ? -width : -width / 2;
  const corners: readonly Point[] = [
    [left, -0.75 * height],
    [left + width, -0.75 * height],
    [left, 0.2 * height],
    [left + width, 0.2 * height],
  ];
  return {
    svg: '',
    letters: element(
      'text',
      {
        x: mm(x),
        y: mm(y),
        'font-size': height,
        'text-anchor': anchor === 'start' ? undefined : anchor,
        'font-weight': bold === true ? 700 : undefined,
        transform: turn === 0 ? undefined : `rotate(${mm(turn)} ${mm(x)} ${mm(y)})`,
      },
      escapeText(text),
    ),
    box: boxOf(corners.map((corner) => moved(turned(corner, (turn * Math.PI) / 180), [x, y]))),
  };
}

/**
 * Width of a line of letters, as shares of their size: a little more than the widest of the sans serifs
 * that a page may be given, so that nothing is cut off whichever it is (common practice, no source).
 */
export const lettersWidth = (text: string, height: number, bold = false): number =>
  [...text].reduce((sum, letter) => sum + letterWidth(letter), 0) * height * (bold ? 1.08 : 1);

function letterWidth(letter: string): number {
  if (/[mwMW@%]/.test(letter)) return 0.92;
  if (/[iljtfrI.,:;'()| ]/.test(letter)) return 0.38;
  return /[A-Z]/.test(letter) ? 0.7 : 0.62;
}

export const together = (inks: readonly Ink[]): Ink => ({
  svg: inks.map((ink) => ink.svg).join(''),
  letters: inks.map((ink) => ink.letters ?? '').join(''),
  box: inks.reduce((all, ink) => joined(all, ink.box), NOTHING),
});

export const joined = (a: Box, b: Box): Box => ({
  left: Math.min(a.left, b.left),
  top: Math.min(a.top, b.top),
  right: Math.max(a.right, b.right),
  bottom: Math.max(a.bottom, b.bottom),
});

/** Whether two boxes share more than an edge. */
export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right - 0.5 && a.right > b.left + 0.5 && a.top < b.bottom - 0.5 && a.bottom > b.top + 0.5;

export const boxOf = (points: readonly Point[]): Box =>
  points.reduce((box, [x, y]) => joined(box, { left: x, top: y, right: x, bottom: y }), NOTHING);

/** A point turned about the origin, by radians clockwise on paper. */
export const turned = ([x, y]: Point, angle: number): Point => [
  x * Math.cos(angle) - y * Math.sin(angle),
  x * Math.sin(angle) + y * Math.cos(angle),
];

export const moved = ([x, y]: Point, [dx, dy]: Point): Point => [x + dx, y + dy];

/** Hundredths of a millimetre are finer than any printer. */
export const mm = (value: number): number => Math.round(value * 100) / 100 + 0;

function withFill(stroke: Stroke, fill: Filling): Readonly<Record<string, string | number>> {
  if (fill === 'none') return STROKES[stroke];
  const { style, ...rest } = STROKES[stroke];
  const filling = `fill:${FILLINGS[fill]}`;
  return { ...rest, style: style === undefined ? filling : `${style};${filling}` };
}
