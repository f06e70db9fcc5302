import { type LossProblem, lossRoom } from './loss-room.ts';
import { listLossSets, sampleLossSets } from './loss-sets.ts';
import type { GroupAtTable } from './round-chart.ts';
import { roundProfiles } from './time-room.ts';

/** All sets of visits to leave out with the same numbers. */
export interface LossSets {
  readonly sets: readonly (readonly GroupAtTable[])[];
  /** Whether that is all of them. */
  readonly isAll: boolean;
}

/**
 * Sets of visits to leave out, fewest first: first by how many are at tables that are not left out first, then by how
 * many in all. Only those are listed that no group, table or adult plainly lacks the time for.
 */
export function* lossesByNumber(problem: LossProblem, bell: number): Generator<LossSets> {
  const rooms = roundProfiles(problem.asked, bell)
    .map((profile) => lossRoom(problem, profile))
    .filter(({ least }) => least < Infinity);
  if (rooms.length === 0) return;
  const { visits, groups, runs } = problem.asked;
  const ordinaryVisits = visits.filter(({ table }) => !problem.mayDo[table]).length;
  const alike = Array.from({ length: groups }, (_, group) => group);
  const least = Math.min(...rooms.map((room) => room.leastOrdinary));
  for (let ordinary = least; ordinary <= ordinaryVisits; ordinary += 1)
    for (let all = ordinary; all <= ordinary + visits.length - ordinaryVisits; all += 1) {
      const found = new Map<string, readonly GroupAtTable[]>();
      let isAll = true;
      for (const room of rooms) {
        if (room.leastOrdinary > ordinary || room.least > all) continue;
        const level = { ordinary, all, ofGroup: runs.length, ofTable: groups };
        const keep = (lost: readonly GroupAtTable[]): boolean => {
          found.set(lost.map(({ group, table }) => `${group}.${table}`).join(' '), lost);
          return found.size >= MOST_SETS;
        };
        sampleLossSets(problem, room, level, () => 0, { left: LOOKS_TO_SAMPLE }, keep);
        const listing = listLossSets(problem, room, level, alike, { left: LOOKS_TO_LIST }, keep);
        if (listing !== 'all') isAll = false;
      }
      if (found.size > 0 || !isAll) yield { sets: [...found.values()], isAll };
    }
}

const MOST_SETS = 3000;
/** Ways of groups that are looked at with one number and one choice of rounds. */
const LOOKS_TO_LIST = 20_000;
const LOOKS_TO_SAMPLE = 2_000;
