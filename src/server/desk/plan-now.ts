import { planPeriod, usualOptions } from '../../core/period.ts';
import { planOn } from '../../core/plan-on.ts';
import type { Prepared } from '../../core/prepare.ts';
import { type Seconds, seconds } from '../../core/quantities/brands.ts';
import type { ClassPeriod } from '../../core/rotation/class-period.ts';
import type { DoneVisit, PeriodChange } from '../../core/rotation/history.ts';
import { timetableOf } from '../../documents/text/period-words.ts';
import type { LoggedStay } from '../../store/visit-log.ts';
import { doneBy, roundsOver } from './done-by.ts';
import type { PlanDecision } from './plan-decisions.ts';
import { intoThePeriod, type VisitClock } from './visit-clock.ts';

/** The plan that stands, the one before it, and where the class is in it. */
export interface PlanNow {
  readonly period: ClassPeriod;
  /** `null` where nothing has been planned anew. */
  readonly before: ClassPeriod | null;
  /** A new plan was asked for and none was found: the one before still stands. */
  readonly isStuck: boolean;
  /** 0 where tables free up. */
  readonly roundsOver: number;
}

/** Plans as decisions come, each reckoned once however often it is asked for. */
export interface Planner {
  readonly first: ClassPeriod;
  now(decisions: readonly PlanDecision[], clock: VisitClock, stays: readonly LoggedStay[]): PlanNow;
}

/** The planner of one class of a visit; `null` where there is nothing to plan. */
export function plannerFor(prepared: Prepared, label: string | null): Planner | null {
  const classes = planPeriod(prepared)?.classes ?? [];
  const first = classes.find((each) => each.label === label) ?? classes[0];
  if (first === undefined) return null;
  const known = new Map<string, ClassPeriod | null>();
  const once = (key: string, plan: () => ClassPeriod | undefined): ClassPeriod | null => {
    const made = known.get(key);
    if (made !== undefined) return made;
    const found = plan();
    const next = found === undefined || timetableOf(found) === null ? null : found;
    known.set(key, next);
    return next;
  };
  return {
    first,
    now: (decisions, clock, stays) => {
      let period = first;
      let before: ClassPeriod | null = null;
      let isStuck = false;
      let key = '';
      for (const [n, { when, what, changes }] of decisions.entries()) {
        const now = intoThePeriod(clock, when);
        const standing = period;
        const isEarly = (at: number | undefined): boolean =>
          at !== undefined && (clock.begun === null || at <= clock.begun);
        let anew: ClassPeriod | null;
        // Before the beginning the whole period is planned anew, once for all that was decided by then.
        if (isEarly(decisions[n + 1]?.when)) continue;
        if (now === null || isEarly(when)) {
          key = JSON.stringify([key, changes]);
          anew = once(key, () =>
            planPeriod(prepared, changes)?.classes.find((each) => each.label === first.label),
          );
        } else {
          const done = doneBy(standing, clock, stays, when, now);
          key = JSON.stringify([key, what, now, done]);
          anew = once(key, () => planFrom(prepared, standing, { first, what, now, done }));
        }
        isStuck = anew === null;
        if (anew === null) continue;
        before = standing;
        period = anew;
      }
      return { period, before, isStuck, roundsOver: roundsOver(period, clock) };
    },
  };
}

interface FromNow {
  readonly first: ClassPeriod;
  readonly what: PlanDecision['what'];
  readonly now: Seconds;
  readonly done: readonly DoneVisit[];
}

/** What is left of the period, with as few changes as can be. */
function planFrom(prepared: Prepared, standing: ClassPeriod, { first, what, now, done }: FromNow) {
  const changes: readonly PeriodChange[] = changesOf(what);
  const stood = what.kind === 'opened' ? withTable(standing, first, what.table) : standing;
  const soFar = { ofClass: standing.label, now, done, changes };
  return planOn(prepared, { classes: [stood], between: [] }, soFar, usualOptions).classes[0];
}

function changesOf(what: PlanDecision['what']): readonly PeriodChange[] {
  switch (what.kind) {
    case 'closed':
      return [{ kind: 'broken', table: what.table, copy: null, until: null }];
    case 'late':
      return [{ kind: 'late', group: what.group, until: seconds(Math.round(60 * what.minutes)) }];
    case 'opened':
      return [];
  }
}

/** A table is open again as far as the files have it open. */
const withTable = (standing: ClassPeriod, first: ClassPeriod, table: string): ClassPeriod => ({
  ...standing,
  closed: standing.closed.filter(
    (each) => each.table !== table || first.closed.some((one) => one.table === table),
  ),
  rotation: {
    ...standing.rotation,
    wishes: standing.rotation.wishes.filter(
      (wish) =>
        wish.kind !== 'closed' ||
        wish.table !== table ||
        first.rotation.wishes.some((one) => one.kind === 'closed' && one.table === table),
    ),
  },
});
