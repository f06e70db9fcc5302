import type { AskedPlan } from './asked-plan.ts';
import type { RoundProblem } from './round-chart.ts';

/**
 * How long a round with a table in it lasts at least: until the group is done, and until what the reset takes longer
 * than the walk is over too. The last round lasts as long: the tables are put back before the talk at the end.
 *
 * @example roundLength(360, 60, 30) // => 390
 */
export const roundLength = (run: number, reset: number, walk: number): number =>
  run + Math.max(0, reset - walk);

/** What is asked of a plan, as rounds that begin and end on a signal. `standing` by round and group, where a plan stood before. */
export function toRounds(
  asked: AskedPlan,
  standing: readonly (readonly number[])[] | null,
  bell: number | null,
): RoundProblem {
  const { runs, resets, walk } = asked;
  const some = asked.visits;
  const isVisit = (group: number | null, table: number): boolean =>
    some.some((visit) => visit.table === table && (group === null || visit.group === group));
  return {
    groups: asked.groups,
    tables: runs.length,
    visits: some,
    lengths: runs.map((run, table) => roundLength(run, resets[table] as number, walk)),
    copies: asked.copies,
    limits: asked.limits,
    before: asked.before.filter(({ first, then, group }) => isVisit(group, first) && isVisit(group, then)),
    ends: asked.ends.filter(({ group, table }) => isVisit(group, table)),
    beside: asked.beside,
    apart: asked.apart,
    together: asked.together,
    away: asked.away,
    closed: asked.closed,
    at: asked.at,
    breaks: asked.breaks,
    walk,
    begins: asked.begins,
    bell,
    standing,
  };
}
