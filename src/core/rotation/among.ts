import type { GroupAtTable } from './round-chart.ts';

/** Whether a visit is one of these. */
export const isAmong = (some: readonly GroupAtTable[], { group, table }: GroupAtTable): boolean =>
  some.some((each) => each.group === group && each.table === table);
