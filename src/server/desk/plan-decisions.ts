import type { PeriodChanges } from '../../core/files/period-changes.ts';
import { seconds } from '../../core/quantities/brands.ts';
import type { Happening } from '../../store/entry.ts';
import type { Dated } from '../../store/sane-order.ts';

/** Something that the plan has to be made anew for. */
export interface PlanDecision {
  readonly when: number;
  readonly what: Extract<Happening, { readonly kind: 'late' | 'closed' | 'opened' }>;
  /** What holds in all from then on, for a period that has not begun. */
  readonly changes: PeriodChanges;
}

/** What the teacher decided, in its order: a group is late, a table is closed, or opened again. */
export function planDecisions(dated: readonly Dated[]): readonly PlanDecision[] {
  const late = new Map<string, number>();
  let closed: readonly string[] = [];
  const decisions: PlanDecision[] = [];
  for (const { stored, when } of dated) {
    const { what } = stored.entry;
    if (what.kind === 'late') late.set(what.group, what.minutes);
    else if (what.kind === 'closed') closed = [...new Set([...closed, what.table])];
    else if (what.kind === 'opened') closed = closed.filter((table) => table !== what.table);
    else continue;
    const groups = [...late].map(([group, minutes]) => ({ group, by: seconds(Math.round(60 * minutes)) }));
    decisions.push({ when, what, changes: { closed, late: groups } });
  }
  return decisions;
}
