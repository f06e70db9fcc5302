import { hallLimits } from './hall-limits.ts';
import type { Rotation, RotationTable, Way } from './rotation.ts';
import type { GroupAtTable, RoundLimit, RoundProblem } from './round-chart.ts';
import type { Wish } from './wish.ts';

/** What some wishes ask of a plan for some visits: groups and tables by their place in the rotation, times in seconds. */
export interface AskedPlan
  extends Pick<
    RoundProblem,
    'before' | 'ends' | 'beside' | 'apart' | 'together' | 'away' | 'closed' | 'at' | 'breaks' | 'walk'
  > {
  readonly way: Way;
  readonly groups: number;
  readonly visits: readonly GroupAtTable[];
  /** By table. */
  readonly runs: readonly number[];
  readonly resets: readonly number[];
  readonly copies: readonly number[];
  readonly limits: readonly RoundLimit[];
  readonly begins: number;
  /** `null`: as soon as it can be. */
  readonly bell: number | null;
  /** Visits that are over or run, where a period is under way: who and what is taken by them, and until when. */
  readonly underWay: readonly UnderWayVisit[];
  /** Two wishes say the opposite of each other, or one asks for what this way of moving has not. */
  readonly isAgainstItself: boolean;
}

/**
 * What these wishes ask of a plan for these visits. Wishes that were given up are simply not among them.
 * A wish about a group or table that the rotation has not asks for nothing.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = { mark: '4', run: exactly(seconds(360)), reset: exactly(seconds(60)), copies: 1, needsAdult: false, mayDo: false, beside: [] };
 * const rotation = { groups: [{ label: 'A', pupils: 4, arrives: seconds(300) }], tables: [table], adults: [], walk: seconds(30),
 *   begins: seconds(0), bell: seconds(2400), breaks: [], way: 'signal', wishes: [] };
 * askedPlan(rotation, [], [{ group: 0, table: 0 }]).away // => [{ group: 0, from: 0, to: 300 }]
 */
export function askedPlan(
  rotation: Rotation,
  wishes: readonly Wish[],
  visits: readonly GroupAtTable[],
): AskedPlan {
  const { tables, way } = rotation;
  const find = finder(rotation);
  const copies = tables.map(({ mark }) => copiesOf(wishes, mark, rotation.groups.length));
  const together = find.pairs(wishes, 'together');
  const apart = find.pairs(wishes, 'apart');
  return {
    way,
    groups: rotation.groups.length,
    visits,
    runs: tables.map(({ run }) => Math.round(run.value)),
    resets: tables.map(({ reset }) => Math.round(reset.value)),
    copies,
    limits: [
      ...(wishes.some(({ kind }) => kind === 'adults') ? hallLimits(tables, rotation.adults, copies) : []),
      ...sharedParts(wishes, find),
    ],
    walk: rotation.walk,
    begins: rotation.begins,
    bell: wishes.some(({ kind }) => kind === 'bell') ? rotation.bell : null,
    breaks: rotation.breaks,
    beside: besidePairs(tables, find.table),
    apart,
    together,
    ...timesIn(rotation, wishes, find),
    ...ordersIn(wishes, find),
    underWay: [],
    isAgainstItself:
      (way === 'free' && together.length > 0) ||
      together.some((pair) => apart.some((other) => isSamePair(pair, other))) ||
      wishes.some(
        (wish) => wish.kind === 'skips' && wishes.some((other) => isOpposite(wish, other, visits, find)),
      ),
  };
}

export interface UnderWayVisit extends GroupAtTable {
  readonly copy: number;
  readonly to: number;
}

/** Groups and tables by what they are called; -1 where there is none. */
export interface Finder {
  readonly group: (label: string) => number;
  readonly table: (mark: string) => number;
  readonly pairs: (
    wishes: readonly Wish[],
    kind: 'apart' | 'together',
  ) => readonly (readonly [number, number])[];
}

/** Looks up the groups and tables of a rotation. */
export function finder({ groups, tables }: Pick<Rotation, 'groups' | 'tables'>): Finder {
  const group = (label: string): number => groups.findIndex((each) => each.label === label);
  const table = (mark: string): number => tables.findIndex((each) => each.mark === mark);
  return {
    group,
    table,
    pairs: (wishes, kind) =>
      wishes.flatMap((wish): readonly (readonly [number, number])[] => {
        if (wish.kind !== kind) return [];
        const [one, other] = wish.groups.map(group) as [number, number];
        return one < 0 || other < 0 || one === other ? [] : [[one, other]];
      }),
  };
}

/** Of all tables that one part stands at, one at a time. */
const sharedParts = (wishes: readonly Wish[], find: Finder): readonly RoundLimit[] =>
  wishes.flatMap((wish) => {
    if (wish.kind !== 'shared part') return [];
    const tables = [...new Set(wish.tables.map(find.table))].filter((table) => table >= 0);
    return tables.length < 2 ? [] : [{ tables, capacity: 1 }];
  });

const copiesOf = (wishes: readonly Wish[], mark: string, groups: number): number =>
  wishes.reduce(
    (least, wish) => (wish.kind === 'copies' && wish.table === mark ? Math.min(least, wish.copies) : least),
    groups,
  );

function besidePairs(
  tables: readonly RotationTable[],
  find: (mark: string) => number,
): readonly (readonly [number, number])[] {
  const pairs = tables.flatMap(({ beside }, one) =>
    beside.map(find).flatMap((other): readonly (readonly [number, number])[] => {
      if (other < 0 || other === one) return [];
      return [[Math.min(one, other), Math.max(one, other)]];
    }),
  );
  return pairs.filter((pair, index) => pairs.findIndex((other) => isSamePair(pair, other)) === index);
}

const isSamePair = (pair: readonly number[], other: readonly number[]): boolean =>
  pair.every((each) => other.includes(each));

function timesIn(
  { groups }: Rotation,
  wishes: readonly Wish[],
  find: Finder,
): Pick<AskedPlan, 'away' | 'closed' | 'at'> {
  const until = (to: number | null): number => to ?? Infinity;
  return {
    away: [
      ...groups.flatMap(({ arrives }, group) => (arrives > 0 ? [{ group, from: 0, to: arrives }] : [])),
      ...wishes.flatMap((wish) =>
        wish.kind === 'away' && find.group(wish.group) >= 0
          ? [{ group: find.group(wish.group), from: wish.from, to: until(wish.to) }]
          : [],
      ),
    ],
    closed: wishes.flatMap((wish) =>
      wish.kind === 'closed' && find.table(wish.table) >= 0
        ? [{ table: find.table(wish.table), from: wish.from, to: until(wish.to) }]
        : [],
    ),
    at: wishes.flatMap((wish) =>
      wish.kind === 'at' && find.table(wish.table) >= 0 && find.group(wish.group) >= 0
        ? [{ table: find.table(wish.table), group: find.group(wish.group), time: wish.time }]
        : [],
    ),
  };
}

function ordersIn(wishes: readonly Wish[], find: Finder): Pick<AskedPlan, 'before' | 'ends'> {
  const groupOf = (label: string | null): number | null => (label === null ? null : find.group(label));
  return {
    before: wishes.flatMap((wish) => {
      if (wish.kind !== 'before') return [];
      // biome-ignore lint/suspicious/noThenProperty: the contract's own word
      const rule = { first: find.table(wish.first), then: find.table(wish.then), group: groupOf(wish.group) };
      return rule.first < 0 || rule.then < 0 || rule.group === -1 ? [] : [rule];
    }),
    ends: wishes.flatMap((wish) => {
      if (wish.kind !== 'first' && wish.kind !== 'last') return [];
      const rule = { which: wish.kind, table: find.table(wish.table), group: groupOf(wish.group) };
      return rule.table < 0 || rule.group === -1 ? [] : [rule];
    }),
  };
}

/** A visit that one wish forbids and another asks for by name. */
function isOpposite(
  skips: Extract<Wish, { kind: 'skips' }>,
  other: Wish,
  visits: readonly GroupAtTable[],
  find: Finder,
): boolean {
  const { kind } = other;
  if (kind !== 'does' && kind !== 'at' && kind !== 'first' && kind !== 'last') return false;
  const isOfGroup = other.group === skips.group || (kind === 'does' && other.group === null);
  if (other.table !== skips.table || !isOfGroup) return false;
  return visits.some(
    ({ group, table }) => group === find.group(skips.group) && table === find.table(skips.table),
  );
}
