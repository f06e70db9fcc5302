import { chanceOf, extraIn, type PeriodOptions } from './period.ts';
import type { Prepared } from './prepare.ts';
import type { Seconds } from './quantities/brands.ts';
import type { ClassPeriod, Period } from './rotation/class-period.ts';
import { extraTasks } from './rotation/extra-tasks.ts';
import type { DoneVisit, PeriodChange } from './rotation/history.ts';
import { replan } from './rotation/replan.ts';
import type { Timetable } from './rotation/timetable.ts';

/** How far a class has come, and what is otherwise from now on. */
export interface PeriodSoFar {
  /** `null` where the visit is of one class. */
  readonly ofClass: string | null;
  readonly now: Seconds;
  /** `null`: as planned. */
  readonly done: readonly DoneVisit[] | null;
  readonly changes: readonly PeriodChange[];
  /** How long the period is, where that is otherwise from now on. */
  readonly lasts?: Seconds;
}

/**
 * The period as planned -> what has been done -> what is left, with the fewest changes. Who did what stays done, nobody
 * repeats a table -> how likely what is left is done by the bell.
 */
export function planOn(
  prepared: Prepared,
  period: Period,
  soFar: PeriodSoFar,
  options: PeriodOptions,
): Period {
  return {
    ...period,
    classes: period.classes.map((each) =>
      each.label === soFar.ofClass ? onward(prepared, each, soFar, options) : each,
    ),
  };
}

function onward(
  prepared: Prepared,
  period: ClassPeriod,
  { now, done, changes, lasts = period.lasts }: PeriodSoFar,
  { effort }: PeriodOptions,
): ClassPeriod {
  if (period.outcome.kind !== 'timetable') return period;
  const standing = period.outcome.timetable;
  const visits = done ?? asPlanned(standing, now);
  const found = replan(period.rotation, standing, { done: visits, changes }, now, effort);
  if (found.kind === 'unknown')
    return { ...period, outcome: found, chance: null, waits: [], gains: [], underWay: null };
  const { timetable, rotation, shortage } = found;
  const notTold = rotation.groups
    .filter(
      ({ label, arrives }) => done !== null && arrives < now && !visits.some(({ group }) => group === label),
    )
    .map(({ label }) => label);
  return {
    ...period,
    lasts,
    rotation,
    closed: [...period.closed, ...brokenTables(changes, now)],
    outcome: { kind: 'timetable', timetable, shortage },
    chance: chanceOf(rotation, timetable, effort.seed, now),
    waits: extraTasks(rotation, timetable, extraIn(prepared)).filter(({ to }) => to > now),
    gains: [],
    underWay: {
      now,
      done: timetable.stays.filter(({ to }) => to <= now),
      changes: found.changes,
      ...(notTold.length === 0 ? {} : { notTold }),
    },
  };
}

/** Where nobody says what has been done, it went as planned. */
const asPlanned = ({ stays }: Timetable, now: Seconds): readonly DoneVisit[] =>
  stays
    .filter(({ from }) => from < now)
    .map(({ group, table, copy, from, to }) => ({ group, table, copy, from, to: to > now ? null : to }));

const brokenTables = (changes: readonly PeriodChange[], now: Seconds): ClassPeriod['closed'] =>
  changes.flatMap((change) =>
    change.kind === 'broken' && change.copy === null
      ? [
          {
            table: change.table,
            because: 'asked',
            parts: [],
            during: { from: now, to: change.until },
          } as const,
        ]
      : [],
  );
