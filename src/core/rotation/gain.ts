import { type Seconds, seconds } from '../quantities/brands.ts';
import { times } from '../uncertainty/measured.ts';
import { type ChanceAsked, chanceToFinish } from './chance-to-finish.ts';
import type { PeriodGain } from './class-period.ts';
import type { Rotation, RotationTable } from './rotation.ts';
import type { Timetable } from './timetable.ts';

/** Finds a timetable, or none. */
export type Arranging = (rotation: Rotation) => Timetable | null;

/** What one change to one table would do; `leftOut`: how many visits would then not fit. */
export interface Gain extends PeriodGain {
  readonly leftOut: number;
}

export interface GainAsked {
  /** By how much a table could be made shorter. */
  readonly shorterBy: Seconds;
  /** The same seed for all, so that they meet the same periods. */
  readonly chance: ChanceAsked;
}

/** Everything that ranks a timetable. */
type Figures = Omit<Gain, 'change'>;

/** The wait of all groups together is told apart in steps of this. */
const MINUTE = 60;

/**
 * Which table to double or to shorten, best first: each change is arranged anew and played through like the plan.
 * Fewer visits left out come first, then the chance that all are done by the bell, then the planned end, then the
 * waiting of all groups together. Chances within the tolerance of each other count as the same. Changes after which
 * it is no better than now are not told. `now` is `null` where the period can't be arranged as it is.
 */
export function gains(
  rotation: Rotation,
  now: Timetable | null,
  arranging: Arranging,
  asked: GainAsked,
): readonly Gain[] {
  const figuresNow = now === null ? null : figuresOf(rotation, now, asked.chance);
  const isBefore = ranking(asked.chance.tolerance ?? 0.01);
  return rotation.tables
    .filter(({ mark }) => now === null || isInPlay(now, mark))
    .flatMap((table) => changesTo(rotation, table, asked.shorterBy))
    .flatMap(({ change, changed }): readonly Gain[] => {
      const timetable = arranging(changed);
      if (timetable === null) return [];
      const figures = figuresOf(changed, timetable, asked.chance);
      return figuresNow === null || isBefore(figures, figuresNow) < 0 ? [{ change, ...figures }] : [];
    })
    .sort(isBefore);
}

const isInPlay = ({ stays, leftOut }: Timetable, mark: string): boolean =>
  [...stays, ...leftOut].some(({ table }) => table === mark);

interface Changed {
  readonly change: Gain['change'];
  readonly changed: Rotation;
}

function changesTo(rotation: Rotation, table: RotationTable, by: Seconds): readonly Changed[] {
  const { mark, copies, run } = table;
  const isEnough = copies >= rotation.groups.length;
  const canBeShorter = by > 0 && run.value - by >= by;
  const left = seconds(run.value - by);
  return [
    ...(isEnough
      ? []
      : [{ change: { kind: 'another copy', table: mark }, changed: withCopy(rotation, mark) } as const]),
    ...(canBeShorter
      ? [
          {
            change: { kind: 'shorter', table: mark, by },
            changed: withTable(rotation, mark, {
              run: { ...times<Seconds>(run, left / run.value), value: left },
            }),
          } as const,
        ]
      : []),
  ];
}

const withTable = (rotation: Rotation, mark: string, change: Partial<RotationTable>): Rotation => ({
  ...rotation,
  tables: rotation.tables.map((table) => (table.mark === mark ? { ...table, ...change } : table)),
});

/** One more of a table; a wish that tells how many there are tells one more. */
function withCopy(rotation: Rotation, mark: string): Rotation {
  const copies = (rotation.tables.find((table) => table.mark === mark)?.copies ?? 0) + 1;
  return {
    ...withTable(rotation, mark, { copies }),
    wishes: rotation.wishes.map((wish) =>
      wish.kind === 'copies' && wish.table === mark ? { ...wish, copies: wish.copies + 1 } : wish,
    ),
  };
}

function figuresOf(rotation: Rotation, timetable: Timetable, asked: ChanceAsked): Figures {
  const { allDone, waits } = chanceToFinish(rotation, timetable, asked);
  return {
    byTheBell: allDone.share,
    ends: timetable.ends,
    waiting: seconds(waits.reduce((sum, { expected }) => sum + expected, 0)),
    leftOut: timetable.leftOut.length,
  };
}

/** Less than 0 where the first one is better. */
const ranking =
  (tolerance: number) =>
  (a: Figures, b: Figures): number =>
    a.leftOut - b.leftOut ||
    Math.round(b.byTheBell / tolerance) - Math.round(a.byTheBell / tolerance) ||
    a.ends - b.ends ||
    Math.round(a.waiting / MINUTE) - Math.round(b.waiting / MINUTE);
