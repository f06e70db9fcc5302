import type { RandomStream } from '../uncertainty/random.ts';
import { logNormalOf, type TimeSplit } from './chance-times.ts';
import type { Rotation } from './rotation.ts';

/** One period's times: of every group at every table, group by group, whatever the timetable. */
export interface PeriodTimes {
  readonly run: Float64Array;
  readonly reset: Float64Array;
  /** Draws the next period into the two. */
  readonly next: () => void;
}

/**
 * Draws periods. Each has one number a group, two a table (the stay and its reset) and two a pair; the group's
 * counts for both. They are drawn for every pair and in one order, so that two timetables of the same groups and
 * tables, asked with the same seed, meet the same periods.
 */
export function periodTimes(
  { groups, tables }: Rotation,
  split: TimeSplit,
  random: RandomStream,
): PeriodTimes {
  const [g, t] = [groups.length, tables.length];
  const runs = tables.map(({ run }) => logNormalOf(run));
  const resets = tables.map(({ reset }) => logNormalOf(reset));
  const [ofTable, ofGroup, ofRest] = [split.table, split.group, split.rest].map(Math.sqrt) as [
    number,
    number,
    number,
  ];
  const normal = new Float64Array(g + 2 * t + 2 * g * t);
  const run = new Float64Array(g * t);
  const reset = new Float64Array(g * t);
  const next = (): void => {
    random.fillNormal(normal);
    for (let pair = 0; pair < g * t; pair += 1) {
      const table = pair % t;
      const group = ofGroup * (normal[(pair - table) / t] as number);
      const place = g + 2 * (t + pair);
      const drawn = (law: (typeof runs)[number], which: 0 | 1): number =>
        law.median *
        Math.exp(
          law.sigma *
            (group +
              ofTable * (normal[g + 2 * table + which] as number) +
              ofRest * (normal[place + which] as number)),
        );
      run[pair] = drawn(runs[table] as (typeof runs)[number], 0);
      reset[pair] = drawn(resets[table] as (typeof runs)[number], 1);
    }
  };
  return { run, reset, next };
}
