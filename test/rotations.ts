import { type Seconds, seconds } from '../src/core/quantities/brands.ts';
import type { Rotation, RotationTable } from '../src/core/rotation/rotation.ts';
import type { Stay, Timetable } from '../src/core/rotation/timetable.ts';
import { exactly, type Measured, measured } from '../src/core/uncertainty/measured.ts';

/** Rotations and timetables for tests, with nothing in them but what a test says. */
export const time = (value: number, u: number): Measured<Seconds> =>
  u === 0
    ? exactly(seconds(value))
    : measured(seconds(value), { id: `${value}`, u, shape: 'normal', origin: 'stated' });

export const table = (
  mark: string,
  run: Measured<Seconds>,
  more: Partial<RotationTable> = {},
): RotationTable => ({
  mark,
  run,
  reset: exactly(seconds(0)),
  copies: 1,
  needsAdult: false,
  mayDo: false,
  beside: [],
  ...more,
});

export const rotation = (more: Partial<Rotation>): Rotation => ({
  groups: [],
  tables: [],
  adults: [],
  walk: seconds(0),
  begins: seconds(0),
  bell: seconds(3600),
  breaks: [],
  way: 'free',
  wishes: [],
  ...more,
});

export const groups = (...labels: readonly string[]) =>
  labels.map((label) => ({ label, pupils: null, arrives: seconds(0) }));

export const stay = (
  group: string,
  mark: string,
  from: number,
  to: number,
  round: number | null = null,
): Stay => ({
  group,
  table: mark,
  copy: 1,
  from: seconds(from),
  to: seconds(to),
  round,
});

export const timetable = (stays: readonly Stay[], more: Partial<Timetable> = {}): Timetable => ({
  way: 'free',
  stays,
  rounds: null,
  waits: [],
  stands: [],
  leftOut: [],
  ends: seconds(Math.max(0, ...stays.map(({ to }) => to))),
  bound: seconds(0),
  proof: 'none',
  ...more,
});

/** Each group one table on: a plan without waits where all tables last the same. */
export const latin = (count: number, run: number, u: number, way: 'free' | 'signal', bell: number) => {
  const labels = Array.from({ length: count }, (_, n) => `G${n}`);
  const tables = labels.map((_, n) => table(`${n}`, time(run, u)));
  const stays = labels.flatMap((group, g) =>
    labels.map((_, r) =>
      stay(group, `${(g + r) % count}`, r * run, (r + 1) * run, way === 'signal' ? r + 1 : null),
    ),
  );
  const rounds = labels.map((_, r) => ({ from: seconds(r * run), to: seconds((r + 1) * run) }));
  return [
    rotation({ groups: groups(...labels), tables, way, bell: seconds(bell) }),
    timetable(stays, { way, rounds: way === 'signal' ? rounds : null }),
  ] as const;
};
