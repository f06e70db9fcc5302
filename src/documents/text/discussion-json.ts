import type { Discussion } from '../../core/discuss.ts';
import type { ClassSummary } from '../../core/readings/class-summary.ts';
import { plainJson } from './plain-json.ts';

/** A discussion as JSON: the figures of the review, question by question; groups only where they may be named. */
export const discussionJson = ({ summary, names, ...rest }: Discussion): string =>
  plainJson({
    handspike: 'discussion 1',
    ...rest,
    names,
    summary: names ? summary : withoutGroups(summary),
  });

/** A line of the file would say as well whose reading it is. */
const withoutGroups = (summary: ClassSummary) => ({
  ...summary,
  setups: summary.setups.map((setup) => ({ ...setup, leftOut: setup.leftOut.map(unnamed) })),
  surprising: summary.surprising.map(unnamed),
});

const unnamed = <T extends { readonly group: string; readonly line: number | null }>({
  group: _group,
  line: _line,
  ...rest
}: T) => rest;
