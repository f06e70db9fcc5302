import type { Stored } from '../../store/entry.ts';
import type { VisitLog } from '../../store/visit-log.ts';
import type { GroupParts, RouteStop, TeacherGroup } from '../../store/wire.ts';
import type { JudgedReadings } from './judged-readings.ts';
import { stoodStill, type VisitClock } from './visit-clock.ts';

/** What the line of a group on the teacher's page is made from. */
export interface GroupsView {
  readonly log: VisitLog;
  readonly entries: readonly Stored[];
  readonly clock: VisitClock;
  readonly judged: JudgedReadings;
  readonly routes: ReadonlyMap<string, GroupParts['route']>;
  readonly now: number;
}

const MINUTE = 60_000;

/** Who is where, since when, what comes next, and how many of its last readings are to be looked at. */
export function teacherGroup(label: string, view: GroupsView): TeacherGroup {
  const stops = view.routes.get(label)?.stops ?? [];
  const here = stops.find(({ state }) => state === 'here');
  const device = deviceOf(label, view);
  return {
    label,
    table: here?.table ?? null,
    since: here === undefined ? null : sinceOf(label, here, view),
    next: stops.find(({ state }) => state === 'next')?.table ?? null,
    behind: behindOf(here, view),
    device,
    isFreed: view.log.freed[label] !== undefined,
    heard: heardOf(device, view),
    toLookAt: toLookAt(label, view),
  };
}

function sinceOf(label: string, here: RouteStop, { log, clock }: GroupsView): number | null {
  const stay = log.stays.find(
    ({ group, table, to }) => group === label && table === here.table && to === null,
  );
  return stay?.from ?? clock.signals.at(-1)?.when ?? clock.begun;
}

/** Whole minutes that a group is at its table longer than planned. */
function behindOf(here: RouteStop | undefined, { clock, now }: GroupsView): number {
  if (here === undefined || clock.begun === null) return 0;
  const late = now - (clock.begun + stoodStill(clock, now) + here.to);
  return late < MINUTE ? 0 : Math.floor(late / MINUTE) * MINUTE;
}

/** The device that took the group over, else the one that wrote for it last; none where it was taken from that. */
function deviceOf(label: string, { log, entries }: GroupsView): string | null {
  const handed = log.holders[label];
  if (handed !== undefined) return handed;
  if (log.freed[label] !== undefined) return null;
  let last: Stored | null = null;
  for (const stored of entries) {
    const { seat } = stored.entry;
    if (seat.kind === 'group' && seat.group === label && (last === null || stored.position > last.position))
      last = stored;
  }
  return last?.entry.device ?? null;
}

const heardOf = (device: string | null, { entries }: GroupsView): number | null =>
  entries.reduce<number | null>(
    (last, { entry, received }) =>
      device !== null && entry.device === device && (last === null || received > last) ? received : last,
    null,
  );

/** The last reading of each setup alone counts: what was read again since is past. */
function toLookAt(label: string, { log, judged }: GroupsView): number {
  const own = log.readings.filter(({ reading, isVoid }) => reading.group === label && !isVoid);
  const last = new Map(own.map(({ id, reading }) => [reading.setup, id]));
  return [...last.values()].filter((id) => judged.byId.get(id)?.judgement.verdict === 'look again').length;
}
