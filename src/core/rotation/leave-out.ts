import { randomFrom } from '../uncertainty/random.ts';
import type { AskedPlan } from './asked-plan.ts';
import {
  type Listing,
  type LossLevel,
  type LossProblem,
  type LossRoom,
  listLossSets,
  lossRoom,
} from './loss-sets.ts';
import type { FoundPlan, PlanAnswer } from './plan-search.ts';
import type { GroupAtTable } from './round-chart.ts';
import { roundProfiles } from './time-room.ts';

/** The plan of what is left, and what was left out of it. */
export interface LeanPlan {
  readonly plan: FoundPlan;
  readonly leftOut: readonly GroupAtTable[];
  /** `search`: every way to leave out fewer, or to share it out more fairly, was ruled out. */
  readonly proof: 'search' | 'none';
}

/** Looks for a plan of some visits that is over by the bell. */
export type PlanOf = (visits: readonly GroupAtTable[]) => PlanAnswer;

/**
 * What to leave out where the time is short: as few visits as can be at tables that are not left out first, then
 * as few in all, then the most that one group loses as small as can be, then the most that one such table loses. Numbers
 * are tried in that order; for each, sets of visits that no group, table or adult plainly lacks the time for
 * are tried until a plan of the others is found. `alike` names, by group, the group before it that differs in nothing.
 * `null` where none was found.
 */
export function leaveOut(
  problem: LossProblem,
  bell: number,
  alike: readonly number[],
  planOf: PlanOf,
  seed: number,
): LeanPlan | null {
  const rooms = roundProfiles(problem.asked, bell)
    .map((profile) => lossRoom(problem, profile))
    .filter(({ least }) => least < Infinity)
    .sort((a, b) => a.leastOrdinary - b.leastOrdinary || a.least - b.least);
  const search = new LossSearch(problem, rooms, alike, planOf, seed);
  const visits = problem.asked.visits.length;
  const ordinaryVisits = problem.asked.visits.filter(({ table }) => !problem.mayDo[table]).length;
  const least = search.fewest();
  for (let ordinary = least.ordinary; ordinary <= ordinaryVisits; ordinary += 1)
    for (let all = Math.max(least.all, ordinary); all <= visits; all += 1) {
      const found = search.atNumbers(ordinary, all);
      if (found !== null) return found;
      if (search.isSpent) return null;
    }
  return null;
}

/** Sets that are tried with one level in one order; orders of the ways of each group to leave tables out. */
const MOST_TRIED = 40;
const ORDERS = 3;
/** Of one number: plans that are searched for, and searches without an answer, before the next number is tried. */
const MOST_SEARCHED = 300;
const MOST_UNKNOWN = 8;
/** Searches without an answer in all. */
const MOST_UNKNOWN_IN_ALL = 80;

class LossSearch {
  isSpent = false;
  private isSure = true;
  private searched = 0;
  private unknown = 0;
  private unknownInAll = 0;
  private readonly tried = new Map<string, FoundPlan | null>();
  private readonly problem: LossProblem;
  private readonly rooms: readonly LossRoom[];
  private readonly alike: readonly number[];
  private readonly planOf: PlanOf;
  private readonly seed: number;

  constructor(
    problem: LossProblem,
    rooms: readonly LossRoom[],
    alike: readonly number[],
    planOf: PlanOf,
    seed: number,
  ) {
    this.problem = problem;
    this.rooms = rooms;
    this.alike = alike;
    this.planOf = planOf;
    this.seed = seed;
  }

  fewest(): { readonly ordinary: number; readonly all: number } {
    return {
      ordinary: Math.min(...this.rooms.map(({ leastOrdinary }) => leastOrdinary)),
      all: Math.min(...this.rooms.map(({ least }) => least)),
    };
  }

  /** With so many left out: fairer ways first. */
  atNumbers(ordinary: number, all: number): LeanPlan | null {
    const { asked } = this.problem;
    const tables = asked.runs.length;
    this.searched = 0;
    this.unknown = 0;
    const anyLevel = { ordinary, all, ofGroup: tables, ofTable: asked.groups };
    if (!this.hasSets(anyLevel)) return null;
    for (let ofGroup = Math.ceil(all / Math.max(1, asked.groups)); ofGroup <= tables; ofGroup += 1) {
      if (!this.hasSets({ ...anyLevel, ofGroup })) continue;
      const least = Math.ceil(ordinary / Math.max(1, tables));
      for (let ofTable = least; ofTable <= asked.groups; ofTable += 1) {
        const found = this.atLevel({ ordinary, all, ofGroup, ofTable });
        if (found !== null || this.isTired()) return found;
      }
    }
    return null;
  }

  /** Enough was tried with this number; what was not is left open. */
  private isTired(): boolean {
    const isTired = this.isSpent || this.searched >= MOST_SEARCHED || this.unknown >= MOST_UNKNOWN;
    if (isTired) this.isSure = false;
    return isTired;
  }

  private hasSets(level: LossLevel): boolean {
    return this.rooms.some((room) => this.list(room, level, null, () => true) !== 'all');
  }

  private atLevel(level: LossLevel): LeanPlan | null {
    let isAll = true;
    for (let order = 0; order < (isAll && order > 0 ? 0 : ORDERS); order += 1)
      for (const room of this.rooms) {
        let found: LeanPlan | null = null;
        let left = MOST_TRIED;
        const listing = this.list(room, level, order === 0 ? null : order, (lost) => {
          found = this.planWithout(lost);
          left -= 1;
          return found !== null || left <= 0 || this.isTired();
        });
        if (found !== null || this.isTired()) return found;
        if (order === 0 && listing !== 'all') isAll = false;
      }
    if (!isAll) this.isSure = false;
    return null;
  }

  private planWithout(lost: readonly GroupAtTable[]): LeanPlan | null {
    const key = lost.map(({ group, table }) => `${group}.${table}`).join(' ');
    const plan = this.tried.get(key) ?? null;
    if (this.tried.has(key)) return plan === null ? null : this.lean(plan, lost);
    this.searched += 1;
    const isLost = ({ group, table }: GroupAtTable): boolean =>
      lost.some((each) => each.group === group && each.table === table);
    const answer = this.planOf(this.problem.asked.visits.filter((visit) => !isLost(visit)));
    if (answer.kind === 'unknown') {
      this.isSure = false;
      this.unknown += 1;
      this.unknownInAll += 1;
      this.isSpent = this.unknownInAll >= MOST_UNKNOWN_IN_ALL;
    }
    this.tried.set(key, answer.kind === 'plan' ? answer : null);
    return answer.kind === 'plan' ? this.lean(answer, lost) : null;
  }

  private lean(plan: FoundPlan, leftOut: readonly GroupAtTable[]): LeanPlan {
    return { plan, leftOut, proof: this.isSure ? 'search' : 'none' };
  }

  private list(
    room: LossRoom,
    level: LossLevel,
    order: number | null,
    onSet: (lost: readonly GroupAtTable[]) => boolean,
  ): Listing {
    const random = randomFrom(this.seed + (order ?? 0));
    const shuffled = (count: number): readonly number[] => {
      const places = Array.from({ length: count }, (_, n) => ({ n, at: order === null ? n : random.even() }));
      return places.sort((a, b) => a.at - b.at).map(({ n }) => n);
    };
    const alike = order === null ? this.alike : this.alike.map((_, group) => group);
    return listLossSets(this.problem, room, level, alike, shuffled, onSet);
  }
}

/** The same asked of fewer visits. */
export const withVisits = (asked: AskedPlan, visits: readonly GroupAtTable[]): AskedPlan => ({
  ...asked,
  visits,
});
