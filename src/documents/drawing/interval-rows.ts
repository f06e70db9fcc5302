import { circle, type Ink, LETTERING, lettersWidth, path, together, words } from './ink.ts';
import { svgSheet } from './svg-sheet.ts';

/** Figures of several setups above one axis: a dot with its interval, and what it is laid against. */
export interface IntervalRows {
  readonly axis: {
    readonly from: number;
    readonly to: number;
    /** A number stands at each of these. */
    readonly step: number;
    readonly text: (value: number) => string;
  };
  /** An upright line that means something, with its words. */
  readonly line: { readonly at: number; readonly text: string } | null;
  readonly rows: readonly IntervalRow[];
  /** What the signs stand for. */
  readonly legend: { readonly dot: string; readonly diamond: string | null };
  readonly title: string;
  readonly description: string;
  /** Names the picture on its page. */
  readonly name: string;
  /** Millimetres of paper. */
  readonly width: number;
}

export interface IntervalRow {
  readonly label: string;
  readonly value: number;
  readonly from: number;
  readonly to: number;
  /** Another figure that the first one is laid against: an open diamond. */
  readonly diamond: number | null;
  /** What follows, in a word, at the end of the row. */
  readonly word: string;
}

const ROW = 7.6;
const HALF = 1.5;

/** Rows above an axis; the sign is told by shape, and what follows by a word, before any colour. */
export function intervalRows(picture: IntervalRows): string {
  const { axis, rows, line, legend, width } = picture;
  const left = Math.max(...rows.map(({ label }) => lettersWidth(label, LETTERING.normal, true))) + 3;
  const right = Math.max(0, ...rows.map(({ word }) => lettersWidth(word, LETTERING.normal))) + 3;
  const length = width - left - right;
  const on = (value: number): number =>
    left + (Math.min(axis.to, Math.max(axis.from, value)) - axis.from) * (length / (axis.to - axis.from));
  const foot = rows.length * ROW;
  const inks: Ink[] = [
    ...ticks(picture, on, foot),
    ...(line === null
      ? []
      : [
          path(
            [
              [on(line.at), -3.5],
              [on(line.at), foot],
            ],
            'outline',
          ),
          words([on(line.at), -5], line.text, { bold: true }),
        ]),
    ...rows.flatMap((row, n) => rowInks(row, on, (n + 0.5) * ROW, left, left + length)),
    ...legendInks(legend, left, foot + 14),
  ];
  return svgSheet(together(inks), 1.5, picture);
}

function ticks({ axis }: IntervalRows, on: (value: number) => number, foot: number): readonly Ink[] {
  const count = Math.floor((axis.to - axis.from) / axis.step + 1e-9);
  const values = Array.from({ length: count + 1 }, (_, n) => axis.from + n * axis.step);
  return [
    path(
      [
        [on(axis.from), foot],
        [on(axis.to), foot],
      ],
      'cord',
    ),
    ...values.flatMap((value) => [
      path(
        [
          [on(value), 0],
          [on(value), foot + 1.4],
        ],
        'hatch',
      ),
      words([on(value), foot + 6], axis.text(value)),
    ]),
  ];
}

function rowInks(
  row: IntervalRow,
  on: (value: number) => number,
  y: number,
  left: number,
  end: number,
): readonly Ink[] {
  const { label, value, from, to, diamond, word } = row;
  const ends = to > from ? [from, to] : [];
  return [
    words([left - 3, y + 1.4], label, { anchor: 'end', bold: true }),
    ...(ends.length === 0
      ? []
      : [
          path(
            [
              [on(from), y],
              [on(to), y],
            ],
            'outline',
          ),
        ]),
    ...ends.map((each) =>
      path(
        [
          [on(each), y - HALF],
          [on(each), y + HALF],
        ],
        'outline',
      ),
    ),
    ...(diamond === null ? [] : [diamondAt(on(diamond), y)]),
    circle([on(value), y], 1.15, 'cord', 'solid'),
    ...(word === '' ? [] : [words([end + 3, y + 1.1], word, { anchor: 'start' })]),
  ];
}

const diamondAt = (x: number, y: number): Ink =>
  path(
    [
      [x, y - 1.9],
      [x + 1.9, y],
      [x, y + 1.9],
      [x - 1.9, y],
    ],
    'cord',
    true,
    'paper',
  );

function legendInks({ dot, diamond }: IntervalRows['legend'], left: number, y: number): readonly Ink[] {
  const texts: readonly Ink[] = [
    path(
      [
        [left, y - 1],
        [left + 6, y - 1],
      ],
      'outline',
    ),
    circle([left + 3, y - 1], 1.15, 'cord', 'solid'),
    words([left + 8.5, y], dot, { anchor: 'start' }),
  ];
  return diamond === null
    ? texts
    : [...texts, diamondAt(left + 3, y + 5), words([left + 8.5, y + 6], diamond, { anchor: 'start' })];
}
