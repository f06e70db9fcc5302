import { fittedWords, LINE } from './fitted-words.ts';
import { type Ink, lettersWidth, together, words } from './ink.ts';
import type { RotationChart } from './rotation-rows.ts';

/** Most that a label may take, millimetres, by what the lines stand for. */
const MOST_LABEL = { groups: 26, tables: 44, adults: 34 } as const;

const labelSize = (chart: RotationChart, row: number, least: number): number =>
  Math.max(
    least,
    Math.min(
      (chart.lines === 'adults' ? 0.3 : 0.5) * row,
      ...chart.rows.map(({ label }) => MOST_LABEL[chart.lines] / lettersWidth(label, 1, true)),
    ),
  );

/** Width of what stands before the lines, millimetres. */
export function labelWidth(chart: RotationChart, row: number, least: number): number {
  const size = labelSize(chart, row, least);
  const marks = Math.max(0, ...chart.rows.map(({ label }) => lettersWidth(label, size, true)));
  return marks + (aboutLines(chart, row, least) === null ? 0 : ABOUT + 1.5);
}

/** Width of the titles beside their marks, millimetres. */
const ABOUT = 30;

/** Titles of tables beside their marks, where every one fits. */
function aboutLines(chart: RotationChart, row: number, least: number) {
  if (chart.rows.every(({ about }) => about === null)) return null;
  const all = chart.rows.map(({ about }) =>
    fittedWords(about ?? '', { width: ABOUT, height: 0.92 * row }, least),
  );
  return all.some((each) => each === null) ? null : all;
}

/** The label before a line, and the title of its table beside it where all of them fit. */
export function labelInk(
  chart: RotationChart,
  n: number,
  place: { readonly row: number; readonly least: number; readonly left: number; readonly middle: number },
): Ink {
  const { row, least, left, middle } = place;
  const size = labelSize(chart, row, least);
  const about = aboutLines(chart, row, least)?.[n] ?? null;
  const end = about === null ? left - 1.5 : labelWidth(chart, row, least) - ABOUT - 1.5;
  const lines = about?.lines ?? [];
  return together([
    words([end, middle + 0.36 * size], chart.rows[n]?.label ?? '', { size, bold: true, anchor: 'end' }),
    ...lines.map((line, k) =>
      words([end + 1.5, middle + (k - (lines.length - 1) / 2) * LINE * least + 0.34 * least], line, {
        size: least,
        anchor: 'start',
      }),
    ),
  ]);
}
