import { seconds } from '../quantities/brands.ts';
import type { Arrangement, Shortage } from './arrangement.ts';
import { type AskedPlan, askedPlan } from './asked-plan.ts';
import { clash, clashes, isOfTime } from './clash.ts';
import { leaveOut, withVisits } from './leave-out.ts';
import type { LeanPlan } from './loss-search.ts';
import { type FoundPlan, type PlanAnswer, searchPlan } from './plan-search.ts';
import type { Rotation } from './rotation.ts';
import type { GroupAtTable } from './round-chart.ts';
import type { SearchEffort } from './shop.ts';
import { bearersOf } from './time-room.ts';
import { timetableOf } from './timetable-of.ts';
import { distinct, visitsOf, wantedVisits } from './visits-wished.ts';
import type { Wish } from './wish.ts';
import { wishesSaid } from './wishes-said.ts';

/**
 * Who goes where and when: the timetable that ends soonest with every visit in it; where the time is short, one
 * with as few left out as can be, shared out fairly; where the wishes can't be kept, the smallest set that clashes.
 * Times are the planned ones; what chance does to them is told apart. Only for want of time is anything left
 * out: wishes that could not be kept in a day either, and what was wished by name and does not fit, are a clash.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = (mark) => ({ mark, run: exactly(360), reset: exactly(30), copies: 1, needsAdult: false, mayDo: false, beside: [] });
 * const group = (label) => ({ label, pupils: 4, arrives: 0 });
 * const rotation = { groups: [group('A'), group('B')], tables: [table('1'), table('2')], adults: [], walk: 30,
 *   begins: 0, bell: 1200, breaks: [], way: 'signal', wishes: [] };
 * arrange(rotation, { seed: 1, steps: 1000 }).timetable.ends // => 750
 */
export function arrange(rotation: Rotation, effort: SearchEffort): Arrangement {
  const { wishes } = wishesSaid(rotation);
  const wanted = wantedVisits(rotation);
  const must = visitsOf(rotation, wishes, wanted, false);
  const asked = askedPlan(rotation, wishes, distinct([...wanted, ...must]));
  const full = searchPlan(asked, { bell: null, standing: null }, effort);
  if (full.kind === 'plan' && isInTime(asked, full)) return whole(rotation, asked, full);
  const inTime = hurried(asked, full, effort);
  if (inTime !== null) return whole(rotation, asked, inTime);
  if (full.kind !== 'plan') {
    const clashing = neverPossible(rotation, asked, wishes, effort) ? clashes(rotation, effort) : null;
    if (clashing !== null) return clashing;
  }
  const least = searchPlan(
    withVisits(asked, must),
    { bell: asked.bell, standing: null, isAny: true },
    effort,
  );
  if (least.kind === 'impossible')
    return clash(rotation, 'must', effort) ?? { kind: 'unknown', why: 'effort' };
  return lean(rotation, asked, must, full, effort);
}

/** What is left of a plan when what does not fit is left out. */
function lean(
  rotation: Rotation,
  asked: AskedPlan,
  must: readonly GroupAtTable[],
  full: PlanAnswer,
  effort: SearchEffort,
): Arrangement {
  const found = leanPlan(rotation, asked, must, effort);
  if (found === null) return { kind: 'unknown', why: 'effort' };
  const { plan, leftOut, proof } = found;
  if (plan.visits.length === 0) {
    const clashing = clash(rotation, 'any', effort);
    if (clashing !== null) return clashing;
  }
  const timetable = timetableOf(rotation, withVisits(asked, remaining(asked, leftOut)), plan, leftOut);
  return {
    kind: 'timetable',
    timetable,
    shortage: { by: shortBy(asked, full), visits: leftOut.length, proof },
  };
}

/** Fewest left out, most fairly; `null` where nothing was found. */
export function leanPlan(
  rotation: Rotation,
  asked: AskedPlan,
  must: readonly GroupAtTable[],
  effort: SearchEffort,
): LeanPlan | null {
  const bell = asked.bell ?? latestOf(asked);
  const problem = {
    asked,
    must,
    mayDo: rotation.tables.map(({ mayDo }) => mayDo),
    bearers: bearersOf(asked, bell),
  };
  const each = { seed: effort.seed, steps: Math.ceil(effort.steps / 30) };
  const planOf = (visits: readonly GroupAtTable[]): PlanAnswer =>
    searchPlan(withVisits(asked, visits), { bell: asked.bell, standing: null, isAny: true }, each);
  const found = leaveOut(problem, bell, alikeBefore(rotation), planOf, effort.seed);
  if (found === null || found.plan.proof !== 'none') return found;
  const again = searchPlan(
    withVisits(asked, remaining(asked, found.leftOut)),
    { bell: asked.bell, standing: null },
    effort,
  );
  return again.kind === 'plan' && again.end <= found.plan.end ? { ...found, plan: again } : found;
}

/** With no bell there is room for everything one after the other, after the last time that is told. */
const latestOf = ({ begins, visits, runs, resets, walk, breaks, away, closed }: AskedPlan): number =>
  [...breaks, ...away, ...closed].reduce(
    (latest, { to }) => (to === Infinity ? latest : Math.max(latest, to)),
    begins,
  ) + visits.reduce((sum, { table }) => sum + (runs[table] as number) + (resets[table] as number) + walk, 0);

const remaining = ({ visits }: AskedPlan, leftOut: readonly GroupAtTable[]): readonly GroupAtTable[] =>
  visits.filter(({ group, table }) => !leftOut.some((each) => each.group === group && each.table === table));

const isInTime = ({ bell }: AskedPlan, { end }: FoundPlan): boolean => bell === null || end <= bell;

/** A plan that is over by the bell, where one found without an eye on it was not and it is not sure that there is none. */
function hurried(asked: AskedPlan, full: PlanAnswer, effort: SearchEffort): FoundPlan | null {
  if (asked.bell === null || full.kind === 'impossible' || full.bound > asked.bell) return null;
  const answer = searchPlan(asked, { bell: asked.bell, standing: null }, effort);
  return answer.kind === 'plan' ? answer : null;
}

/** Whether not even a whole day would do, with every table open and nobody away. */
function neverPossible(
  rotation: Rotation,
  asked: AskedPlan,
  wishes: readonly Wish[],
  effort: SearchEffort,
): boolean {
  const timeless = askedPlan(
    rotation,
    wishes.filter((wish) => !isOfTime(wish)),
    asked.visits,
  );
  return searchPlan(timeless, { bell: null, standing: null, isAny: true }, effort).kind === 'impossible';
}

function whole(rotation: Rotation, asked: AskedPlan, plan: FoundPlan): Arrangement {
  return { kind: 'timetable', timetable: timetableOf(rotation, asked, plan, []), shortage: null };
}

function shortBy({ bell }: AskedPlan, full: PlanAnswer): Shortage['by'] {
  if (bell === null || full.kind === 'impossible' || full.bound <= bell) return null;
  return seconds(full.bound - bell);
}

/** By group: one before it of which nothing else is wished and that comes at the same time; else itself. */
export function alikeBefore({ groups, wishes }: Rotation): readonly number[] {
  const isNamed = (label: string): boolean =>
    wishes.some((wish) => {
      if (wish.kind === 'apart' || wish.kind === 'together') return wish.groups.includes(label);
      return 'group' in wish && wish.group === label;
    });
  return groups.map(({ label, arrives }, group) => {
    const before = groups.findLastIndex(
      (other, n) => n < group && other.arrives === arrives && !isNamed(other.label),
    );
    return before < 0 || isNamed(label) ? group : before;
  });
}
