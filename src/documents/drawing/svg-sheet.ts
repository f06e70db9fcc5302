import { element, escapeText, idName } from '../markup.ts';
import { type Ink, mm } from './ink.ts';

const FONT =
  "'Atkinson Hyperlegible','Segoe UI',system-ui,-apple-system,Roboto,'Helvetica Neue',Arial,sans-serif";

/** Letters are filled and not stroked; a halo of paper keeps them clear of lines where a page names its paper. */
const LETTERS =
  '<style>svg text{fill:currentColor;stroke:var(--paper,none);stroke-width:.9;paint-order:stroke;font-variant-numeric:tabular-nums}</style>';

export interface SvgWords {
  /** Names the ids of the picture, so that several stand on one page. */
  readonly name: string;
  readonly title: string;
  readonly description: string;
}

/**
 * Ink as an SVG picture of its own size in millimetres, in `currentColor` on no ground: it prints in
 * grey, turns with a dark page, and says in words what it shows.
 */
export function svgSheet(ink: Ink, margin: number, { name, title, description }: SvgWords): string {
  const { left, top, right, bottom } = ink.box;
  const [width, height] = [right - left + 2 * margin, bottom - top + 2 * margin];
  const id = idName(name);
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: [mm(left - margin), mm(top - margin), mm(width), mm(height)].join(' '),
      width: `${mm(width)}mm`,
      height: `${mm(height)}mm`,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      fill: 'none',
      stroke: 'currentColor',
      'stroke-linejoin': 'round',
      'stroke-linecap': 'round',
      'font-family': FONT,
    },
    [
      element('title', { id: `${id}-title` }, escapeText(title)),
      element('desc', { id: `${id}-desc` }, escapeText(description)),
      LETTERS,
      ink.svg,
      ink.letters ?? '',
    ].join(''),
  );
}
