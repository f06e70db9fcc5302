import { isAmong } from './among.ts';
import type { AskedPlan } from './asked-plan.ts';
import { leastThatWorks } from './first-that-works.ts';
import { type LossProblem, lossRoom } from './loss-room.ts';
import { type LeanPlan, type LossSearch, leanWith, type PlanOf } from './loss-search.ts';
import { inLayers, putBack } from './put-back.ts';
import type { GroupAtTable } from './round-chart.ts';
import { roundProfiles } from './time-room.ts';

/**
 * What to leave out where the time is short: as few visits as can be at tables that are not left out first, then
 * as few in all, then the most that one group loses as small as can be, then the most that one such table loses. For
 * each number, sets of visits that no group, table or adult plainly lacks the time for are tried until a plan of the
 * others is found. `alike` names, by group, the group before it that differs in nothing. `null` where none was found.
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
  const search: LossSearch = {
    problem,
    rooms,
    alike,
    planOf,
    seed,
    known: new Map(),
    searched: 0,
    unknown: 0,
    looks: { left: 0 },
    open: 0,
  };
  const greedy = putBack(problem, planOf, inLayers(problem.asked.runs.length));
  if (greedy === null || rooms.length === 0) return greedy;
  const isOrdinary = ({ table }: GroupAtTable): boolean => !problem.mayDo[table];
  const ordinaryIn = (some: readonly GroupAtTable[]): number => some.filter(isOrdinary).length;
  const mayGoFirst = problem.asked.visits.filter(
    (visit) => !isOrdinary(visit) && !isAmong(problem.must, visit),
  ).length;
  const leastOrdinary = Math.min(...rooms.map((room) => room.leastOrdinary));
  const leastOf = Math.min(...rooms.map(({ least }) => least));
  // With all that may be left out first gone, more others can stay than otherwise.
  const others = leastThatWorks(leastOrdinary, ordinaryIn(greedy.leftOut), (ordinary) => {
    const tried = leanWith(search, ordinary, ordinary + mayGoFirst);
    return { ...tried, found: tried.found === null ? null : { lean: tried.found, ordinary } };
  });
  const ordinary = others.found?.ordinary ?? ordinaryIn(greedy.leftOut);
  const known = others.found?.lean ?? greedy;
  const most = ordinary === ordinaryIn(greedy.leftOut) ? greedy.leftOut.length : known.leftOut.length;
  const all = leastThatWorks(Math.max(leastOf, ordinary), most, (count) => leanWith(search, ordinary, count));
  const found = all.found ?? (most === greedy.leftOut.length ? greedy : known);
  const isSure = others.found !== null && others.isSure && all.found !== null && all.isSure;
  return { ...found, proof: isSure ? found.proof : 'none' };
}

/** The same asked of fewer visits. */
export const withVisits = (asked: AskedPlan, visits: readonly GroupAtTable[]): AskedPlan => ({
  ...asked,
  visits,
});
