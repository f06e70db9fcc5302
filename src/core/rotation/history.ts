import { type Seconds, seconds } from '../quantities/brands.ts';
import type { Rotation } from './rotation.ts';
import type { Stay } from './timetable.ts';
import type { Wish } from './wish.ts';

/** How a period has gone so far, and what is otherwise from now on. */
export interface History {
  /** Visits that are over, and those that run. */
  readonly done: readonly DoneVisit[];
  readonly changes: readonly PeriodChange[];
}

export interface DoneVisit {
  readonly group: string;
  readonly table: string;
  readonly copy: number;
  readonly from: Seconds;
  /** `null`: still there. */
  readonly to: Seconds | null;
}

export type PeriodChange =
  /** Comes only then. */
  | { readonly kind: 'late'; readonly group: string; readonly until: Seconds }
  /** Can't be used from now on, or until then; one copy of it, or (`null`) all of them. */
  | {
      readonly kind: 'broken';
      readonly table: string;
      readonly copy: number | null;
      readonly until: Seconds | null;
    }
  /** Everything stops: who is at a table goes on with it afterwards. */
  | { readonly kind: 'break'; readonly from: Seconds; readonly until: Seconds }
  | { readonly kind: 'adult gone'; readonly adult: string }
  | { readonly kind: 'bell'; readonly bell: Seconds };

/**
 * What a rotation is from now on. A copy that broke is gone for the rest of the period, a whole table until it is
 * mended.
 *
 * @example
 * const rotation = { groups: [], tables: [], adults: [], walk: seconds(30), begins: seconds(0), bell: seconds(2400), breaks: [], way: 'free', wishes: [] };
 * changedRotation(rotation, [{ kind: 'bell', bell: seconds(1800) }], seconds(600)).bell // => 1800
 */
export const changedRotation = (
  rotation: Rotation,
  changes: readonly PeriodChange[],
  now: Seconds,
): Rotation => changes.reduce((changed, change) => changedBy(changed, change, now), rotation);

function changedBy(rotation: Rotation, change: PeriodChange, now: Seconds): Rotation {
  switch (change.kind) {
    case 'late': {
      const groups = rotation.groups.map((group) =>
        group.label === change.group ? { ...group, arrives: later(group.arrives, change.until) } : group,
      );
      return { ...rotation, groups };
    }
    case 'broken':
      return change.copy === null
        ? closedFrom(rotation, change.table, now, change.until)
        : fewerBy(rotation, change.table);
    case 'break': {
      const breaks = [...rotation.breaks, { from: change.from, to: change.until }];
      return { ...rotation, breaks: breaks.sort((a, b) => a.from - b.from) };
    }
    case 'adult gone':
      return { ...rotation, adults: rotation.adults.filter(({ label }) => label !== change.adult) };
    case 'bell':
      return { ...rotation, bell: change.bell };
  }
}

const later = (one: Seconds, other: Seconds): Seconds => seconds(Math.max(one, other));

function closedFrom(rotation: Rotation, table: string, from: Seconds, to: Seconds | null): Rotation {
  const wish: Wish = { kind: 'closed', table, from, to, id: `broken ${table}`, path: null };
  return { ...rotation, wishes: [...rotation.wishes, wish] };
}

function fewerBy(rotation: Rotation, mark: string): Rotation {
  return {
    ...rotation,
    tables: rotation.tables.map((table) =>
      table.mark === mark ? { ...table, copies: Math.max(0, table.copies - 1) } : table,
    ),
    wishes: rotation.wishes.map((wish) =>
      wish.kind === 'copies' && wish.table === mark
        ? { ...wish, copies: Math.max(0, wish.copies - 1) }
        : wish,
    ),
  };
}

/** What was done, what runs and until when, and what was broken off because its table can't be used. */
export interface SoFar {
  readonly over: readonly Stay[];
  readonly running: readonly Stay[];
  readonly brokenOff: readonly DoneVisit[];
}

/**
 * Sorts a history. What runs ends when its table's time is over, breaks not counted, but not before now. `rotation` is
 * the one from now on.
 */
export function soFar(rotation: Rotation, { done, changes }: History, now: Seconds): SoFar {
  const isBroken = ({ table, copy }: DoneVisit): boolean =>
    changes.some(
      (change) =>
        change.kind === 'broken' && change.table === table && (change.copy === null || change.copy === copy),
    );
  const stay = (visit: DoneVisit, to: Seconds): Stay => ({ ...visit, to, round: null });
  const runs = done.filter(({ to }) => to === null || to > now);
  return {
    over: done.flatMap((visit) => (visit.to === null || visit.to > now ? [] : [stay(visit, visit.to)])),
    running: runs
      .filter((visit) => !isBroken(visit))
      .map((visit) => stay(visit, visit.to ?? endOfRun(rotation, visit, now))),
    brokenOff: runs.filter(isBroken),
  };
}

function endOfRun({ tables, breaks }: Rotation, { table, from }: DoneVisit, now: Seconds): Seconds {
  let end: number = from + (tables.find(({ mark }) => mark === table)?.run.value ?? 0);
  for (const pause of breaks)
    if (pause.to > from && pause.from < end) end += pause.to - Math.max(pause.from, from);
  return seconds(Math.max(now, end));
}
