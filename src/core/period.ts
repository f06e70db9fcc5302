import type { Diagnostic } from './diagnostics/diagnostic.ts';
import { classesOf } from './files/class-plan.ts';
import { type AskedPeriod, askedPeriod, type BuiltTable } from './files/class-rotation.ts';
import { plainDay } from './files/day-words.ts';
import type { PeriodChanges } from './files/period-changes.ts';
import type { Prepared } from './prepare.ts';
import { type Seconds, seconds } from './quantities/brands.ts';
import { arrange } from './rotation/arrange.ts';
import type { Arrangement } from './rotation/arrangement.ts';
import { betweenClasses } from './rotation/between-classes.ts';
import { chanceToFinish } from './rotation/chance-to-finish.ts';
import type { ClassPeriod, Period, PeriodChance } from './rotation/class-period.ts';
import { type ExtraTasks, extraTasks } from './rotation/extra-tasks.ts';
import { gains } from './rotation/gain.ts';
import { nothingToPlan } from './rotation/nothing-to-plan.ts';
import type { Rotation } from './rotation/rotation.ts';
import type { SearchEffort } from './rotation/shop.ts';
import type { Timetable } from './rotation/timetable.ts';

/** How hard to look and what to tell beside the plan; the same options give the same period everywhere. */
export interface PeriodOptions {
  readonly effort: SearchEffort;
  /** Whether to try what would gain most: every change to a table is a plan of its own. */
  readonly withGains: boolean;
}

/** A plan for most visits within a second or two. */
export const usualOptions: PeriodOptions = { effort: { seed: 1, steps: 30_000 }, withGains: false };

/** Steps for each of the many plans that are only compared. */
const FEWER_STEPS = 3000;
/** A wait that is worth a task, and by how much a table could be made shorter: common practice, no source. */
const WORTH_A_TASK = seconds(120);
const A_LITTLE_SHORTER = seconds(60);
/** Who reads more than so many? */
const MOST_GAINS = 5;

/**
 * Three files -> what the period of each class asks -> who goes where and when -> how likely all are done by the
 * bell -> what to do while waiting -> what would gain most. `null` where there is no activity to go by.
 */
export function planPeriod(
  prepared: Prepared,
  changes: PeriodChanges = {},
  options: PeriodOptions = usualOptions,
): Period | null {
  const asked = askedPeriods(prepared, changes);
  if (asked === null) return null;
  const extra = extraIn(prepared);
  const classes = asked.map((each) => planned(each, extra, options));
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

function planned(asked: AskedPeriod, extra: ExtraTasks, options: PeriodOptions): ClassPeriod {
  const { rotation } = asked;
  const { effort, withGains } = options;
  const nothing = nothingToPlan(rotation);
  const outcome: Arrangement =
    nothing === null ? arrange(rotation, effort) : { kind: 'unknown', why: nothing };
  const timetable = timetableIn(outcome);
  return {
    ...asked,
    outcome,
    chance: timetable === null ? null : chanceOf(rotation, timetable, effort.seed),
    waits: timetable === null ? [] : extraTasks(rotation, timetable, extra),
    gains: withGains && nothing === null ? gainsOf(rotation, timetable, effort.seed) : [],
    underWay: null,
  };
}

const timetableIn = (outcome: Arrangement): Timetable | null =>
  outcome.kind === 'timetable' ? outcome.timetable : null;

/** What chance does to a plan: of a whole period, or of what is left of it from `now` on. */
export function chanceOf(
  rotation: Rotation,
  timetable: Timetable,
  seed: number,
  now?: Seconds,
): PeriodChance {
  const asked = { seed, ...(now === undefined ? {} : { now }) };
  const inTime = chanceToFinish(rotation, timetable, { ...asked, signal: 'slowest' });
  const byTheClock =
    timetable.way === 'free' ? null : chanceToFinish(rotation, timetable, { ...asked, signal: 'planned' });
  return {
    byTheBell: inTime.allDone.share,
    ends: inTime.ends,
    waits: inTime.waits,
    byTheClock:
      byTheClock === null ? null : { unfinished: byTheClock.unfinished, stays: byTheClock.stays.length },
  };
}

/** What groups do that wait: setups with more to find, then the activity's tasks on paper. */
export function extraIn({ tables, activity }: Prepared): ExtraTasks {
  return {
    least: WORTH_A_TASK,
    setups: tables.flatMap(({ mark, setups }) =>
      setups.filter(({ isExtra }) => isExtra).map(({ setup }) => ({ table: mark, setup: setup.mark })),
    ),
    papers: activity?.period.whileWaiting ?? [],
  };
}

const gainsOf = (rotation: Rotation, timetable: Timetable | null, seed: number): ClassPeriod['gains'] =>
  gains(rotation, timetable, (each) => timetableIn(arrange(each, { seed, steps: FEWER_STEPS })), {
    shorterBy: A_LITTLE_SHORTER,
    chance: { seed, signal: 'slowest' },
  }).slice(0, MOST_GAINS);

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
