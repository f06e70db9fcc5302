import { isAmong } from './among.ts';
import type { LossProblem } from './loss-room.ts';
import type { LeanPlan, PlanOf } from './loss-search.ts';
import type { FoundPlan } from './plan-search.ts';
import type { GroupAtTable } from './round-chart.ts';

/** Searches without an answer before the rest stays left out. */
const MOST_UNKNOWN = 20;

/**
 * A plan into which no other visit was seen to fit: the visits that have to be, then the others in the order in which
 * they wait, those at tables that are left out first last. As many as can be are put in at once, and where they do not
 * fit, fewer. `null` where not even those that have to be fit.
 */
export function putBack(
  problem: LossProblem,
  planOf: PlanOf,
  inOrder: (visits: readonly GroupAtTable[]) => readonly GroupAtTable[],
): LeanPlan | null {
  const { asked, must, mayDo } = problem;
  const first = planOf(must);
  if (first.kind !== 'plan') return null;
  let plan: FoundPlan = first;
  let kept: readonly GroupAtTable[] = must;
  const others = inOrder(asked.visits.filter((visit) => !isAmong(must, visit)));
  const waiting = [
    ...others.filter(({ table }) => !mayDo[table]),
    ...others.filter(({ table }) => mayDo[table]),
  ];
  let unknown = 0;
  let chunk = asked.groups;
  for (let at = 0; at < waiting.length && unknown < MOST_UNKNOWN; ) {
    const more = [...kept, ...waiting.slice(at, at + chunk)];
    const size = more.length - kept.length;
    const answer = isTooMuch(problem, more)
      ? null
      : planOf(asked.visits.filter((visit) => isAmong(more, visit)));
    if (answer?.kind === 'plan') {
      plan = answer;
      kept = more;
      at += size;
      chunk = 2 * size;
      continue;
    }
    if (answer?.kind === 'unknown') unknown += 1;
    if (size === 1) at += 1;
    chunk = Math.max(1, Math.floor(size / 2));
  }
  return { plan, leftOut: asked.visits.filter((visit) => !isAmong(kept, visit)), proof: 'none' };
}

/** In the first layer each group has a table of its own, in the next the table after it, and so on. */
export const inLayers =
  (tables: number) =>
  (visits: readonly GroupAtTable[]): readonly GroupAtTable[] => {
    const layer = ({ group, table }: GroupAtTable): number => (((table - group) % tables) + tables) % tables;
    return [...visits].sort((a, b) => layer(a) - layer(b) || a.group - b.group);
  };

/** Whether a group, a table or the adults plainly lack the time. */
const isTooMuch = ({ bearers }: LossProblem, visits: readonly GroupAtTable[]): boolean =>
  bearers.some(({ group, tables, takes, room, most }) => {
    const own = visits.filter(
      (visit) => (group < 0 || visit.group === group) && tables.includes(visit.table),
    );
    return own.length > most || own.reduce((sum, { table }) => sum + (takes[table] as number), 0) > room;
  });
