import type { AskedPlan } from './asked-plan.ts';
import { roundLength } from './to-rounds.ts';

/** What bears so many visits at a time, for so long: a group, a table, or the adults of some tables. */
export interface Bearer {
  readonly kind: 'group' | 'table' | 'limit';
  /** The group; -1 where it bears every group's. */
  readonly group: number;
  readonly tables: readonly number[];
  readonly capacity: number;
  /** All visits together, each with what is taken after it, take no longer. */
  readonly room: number;
  /** No more visits than these. */
  readonly most: number;
  /** By table: a visit with what is taken after it. */
  readonly takes: readonly number[];
}

/**
 * How much time each group, each table and the adults have between the beginning and the bell, and how much of it
 * a visit takes. More than that no plan holds: what is taken after a visit may fall into a break or behind the
 * bell, so a break and the bell make room for one of those each.
 */
export function bearersOf(asked: AskedPlan, bell: number): readonly Bearer[] {
  const { walk, runs, resets, way, groups, copies, limits } = asked;
  const isSignal = way === 'signal';
  const lengths = lengthsOf(asked);
  const all = runs.map((_, table) => table);
  const after = (table: number): number => (isSignal ? walk : (resets[table] as number));
  const bearer = (
    kind: Bearer['kind'],
    group: number,
    tables: readonly number[],
    capacity: number,
    afterVisit: (table: number) => number,
  ): Bearer => {
    const gone =
      kind === 'group'
        ? asked.away.filter((each) => each.group === group)
        : kind === 'table'
          ? asked.closed.filter((each) => each.table === tables[0])
          : [];
    const shut = merged([
      ...asked.breaks,
      ...gone,
      { from: -Infinity, to: asked.begins },
      { from: bell, to: Infinity },
    ]);
    const pieces = piecesBetween(shut);
    const longest = Math.max(0, ...tables.map(afterVisit));
    const shortest = Math.min(...tables.map((table) => (lengths[table] as number) + afterVisit(table)));
    return {
      kind,
      group,
      tables,
      capacity,
      room: capacity * pieces.reduce((sum, piece) => sum + piece + longest, 0),
      most: capacity * pieces.reduce((sum, piece) => sum + fitting(piece + longest, shortest), 0),
      takes: all.map((table) => (lengths[table] as number) + afterVisit(table)),
    };
  };
  return [
    ...Array.from({ length: groups }, (_, group) => bearer('group', group, all, 1, () => walk)),
    ...all.map((table) =>
      bearer('table', -1, [table], Math.max(0, Math.min(groups, copies[table] as number)), after),
    ),
    ...limits.map(({ tables, capacity }) => bearer('limit', -1, tables, capacity, after)),
  ];
}

/** By table: how long a visit lasts; where all move on a signal, how long its round lasts at least. */
export const lengthsOf = ({ way, runs, resets, walk }: AskedPlan): readonly number[] =>
  runs.map((run, table) => (way === 'signal' ? roundLength(run, resets[table] as number, walk) : run));

interface Span {
  readonly from: number;
  readonly to: number;
}

/** How long the times between are. */
const piecesBetween = (shut: readonly Span[]): readonly number[] =>
  shut.slice(1).map(({ from }, n) => Math.max(0, from - (shut[n] as Span).to));

const fitting = (room: number, takes: number): number => (takes > 0 ? Math.floor(room / takes) : Infinity);

function merged(spans: readonly Span[]): readonly Span[] {
  const joined: Span[] = [];
  for (const span of [...spans].filter(({ from, to }) => to > from).sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last !== undefined && span.from <= last.to)
      joined[joined.length - 1] = { from: last.from, to: Math.max(last.to, span.to) };
    else joined.push(span);
  }
  return joined;
}

/**
 * How many rounds at least so long there can be, longest length first: every choice of lengths whose rounds fit
 * between the beginning and the bell and of which no longer one does. One without a limit where tables free up.
 */
export function roundProfiles(asked: AskedPlan, bell: number): readonly RoundProfile[] {
  const lengths = [...new Set(asked.visits.map(({ table }) => lengthsOf(asked)[table] as number))].sort(
    (a, b) => b - a,
  );
  if (asked.way === 'free') return [{ lengths, counts: lengths.map(() => Infinity) }];
  const shut = merged([...asked.breaks, { from: -Infinity, to: asked.begins }, { from: bell, to: Infinity }]);
  const room = piecesBetween(shut).reduce((sum, piece) => sum + piece + asked.walk, 0);
  const found: RoundProfile[] = [];
  const most = asked.visits.length;
  const add = (level: number, counts: readonly number[], left: number, total: number): void => {
    const length = lengths[level];
    if (length === undefined || found.length >= MOST_PROFILES) {
      if (length === undefined) found.push({ lengths, counts });
      return;
    }
    const takes = length + asked.walk;
    const fit = Math.max(0, Math.min(most - total, takes > 0 ? Math.floor(left / takes) : most));
    const isLast = level === lengths.length - 1;
    for (let more = fit; more >= (isLast ? fit : 0); more -= 1)
      add(level + 1, [...counts, total + more], left - more * takes, total + more);
  };
  add(0, [], room, 0);
  return undominated(found);
}

const MOST_PROFILES = 20_000;

/** By length, longest first: at most so many rounds are at least as long. */
export interface RoundProfile {
  readonly lengths: readonly number[];
  readonly counts: readonly number[];
}

function undominated(profiles: readonly RoundProfile[]): readonly RoundProfile[] {
  const kept: RoundProfile[] = [];
  const total = ({ counts }: RoundProfile): number => counts.reduce((sum, each) => sum + each, 0);
  for (const profile of [...profiles].sort((a, b) => total(b) - total(a)))
    if (
      !kept.some((other) => profile.counts.every((count, level) => count <= (other.counts[level] as number)))
    )
      kept.push(profile);
  return kept;
}
