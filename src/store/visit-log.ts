import type { Happening, Stored, Telling, WallNow, WrittenReading } from './entry.ts';
import { withoutRecalled } from './recalled.ts';
import { type Dated, inSaneOrder } from './sane-order.ts';

/** What stands of a visit once all that happened is put in order. Times are milliseconds. */
export interface VisitLog {
  /** In the order they were written. */
  readonly readings: readonly LoggedReading[];
  /** The trial readings on arrival, the last one a setup. */
  readonly arrival: readonly { readonly setup: string; readonly written: string }[];
  readonly stays: readonly LoggedStay[];
  readonly begun: number | null;
  /** Since when all stand still; `null` while it goes on. */
  readonly pausedSince: number | null;
  /** How long it stood still in all before that. */
  readonly paused: number;
  /** Rounds that have ended, and when. */
  readonly signals: readonly { readonly round: number; readonly when: number }[];
  readonly late: Readonly<Record<string, number>>;
  readonly closed: readonly string[];
  readonly telling: Telling;
  /** What the wall of the talk shows; `null` while there is none, or tablets don't follow it. */
  readonly wall: WallNow | null;
  /** Which device writes for a group: the one that took it last. */
  readonly holders: Readonly<Record<string, string>>;
  /** From which device a group was taken, where no other has come for it yet. */
  readonly freed: Readonly<Record<string, string>>;
}

export interface LoggedReading {
  readonly id: string;
  readonly position: number;
  readonly device: string;
  readonly when: number;
  /** As it stands now. */
  readonly reading: WrittenReading;
  /** What it said before it was corrected, oldest first. */
  readonly before: readonly string[];
  readonly isVoid: boolean;
}

export interface LoggedStay {
  readonly group: string;
  readonly table: string;
  readonly from: number;
  /** `null`: still there. */
  readonly to: number | null;
}

const NOTHING: VisitLog = {
  readings: [],
  arrival: [],
  stays: [],
  begun: null,
  pausedSince: null,
  paused: 0,
  signals: [],
  late: {},
  closed: [],
  telling: 'try',
  wall: null,
  holders: {},
  freed: {},
};

/**
 * Entries to what stands. The same entries give the same log in whatever order they came: a
 * correction that arrives before its reading waits for it.
 */
export const visitLog = (entries: readonly Stored[]): VisitLog => {
  const ordered = withoutRecalled(inSaneOrder(entries));
  const ofReadings = ordered.filter(({ stored }) => stored.entry.what.kind === 'reading');
  const others = ordered.filter(({ stored }) => stored.entry.what.kind !== 'reading');
  return others.reduce(withEntry, { ...NOTHING, readings: ofReadings.flatMap(logged) });
};

function logged({ stored: { entry, position }, when }: Dated): readonly LoggedReading[] {
  const { id, device, what } = entry;
  return what.kind === 'reading'
    ? [{ id, position, device, when, reading: what, before: [], isVoid: false }]
    : [];
}

function withEntry(log: VisitLog, dated: Dated): VisitLog {
  const { entry } = dated.stored;
  const { when } = dated;
  const what: Happening = entry.what;
  switch (what.kind) {
    case 'reading':
      return { ...log, readings: [...log.readings, ...logged(dated)] };
    case 'correction':
      return withReading(log, what.of, (each) => ({
        ...each,
        reading: { ...each.reading, written: what.written },
        before: [...each.before, each.reading.written],
      }));
    case 'void':
      return withReading(log, what.of, (each) => ({ ...each, isVoid: true }));
    case 'restore':
      return withReading(log, what.of, (each) => ({ ...each, isVoid: false }));
    case 'arrived': {
      const stay = { group: what.group, table: what.table, from: when, to: null };
      return { ...log, stays: [...ended(log.stays, what.group, null, when), stay] };
    }
    case 'done':
      return { ...log, stays: ended(log.stays, what.group, what.table, when) };
    case 'begun':
      return { ...log, begun: log.begun ?? when };
    case 'signal':
      return log.signals.some(({ round }) => round === what.round)
        ? log
        : { ...log, signals: [...log.signals, { round: what.round, when }] };
    case 'paused':
      return { ...log, pausedSince: log.pausedSince ?? when };
    case 'resumed':
      return log.pausedSince === null
        ? log
        : { ...log, pausedSince: null, paused: log.paused + when - log.pausedSince };
    case 'late':
      return { ...log, late: { ...log.late, [what.group]: what.minutes } };
    case 'closed':
      return { ...log, closed: [...new Set([...log.closed, what.table])] };
    case 'opened':
      return { ...log, closed: log.closed.filter((table) => table !== what.table) };
    case 'arrival': {
      const others = log.arrival.filter(({ setup }) => setup !== what.setup);
      return { ...log, arrival: [...others, { setup: what.setup, written: what.written }] };
    }
    case 'handed':
      return {
        ...log,
        holders: { ...log.holders, [what.group]: entry.device },
        freed: without(log.freed, what.group),
      };
    case 'freed': {
      // Where another device has come for it meanwhile, nothing is to be freed.
      const holder = log.holders[what.group] ?? what.from;
      if (holder !== what.from) return log;
      return {
        ...log,
        holders: without(log.holders, what.group),
        freed: { ...log.freed, [what.group]: what.from },
      };
    }
    case 'recalled':
      return log;
    case 'telling':
      return { ...log, telling: what.much };
    case 'wall':
      return { ...log, wall: what.shows };
  }
}

const without = (those: Readonly<Record<string, string>>, key: string): Readonly<Record<string, string>> =>
  Object.fromEntries(Object.entries(those).filter(([each]) => each !== key));

const withReading = (
  log: VisitLog,
  id: string,
  change: (reading: LoggedReading) => LoggedReading,
): VisitLog => ({ ...log, readings: log.readings.map((each) => (each.id === id ? change(each) : each)) });

/** A group is at one table at a time: where it comes anew it has left the other. */
const ended = (
  stays: readonly LoggedStay[],
  group: string,
  table: string | null,
  when: number,
): readonly LoggedStay[] =>
  stays.map((stay) =>
    stay.group === group && stay.to === null && (table === null || stay.table === table)
      ? { ...stay, to: when }
      : stay,
  );
