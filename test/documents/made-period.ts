import { seconds } from '../../src/core/quantities/brands.ts';
import type { ClassPeriod, FilledWait, Period } from '../../src/core/rotation/class-period.ts';
import type { Rotation, RotationTable } from '../../src/core/rotation/rotation.ts';
import type { Round, Stay, Timetable } from '../../src/core/rotation/timetable.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';

interface Made {
  readonly groups: number;
  readonly tables: number;
  readonly way: 'signal' | 'free';
  readonly minutes: number;
  /** Since midnight; `null` where the visit doesn't say. */
  readonly starts?: number | null;
  readonly rounds?: number;
  readonly own?: Partial<ClassPeriod>;
}

const MINUTE = 60;
const letter = (n: number): string => String.fromCharCode(65 + n);

/**
 * A period put together by hand, for pictures and words: group n begins at table n and goes on to the next
 * one; where there are more groups than tables the rest wait. Only as sensible as a test of words needs.
 */
export function madePeriod({
  groups,
  tables,
  way,
  minutes,
  starts = 9 * 3600,
  rounds,
  own,
}: Made): ClassPeriod {
  const [begins, bell, walk] = [5 * MINUTE, (minutes - 5) * MINUTE, 30];
  const count = rounds ?? Math.max(groups, tables);
  const labels = Array.from({ length: groups }, (_, n) => letter(n));
  const marks = Array.from({ length: tables }, (_, n) => String(n + 1));
  const each = Math.floor((bell - begins + walk) / count) - walk;
  const reset = 30;
  const spots = Math.max(groups, tables);
  const begin = (round: number): number => begins + round * (each + walk);
  const shorter = (mark: string): number => (way === 'signal' ? 0 : 20 * (Number(mark) % 3));
  const plan = Array.from({ length: count }, (_, round) =>
    labels.map((group, n) => ({ group, round, mark: marks[(n + round) % spots] })),
  ).flat();
  const stays: readonly Stay[] = plan.flatMap(({ group, round, mark }) =>
    mark === undefined
      ? []
      : [
          {
            group,
            table: mark,
            copy: 1,
            from: seconds(begin(round)),
            to: seconds(begin(round) + each - reset - shorter(mark)),
            round: way === 'signal' ? round + 1 : null,
          },
        ],
  );
  const waits = plan.flatMap(({ group, round, mark }) =>
    mark === undefined ? [{ group, from: seconds(begin(round)), to: seconds(begin(round) + each) }] : [],
  );
  const roundsMade: readonly Round[] = Array.from({ length: count }, (_, round) => ({
    from: seconds(begin(round)),
    to: seconds(begin(round) + each),
  }));
  const needing = marks.filter((_, n) => n === 3 || n === 5);
  const ends = seconds(Math.max(...stays.map(({ to }) => to)));
  const timetable: Timetable = {
    way,
    stays,
    rounds: way === 'signal' ? roundsMade : null,
    waits,
    stands: stays.flatMap(({ table, copy, from, to }) =>
      needing.includes(table) ? [{ adult: String(needing.indexOf(table) + 1), table, copy, from, to }] : [],
    ),
    leftOut: labels.flatMap((group) =>
      marks
        .filter((table) => !stays.some((stay) => stay.group === group && stay.table === table))
        .map((table) => ({ group, table })),
    ),
    ends,
    bound: ends,
    proof: 'bound',
  };
  const table = (mark: string): RotationTable => ({
    mark,
    run: exactly(seconds(each - reset)),
    reset: exactly(seconds(reset)),
    copies: 1,
    needsAdult: needing.includes(mark),
    mayDo: mark === '5',
    beside: [],
  });
  const rotation: Rotation = {
    groups: labels.map((label) => ({ label, pupils: 4, arrives: seconds(0) })),
    tables: marks.map(table),
    adults: ['1', '2'].map((label) => ({ label, at: null })),
    walk: seconds(walk),
    begins: seconds(begins),
    bell: seconds(bell),
    breaks: [],
    way,
    wishes: [],
  };
  return {
    label: null,
    clock: { date: '2026-05-12', starts: starts === null ? null : seconds(starts) },
    lasts: seconds(minutes * MINUTE),
    introduction: seconds(begins),
    talkAtTheEnd: seconds(5 * MINUTE),
    pupils: 4 * groups,
    rotation,
    adultsAreCounted: true,
    fromPast: [],
    closed: [],
    assumed: [],
    outcome: { kind: 'timetable', timetable, shortage: null },
    chance: {
      byTheBell: 0.9,
      ends: { middle: seconds(ends + 60), from: seconds(ends - 60), to: seconds(ends + 240) },
      waits: labels.map((group) => ({ group, expected: seconds(90) })),
      byTheClock: way === 'signal' ? { unfinished: 5.2, stays: stays.length } : null,
    },
    waits: waits.map((wait, n): FilledWait => ({ ...wait, task: taskOf(n) })),
    gains: [
      {
        change: { kind: 'another copy', table: '4' },
        byTheBell: 0.985,
        ends: seconds(ends - 360),
        waiting: seconds(300),
      },
      {
        change: { kind: 'shorter', table: '2', by: seconds(60) },
        byTheBell: 0.95,
        ends: seconds(ends),
        waiting: seconds(600),
      },
    ],
    underWay: null,
    ...own,
  };
}

const taskOf = (n: number): FilledWait['task'] => {
  if (n % 3 === 0) return { kind: 'setup', table: '1', setup: 'L4' };
  return n % 3 === 1
    ? {
        kind: 'paper',
        text: 'Draw the machine of your last table.',
        texts: { es: 'Dibujen la máquina de su última mesa.' },
      }
    : null;
};

/** The day with one class. */
export const dayOf = (...classes: readonly ClassPeriod[]): Period => ({ classes, between: [] });

/** The demo's six groups and seven tables, as a round dance. */
export const demoPeriod = (own: Partial<ClassPeriod> = {}): ClassPeriod =>
  madePeriod({ groups: 6, tables: 7, way: 'signal', minutes: 50, own });

/** Twelve groups at nine tables, where nobody moves together. */
export const crowdedPeriod = (own: Partial<ClassPeriod> = {}): ClassPeriod =>
  madePeriod({ groups: 12, tables: 9, way: 'free', minutes: 90, own });

/** As small as it gets, without a clock. */
export const smallPeriod = (own: Partial<ClassPeriod> = {}): ClassPeriod =>
  madePeriod({ groups: 2, tables: 2, way: 'signal', minutes: 30, starts: null, own });
