import { planPeriod } from '../../core/period.ts';
import type { Prepared } from '../../core/prepare.ts';
import { type Seconds, seconds } from '../../core/quantities/brands.ts';
import type { ClassPeriod } from '../../core/rotation/class-period.ts';
import type { Stay } from '../../core/rotation/timetable.ts';
import { staysOf, timetableOf } from '../../documents/text/period-words.ts';
import type { LoggedStay } from '../../store/visit-log.ts';
import { planAnew } from './plan-anew.ts';
import type { PlanDecision } from './plan-decisions.ts';
import { intoThePeriod, type VisitClock } from './visit-clock.ts';

/** The plan that stands, the one before it, and where the class is in it. */
export interface PlanNow {
  readonly period: ClassPeriod;
  /** `null` where nothing has been planned anew. */
  readonly before: ClassPeriod | null;
  /** A new plan was asked for and none was found: the one before still stands. */
  readonly isStuck: boolean;
  /** Rounds of it that are over; -1 while a round of the plan before still runs, 0 where tables free up. */
  readonly roundsOver: number;
}

/** When the round ends that ran when a plan was made anew; `null` where none did. */
export const runningUntil = ({ underWay }: ClassPeriod): Seconds | null => {
  const running = (underWay?.done ?? []).filter(({ to }) => underWay !== null && to > underWay.now);
  return running.length === 0 ? null : seconds(Math.max(...running.map(({ to }) => to)));
};

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
  const known = new Map<string, ClassPeriod>();
  const once = (key: string, plan: () => ClassPeriod): ClassPeriod => {
    const made = known.get(key) ?? plan();
    known.set(key, made);
    return made;
  };
  return {
    first,
    now: (decisions, clock, stays) => {
      let period = first;
      let before: ClassPeriod | null = null;
      let isStuck = false;
      let key = '';
      for (const { when, changes } of decisions) {
        const now = intoThePeriod(clock, when);
        // Before the beginning the whole period is planned anew.
        const isEarly = now === null || clock.begun === null || when <= clock.begun;
        const done = isEarly ? [] : doneBy(period, clock, stays, when, now);
        key = JSON.stringify([key, changes, isEarly ? null : [now, done]]);
        const standing = period;
        const anew = once(key, () =>
          isEarly
            ? (planPeriod(prepared, changes)?.classes.find((each) => each.label === first.label) ?? first)
            : planAnew(prepared, standing, changes, { now, done }),
        );
        isStuck = timetableOf(anew) === null;
        if (isStuck) continue;
        before = standing;
        period = anew;
      }
      return { period, before, isStuck, roundsOver: roundsOver(period, clock) };
    },
  };
}

/** Rounds of the plan that are over, by the signals that were given. */
export function roundsOver(period: ClassPeriod, clock: VisitClock, until = Number.POSITIVE_INFINITY): number {
  const rounds = timetableOf(period)?.rounds ?? null;
  if (rounds === null || clock.begun === null) return 0;
  const { underWay } = period;
  const given = clock.signals.filter(({ when }) => when <= until);
  if (underWay === null) return Math.min(rounds.length, given.length);
  // A plan made in the middle begins with the round after the one that ran then.
  const before = runningUntil(period) === null ? 0 : 1;
  const since = given.filter(({ when }) => (intoThePeriod(clock, when) ?? 0) >= underWay.now).length;
  return Math.min(rounds.length, since - before);
}

/** What has been done by a moment: as logged, else as the plan and the signals have it. */
function doneBy(
  period: ClassPeriod,
  clock: VisitClock,
  logged: readonly LoggedStay[],
  when: number,
  now: Seconds,
): readonly Stay[] {
  const planned = staysOf(period);
  const own = logged
    .filter(({ from }) => from <= when)
    .map(({ group, table, from, to }): Stay => {
      const plan = planned.find((stay) => stay.group === group && stay.table === table);
      const began = intoThePeriod(clock, from) ?? seconds(0);
      const takes = plan === undefined ? 0 : plan.to - plan.from;
      const ended = to !== null && to <= when ? intoThePeriod(clock, to) : null;
      return {
        group,
        table,
        copy: plan?.copy ?? 1,
        from: began,
        to: ended ?? seconds(Math.max(now + 1, began + takes)),
        round: plan?.round ?? null,
      };
    });
  const isLogged = ({ group, table }: Stay): boolean =>
    own.some((stay) => stay.group === group && stay.table === table);
  const over = roundsOver(period, clock, when);
  const byPlan = planned.filter((stay) => {
    if (isLogged(stay)) return false;
    if (stay.isDone) return true;
    if (stay.round === null) return false;
    // The introduction is over by the first signal at the latest.
    return stay.round <= over || (stay.round === over + 1 && (over > 0 || stay.from <= now));
  });
  const late = lateBy(period, clock, when, over);
  return [
    ...own,
    ...byPlan.map(({ isDone, ...stay }) => {
      if (isDone || stay.round === null) return stay;
      return stay.round <= over
        ? { ...stay, to: seconds(Math.min(stay.to, now)) }
        : { ...stay, from: seconds(stay.from + late), to: seconds(stay.to + late) };
    }),
  ].sort((a, b) => a.from - b.from || (a.group < b.group ? -1 : 1));
}

/** How much later than planned the last signal was. */
function lateBy(period: ClassPeriod, clock: VisitClock, when: number, over: number): number {
  const planned = timetableOf(period)?.rounds?.[over - 1]?.to;
  const given = clock.signals.filter((signal) => signal.when <= when).at(-1);
  if (planned === undefined || given === undefined) return 0;
  return Math.max(0, (intoThePeriod(clock, given.when) ?? 0) - planned);
}
