import { type DecimalMark, decimalText } from '../../core/quantities/print-quantity.ts';
import { trimmed } from '../printing/quantity-text.ts';

/**
 * Scales of a drawing: one unit on paper for so many in the world. 1, 2, 5 and their tens are those
 * of ISO 5455; 2.5, 4, 6, 8, 12 and 15 stand between them where an apparatus would else come out too small (common
 * workshop practice, no source).
 */
export const DRAWING_SCALES = [
  0.1, 0.2, 0.5, 1, 2, 2.5, 4, 5, 6, 8, 10, 12, 15, 20, 25, 40, 50, 100, 200, 500, 1000,
] as const;

/**
 * A scale as it is printed.
 *
 * @example scaleText(4) // => '1 : 4'
 * @example scaleText(0.5) // => '2 : 1'
 * @example scaleText(2.5, 'comma') // => '1 : 2,5'
 */
export const scaleText = (reduction: number, mark: DecimalMark = 'point'): string =>
  reduction < 1 ? `${Math.round(1 / reduction)} : 1` : `1 : ${trimmed(decimalText(reduction, 1, mark))}`;

/**
 * A round length in metres for the scale bar, about so many millimetres long on paper.
 *
 * @example scaleBarLength(4, 30) // => 0.1
 */
export function scaleBarLength(reduction: number, millimetres: number): number {
  const wished = (millimetres * reduction) / 1000;
  const power = 10 ** Math.floor(Math.log10(wished));
  const step = [5, 2, 1].find((each) => each * power <= wished * 1.001) ?? 1;
  return Number((step * power).toPrecision(12));
}
