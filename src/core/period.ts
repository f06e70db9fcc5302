import type { Diagnostic } from './diagnostics/diagnostic.ts';
import { classesOf } from './files/class-plan.ts';
import { type AskedPeriod, askedPeriod, type BuiltTable } from './files/class-rotation.ts';
import { plainDay } from './files/day-words.ts';
import type { PeriodChanges } from './files/period-changes.ts';
import type { Prepared } from './prepare.ts';
import { arrange } from './rotation/arrange.ts';
import type { Arrangement } from './rotation/arrangement.ts';
import { betweenClasses } from './rotation/between-classes.ts';
import { chanceToFinish } from './rotation/chance-to-finish.ts';
import type { ClassPeriod, Period, PeriodChance } from './rotation/class-period.ts';
import type { SearchEffort } from './rotation/shop.ts';

/** How hard to look and what to tell beside the plan; the same options give the same period everywhere. */
export interface PeriodOptions {
  readonly effort: SearchEffort;
}

/** Enough for twelve groups at nine tables within a second or two. */
export const usualEffort: SearchEffort = { seed: 1, steps: 30_000 };

/**
 * Three files -> what the period of each class asks -> who goes where and when -> how likely all are done by the
 * bell -> what to do while waiting -> what would gain most. `null` where there is no activity to go by.
 */
export function planPeriod(
  prepared: Prepared,
  changes: PeriodChanges = {},
  options: PeriodOptions = { effort: usualEffort },
): Period | null {
  const asked = askedPeriods(prepared, changes);
  if (asked === null) return null;
  const classes = asked.map((each) => planned(each, options));
  return { classes, between: betweenClasses(classes) };
}

/** What the files ask of each class's period, and what nobody said. */
export function askedPeriods(prepared: Prepared, changes: PeriodChanges): readonly AskedPeriod[] | null {
  const { activity, visit } = prepared;
  if (activity === null) return null;
  const built = prepared.tables.map(
    (table): BuiltTable => ({ ...table, lost: lostAt(table.mark, prepared.diagnostics) }),
  );
  const day = visit?.day ?? plainDay;
  return classesOf(visit, day).map((ofClass) => askedPeriod(activity, ofClass, built, changes));
}

function planned(asked: AskedPeriod, { effort }: PeriodOptions): ClassPeriod {
  const outcome = arrange(asked.rotation, effort);
  return {
    ...asked,
    outcome,
    chance: chanceOf(asked, outcome, effort.seed),
    waits: [],
    gains: [],
    underWay: null,
  };
}

function chanceOf({ rotation }: AskedPeriod, outcome: Arrangement, seed: number): PeriodChance | null {
  if (outcome.kind !== 'timetable') return null;
  const { timetable } = outcome;
  const inTime = chanceToFinish(rotation, timetable, { seed, signal: 'slowest' });
  const byTheClock =
    timetable.way === 'free' ? null : chanceToFinish(rotation, timetable, { seed, signal: 'planned' });
  return {
    byTheBell: inTime.allDone.share,
    ends: inTime.ends,
    waits: inTime.waits,
    byTheClock:
      byTheClock === null ? null : { unfinished: byTheClock.unfinished, stays: byTheClock.stays.length },
  };
}

/** Marks of the parts that a table can't be built without and that are missing today. */
const lostAt = (table: string, diagnostics: readonly Diagnostic[]): readonly string[] => [
  ...new Set(
    diagnostics.flatMap(({ code, facts, at }): readonly string[] => {
      if (code === 'no-part-fits' && facts.table === table && Array.isArray(facts.lost)) return facts.lost;
      const isHere = at.path[0] === 'roles' && at.path[1] === table;
      return code === 'part-missing-today' && isHere && typeof facts.part === 'string' ? [facts.part] : [];
    }),
  ),
];
