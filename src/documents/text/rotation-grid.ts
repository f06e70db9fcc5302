import type { ChartPart, ChartRow, RotationChart } from '../drawing/rotation-rows.ts';
import { clockText } from '../printing/time-text.ts';

/** A rotation in letters: widths true to time, as far as the columns allow. */
const LEAST_STEP = 30;
/** Steps of time that one letter may stand for, seconds. */
const STEPS = [LEAST_STEP, 40, 45, 60, 90, 120, 180, 300, 600] as const;

/** What a letter stands for that is no name. */
export type GridSign = 'reset' | 'wait' | 'break' | 'done' | 'adult' | 'signal' | 'bell' | 'now';

export interface RotationGrid {
  readonly lines: readonly string[];
  /** The signs that are on it: a legend has no others. */
  readonly signs: ReadonlySet<GridSign>;
}

interface Cell {
  readonly letter: string;
  readonly sign: GridSign | null;
}
type Line = Cell[];

/**
 * The chart in a terminal: a line a row, a letter for so many seconds. Blocks stand between bars, a wait is
 * dots, a reset slashes, a break equals signs; an asterisk is an adult. `null` where nothing fits.
 */
export function rotationGrid(chart: RotationChart, width: number): RotationGrid | null {
  const label = Math.max(1, ...chart.rows.map(({ label }) => lengthOf(label)));
  const end = Math.max(chart.bell, ...chart.rows.flatMap(({ parts }) => parts.map(({ to }) => to)));
  const begin = Math.min(chart.begins, ...chart.rows.flatMap(({ parts }) => parts.map(({ from }) => from)));
  const room = width - label - 4;
  const step = STEPS.find((each) => Math.ceil((end - begin) / each) + 1 <= room);
  if (step === undefined) return null;
  const count = Math.ceil((end - begin) / step) + 1;
  const on: On = (time) => Math.round((time - begin) / step);
  const pad = ' '.repeat(label + 2);
  const withResets = chart.rows.map((row) => rowLine(chart, row, on, count, true));
  // A reset here and none there would say that some tables aren't put back: all are drawn, or none is.
  const areAllSeen = chart.rows.every((row, n) => seesResets(withResets[n] as Line, row.parts, on));
  const rows = areAllSeen ? withResets : chart.rows.map((row) => rowLine(chart, row, on, count, false));
  const under = marks(chart, on, count);
  return {
    lines: [
      `${pad}${axis(chart, begin, end, on, count)}`.trimEnd(),
      ...chart.rows.map(({ label: mark }, n) =>
        `${mark}${' '.repeat(label - lengthOf(mark))}  ${lettersOf(rows[n] as Line)}`.trimEnd(),
      ),
      `${pad}${lettersOf(under)}`.trimEnd(),
    ],
    signs: new Set([...rows, under].flat().flatMap(({ sign }) => sign ?? [])),
  };
}

/** The letter on which a moment falls. */
type On = (time: number) => number;

const blank = (count: number): Line => Array.from({ length: count }, () => ({ letter: ' ', sign: null }));

const lettersOf = (line: Line): string => line.map(({ letter }) => letter).join('');

function rowLine(
  { breaks }: RotationChart,
  { parts }: ChartRow,
  on: On,
  count: number,
  withResets: boolean,
): Line {
  const line = blank(count);
  for (const { from, to } of breaks) fill(line, on(from), on(to), '=', 'break');
  // Blocks over waits: a block keeps both its bars.
  for (const part of parts) if (part.kind === 'wait') drawWait(line, part, on);
  for (const part of parts) {
    if (part.kind === 'wait') continue;
    if (part.kind === 'closed') drawClosed(line, part, on);
    else drawBlock(line, part, on, withResets);
  }
  return line;
}

/** Dots; its words with a dot on each side, clear of a bar that stands on the first. */
function drawWait(line: Line, part: ChartPart, on: On): void {
  const [from, to] = [on(part.from), on(part.to)];
  fill(line, from, to, '.', 'wait');
  const words = [part.what, part.short ?? part.what].find((each) => lengthOf(each) <= to - from - 3);
  if (words !== undefined) write(line, middle(from + 1, to, words), words);
}

function drawClosed(line: Line, part: ChartPart, on: On): void {
  const [from, to] = [on(part.from), on(part.to)];
  fill(line, from, to, 'x');
  if (lengthOf(part.what) <= to - from - 2) write(line, middle(from, to, part.what), part.what);
}

/**
 * A block between bars with its mark in the middle: "|  4*  |". Where there is no room for the asterisk it stands for
 * the first bar, "*4|"; what has no room for its mark keeps as many letters of it as leave both bars.
 */
function drawBlock(line: Line, part: ChartPart, on: On, withResets: boolean): void {
  const [from, to] = [on(part.from), on(part.to)];
  const room = Math.max(1, to - from - 1);
  if (withResets && part.resetTo > part.to) fill(line, to + 1, resetEnd(part, on) + 1, '/', 'reset');
  const isDone = part.kind === 'done';
  fill(line, from, to, isDone ? '-' : ' ', isDone ? 'done' : null);
  const words = [...part.what].slice(0, room).join('');
  const hasStarInside = part.hasAdult && lengthOf(words) < room;
  const inside = lengthOf(words) + (hasStarInside ? 1 : 0);
  const at = from + 1 + Math.floor((room - inside) / 2);
  write(
    line,
    from,
    part.hasAdult && !hasStarInside ? '*' : '|',
    part.hasAdult && !hasStarInside ? 'adult' : null,
  );
  if (to > from + 1) write(line, to, '|');
  write(line, at, words);
  if (hasStarInside) write(line, at + lengthOf(words), '*', 'adult');
}

/** The last letter of a reset, which has one at least. */
const resetEnd = ({ to, resetTo }: ChartPart, on: On): number => Math.max(on(to) + 1, on(resetTo));

/** Whether each reset before the end of the chart shows. */
const seesResets = (line: Line, parts: readonly ChartPart[], on: On): boolean =>
  parts
    .filter(({ to, resetTo }) => resetTo > to && on(to) + 1 < line.length)
    .every((part) =>
      line.slice(on(part.to) + 1, resetEnd(part, on) + 1).some(({ sign }) => sign === 'reset'),
    );

const middle = (from: number, to: number, words: string): number =>
  from + Math.floor((to - from - lengthOf(words)) / 2);

function fill(line: Line, from: number, to: number, letter: string, sign: Cell['sign'] = null): void {
  for (let n = Math.max(0, from); n < Math.min(line.length, to); n += 1) line[n] = { letter, sign };
}

function write(line: Line, at: number, words: string, sign: Cell['sign'] = null): void {
  [...words].forEach((letter, n) => {
    if (at + n < line.length) line[at + n] = { letter, sign };
  });
}

/** Times above the lines, as many as stand clear of each other. */
function axis({ clock }: RotationChart, begin: number, end: number, on: On, count: number): string {
  const line = blank(count + 4);
  const since = clock.starts ?? 0;
  const step = [300, 600, 900, 1800, 3600].find((each) => on(begin + each) - on(begin) >= 7) ?? 3600;
  const first = begin + ((step - ((since + begin) % step)) % step);
  for (let at = first; at <= end; at += step) {
    const text = clock.starts === null ? String(Math.round(at / 60)) : clockText(since + at);
    write(line, on(at), text);
  }
  return lettersOf(line).trimEnd();
}

/** Under the lines where the signal sounds, where the bell rings and where it is now. */
function marks(chart: RotationChart, on: On, count: number): Line {
  const line = blank(count);
  for (const at of chart.signals) write(line, on(at), '^', 'signal');
  write(line, on(chart.bell), '!', 'bell');
  if (chart.now !== null) write(line, on(chart.now), '@', 'now');
  return line;
}

const lengthOf = (text: string): number => [...text].length;
