import type { ChartPart, RotationChart } from '../drawing/rotation-rows.ts';
import { clockText } from '../printing/time-text.ts';

/** A rotation in letters: widths true to time, as far as the columns allow. */
const LEAST_STEP = 30;
/** Steps of time that one letter may stand for, seconds. */
const STEPS = [LEAST_STEP, 40, 45, 60, 90, 120, 180, 300, 600] as const;

/**
 * The chart in a terminal: a line a row, a letter for so many seconds. Blocks stand between bars, a wait is
 * dots, a reset slashes, a break equals signs; an asterisk is an adult. `null` where nothing fits.
 */
export function rotationGrid(chart: RotationChart, width: number): readonly string[] | null {
  const label = Math.max(1, ...chart.rows.map(({ label }) => lengthOf(label)));
  const end = Math.max(chart.bell, ...chart.rows.flatMap(({ parts }) => parts.map(({ to }) => to)));
  const begin = Math.min(chart.begins, ...chart.rows.flatMap(({ parts }) => parts.map(({ from }) => from)));
  const room = width - label - 4;
  const step = STEPS.find((each) => Math.ceil((end - begin) / each) + 1 <= room);
  if (step === undefined) return null;
  const count = Math.ceil((end - begin) / step) + 1;
  const on = (time: number): number => Math.round((time - begin) / step);
  const pad = ' '.repeat(label + 2);
  return [
    `${pad}${axis(chart, begin, end, on, count)}`.trimEnd(),
    ...chart.rows.map(({ label: mark, parts }) => {
      const line = Array.from({ length: count }, () => ' ');
      for (const { from, to } of chart.breaks) fill(line, on(from), on(to), '=');
      // Blocks over waits: a block keeps both its bars.
      for (const part of parts.filter(({ kind }) => kind === 'wait')) drawPart(line, part, on);
      for (const part of parts.filter(({ kind }) => kind !== 'wait')) drawPart(line, part, on);
      return `${mark}${' '.repeat(label - lengthOf(mark))}  ${line.join('')}`.trimEnd();
    }),
    ...marks(chart, on, count).map((line) => `${pad}${line}`.trimEnd()),
  ];
}

/** A block between bars with its mark in the middle: "|  4*  |"; what has no room for its mark keeps a letter of it. */
function drawPart(line: string[], part: ChartPart, on: (time: number) => number): void {
  const [from, to] = [on(part.from), on(part.to)];
  if (part.kind === 'wait') {
    fill(line, from, to, '.');
    const words = [part.what, part.short ?? part.what].find((each) => lengthOf(each) <= to - from - 2);
    if (words !== undefined) write(line, middle(from, to, words), words);
    return;
  }
  if (part.kind === 'closed') {
    fill(line, from, to, 'x');
    if (lengthOf(part.what) <= to - from - 2) write(line, middle(from, to, part.what), part.what);
    return;
  }
  fill(line, to, on(part.resetTo), '/');
  fill(line, from, to, part.kind === 'done' ? '-' : ' ');
  const mark = `${part.what}${part.hasAdult ? '*' : ''}`;
  const words =
    [mark, part.what].find((each) => lengthOf(each) <= to - from - 1) ??
    part.what.slice(0, Math.max(1, to - from));
  write(line, from, '|');
  if (to > from + 1) write(line, to, '|');
  write(line, from + 1 + Math.max(0, Math.floor((to - from - 1 - lengthOf(words)) / 2)), words);
}

const middle = (from: number, to: number, words: string): number =>
  from + Math.floor((to - from - lengthOf(words)) / 2);

function fill(line: string[], from: number, to: number, letter: string): void {
  for (let n = Math.max(0, from); n < Math.min(line.length, to); n += 1) line[n] = letter;
}

function write(line: string[], at: number, words: string): void {
  [...words].forEach((letter, n) => {
    if (at + n < line.length) line[at + n] = letter;
  });
}

/** Times above the lines, as many as stand clear of each other. */
function axis(
  { clock }: RotationChart,
  begin: number,
  end: number,
  on: (time: number) => number,
  count: number,
): string {
  const line = Array.from({ length: count + 4 }, () => ' ');
  const since = clock.starts ?? 0;
  const step = [300, 600, 900, 1800, 3600].find((each) => on(begin + each) - on(begin) >= 7) ?? 3600;
  const first = begin + ((step - ((since + begin) % step)) % step);
  for (let at = first; at <= end; at += step) {
    const text = clock.starts === null ? String(Math.round(at / 60)) : clockText(since + at);
    write(line, on(at), text);
  }
  return line.join('').trimEnd();
}

/** Under the lines where the signal sounds, where the bell rings and where it is now. */
function marks(chart: RotationChart, on: (time: number) => number, count: number): readonly string[] {
  const line = Array.from({ length: count }, () => ' ');
  for (const at of chart.signals) write(line, on(at), '^');
  write(line, on(chart.bell), '!');
  if (chart.now !== null) write(line, on(chart.now), '@');
  return [line.join('')];
}

const lengthOf = (text: string): number => [...text].length;
