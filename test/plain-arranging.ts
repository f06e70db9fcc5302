import { seconds } from '../src/core/quantities/brands.ts';
import type { Rotation } from '../src/core/rotation/rotation.ts';
import type { LeftOut, Round, Stay, Timetable } from '../src/core/rotation/timetable.ts';
import { timetable } from './rotations.ts';

/**
 * All move one table on in each round, as if tables stood in a ring with gaps; what is not over by the bell is left
 * out. The best there is where all tables last the same and nothing is wished, and easy to follow by hand.
 */
export function ringTimetable({ groups, tables, walk, begins, bell, breaks }: Rotation): Timetable {
  const places = Math.max(groups.length, tables.length);
  const stays: Stay[] = [];
  const rounds: Round[] = [];
  const leftOut: LeftOut[] = [];
  let at: number = begins;
  for (let round = 0; round < places; round += 1) {
    const here = groups.flatMap(({ label }, n) => {
      const table = tables[(n + round) % places];
      return table === undefined ? [] : [{ label, table }];
    });
    const length = Math.max(0, ...here.map(({ table }) => table.run.value));
    for (const { from, to } of breaks) if (at < to && at + length > from) at = to;
    const isLate = at + length > bell;
    for (const { label, table } of here)
      if (isLate) leftOut.push({ group: label, table: table.mark });
      else
        stays.push({
          group: label,
          table: table.mark,
          copy: 1,
          from: seconds(at),
          to: seconds(at + table.run.value),
          round: rounds.length + 1,
        });
    if (isLate) continue;
    rounds.push({ from: seconds(at), to: seconds(at + length) });
    at += length + walk;
  }
  return timetable(stays, { way: 'signal', rounds, leftOut });
}

/** As tables free up: whoever can begin soonest does, the longest table first; nothing is left out. */
export function greedyTimetable({ groups, tables, walk, begins }: Rotation): Timetable {
  const todo = groups.map(() => tables.map((_, n) => n));
  const groupFree = groups.map(({ arrives }) => Math.max(begins, arrives));
  const copyFree = tables.map(({ copies }) => Array.from({ length: copies }, (): number => begins));
  const stays: Stay[] = [];
  while (todo.some((left) => left.length > 0)) {
    const options = todo.flatMap((left, group) =>
      left.map((table) => {
        const ready = Math.min(...(copyFree[table] as number[]));
        const run = tables[table]?.run.value ?? 0;
        return { group, table, run, from: Math.max(groupFree[group] as number, ready) };
      }),
    );
    options.sort((a, b) => a.from - b.from || b.run - a.run);
    const { group, table, run, from } = options[0] as (typeof options)[number];
    const frees = copyFree[table] as number[];
    const copy = frees.indexOf(Math.min(...frees));
    frees[copy] = from + run + (tables[table]?.reset.value ?? 0);
    groupFree[group] = from + run + walk;
    todo[group]?.splice(todo[group].indexOf(table), 1);
    stays.push({
      group: groups[group]?.label ?? '',
      table: tables[table]?.mark ?? '',
      copy: copy + 1,
      from: seconds(from),
      to: seconds(from + run),
      round: null,
    });
  }
  return timetable(stays.sort((a, b) => a.from - b.from));
}
