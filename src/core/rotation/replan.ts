import { type Seconds, seconds } from '../quantities/brands.ts';
import type { Shortage, UnknownReason } from './arrangement.ts';
import { copiesTaken } from './copies-taken.ts';
import { changedRotation, type DoneVisit, type History, type SoFar, soFar } from './history.ts';
import { withVisits } from './leave-out.ts';
import { lossesByNumber } from './loss-numbers.ts';
import type { LossProblem } from './loss-room.ts';
import { changedCells, type NearestPlan, nearestRounds } from './nearest-rounds.ts';
import { anyRoutes, nearestRoutes } from './nearest-routes.ts';
import { type PlanAnswer, searchPlan } from './plan-search.ts';
import { plannedStays, roundsOf, staysInOrder } from './planned-stays.ts';
import { putBack } from './put-back.ts';
import type { Rotation } from './rotation.ts';
import type { GroupAtTable } from './round-chart.ts';
import type { SearchEffort } from './shop.ts';
import { standsFor } from './stands-for.ts';
import { roundOf, type StillToDo, stillToDo } from './still-to-do.ts';
import { bearersOf } from './time-room.ts';
import type { LeftOut, Stay, Timetable } from './timetable.ts';
import { distinct, visitsOf, wantedVisits } from './visits-wished.ts';
import { waitsBetween } from './waits-between.ts';

/** What became of a period that is planned anew while it runs. */
export type Replanned =
  | {
      readonly kind: 'timetable';
      /** The whole period: what was done as it was done, then the plan. */
      readonly timetable: Timetable;
      /** What holds from now on: tables closed, groups late, adults gone. */
      readonly rotation: Rotation;
      /** In how many places it differs from the plan that stood. */
      readonly changes: number;
      /** `search`: no plan that leaves out as little has fewer changes, and with as many none ends sooner. */
      readonly proof: 'search' | 'none';
      /** Broken off with their table. */
      readonly brokenOff: readonly DoneVisit[];
      /** Visits of the plan that stood for which there is no time any more; those at a table that is closed are not counted. */
      readonly shortage: Shortage | null;
    }
  | { readonly kind: 'unknown'; readonly why: UnknownReason };

/**
 * The plan from now on. Nobody repeats a table; what runs is finished where it is, unless its table is broken. As
 * few visits as can be are lost, then the plan changes in as few places as can be, then it ends as soon as can be.
 * `timetable` is the plan that stood, `rotation` what was asked of it.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * import { arrange } from './arrange.ts';
 * const table = (mark) => ({ mark, run: exactly(360), reset: exactly(30), copies: 1, needsAdult: false, mayDo: false, beside: [] });
 * const group = (label) => ({ label, pupils: 4, arrives: 0 });
 * const rotation = { groups: [group('A'), group('B')], tables: [table('1'), table('2')], adults: [], walk: 30,
 *   begins: 0, bell: 1200, breaks: [], way: 'signal', wishes: [] };
 * const { timetable } = arrange(rotation, { seed: 1, steps: 1000 });
 * const done = timetable.stays.filter(({ round }) => round === 1).map((stay) => ({ ...stay, to: 400 }));
 * replan(rotation, timetable, { done, changes: [] }, 410, { seed: 1, steps: 1000 }).timetable.ends // => 790
 */
export function replan(
  rotation: Rotation,
  timetable: Timetable,
  history: History,
  now: Seconds,
  effort: SearchEffort,
): Replanned {
  const changed = changedRotation(rotation, history.changes, now);
  const far = soFar(changed, history, now);
  const still = stillToDo(changed, timetable, far, now);
  const nearest = nearestPlan(still, still.must, effort) ?? nearestPlan(still, [], effort);
  if (nearest === null) return { kind: 'unknown', why: 'effort' };
  const planned = replannedTimetable(rotation, changed, timetable, far, still, nearest, now);
  return {
    kind: 'timetable',
    timetable: planned,
    rotation: changed,
    changes: nearest.changes,
    proof: nearest.isSure ? 'search' : 'none',
    brokenOff: far.brokenOff,
    shortage:
      nearest.leftOut.length === 0
        ? null
        : { by: null, visits: nearest.leftOut.length, proof: nearest.isSure ? 'search' : 'none' },
  };
}

/** Fewest lost, then fewest changes, then the soonest end; `null` where nothing was found. */
function nearestPlan(
  still: StillToDo,
  must: readonly GroupAtTable[],
  effort: SearchEffort,
): NearestPlan | null {
  const { asked, rotation } = still;
  const bell = asked.bell ?? rotation.bell;
  const problem = {
    asked,
    must,
    mayDo: rotation.tables.map(({ mayDo }) => mayDo),
    bearers: bearersOf(asked, bell),
  };
  const each = { seed: effort.seed, steps: Math.ceil(effort.steps / 10) };
  let isSure = true;
  let numbers = MOST_NUMBERS;
  for (const { sets, isAll } of lossesByNumber(problem, bell)) {
    const found =
      asked.way === 'signal' ? nearestRounds(still, sets, each) : nearestRoutes(still, sets, each);
    isSure = isSure && isAll;
    if (found.kind === 'nearest') return { ...found.nearest, isSure: isSure && found.nearest.isSure };
    isSure = isSure && found.isSure;
    numbers -= isSure ? 0 : 1;
    if (numbers <= 0) break;
  }
  return somePlan(still, problem, each);
}

/** A plan that is good enough where the best was not found: visits are put in as they stood until no more fit. */
function somePlan(still: StillToDo, problem: LossProblem, effort: SearchEffort): NearestPlan | null {
  const { asked, routes } = still;
  const aim = { bell: asked.bell, standing: null, isAny: true };
  const planOf = (visits: readonly GroupAtTable[]): PlanAnswer =>
    searchPlan(withVisits(asked, visits), aim, effort);
  const place = ({ group, table }: GroupAtTable): number => routes[group]?.indexOf(table) ?? -1;
  const inOrder = (visits: readonly GroupAtTable[]): readonly GroupAtTable[] =>
    [...visits].sort((a, b) => place(a) - place(b));
  const lean = putBack(problem, planOf, inOrder);
  if (lean === null) return null;
  if (asked.way === 'free') return anyRoutes(still, lean.leftOut, effort);
  const near = nearestRounds(still, [lean.leftOut], effort);
  if (near.kind === 'nearest') return { ...near.nearest, isSure: false };
  return { ...lean, changes: changedCells(still, lean.plan), isSure: false };
}

/** Numbers of lost visits that are tried once it is no longer sure that fewer won't do. */
const MOST_NUMBERS = 2;

function replannedTimetable(
  rotation: Rotation,
  changed: Rotation,
  standing: Timetable,
  { over, running }: SoFar,
  still: StillToDo,
  { plan }: NearestPlan,
  now: Seconds,
): Timetable {
  const settled = [...over, ...running].map((stay) => ({ ...stay, round: roundOf(standing, stay) }));
  const planned = plannedStays(changed, still.asked, plan, still.roundsBegun);
  const stays = staysInOrder(changed, [...settled, ...copiesTaken(changed, planned, settled)]);
  const before = standing.stands
    .filter(({ from }) => from < now)
    .map((stand) => ({ ...stand, to: seconds(Math.min(stand.to, now)) }));
  const last = plan.visits.length === 0 && settled.length > 0 ? 0 : plan.end;
  const ends = seconds(Math.max(last, ...settled.map(({ to }) => to)));
  return {
    way: changed.way,
    stays,
    rounds:
      standing.rounds === null
        ? null
        : [...roundsBegun(standing, settled, still.roundsBegun), ...(roundsOf(plan) ?? [])],
    waits: waitsBetween(changed, stays),
    stands: standsFor(changed, stays, before, now),
    leftOut: notDone(rotation, stays),
    ends,
    bound: seconds(Math.min(ends, Math.max(Math.min(last, plan.bound), ...settled.map(({ to }) => to)))),
    proof: plan.proof,
  };
}

/** As they were: from the first who began to the last who was done. */
function roundsBegun(
  { rounds }: Timetable,
  settled: readonly Stay[],
  begun: number,
): NonNullable<Timetable['rounds']> {
  return (rounds ?? []).slice(0, begun).map((round, n) => {
    const own = settled.filter((stay) => stay.round === n + 1);
    if (own.length === 0) return round;
    return {
      from: seconds(Math.min(...own.map(({ from }) => from))),
      to: seconds(Math.max(...own.map(({ to }) => to))),
    };
  });
}

function notDone(rotation: Rotation, stays: readonly Stay[]): readonly LeftOut[] {
  const wanted = wantedVisits(rotation);
  const must = visitsOf(rotation, rotation.wishes, wanted, false);
  return distinct([...wanted, ...must])
    .map(({ group, table }) => ({
      group: rotation.groups[group]?.label ?? '',
      table: rotation.tables[table]?.mark ?? '',
    }))
    .filter(({ group, table }) => !stays.some((stay) => stay.group === group && stay.table === table));
}
