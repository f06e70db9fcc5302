import type { PeriodWords } from '../text/period-words.ts';
import { type Ink, lettersWidth, path, together, words } from './ink.ts';
import { hatchedStrip, personInk } from './rotation-block.ts';
import type { RotationChart } from './rotation-rows.ts';

interface Place {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly least: number;
}

/** What the signs of this chart mean, those that stand in it, in lines as wide as the chart. */
export function legendInk(
  chart: RotationChart,
  { say }: PeriodWords,
  { left, top, width, least }: Place,
): Ink {
  const parts = chart.rows.flatMap((row) => row.parts);
  const sign = 2.4 * least;
  const entries: readonly (readonly [string, (x: number, y: number) => Ink])[] = [
    ...(parts.some(({ to, resetTo }) => resetTo > to)
      ? [
          [
            say('rotation.legend.reset'),
            (x: number, y: number) => hatchedStrip(x, x + sign, y - 0.6 * least, y),
          ] as const,
        ]
      : []),
    ...(parts.some(({ hasAdult }) => hasAdult)
      ? [
          [
            say('rotation.legend.adult'),
            (x: number, y: number) => personInk(x + sign - 0.6 * least, y - 1.1 * least, 1.3 * least),
          ] as const,
        ]
      : []),
    ...(parts.some(({ kind }) => kind === 'wait')
      ? [[say('rotation.legend.wait'), (x: number, y: number) => frame(x, y, sign, least)] as const]
      : []),
    ...(parts.some(({ kind }) => kind === 'done')
      ? [[say('rotation.legend.done'), (x: number, y: number) => done(x, y, sign, least)] as const]
      : []),
    ...(chart.signals.length > 0
      ? [[say('rotation.legend.signal'), (x: number, y: number) => signal(x + 0.7 * sign, y, least)] as const]
      : []),
  ];
  let [x, y] = [left, top];
  return together(
    entries.flatMap(([text, drawn]) => {
      const wide = sign + 0.6 * least + lettersWidth(text, least);
      if (x > left && x + wide > left + width) [x, y] = [left, y + 1.8 * least];
      const inks = [drawn(x, y), words([x + sign + 0.6 * least, y], text, { size: least, anchor: 'start' })];
      x += wide + 2.5 * least;
      return inks;
    }),
  );
}

const corners = (x: number, y: number, width: number, least: number): [number, number][] => [
  [x, y - 0.9 * least],
  [x + width, y - 0.9 * least],
  [x + width, y + 0.1 * least],
  [x, y + 0.1 * least],
];

const frame = (x: number, y: number, width: number, least: number): Ink =>
  path(corners(x, y, width, least), 'dashed cord', true);

const done = (x: number, y: number, width: number, least: number): Ink =>
  together([
    path(corners(x, y, width, least), 'outline', true),
    ...[0.1, 0.4, 0.7].map((share) =>
      path(
        [
          [x + share * width, y - 0.9 * least],
          [x + (share + 0.25) * width, y + 0.1 * least],
        ],
        'hatch',
      ),
    ),
  ]);

const signal = (x: number, y: number, least: number): Ink =>
  together([
    path(
      [
        [x, y - 0.9 * least],
        [x, y + 0.3 * least],
      ],
      'cord',
    ),
    path(
      [
        [x, y - 0.2 * least],
        [x - 0.4 * least, y - 0.9 * least],
        [x + 0.4 * least, y - 0.9 * least],
      ],
      'thin',
      true,
      'solid',
    ),
  ]);
