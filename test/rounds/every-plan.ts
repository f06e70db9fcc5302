import type { RoundProblem } from '../../src/core/rotation/round-chart.ts';

export interface Judged {
  readonly end: number;
  readonly changes: number;
}

/** No time of a small problem lies beyond this. */
const HORIZON = 200;

/**
 * What is wrong with a chart and its times, in words; empty where nothing is. Written against the meaning of
 * the rules, with nothing of the search: every second of a round is asked.
 */
export function faultsOf(
  problem: RoundProblem,
  chart: readonly (readonly number[])[],
  from: readonly number[],
  to: readonly number[],
): readonly string[] {
  const faults: string[] = orderFaults(problem, chart);
  let ready = problem.begins;
  chart.forEach((row, round) => {
    faults.push(...rowFaults(problem, row).map((fault) => `round ${round}: ${fault}`));
    const [start, end] = [from[round] as number, to[round] as number];
    const length = Math.max(
      0,
      ...row.filter((table) => table >= 0).map((table) => problem.lengths[table] as number),
    );
    if (end - start !== length) faults.push(`round ${round} lasts ${end - start}, not ${length}`);
    if (start < ready) faults.push(`round ${round} begins before all can be there`);
    faults.push(...timeFaults(problem, row, start, end).map((fault) => `round ${round}: ${fault}`));
    ready = end + problem.walk;
  });
  const last = to.at(-1);
  if (problem.bell !== null && last !== undefined && last > problem.bell) faults.push('after the bell');
  return faults;
}

/** Rules that hang on which round is before which. */
function orderFaults(problem: RoundProblem, chart: readonly (readonly number[])[]): string[] {
  const faults: string[] = [];
  for (let group = 0; group < problem.groups; group += 1) {
    const done = chart.map((row) => row[group] as number).filter((table) => table >= 0);
    const wanted = new Set(
      problem.visits.filter((visit) => visit.group === group).map((visit) => visit.table),
    );
    if (
      done.length !== wanted.size ||
      done.some((table) => !wanted.has(table)) ||
      new Set(done).size !== done.length
    )
      faults.push(`group ${group} does ${done.join()} for ${[...wanted].join()}`);
    const applies = (whom: number | null): boolean => whom === null || whom === group;
    for (const rule of problem.before)
      if (applies(rule.group) && done.includes(rule.first) && done.includes(rule.then))
        if (done.indexOf(rule.first) >= done.indexOf(rule.then))
          faults.push(`group ${group} in the wrong order`);
    for (const rule of problem.ends)
      if (applies(rule.group) && done.includes(rule.table))
        if ((rule.which === 'first' ? done[0] : done.at(-1)) !== rule.table)
          faults.push(`table ${rule.table} is not ${rule.which} for group ${group}`);
    for (const rule of problem.at)
      if (rule.group === group && !done.includes(rule.table)) faults.push('not at a table at all');
  }
  return faults;
}

function rowFaults(problem: RoundProblem, row: readonly number[]): readonly string[] {
  const faults: string[] = [];
  const at = (tables: readonly number[]): number => row.filter((table) => tables.includes(table)).length;
  if (row.every((table) => table < 0)) faults.push('nobody is anywhere');
  for (let table = 0; table < problem.tables; table += 1)
    if (at([table]) > (problem.copies[table] as number)) faults.push(`too many at table ${table}`);
  for (const limit of problem.limits) if (at(limit.tables) > limit.capacity) faults.push('too few adults');
  const isNear = (a: number, b: number): boolean =>
    a === b || problem.beside.some(([x, y]) => (x === a && y === b) || (x === b && y === a));
  const both = ([a, b]: readonly [number, number]): boolean =>
    (row[a] as number) >= 0 && (row[b] as number) >= 0;
  for (const pair of problem.apart)
    if (both(pair) && isNear(row[pair[0]] as number, row[pair[1]] as number)) faults.push('too near');
  for (const pair of problem.together)
    if (both(pair) && !isNear(row[pair[0]] as number, row[pair[1]] as number)) faults.push('not together');
  return faults;
}

function timeFaults(
  problem: RoundProblem,
  row: readonly number[],
  from: number,
  to: number,
): readonly string[] {
  const overlaps = (span: { readonly from: number; readonly to: number }): boolean => {
    for (let now = from; now < to; now += 1) if (now >= span.from && now < span.to) return true;
    return false;
  };
  const faults: string[] = [];
  if (problem.breaks.some(overlaps)) faults.push('in a break');
  for (const rule of problem.away)
    if ((row[rule.group] as number) >= 0 && overlaps(rule)) faults.push('away');
  for (const rule of problem.closed) if (row.includes(rule.table) && overlaps(rule)) faults.push('closed');
  for (const rule of problem.at)
    if (row[rule.group] === rule.table && (rule.time < from || rule.time >= to))
      faults.push('not at its time');
  return faults;
}

/** The best of every plan there is, each visit tried in each round; `null` where none keeps the rules. */
export function bestOfAll(problem: RoundProblem): Judged | null {
  const visits = [
    ...new Map(problem.visits.map((visit) => [`${visit.group}/${visit.table}`, visit])).values(),
  ];
  let best: Judged | null = null;
  const rows: number[][] = [];
  const judge = (): void => {
    const times = timesOf(problem, rows);
    if (times === null || faultsOf(problem, rows, times.from, times.to).length > 0) return;
    const judged = { end: times.to.at(-1) ?? problem.begins, changes: differing(problem, rows) };
    if (
      best === null ||
      judged.changes < best.changes ||
      (judged.changes === best.changes && judged.end < best.end)
    )
      best = judged;
  };
  const put = (index: number): void => {
    const visit = visits[index];
    if (visit === undefined) {
      if (rows.every((row) => row.some((table) => table >= 0)) && orderFaults(problem, rows).length === 0)
        judge();
      return;
    }
    for (const row of rows) {
      if ((row[visit.group] as number) >= 0) continue;
      row[visit.group] = visit.table;
      if (row.filter((table) => table === visit.table).length <= (problem.copies[visit.table] as number))
        put(index + 1);
      row[visit.group] = -1;
    }
  };
  for (let rounds = 0; rounds <= visits.length; rounds += 1) {
    rows.length = 0;
    for (let each = 0; each < rounds; each += 1) rows.push(new Array<number>(problem.groups).fill(-1));
    put(0);
  }
  return best;
}

function timesOf(
  problem: RoundProblem,
  rows: readonly (readonly number[])[],
): { readonly from: readonly number[]; readonly to: readonly number[] } | null {
  const from: number[] = [];
  const to: number[] = [];
  let ready = problem.begins;
  for (const row of rows) {
    const length = Math.max(
      0,
      ...row.filter((table) => table >= 0).map((table) => problem.lengths[table] as number),
    );
    let start = ready;
    while (start < HORIZON && timeFaults(problem, row, start, start + length).length > 0) start += 1;
    if (start >= HORIZON) return null;
    from.push(start);
    to.push(start + length);
    ready = start + length + problem.walk;
  }
  return { from, to };
}

function differing(problem: RoundProblem, rows: readonly (readonly number[])[]): number {
  if (problem.standing === null) return 0;
  let changes = 0;
  for (let round = 0; round < Math.max(rows.length, problem.standing.length); round += 1)
    for (let group = 0; group < problem.groups; group += 1)
      changes += (rows[round]?.[group] ?? -1) === (problem.standing[round]?.[group] ?? -1) ? 0 : 1;
  return changes;
}
