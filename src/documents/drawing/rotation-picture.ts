import { momentText } from '../printing/time-text.ts';
import type { PeriodWords } from '../text/period-words.ts';
import { LINE } from './fitted-words.ts';
import { hatching } from './hatching.ts';
import { type Ink, lettersWidth, path, together, words } from './ink.ts';
import { partInk, titleHeight } from './rotation-block.ts';
import { describeRotation } from './rotation-description.ts';
import { labelInk, labelWidth } from './rotation-labels.ts';
import { legendInk } from './rotation-legend.ts';
import type { ChartRow, RotationChart } from './rotation-rows.ts';
import { svgSheet } from './svg-sheet.ts';

/** Room for a chart on its paper, millimetres, and who reads it from where. */
export interface RotationPictureOptions {
  /** Names the picture on its page. */
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Least height of letters: 2.5 on a sheet in the hand, more on a wall. */
  readonly least: number;
  /** Nothing but marks, as large as they can be: what is read from the back of the room. */
  readonly marksOnly?: true;
}

const MARGIN = 1;
/** Few groups do not make lines as high as a door. */
const HIGHEST_ROW = 42;
const HIGHEST_POSTER_ROW = 95;
const LOWEST_ROW = 6.5;

interface Frame extends RotationPictureOptions {
  readonly chart: RotationChart;
  readonly words: PeriodWords;
  /** Where the lines begin, and how high each is. */
  readonly left: number;
  readonly row: number;
  readonly bottom: number;
  readonly on: (time: number) => number;
}

/**
 * The rotation chart: a line a group (or a table, or an adult), a block as wide as it lasts, the signal as
 * a line across all. Black on nothing, told by shape and word and never by colour; its description says
 * every fact of it.
 */
export function rotationPicture(
  chart: RotationChart,
  periodWords: PeriodWords,
  options: RotationPictureOptions,
): string {
  const frame = frameOf(chart, periodWords, options);
  const { row, on, least } = frame;
  const marksOnly = options.marksOnly === true;
  const titled = marksOnly ? null : titleHeight(chart, { height: row, on, least });
  const inks = [
    ...aroundInks(frame),
    ...signalInks(frame),
    ...chart.rows.flatMap((each, n) => [
      ...rowInks(frame, each, n),
      ...each.parts.map((part) =>
        partInk(part, { top: n * row, height: row, on, least, titled, marksOnly }, chart),
      ),
    ]),
    ...breakInks(frame),
    ...axisInks(frame),
    legendInk(marksOnly ? bare(chart) : chart, periodWords, {
      left: frame.left,
      // Under "now", where it is now.
      top: frame.bottom + (chart.now === null ? 3.2 : 4.8) * least,
      width: on(chart.lasts) - frame.left,
      least,
    }),
  ];
  return svgSheet(together(inks), MARGIN, {
    name: options.name,
    title: periodWords.say(`rotation.chart.${chart.lines}`),
    description: describeRotation(chart, periodWords),
  });
}

/** What stands in a chart of marks only needs no words for the rest. */
const bare = (chart: RotationChart): RotationChart => ({
  ...chart,
  rows: chart.rows.map((row) => ({
    ...row,
    parts: row.parts.map((part) => ({ ...part, resetTo: part.to, hasAdult: false })),
  })),
});

function frameOf(chart: RotationChart, periodWords: PeriodWords, options: RotationPictureOptions): Frame {
  const { width, height, least } = options;
  const count = Math.max(1, chart.rows.length);
  // Above: times and the signal; below: minutes and the legend.
  const around = (chart.now === null ? 9.5 : 11.1) * least + 2 * MARGIN;
  const row = Math.min(
    options.marksOnly === true ? HIGHEST_POSTER_ROW : HIGHEST_ROW,
    Math.max(LOWEST_ROW, (height - around) / count),
  );
  const left = labelWidth(chart, row, least) + 1.5;
  const room = width - left - 2 * MARGIN - 3.6 * least;
  return {
    ...options,
    chart,
    words: periodWords,
    left,
    row,
    bottom: row * count,
    on: (time) => left + (time / chart.lasts) * room,
  };
}

function rowInks(frame: Frame, { late }: ChartRow, n: number): readonly Ink[] {
  const { chart, row, left, least, on } = frame;
  const middle = (n + 0.5) * row - (frame.marksOnly === true ? 0 : 0.08 * row);
  return [
    labelInk(chart, n, { row, least, left, middle }),
    ...(n === 0 ? [] : [level(frame, n * row, 'hatch', chart.begins, chart.bell)]),
    ...(late === null || lettersWidth(late.text, least) > on(late.to) - on(chart.begins) - 1
      ? []
      : [words([on(late.to) - 1, middle + 0.34 * least], late.text, { size: least, anchor: 'end' })]),
  ];
}

const level = (
  { on, chart }: Frame,
  y: number,
  stroke: 'hatch' | 'outline',
  from = 0,
  to: number = chart.lasts,
): Ink =>
  path(
    [
      [on(from), y],
      [on(to), y],
    ],
    stroke,
  );

const upright = (
  x: number,
  top: number,
  bottom: number,
  stroke: 'thin' | 'cord' | 'accent' | 'centre',
): Ink =>
  path(
    [
      [x, top],
      [x, bottom],
    ],
    stroke,
  );

/** The frame, and what is told to all before the first table and after the last. */
function aroundInks(frame: Frame): readonly Ink[] {
  const {
    chart,
    on,
    bottom,
    left,
    words: { say },
  } = frame;
  const end = on(chart.lasts);
  return [
    level(frame, 0, 'outline'),
    level(frame, bottom, 'outline'),
    upright(left, 0, bottom, 'thin'),
    upright(end, 0, bottom, 'thin'),
    ...(chart.begins > 0 ? [upright(on(chart.begins), 0, bottom, 'thin')] : []),
    ...turnedWord(frame, say('rotation.mark.introduction'), 0, chart.begins),
    ...turnedWord(frame, say('rotation.mark.talk'), chart.bell, chart.lasts),
  ];
}

/** A word up the chart, between two times, where it fits. */
function turnedWord({ on, bottom, least }: Frame, text: string, from: number, to: number): readonly Ink[] {
  const width = on(to) - on(from);
  const size = [2, 1.6, 1.3, 1]
    .map((times) => times * least)
    .find((each) => each * LINE <= width - 0.6 && lettersWidth(text, each) <= bottom - 2);
  if (size === undefined) return [];
  return [words([(on(from) + on(to)) / 2 + 0.34 * size, bottom / 2], text, { size, turn: -90 })];
}

/** Breaks lie across all lines: nobody is at a table. */
const breakInks = (frame: Frame): readonly Ink[] =>
  frame.chart.breaks.flatMap(({ from, to }) => {
    const [left, right] = [frame.on(from), frame.on(to)];
    const strip: [number, number][] = [
      [left, 0],
      [right, 0],
      [right, frame.bottom],
      [left, frame.bottom],
    ];
    return [
      hatching(strip, 1.6, 0),
      path(strip, 'thin', true),
      ...turnedWord(frame, frame.words.say('rotation.mark.break'), from, to),
    ];
  });

/** The signal across all lines with a flag on top and its time; the bell as the strongest line; now, if it is now. */
function signalInks(frame: Frame): readonly Ink[] {
  const {
    chart,
    on,
    bottom,
    least,
    words: { say },
  } = frame;
  const top = -2.1 * least;
  const bellWord = `${say('rotation.mark.bell')} ${momentText(chart.clock, chart.bell)}`;
  let taken = -Infinity;
  return [
    ...chart.signals.flatMap((at) => {
      const text = momentText(chart.clock, at);
      const half = lettersWidth(text, least) / 2;
      const isFree =
        on(at) - half > taken + 0.8 &&
        on(at) + half < on(chart.bell) - lettersWidth(bellWord, least, true) / 2 - 0.8;
      if (isFree) taken = on(at) + half;
      return [
        upright(on(at), -0.9 * least, bottom, 'cord'),
        flag(on(at), -0.9 * least, 0.8 * least),
        ...(isFree ? [words([on(at), top], text, { size: least })] : []),
      ];
    }),
    upright(on(chart.bell), -1.6 * least, bottom, 'accent'),
    words([on(chart.bell), top], bellWord, { size: least, bold: true }),
    ...(chart.now === null
      ? []
      : [
          upright(on(chart.now), -0.6 * least, bottom + 0.6 * least, 'centre'),
          words([on(chart.now), bottom + 2.9 * least], say('rotation.mark.now'), { size: least, bold: true }),
        ]),
  ];
}

const flag = (x: number, y: number, size: number): Ink =>
  path(
    [
      [x, y + size],
      [x - 0.6 * size, y],
      [x + 0.6 * size, y],
    ],
    'thin',
    true,
    'solid',
  );

/** Ticks every five minutes: the time of day above, where it is known, minutes from the start below. */
function axisInks({ chart, on, bottom, least }: Frame): readonly Ink[] {
  const step =
    [300, 600, 900, 1800].find(
      (each) => on(each) - on(0) > lettersWidth(chart.clock.starts === null ? '100' : '10:00', least) + 2,
    ) ?? 3600;
  const first = chart.clock.starts === null ? 0 : (step - (chart.clock.starts % step)) % step;
  const times = (from: number): readonly number[] =>
    Array.from({ length: Math.floor((chart.lasts - from) / step) + 1 }, (_, n) => from + n * step);
  return [
    ...(chart.clock.starts === null
      ? []
      : times(first).flatMap((at) => [
          upright(on(at), -0.5 * least, 0, 'thin'),
          words([on(at), -3.6 * least], momentText(chart.clock, at), { size: least }),
        ])),
    ...times(0).flatMap((at) => [
      upright(on(at), bottom, bottom + 0.5 * least, 'thin'),
      words([on(at), bottom + 1.6 * least], String(at / 60), { size: least }),
    ]),
    words([on(chart.lasts) + 1.3 * least, bottom + 1.6 * least], 'min', { size: least, anchor: 'start' }),
  ];
}
