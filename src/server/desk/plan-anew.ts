import type { PeriodChanges } from '../../core/files/period-changes.ts';
import { askedPeriods, extraIn, usualOptions } from '../../core/period.ts';
import type { Prepared } from '../../core/prepare.ts';
import { type Seconds, seconds } from '../../core/quantities/brands.ts';
import { arrange } from '../../core/rotation/arrange.ts';
import type { ClassPeriod } from '../../core/rotation/class-period.ts';
import { extraTasks } from '../../core/rotation/extra-tasks.ts';
import type { Rotation, RotationGroup } from '../../core/rotation/rotation.ts';
import type { Stay } from '../../core/rotation/timetable.ts';
import type { Wish } from '../../core/rotation/wish.ts';
import { staysOf, timetableOf } from '../../documents/text/period-words.ts';

/** What a plan in the middle of the period goes by. */
export interface UnderWayNow {
  readonly now: Seconds;
  /** At tables before, or there now: nobody does them twice. */
  readonly done: readonly Stay[];
}

/**
 * The rest of a period arranged anew: what was done stays done, whoever is at a table finishes there, and where
 * all move on a signal the round that runs is not cut short.
 */
export function planAnew(
  prepared: Prepared,
  standing: ClassPeriod,
  changes: PeriodChanges,
  { now, done }: UnderWayNow,
): ClassPeriod {
  const asked = (askedPeriods(prepared, changes) ?? []).find(({ label }) => label === standing.label);
  if (asked === undefined) return standing;
  const { rotation } = asked;
  const closed = changes.closed ?? [];
  const isOver = ({ to }: Stay): boolean => to <= now;
  const kept = done.filter((stay) => isOver(stay) || !closed.includes(stay.table));
  const running = kept.filter((stay) => !isOver(stay));
  const begins =
    rotation.way === 'signal' && running.length > 0 ? Math.max(...running.map(({ to }) => to)) : now;
  const from = seconds(Math.max(rotation.begins, Math.min(rotation.bell, begins + rotation.walk)));
  const rest: Rotation = {
    ...rotation,
    begins: from,
    groups: rotation.groups.map((group) => fromNow(group, running, rotation.walk)),
    wishes: [...rotation.wishes.filter((wish) => isOpen(wish, kept)), ...kept.map(notAgain)],
  };
  const outcome = arrange(rest, usualOptions.effort);
  const anew: ClassPeriod = {
    ...standing,
    ...asked,
    outcome,
    chance: null,
    waits: outcome.kind === 'timetable' ? extraTasks(rest, outcome.timetable, extraIn(prepared)) : [],
    gains: [],
    underWay: { now, done: kept, changes: 0 },
  };
  return { ...anew, underWay: { now, done: kept, changes: differing(standing, anew, now) } };
}

/** A group at a table comes from there. */
function fromNow(group: RotationGroup, running: readonly Stay[], walk: Seconds): RotationGroup {
  const at = running.find((stay) => stay.group === group.label);
  return at === undefined ? group : { ...group, arrives: seconds(Math.max(group.arrives, at.to + walk)) };
}

const notAgain = ({ group, table }: Stay, n: number): Wish => ({
  kind: 'skips',
  group,
  table,
  id: `done ${n + 1}`,
  path: null,
});

/** Wishes that are settled by what was done bind nobody any more. */
function isOpen(wish: Wish, done: readonly Stay[]): boolean {
  const did = (table: string, group: string | null): boolean =>
    done.some((stay) => stay.table === table && (group === null || stay.group === group));
  switch (wish.kind) {
    case 'does':
      return !did(wish.table, wish.group);
    case 'before':
      return !did(wish.first, wish.group) && !did(wish.then, wish.group);
    case 'at':
      return !did(wish.table, wish.group);
    case 'first':
      return done.length === 0;
    default:
      return true;
  }
}

/** Stays ahead that the plan before did not have. */
function differing(before: ClassPeriod, anew: ClassPeriod, now: Seconds): number {
  const key = ({ group, table, from }: Stay): string => JSON.stringify([group, table, from]);
  const known = new Set(staysOf(before).map(key));
  return (timetableOf(anew)?.stays ?? []).filter((stay) => stay.from >= now && !known.has(key(stay))).length;
}
