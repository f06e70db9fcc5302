import type { Rotation } from '../../src/core/rotation/rotation.ts';
import type { FromNow, Visit } from './period-from-now.ts';

/** Best first: lost at tables that are not left out first, lost in all, changes from the plan that stood, end. */
export type Score = readonly [number, number, number, number];

export const isBetter = (one: Score, other: Score | null): boolean => {
  if (other === null) return true;
  const n = one.findIndex((each, at) => each !== other[at]);
  return n >= 0 && (one[n] as number) < (other[n] as number);
};

const lost = (from: FromNow, done: readonly Visit[]): readonly [number, number] => {
  const out = from.visits.filter(
    ({ group, table }) => !done.some((d) => d.group === group && d.table === table),
  );
  return [out.filter(({ table }) => from.isOrdinary(table)).length, out.length];
};

const applies = (group: string | null, to: string): boolean => group === null || group === to;

/** Whether a group's way round the tables, with what it has done before, keeps the wishes for order. */
function keepsOrder({ wishes }: Rotation, from: FromNow, group: string, route: readonly string[]): boolean {
  const hasBegun = from.held.some((each) => each.group === group);
  return wishes.every((wish) => {
    if (wish.kind === 'before' && applies(wish.group, group)) {
      const [first, then] = [route.indexOf(wish.first), route.indexOf(wish.then)];
      return first < 0 || then < 0 || first < then;
    }
    if (wish.kind === 'last' && applies(wish.group, group))
      return !route.includes(wish.table) || route.at(-1) === wish.table;
    if (wish.kind === 'first' && applies(wish.group, group) && !hasBegun)
      return !route.includes(wish.table) || route[0] === wish.table;
    return true;
  });
}

const pairs = ({ wishes }: Rotation, kind: 'apart' | 'together'): readonly (readonly [string, string])[] =>
  wishes.flatMap((wish) => (wish.kind === kind ? [wish.groups] : []));

const overlaps = (from: number, to: number, other: { from: number; to: number }): boolean =>
  other.from < to && other.to > from;

/** Every chart of rounds from now on; the best of them. */
export function bestChart(rotation: Rotation, from: FromNow, must: readonly Visit[]): Score | null {
  const { walk } = rotation;
  const begun = Math.max(0, ...from.held.map((each) => each.round ?? 0));
  const stood: (string | null)[][] = [];
  for (const { group, table, round } of from.ahead) {
    const row = (round ?? 0) - begun - 1;
    if (row < 0) continue;
    while (stood.length <= row) stood.push(from.groups.map(() => null));
    (stood[row] as (string | null)[])[from.groups.indexOf(group)] = table;
  }
  let best: Score | null = null;
  const judge = (rounds: readonly (readonly (string | null)[])[], end: number): void => {
    const done = rounds.flatMap((row) =>
      row.flatMap((table, n) => (table === null ? [] : [{ group: from.groups[n] as string, table }])),
    );
    if (must.some(({ group, table }) => !done.some((d) => d.group === group && d.table === table))) return;
    for (const group of from.groups)
      if (
        !keepsOrder(
          rotation,
          from,
          group,
          done.filter((d) => d.group === group).map(({ table }) => table),
        )
      )
        return;
    let changes = 0;
    for (let n = 0; n < Math.max(rounds.length, stood.length); n += 1)
      for (let g = 0; g < from.groups.length; g += 1)
        if ((rounds[n]?.[g] ?? null) !== (stood[n]?.[g] ?? null)) changes += 1;
    const score: Score = [...lost(from, done), changes, end];
    if (isBetter(score, best)) best = score;
  };
  const go = (
    rounds: readonly (readonly (string | null)[])[],
    left: readonly Visit[],
    ready: number,
    end: number,
  ): void => {
    judge(rounds, end);
    const fill = (row: readonly (string | null)[]): void => {
      if (row.length < from.groups.length) {
        const group = from.groups[row.length] as string;
        for (const { table } of left.filter((visit) => visit.group === group)) {
          const others = row.filter((each) => each !== null);
          if (others.filter((each) => each === table).length >= from.copiesOf(table)) continue;
          if (!from.canAttend([...others, table])) continue;
          fill([...row, table]);
        }
        fill([...row, null]);
        return;
      }
      const here = row.flatMap((table, n) =>
        table === null ? [] : [{ group: from.groups[n] as string, table }],
      );
      if (here.length === 0) return;
      const near = ([one, other]: readonly [string, string]): boolean | null => {
        const [a, b] = [one, other].map((label) => here.find(({ group }) => group === label)?.table);
        return a === undefined || b === undefined ? null : from.areNear(a, b);
      };
      if (pairs(rotation, 'apart').some((pair) => near(pair) === true)) return;
      if (pairs(rotation, 'together').some((pair) => near(pair) === false)) return;
      const length = Math.max(
        ...here.map(({ table }) => from.runOf(table) + Math.max(0, from.resetOf(table) - walk)),
      );
      let start = ready;
      const shut = here.flatMap(from.shut).filter((span) => span.to > span.from);
      for (let hit = shut.find((span) => overlaps(start, start + length, span)); hit !== undefined; ) {
        start = hit.to;
        if (start > from.bell) return;
        hit = shut.find((span) => overlaps(start, start + length, span));
      }
      if (start + length > from.bell) return;
      const rest = left.filter(
        ({ group, table }) => !here.some((d) => d.group === group && d.table === table),
      );
      go([...rounds, row], rest, start + length + walk, start + length);
    };
    if (left.length > 0) fill([]);
  };
  go([], from.visits, from.begins, from.begins);
  return best;
}

/** Every order of visits from now on, each begun as early as it can; the best of them. */
export function bestOrder(rotation: Rotation, from: FromNow, must: readonly Visit[]): Score | null {
  const { walk } = rotation;
  const routesStood = new Map(
    from.groups.map((group) => [
      group,
      from.ahead
        .filter((stay) => stay.group === group)
        .sort((a, b) => a.from - b.from)
        .map(({ table }) => table),
    ]),
  );
  let best: Score | null = null;
  interface Placed extends Visit {
    readonly from: number;
    readonly to: number;
  }
  const judge = (placed: readonly Placed[]): void => {
    if (must.some(({ group, table }) => !placed.some((d) => d.group === group && d.table === table))) return;
    let changes = 0;
    for (const group of from.groups) {
      const route = placed.filter((d) => d.group === group).map(({ table }) => table);
      if (!keepsOrder(rotation, from, group, route)) return;
      changes += fewestEdits(routesStood.get(group) ?? [], route);
    }
    const end = Math.max(from.begins, ...placed.map(({ to }) => to));
    const score: Score = [...lost(from, placed), changes, end];
    if (isBetter(score, best)) best = score;
  };
  const fits = (placed: readonly Placed[], { group, table }: Visit, start: number): boolean => {
    const to = start + from.runOf(table);
    const ready = to + from.resetOf(table);
    if (from.shut({ group, table }).some((span) => span.to > span.from && overlaps(start, to, span)))
      return false;
    const all = [
      ...placed.map((each) => ({ ...each, ready: each.to + from.resetOf(each.table) })),
      ...from.held.map((each) => ({ ...each, from: 0, to: each.until })),
    ];
    if (all.some((each) => each.group === group && each.to + walk > start && each.from < to + walk))
      return false;
    for (const [one, other] of pairs(rotation, 'apart')) {
      const mate = group === one ? other : group === other ? one : null;
      if (
        all.some(
          (each) => each.group === mate && from.areNear(each.table, table) && overlaps(start, to, each),
        )
      )
        return false;
    }
    const others = all.filter((each) => each.from < ready && each.ready > start);
    return [start, ...others.map((each) => each.from).filter((time) => time > start)].every((time) => {
      const then = others.filter((each) => each.from <= time && each.ready > time).map((each) => each.table);
      return (
        then.filter((each) => each === table).length < from.copiesOf(table) &&
        from.canAttend([...then, table])
      );
    });
  };
  const go = (placed: readonly Placed[], left: readonly Visit[]): void => {
    judge(placed);
    for (const visit of left) {
      const before = placed.filter(({ group }) => group === visit.group).map(({ to }) => to + walk);
      let start = Math.max(from.begins, ...before);
      const length = from.runOf(visit.table);
      while (start + length <= from.bell && !fits(placed, visit, start)) start += 30;
      if (start + length > from.bell) continue;
      go(
        [...placed, { ...visit, from: start, to: start + length }],
        left.filter((each) => each !== visit),
      );
    }
  };
  go([], from.visits);
  return best;
}

/** Crossed out, written in, or moved: the fewest of all ways to get from one list to the other. */
function fewestEdits(stood: readonly string[], route: readonly string[]): number {
  const inBoth = route.filter((table) => stood.includes(table));
  let longest = 0;
  for (let set = 0; set < 2 ** inBoth.length; set += 1) {
    const some = inBoth
      .filter((_, n) => Math.floor(set / 2 ** n) % 2 === 1)
      .map((table) => stood.indexOf(table));
    if (some.every((place, n) => n === 0 || (some[n - 1] as number) < place))
      longest = Math.max(longest, some.length);
  }
  return stood.length + route.length - inBoth.length - longest;
}
