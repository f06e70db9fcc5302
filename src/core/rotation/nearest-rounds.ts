import { isAmong } from './among.ts';
import { withVisits } from './leave-out.ts';
import type { FoundPlan } from './plan-search.ts';
import { searchPlan } from './plan-search.ts';
import type { GroupAtTable } from './round-chart.ts';
import { changesBetween } from './round-plan.ts';
import type { SearchEffort } from './shop.ts';
import type { StillToDo } from './still-to-do.ts';

/** The plan with the fewest changes from the one that stood, and of those the one that ends soonest. */
export interface NearestPlan {
  readonly plan: FoundPlan;
  readonly leftOut: readonly GroupAtTable[];
  readonly changes: number;
  /** Nothing has fewer changes, and with as many nothing ends sooner. */
  readonly isSure: boolean;
}

/** What came of looking: `isSure` where nothing was found and there is nothing. */
export type NearestFound =
  | { readonly kind: 'nearest'; readonly nearest: NearestPlan }
  | { readonly kind: 'none'; readonly isSure: boolean };

/**
 * Of all ways to leave out one of these sets, where all move on a signal: the chart with the fewest cells, by round
 * and group, that differ from the one that stood; then the soonest end. A set that can't do with as few is not tried.
 */
export function nearestRounds(
  still: StillToDo,
  sets: readonly (readonly GroupAtTable[])[],
  effort: SearchEffort,
): NearestFound {
  const { asked, chart } = still;
  const byLeast = sets
    .map((leftOut) => ({ leftOut, least: fewestCells(still, leftOut) }))
    .sort((a, b) => a.least - b.least);
  let best: NearestPlan | null = null;
  let isSure = true;
  let [tries, open] = [MOST_TRIES, MOST_OPEN];
  for (const { leftOut, least } of byLeast) {
    if (best !== null && least > best.changes) break;
    tries -= 1;
    if (tries < 0 || open <= 0) {
      isSure = false;
      break;
    }
    const left = asked.visits.filter((visit) => !isAmong(leftOut, visit));
    const answer = searchPlan(withVisits(asked, left), { bell: asked.bell, standing: chart }, effort);
    const isOpen = answer.kind === 'unknown' || (answer.kind === 'plan' && answer.proof === 'none');
    if (isOpen) {
      isSure = false;
      open -= 1;
    }
    if (answer.kind !== 'plan') continue;
    const changes = changedCells(still, answer);
    if (best === null || changes < best.changes || (changes === best.changes && answer.end < best.plan.end))
      best = { plan: answer, leftOut, changes, isSure: true };
  }
  return best === null ? { kind: 'none', isSure } : { kind: 'nearest', nearest: { ...best, isSure } };
}

/** Sets that are tried at most, and searches that end without a proof. */
const MOST_TRIES = 400;
const MOST_OPEN = 2;

/** How many cells of a plan differ from the chart that stood. */
export const changedCells = (still: StillToDo, plan: FoundPlan): number =>
  changesBetween(chartOf(still, plan), still.chart, still.asked.groups);

function chartOf({ asked }: StillToDo, { visits, rounds }: FoundPlan): readonly (readonly number[])[] {
  return (rounds ?? []).map((_, n) =>
    Array.from(
      { length: asked.groups },
      (__, group) => visits.find((visit) => visit.group === group && visit.round === n)?.table ?? -1,
    ),
  );
}

/** A visit that is left and did not stand takes up one cell that changes; so does a cell whose visit is gone; one cell may be both. */
function fewestCells({ asked, chart }: StillToDo, leftOut: readonly GroupAtTable[]): number {
  let sum = 0;
  for (let group = 0; group < asked.groups; group += 1) {
    const left = asked.visits.filter((visit) => visit.group === group && !isAmong(leftOut, visit));
    const ahead = chart.map((row) => row[group] as number).filter((table) => table >= 0);
    const kept = left.filter(({ table }) => ahead.includes(table)).length;
    sum += Math.max(left.length, ahead.length) - kept;
  }
  return sum;
}
