import { tablesAfterTrials } from '../../core/files/trials-on-arrival.ts';
import { classFor } from '../../core/review.ts';
import { sentence } from '../../documents/sentences/sentence.ts';
import { periodWords } from '../../documents/text/period-words.ts';
import type { Stored } from '../../store/entry.ts';
import { withoutRecalled } from '../../store/recalled.ts';
import { type Dated, inSaneOrder } from '../../store/sane-order.ts';
import { type VisitLog, visitLog } from '../../store/visit-log.ts';
import type {
  ClockPart,
  GroupParts,
  HelperParts,
  TeacherParts,
  TeacherTable,
  WallPart,
} from '../../store/wire.ts';
import { chartPart } from './chart-part.ts';
import { clockPart } from './clock-part.ts';
import type { Audience, SeatParts } from './desk.ts';
import { groupParts } from './group-parts.ts';
import { type Judge, type JudgedReadings, judgeFor } from './judged-readings.ts';
import { planDecisions } from './plan-decisions.ts';
import type { PlanNow } from './plan-now.ts';
import { planPart } from './plan-part.ts';
import { routePart } from './route-part.ts';
import { arrivalRows } from './tables-on-arrival.ts';
import { teacherGroup } from './teacher-groups.ts';
import { teacherTable } from './teacher-table.ts';
import { type ToldAgain, toldAgain } from './told-again.ts';
import { setupsByMark, type VisitAtDesk } from './visit-at-desk.ts';
import { type VisitClock, visitClock } from './visit-clock.ts';
import { wallFor } from './wall-part.ts';

/** What every audience of a visit is shown. */
export type ShownParts = ReadonlyMap<Audience, SeatParts>;

/** From entries to parts: the same entries give the same parts in whatever order and pieces they came. */
export type PartsOfVisit = (entries: readonly Stored[], now: number) => ShownParts;

/** Keeps what was judged and planned between one time and the next; that changes no part, only how long it takes. */
export function partsOfVisit(visit: VisitAtDesk): PartsOfVisit {
  let judges: Judges | null = null;
  const planShown = planParts(visit);
  const wall = wallFor(visit.prepared);
  return (entries, now) => {
    const dated = withoutRecalled(inSaneOrder(entries));
    const log = recent(visitLog(entries));
    const clock = visitClock(dated);
    const faults: string[] = [];
    const guard = guardedBy(faults);
    const plan = planOf(visit, dated, clock, log, guard);
    const arrivals = JSON.stringify(log.arrival);
    const found = judges?.arrivals === arrivals ? judges : judgesFor(visit, log, arrivals);
    judges = found;
    const seen: Seen = {
      visit,
      entries,
      log,
      clock,
      plan,
      now,
      judges: found,
      faults,
      guard,
      clockShown: clockPart(clock, plan, now),
      planShown: planShown(plan),
      wall: (language) =>
        guard(
          () => wall(language, found.tables, entries, log.wall),
          () => null,
        ),
    };
    return shownParts(seen);
  };
}

/** The chart of a plan is drawn once, as long as that plan stands. */
function planParts(visit: VisitAtDesk): (plan: PlanNow | null) => TeacherParts['plan'] {
  let drawn: { readonly of: PlanNow; readonly part: TeacherParts['plan'] } | null = null;
  const isDrawn = ({ period, before, isStuck }: PlanNow): boolean =>
    drawn?.of.period === period && drawn.of.before === before && drawn.of.isStuck === isStuck;
  return (plan) => {
    if (plan === null) return { chart: '', remarks: [] };
    if (drawn !== null && isDrawn(plan)) return drawn.part;
    const part = planPart(periodWords(visit.language, visit.prepared, plan.period), plan, visit);
    drawn = { of: plan, part };
    return part;
  };
}

/** Works something out; where that is a fault of the program it is told, and what else there is takes its place. */
type Guard = <T>(work: () => T, otherwise: () => T) => T;

const guardedBy =
  (faults: string[]): Guard =>
  (work, otherwise) => {
    try {
      return work();
    } catch (fault) {
      const what = fault instanceof Error ? fault.message : String(fault);
      if (!faults.includes(what)) faults.push(what);
      return otherwise();
    }
  };

/** The plan that stands; where another can't be worked out, the one that the files give. */
function planOf(
  { planner }: VisitAtDesk,
  dated: readonly Dated[],
  clock: VisitClock,
  { stays }: VisitLog,
  guard: Guard,
): PlanNow | null {
  if (planner === null) return null;
  return guard(
    () => planner.now(planDecisions(dated), clock, stays),
    () => planner.now([], clock, stays),
  );
}

/** Nobody reads a setup oftener in a period; what is before these is in the journal and on no page. */
const MOST_SHOWN = 6;

/** The last readings of each group at each setup, so that no page grows without end. */
function recent(log: VisitLog): VisitLog {
  const counts = new Map<string, number>();
  const shown = [...log.readings].reverse().filter(({ reading: { group, setup } }) => {
    const key = JSON.stringify([group, setup]);
    const count = (counts.get(key) ?? 0) + 1;
    counts.set(key, count);
    return count <= MOST_SHOWN;
  });
  return { ...log, readings: shown.reverse() };
}

interface Judges {
  readonly arrivals: string;
  readonly tables: VisitAtDesk['prepared']['tables'];
  readonly ofAll: Judge;
  readonly ofGroup: ReadonlyMap<string, Judge>;
  readonly rows: TeacherParts['arrival'];
}

function judgesFor({ prepared, groups, language }: VisitAtDesk, log: VisitLog, arrivals: string): Judges {
  const tables = tablesAfterTrials(prepared.tables, log.arrival);
  const setups = setupsByMark(tables);
  const empty = classFor({ ...prepared, tables });
  return {
    arrivals,
    tables,
    ofAll: judgeFor(empty, setups),
    ofGroup: new Map(groups.map(({ label }) => [label, judgeFor(empty, setups)])),
    rows: arrivalRows(language, prepared, log.arrival),
  };
}

interface Seen {
  readonly visit: VisitAtDesk;
  readonly entries: readonly Stored[];
  readonly log: VisitLog;
  readonly clock: VisitClock;
  readonly plan: PlanNow | null;
  readonly judges: Judges;
  readonly faults: string[];
  readonly guard: Guard;
  readonly now: number;
  readonly clockShown: ClockPart;
  readonly planShown: TeacherParts['plan'];
  readonly wall: (language: VisitAtDesk['language']) => WallPart | null;
}

function shownParts(seen: Seen): ShownParts {
  const { visit, log, judges, guard } = seen;
  const { groups } = visit;
  const own = (label: string) => log.readings.filter(({ reading }) => reading.group === label);
  const told = new Map(
    groups.map(({ label }) => {
      const judge = judges.ofGroup.get(label);
      const nothing = (): ReadonlyMap<string, ToldAgain> => new Map();
      const found = guard(
        () => (judge === undefined ? nothing() : toldAgain(judge, own(label), log.telling)),
        nothing,
      );
      return [label, found] as const;
    }),
  );
  const judged = guard(
    () => judges.ofAll(log.readings),
    (): JudgedReadings => ({ byId: new Map(), findings: [] }),
  );
  const teacher = teacherParts(seen, judged, new Map([...told.values()].flatMap((of) => [...of])));
  return new Map<Audience, SeatParts>([
    ['teacher', teacher],
    ...groups.map(({ label, language }): [Audience, SeatParts] => [
      `group:${label}`,
      groupParts({
        label,
        language,
        title: visit.title,
        clock: seen.clockShown,
        route: routeOf(seen, label, language),
        cards: visit.cards.get(language) ?? {},
        readings: own(label),
        told: told.get(label) ?? new Map(),
        writes: { device: log.holders[label] ?? null, freed: log.freed[label] ?? null },
        wall: seen.wall(language),
      }),
    ]),
    ...judges.tables.flatMap(({ mark }): readonly [Audience, SeatParts][] => {
      const table = teacher[`table/${mark}`];
      return table === undefined ? [] : [[`helper:${mark}`, helperParts(seen, table, mark)]];
    }),
  ]);
}

function routeOf(
  { visit, plan, clock, log }: Seen,
  label: string,
  language: VisitAtDesk['language'],
): GroupParts['route'] {
  if (plan === null) return { stops: [], waiting: null };
  return routePart(periodWords(language, visit.prepared, plan.period), plan, clock, log.stays, label);
}

function teacherParts(
  seen: Seen,
  judged: JudgedReadings,
  told: ReadonlyMap<string, ToldAgain>,
): TeacherParts {
  const { visit, log, plan, judges, clock, entries, now } = seen;
  const { language, opened } = visit;
  const routes = new Map(visit.groups.map(({ label }) => [label, routeOf(seen, label, language)]));
  return {
    clock: seen.clockShown,
    visit: {
      title: visit.title,
      language,
      code: opened.code,
      addresses: opened.addresses,
      telling: log.telling,
      way: plan?.period.rotation.way ?? null,
      isOnWall: log.wall !== null,
    },
    groups: visit.groups.map(({ label }) =>
      teacherGroup(label, { log, entries, clock, judged, routes, now }),
    ),
    plan: seen.planShown,
    arrival: judges.rows,
    chart: chartPart(judges.tables, visit.cards.get(language) ?? {}),
    trouble: [...visit.trouble, ...seen.faults.map((what) => sentence(language, 'live.fault', { what }))],
    ...Object.fromEntries(
      judges.tables.map((table) => [
        `table/${table.mark}`,
        teacherTable(table, {
          language,
          isClosed: log.closed.includes(table.mark) || isClosedInPlan(plan, table.mark),
          readings: log.readings,
          judged,
          told,
        }),
      ]),
    ),
  };
}

const isClosedInPlan = (plan: PlanNow | null, mark: string): boolean =>
  plan?.period.closed.some(({ table, during }) => table === mark && during === null) ?? false;

function helperParts(seen: Seen, table: TeacherTable, mark: string): HelperParts {
  const { visit, clockShown } = seen;
  const { title, language } = visit;
  const routes = visit.groups.map(({ label }) => ({ label, stops: routeOf(seen, label, language).stops }));
  return {
    clock: clockShown,
    visit: { title, language },
    table,
    coming: routes
      .flatMap(({ label, stops }) =>
        stops
          .filter(({ table, state }) => table === mark && state !== 'done')
          .map(({ from, to, state }) => ({ group: label, from, to, isHere: state === 'here' })),
      )
      .sort((a, b) => a.from - b.from),
    card: visit.cards.get(language)?.[mark] ?? { title: '', html: '', setups: [] },
    arrival: seen.judges.rows.filter(({ table: of }) => of === mark),
  };
}
