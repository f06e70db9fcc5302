import { type Seconds, seconds } from '../quantities/brands.ts';
import { assumedReset, assumedStay, assumedTimes, groupTime } from '../rotation/assumed-times.ts';
import type { Assumption, ClassPeriod, ClosedTable } from '../rotation/class-period.ts';
import { GROUP_SIZE, sizesOf } from '../rotation/groups-of.ts';
import type { Adult, Break, Rotation, RotationGroup, RotationTable } from '../rotation/rotation.ts';
import { timeFromVisits } from '../rotation/times-from-visits.ts';
import type { Wish } from '../rotation/wish.ts';
import type { Activity, ActivityTable } from './activity.ts';
import { type ClassOfDay, stretchOf } from './class-plan.ts';
import { groupCount, lettersOf } from './group-words.ts';
import type { LateGroup, PeriodChanges } from './period-changes.ts';
import { arrivalsOf, wishesOf } from './wishes-of.ts';

/** A table as it was prepared: which of its setups can be built today. */
export interface BuiltTable {
  readonly mark: string;
  readonly setups: readonly { readonly isExtra: boolean }[];
  readonly notPrepared: readonly string[];
  /** Marks of parts that are not there and without which nothing on it can be built. */
  readonly lost: readonly string[];
}

/** What a class's period asks, ready to be arranged, with everything that nobody said told as assumed. */
export type AskedPeriod = Pick<
  ClassPeriod,
  | 'label'
  | 'clock'
  | 'lasts'
  | 'introduction'
  | 'talkAtTheEnd'
  | 'pupils'
  | 'rotation'
  | 'closed'
  | 'assumed'
  | 'adultsAreCounted'
  | 'fromPast'
>;

/** Activity, visit and what can be built -> what one class's period asks. */
export function askedPeriod(
  activity: Activity,
  ofClass: ClassOfDay,
  built: readonly BuiltTable[],
  changes: PeriodChanges,
): AskedPeriod {
  const assumed: Assumption[] = [];
  const assume = <T>(said: T | null | undefined, otherwise: T, assumption: Assumption): T => {
    if (said !== null && said !== undefined) return said;
    assumed.push(assumption);
    return otherwise;
  };
  const lasts = assume(
    changes.lasts ?? ofClass.lasts,
    assumedTimes.period,
    lasting('period', assumedTimes.period),
  );
  const inPeriod = { starts: ofClass.starts, lasts };
  const { introduction, talkAtTheEnd, walk } = aroundTables(activity, assume);
  const asWritten = activity.tables.map((table) => tableOf(table, ofClass, built, changes, assume));
  const past = asWritten.flatMap(({ mark, run }) => {
    const times = changes.past?.[mark] ?? [];
    return times.length === 0 ? [] : [{ table: mark, ...timeFromVisits(run, times) }];
  });
  const tables = asWritten.map((table) => {
    const time = past.find((each) => each.table === table.mark)?.time;
    return time === undefined ? table : { ...table, run: time };
  });
  const groups = groupsOf(ofClass, arrivalsOf(ofClass, inPeriod), changes, assume);
  const labels = groups.map(({ label }) => label);
  const closed = closedTables(ofClass, inPeriod, built, changes);
  const adults = adultsOf(ofClass, tables, changes, assume);
  const rotation: Rotation = {
    groups,
    tables: beside(tables, ofClass),
    adults,
    walk,
    begins: introduction,
    bell: seconds(Math.max(introduction, lasts - talkAtTheEnd)),
    breaks: breaksOf(ofClass, inPeriod),
    way: assume(changes.way ?? ofClass.day.move, 'signal', { key: 'period.assumed.signal', facts: {} }),
    wishes: [
      ...wishesOf(ofClass, inPeriod, activity.tables, labels).map((wish) => asAsked(wish, changes)),
      ...notFromVisit(closed),
    ],
  };
  return {
    label: ofClass.label,
    clock: { date: ofClass.visit?.date ?? null, starts: ofClass.starts },
    lasts,
    introduction,
    talkAtTheEnd,
    pupils: ofClass.pupils,
    rotation,
    closed,
    assumed: eachOnce(assumed),
    fromPast: past.map(({ table, time, used, setAside }) => ({
      table,
      takes: time.value,
      used,
      setAside: setAside.length,
    })),
    adultsAreCounted: changes.adults !== undefined || ofClass.day.adults === null,
  };
}

type Assume = <T>(said: T | null | undefined, otherwise: T, assumption: Assumption) => T;

const lasting = (what: string, time: Seconds): Assumption => ({
  key: `period.assumed.${what}`,
  facts: { time: { si: time, dimension: 'time' } },
});

function aroundTables({ period }: Activity, assume: Assume) {
  const whole = (time: { readonly value: Seconds } | null): Seconds | null =>
    time === null ? null : seconds(Math.round(time.value));
  const said = (written: Seconds | null, otherwise: Seconds, what: string): Seconds =>
    assume(written, otherwise, lasting(what, otherwise));
  return {
    introduction: said(whole(period.introduction), assumedTimes.introduction, 'introduction'),
    talkAtTheEnd: said(whole(period.talkAtTheEnd), assumedTimes.talkAtTheEnd, 'talk-at-the-end'),
    walk: said(whole(period.walk), assumedTimes.walk, 'walk'),
  };
}

function tableOf(
  { mark, stay, setups }: ActivityTable,
  { day }: ClassOfDay,
  built: readonly BuiltTable[],
  changes: PeriodChanges,
  assume: Assume,
): RotationTable {
  const there = built.find((each) => each.mark === mark);
  const toRead = there?.setups.filter(({ isExtra }) => !isExtra).length ?? setups.length;
  const takes = assumedStay(mark, toRead);
  const reset = assumedReset(mark);
  const copies = day.copies.find(({ table }) => table === mark)?.copies;
  return {
    mark,
    run: assume(stay.takes === null ? null : groupTime(`${mark}/takes`, stay.takes), takes, {
      key: 'period.assumed.takes',
      facts: { table: mark, time: { si: takes.value, dimension: 'time' }, setups: toRead },
    }),
    reset: assume(
      stay.reset === null ? null : groupTime(`${mark}/reset`, stay.reset),
      reset,
      lasting('reset', reset.value),
    ),
    copies: changes.copies?.[mark] ?? copies ?? 1,
    needsAdult: stay.needsAdult,
    mayDo: stay.mayBeLeftOut,
    beside: [],
  };
}

/** Rows of the room; as the activity lists its tables where the visit shows no room. */
function beside(tables: readonly RotationTable[], { day }: ClassOfDay): readonly RotationTable[] {
  const rows = day.beside?.map((row) => row.tables) ?? [tables.map(({ mark }) => mark)];
  return tables.map((table) => ({
    ...table,
    beside: [
      ...new Set(
        rows.flatMap((row) =>
          row.flatMap((mark, n) =>
            mark === table.mark ? [row[n - 1], row[n + 1]].filter((each) => each !== undefined) : [],
          ),
        ),
      ),
    ],
  }));
}

function groupsOf(
  ofClass: ClassOfDay,
  arrivals: ReadonlyMap<string, Seconds>,
  changes: PeriodChanges,
  assume: Assume,
): readonly RotationGroup[] {
  const { pupils, visit } = ofClass;
  const count = changes.groups ?? ofClass.groups ?? countOf(ofClass, assume);
  const late = new Map(changes.late?.map(({ group, by }: LateGroup) => [group, by]));
  const sizes = pupils === null ? [] : sizesOf(pupils, count);
  return Array.from({ length: count }, (_, n) => {
    const label = visit?.groupLabels[n] ?? lettersOf(n);
    return {
      label,
      pupils: sizes[n] ?? null,
      arrives: late.get(label) ?? arrivals.get(label) ?? seconds(0),
    };
  });
}

/** As many groups as come nearest to the size that is wanted; 6 where nobody says how many pupils there are. */
function countOf({ pupils, day }: ClassOfDay, assume: Assume): number {
  if (pupils === null)
    return assume(null, assumedTimes.groups, {
      key: 'period.assumed.groups',
      facts: { groups: assumedTimes.groups },
    });
  const size = assume(day.groupSize, GROUP_SIZE.wanted, {
    key: 'period.assumed.group-size',
    facts: { pupils: GROUP_SIZE.wanted },
  });
  return groupCount(pupils, size);
}

/** Those whom the visit lists; else as many as it counts, who stand anywhere. */
function adultsOf(
  { visit, day }: ClassOfDay,
  tables: readonly RotationTable[],
  changes: PeriodChanges,
  assume: Assume,
): readonly Adult[] {
  if (changes.adults === undefined && day.adults !== null)
    return day.adults.map(({ label, at }) => ({ label, at }));
  const said = changes.adults ?? visit?.helpers ?? null;
  const isAsked = said !== null || tables.some(({ needsAdult }) => needsAdult);
  const count = isAsked
    ? assume(said, assumedTimes.adults, { key: 'period.assumed.one-adult', facts: {} })
    : 0;
  return Array.from({ length: count }, (_, n) => ({ label: String(n + 1), at: null }));
}

function breaksOf({ day }: ClassOfDay, period: Parameters<typeof stretchOf>[2]): readonly Break[] {
  return day.breaks
    .flatMap(({ at, lasts }): readonly Break[] => {
      const until = { ...at, time: seconds(at.time + lasts) };
      const stretch = stretchOf(at, until, period);
      return stretch === null ? [] : [{ from: stretch.from, to: stretch.to ?? period.lasts }];
    })
    .sort((a, b) => a.from - b.from);
}

/** Tables that nobody is sent to: as the visit says, as somebody asks, or because nothing on them can be built. */
function closedTables(
  { day }: ClassOfDay,
  period: Parameters<typeof stretchOf>[2],
  built: readonly BuiltTable[],
  changes: PeriodChanges,
): readonly ClosedTable[] {
  return [
    ...day.closed.flatMap(({ table, from, until }): readonly ClosedTable[] => {
      const during = stretchOf(from, until, period);
      if (during === null) return [];
      const isWhole = during.from === 0 && during.to === null;
      return [{ table, because: 'visit', parts: [], during: isWhole ? null : during }];
    }),
    ...built
      .filter(({ setups }) => setups.length === 0)
      .map(({ mark, lost }): ClosedTable => ({ table: mark, because: 'parts', parts: lost, during: null })),
    ...(changes.closed ?? []).map(
      (table): ClosedTable => ({ table, because: 'asked', parts: [], during: null }),
    ),
  ];
}

/** A what-if stands in no file. */
function asAsked(wish: Wish, { lasts, adults }: PeriodChanges): Wish {
  if (wish.kind === 'bell' && lasts !== undefined) return { ...wish, path: null, asked: 'minutes' };
  return wish.kind === 'adults' && adults !== undefined ? { ...wish, path: null, asked: 'adults' } : wish;
}

/** What is closed without a word of the visit is a wish all the same, so that a clash can name it. */
const notFromVisit = (closed: readonly ClosedTable[]): readonly Wish[] =>
  closed
    .filter(({ because }) => because !== 'visit')
    .map(({ table, because }) => ({
      kind: 'closed',
      table,
      from: seconds(0),
      to: null,
      id: `closed ${table} ${because}`,
      path: null,
      ...(because === 'asked' ? { asked: 'close' } : {}),
    }));

/** One sentence for all tables that say nothing of their reset. */
function eachOnce(assumed: readonly Assumption[]): readonly Assumption[] {
  const seen = new Set<string>();
  return assumed.filter(({ key, facts }) => {
    const said = JSON.stringify([key, facts]);
    if (seen.has(said)) return false;
    seen.add(said);
    return true;
  });
}
