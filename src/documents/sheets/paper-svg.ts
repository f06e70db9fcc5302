/** Ink of the printed sheets: the same blue-black that the template sets words in. */
const INK = '#1a2438';

/**
 * A drawing as paper takes it: the colours that a screen page would set are put in, plain ink on
 * white, and nothing is left to a style sheet.
 *
 * @example paperSvg('<path stroke="currentColor" style="fill:var(--paper,none)"/>') // => '<path stroke="#1a2438" style="fill:#ffffff"/>'
 */
export const paperSvg = (svg: string): string =>
  svg
    .replaceAll('var(--brass,currentColor)', INK)
    .replaceAll('var(--paper,none)', '#ffffff')
    .replaceAll('currentColor', INK)
    .replace(/font-family="[^"]*"/g, 'font-family="Atkinson Hyperlegible"');
