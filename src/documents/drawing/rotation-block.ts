import { momentText } from '../printing/time-text.ts';
import { type FittedWords, fittedWords, LINE, largestFit } from './fitted-words.ts';
import { hatching } from './hatching.ts';
import { circle, curve, type Ink, lettersWidth, path, together, words } from './ink.ts';
import type { ChartPart, RotationChart } from './rotation-rows.ts';

/** Where a line of the chart lies on paper, millimetres, and how seconds become millimetres. */
export interface RowPlace {
  readonly top: number;
  readonly height: number;
  readonly on: (time: number) => number;
  /** The least height of letters that can be read where this chart hangs. */
  readonly least: number;
  /** Height of the titles under their marks; `null` where they don't all fit. */
  readonly titled: number | null;
  /** Neither titles nor persons nor resets: a mark, as large as its line. */
  readonly marksOnly: boolean;
}

/** Shares of a line's height: the block, the gap under it, the strip of its reset. */
const BLOCK = { from: 0.06, to: 0.78 } as const;
const BARE_BLOCK = { from: 0.05, to: 0.95 } as const;
const RESET = { from: 0.8, to: 0.94 } as const;

type Room = ReturnType<typeof roomOf>;

const roomOf = ({ top, height, on, marksOnly }: RowPlace, { from, to }: Pick<ChartPart, 'from' | 'to'>) => {
  const share = marksOnly ? BARE_BLOCK : BLOCK;
  return {
    left: on(from),
    right: on(to),
    top: top + share.from * height,
    bottom: top + share.to * height,
  };
};

/** A stay as a block, a wait left open, a closed table crossed out; its reset as a hatched strip after it. */
export function partInk(part: ChartPart, place: RowPlace, chart: RotationChart): Ink {
  const room = roomOf(place, part);
  switch (part.kind) {
    case 'stay':
    case 'done':
      return together([
        box(room, 'outline'),
        ...(part.kind === 'done' ? [hatching(corners(room), 2.2, Math.PI / 4)] : []),
        ...markInks(part, room, place, chart),
        ...resetInks(part, place),
      ]);
    case 'wait':
      return together([box(room, 'dashed cord'), ...openWords(part, room, place.least)]);
    case 'closed':
      return together([
        box(room, 'thin'),
        path(
          [
            [room.left, room.top],
            [room.right, room.bottom],
          ],
          'thin',
        ),
        ...openWords(part, room, place.least),
      ]);
  }
}

const corners = ({ left, right, top, bottom }: Room): [number, number][] => [
  [left, top],
  [right, top],
  [right, bottom],
  [left, bottom],
];

const box = (room: Room, stroke: 'outline' | 'thin' | 'dashed cord'): Ink =>
  path(corners(room), stroke, true, 'paper');

const titleRoom = (width: number, height: number) => ({ width: width - 2, height: 0.46 * height });

/** The largest letters in which every title of the chart fits under its mark: all are told, or none. */
export function titleHeight(
  chart: RotationChart,
  { height, on, least }: Pick<RowPlace, 'height' | 'on' | 'least'>,
): number | null {
  const block = (BLOCK.to - BLOCK.from) * height;
  const titled = chart.rows.flatMap(({ parts }) => parts.filter(({ title }) => title !== null));
  const heights = [0.19, 0.17, 0.15, 0.13, 0.11, 0.09].map((share) => Math.max(least, share * block));
  const found = heights.find((each) =>
    titled.every(
      ({ title, from, to }) => fittedWords(title ?? '', titleRoom(on(to) - on(from), block), each) !== null,
    ),
  );
  return found ?? null;
}

/** The mark as large as its block allows; under it the title, and from when, where there is room for them. */
function markInks(
  { what, title, hasAdult, from }: ChartPart,
  room: Room,
  { least, titled, marksOnly }: RowPlace,
  chart: RotationChart,
): readonly Ink[] {
  const [width, height] = [room.right - room.left, room.bottom - room.top];
  const person = hasAdult && !marksOnly ? Math.min(0.3 * height, 0.22 * width, 7) : 0;
  const under =
    title === null || titled === null ? null : fittedWords(title, titleRoom(width, height), titled);
  const time = chart.signals.length > 0 || marksOnly ? null : momentText(chart.clock, from);
  const timeFits =
    time !== null && fittedWords(time, { width: width - 1.4 - 1.3 * person, height: 0.25 * height }, least);
  // As much for one line as for two: marks beside each other are of one size.
  const below = under === null ? 0 : Math.min(0.46 * height, 2 * LINE * under.height);
  const above = timeFits ? LINE * least : 0;
  const free = height - below - above - 0.12 * height;
  const across = width - 1.6 - (person === 0 ? 0 : 1.3 * person);
  const size = Math.max(
    Math.min(least, free),
    Math.min(free * (above > 0 ? 1.05 : 1.2), 0.86 * height, across / lettersWidth(what, 1, true)),
  );
  const middle = room.left + (width - (person === 0 ? 0 : 1.2 * person)) / 2;
  const base = room.top + above + 0.06 * height + (free + 0.72 * size) / 2;
  return [
    words([middle, base], what, { size, bold: true }),
    ...(timeFits && time !== null
      ? [words([room.left + 1, room.top + 0.9 * least + 0.4], time, { size: least, anchor: 'start' })]
      : []),
    ...(under === null ? [] : titleInks(under, room, room.bottom - 0.05 * height - below)),
    ...(person === 0 ? [] : [personInk(room.right - 0.6 - person / 2, room.top + 0.7, person)]),
  ];
}

/** A title under its mark. */
const titleInks = ({ lines, height }: FittedWords, { left, right }: Room, top: number): readonly Ink[] =>
  lines.map((line, n) =>
    words([(left + right) / 2, top + (n * LINE + 0.86) * height], line, { size: height }),
  );

/** Head and shoulders, so high: somebody stands here. */
export function personInk(x: number, top: number, height: number): Ink {
  const head = 0.24 * height;
  const [foot, half] = [top + height, 0.46 * height];
  const shoulders = top + 2 * head + 0.1 * height;
  return together([
    circle([x, top + head], head, 'thin', 'solid'),
    curve(
      `M${x - half} ${foot}V${(shoulders + foot) / 2}Q${x - half} ${shoulders} ${x} ${shoulders}Q${x + half} ${shoulders} ${x + half} ${(shoulders + foot) / 2}V${foot}Z`,
      [
        [x - half, shoulders],
        [x + half, foot],
      ],
      'thin',
      'solid',
    ),
  ]);
}

/** A word in an open space: level where it fits, upright where only that does, else none. */
function openWords({ what, short }: ChartPart, room: Room, least: number): readonly Ink[] {
  const [width, height] = [room.right - room.left, room.bottom - room.top];
  const middle: [number, number] = [(room.left + room.right) / 2, (room.top + room.bottom) / 2];
  const heights = [1.5, 1.25, 1].map((times) => times * least);
  for (const text of [what, ...(short === null ? [] : [short])]) {
    const level = largestFit(text, { width: width - 1.2, height: height - 0.6 }, heights);
    if (level !== null) return linesAt(middle, level.lines, level.height, 0);
    const upright = fittedWords(text, { width: height - 1, height: width - 0.4 }, least);
    if (upright !== null) return linesAt(middle, upright.lines, least, -90);
  }
  return [];
}

const linesAt = (
  [x, y]: [number, number],
  lines: readonly string[],
  height: number,
  turn: 0 | -90,
): readonly Ink[] =>
  lines.map((line, n) => {
    const down = (n - (lines.length - 1) / 2) * LINE * height + 0.34 * height;
    return words(turn === 0 ? [x, y + down] : [x + down, y], line, { size: height, turn });
  });

/** The table is put back: a thin hatched strip, lower than the block, so that the next one may begin meanwhile. */
function resetInks({ to, resetTo }: ChartPart, { top, height, on, marksOnly }: RowPlace): readonly Ink[] {
  if (marksOnly || resetTo <= to) return [];
  return [hatchedStrip(on(to), on(resetTo), top + RESET.from * height, top + RESET.to * height)];
}

export function hatchedStrip(left: number, right: number, top: number, bottom: number): Ink {
  const strip: [number, number][] = [
    [left, top],
    [right, top],
    [right, bottom],
    [left, bottom],
  ];
  return together([hatching(strip, 0.7), path(strip, 'thin', true)]);
}
