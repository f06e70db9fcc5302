import { type RotationPictureOptions, rotationPicture } from '../drawing/rotation-picture.ts';
import { type ChartLines, rotationChart } from '../drawing/rotation-rows.ts';
import type { PeriodWords } from '../text/period-words.ts';
import { altOf, type Figure, widthOf } from './drawing-figure.ts';
import { paperSvg } from './paper-svg.ts';

/** A rotation chart on paper; `null` where there is no timetable, or no line to draw. */
export function rotationFigure(
  words: PeriodWords,
  lines: ChartLines,
  room: Omit<RotationPictureOptions, 'name'>,
): Figure | null {
  const chart = rotationChart(words, lines);
  if (chart === null || chart.rows.length === 0) return null;
  const svg = rotationPicture(chart, words, { name: `rotation ${lines}`, ...room });
  return { block: 'figure', svg: paperSvg(svg), alt: altOf(svg), width: widthOf(svg) };
}
