import { type Seconds, seconds } from '../../core/quantities/brands.ts';
import type { ClassPeriod } from '../../core/rotation/class-period.ts';
import type { DoneVisit } from '../../core/rotation/history.ts';
import { staysOf, timetableOf } from '../../documents/text/period-words.ts';
import type { LoggedStay } from '../../store/visit-log.ts';
import { intoThePeriod, type VisitClock } from './visit-clock.ts';

/** Rounds that are over, by the signals that were given until then; 0 where tables free up. */
export function roundsOver(period: ClassPeriod, clock: VisitClock, until = Number.POSITIVE_INFINITY): number {
  const rounds = timetableOf(period)?.rounds ?? null;
  if (rounds === null || clock.begun === null) return 0;
  return Math.min(rounds.length, clock.signals.filter(({ when }) => when <= until).length);
}

/** What has been done by a moment: as groups said themselves, else as the plan and the signals have it. */
export function doneBy(
  period: ClassPeriod,
  clock: VisitClock,
  logged: readonly LoggedStay[],
  when: number,
  now: Seconds,
): readonly DoneVisit[] {
  const own = saidBy(period, clock, logged, when);
  const over = roundsOver(period, clock, when);
  const late = lateBy(period, clock, when, over);
  const byPlan = staysOf(period).flatMap(
    ({ group, table, copy, from, to, round, isDone }): readonly DoneVisit[] => {
      if (own.some((stay) => stay.group === group && stay.table === table)) return [];
      const stay = { group, table, copy, from, to };
      if (isDone) return [stay];
      if (round === null) {
        const isSilent = !own.some((each) => each.group === group);
        return isSilent && from < now ? [{ ...stay, to: to > now ? null : to }] : [];
      }
      if (round <= over) return [{ ...stay, from: earlier(from, now), to: earlier(to, now) }];
      // The introduction is over by the first signal at the latest.
      const runs = round === over + 1 && (over > 0 || from < now);
      return runs && !isElsewhere(own, group) ? [{ ...stay, from: earlier(from + late, now), to: null }] : [];
    },
  );
  return [...own, ...byPlan].sort((a, b) => a.from - b.from || (a.group < b.group ? -1 : 1));
}

const earlier = (time: number, now: Seconds): Seconds => seconds(Math.min(time, now));

/** A group is at one table at a time: what it said counts. */
const isElsewhere = (own: readonly DoneVisit[], group: string): boolean =>
  own.some((stay) => stay.group === group && stay.to === null);

/** Each table once; where a group was twice, the last time counts. */
function saidBy(
  { rotation, ...period }: ClassPeriod,
  clock: VisitClock,
  logged: readonly LoggedStay[],
  when: number,
): readonly DoneVisit[] {
  const planned = staysOf({ rotation, ...period });
  const all = new Map<string, DoneVisit>();
  for (const { group, table, from, to } of logged) {
    const isKnown =
      rotation.groups.some(({ label }) => label === group) &&
      rotation.tables.some(({ mark }) => mark === table);
    if (!isKnown || from > when) continue;
    const copy = planned.find((stay) => stay.group === group && stay.table === table)?.copy ?? 1;
    const ended = to !== null && to <= when ? intoThePeriod(clock, to) : null;
    const began = intoThePeriod(clock, from) ?? seconds(0);
    all.set(JSON.stringify([group, table]), { group, table, copy, from: began, to: ended });
  }
  return [...all.values()];
}

/** How much later than planned the last signal was. */
function lateBy(period: ClassPeriod, clock: VisitClock, when: number, over: number): number {
  const planned = timetableOf(period)?.rounds?.[over - 1]?.to;
  const given = clock.signals.filter((signal) => signal.when <= when).at(-1);
  if (planned === undefined || given === undefined) return 0;
  return Math.max(0, (intoThePeriod(clock, given.when) ?? 0) - planned);
}
