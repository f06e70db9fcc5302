import type { Rotation } from './rotation.ts';
import type { Stay, Timetable } from './timetable.ts';

/** A timetable as what has to be over before what, for playing it through many times. */
export interface ChancePlan {
  /** In the order of time. */
  readonly stays: readonly PlannedStay[];
  readonly groups: readonly PlannedGroup[];
  readonly copies: readonly PlannedCopy[];
  readonly rounds: readonly PlannedRound[];
}

export interface PlannedGroup {
  readonly label: string;
  /** In order. */
  readonly stays: readonly number[];
  readonly notBefore: number;
  readonly shut: readonly Stretch[];
}

/** One copy of a table that somebody comes to. */
export interface PlannedCopy {
  readonly table: string;
  readonly copy: number;
  readonly stays: readonly number[];
  readonly shut: readonly Stretch[];
}

export interface PlannedStay {
  readonly group: number;
  /** Place of its times in the draws. */
  readonly pair: number;
  /** How long it is by the plan. */
  readonly length: number;
  readonly notBefore: number;
  /** When group or table are not to be had, the breaks among them. */
  readonly shut: readonly Stretch[];
  /** What has to be over. */
  readonly after: readonly After[];
  /** What is known of it by now; `null` where it has not begun. */
  readonly known: KnownStay | null;
}

/** A stay that has begun: it is not over before `least`, and where it is over it was at `least`. */
export interface KnownStay {
  readonly from: number;
  readonly least: number;
  readonly isOver: boolean;
}

/**
 * `walk`: the same group before. `reset`: the same copy before. `adult`: somebody who stands there too, until it is
 * put back. `apart`: a group to be apart from.
 */
export interface After {
  readonly stay: number;
  readonly needs: 'walk' | 'reset' | 'adult' | 'apart';
}

export interface PlannedRound {
  readonly from: number;
  readonly to: number;
  readonly stays: readonly number[];
  readonly notBefore: number;
  readonly shut: readonly Stretch[];
  /** Whether its signal has been given. */
  readonly hasBegun: boolean;
}

export interface Stretch {
  readonly from: number;
  /** `Infinity` where it doesn't end. */
  readonly to: number;
}

/**
 * What a timetable holds fast when its times turn out otherwise: the order of the tables for each group, of the
 * groups at each copy, of the tables of each adult, and of stays that may not be at the same time. Visits of groups or
 * tables that the rotation doesn't know are left aside, and so is an adult who comes to a stay that has begun.
 * What was over or had begun by `now` (`null`: before the period) is known, and nothing else begins before it.
 */
export function chancePlan(rotation: Rotation, timetable: Timetable, now: number | null = null): ChancePlan {
  const soFar = now ?? 0;
  const hasBegun = (from: number): boolean => now !== null && from < now;
  const groupOf = placesOf(rotation.groups.map(({ label }) => label));
  const tableOf = placesOf(rotation.tables.map(({ mark }) => mark));
  const order = timetable.stays
    .filter(({ group, table }) => groupOf.has(group) && tableOf.has(table))
    .sort((a, b) => a.from - b.from || a.to - b.to);
  const copies = copiesIn(rotation, order);
  const groups = rotation.groups.map(
    ({ label, arrives }): PlannedGroup => ({
      label,
      stays: order.flatMap(({ group }, n) => (group === label ? [n] : [])),
      notBefore: Math.max(rotation.begins, arrives),
      shut: inOrder([...rotation.breaks, ...stretchesOf(rotation, 'away', label)]),
    }),
  );
  const after = arcs(rotation, timetable, order);
  const stays = order.map((stay, n): PlannedStay => {
    const [group, table] = [groupOf.get(stay.group) ?? 0, tableOf.get(stay.table) ?? 0];
    return {
      group,
      pair: group * rotation.tables.length + table,
      length: rotation.tables[table]?.run.value ?? 0,
      notBefore: Math.max(soFar, groups[group]?.notBefore ?? 0, isFixed(rotation, stay) ? stay.from : 0),
      shut: inOrder([...(groups[group]?.shut ?? []), ...stretchesOf(rotation, 'closed', stay.table)]),
      after: after[n] ?? [],
      known: hasBegun(stay.from)
        ? { from: stay.from, least: Math.min(stay.to, soFar), isOver: stay.to <= soFar }
        : null,
    };
  });
  const rounds = (timetable.rounds ?? []).map(({ from, to }, n): PlannedRound => {
    const inRound = order.flatMap(({ round }, stay) => (round === n + 1 ? [stay] : []));
    const own = inRound.map((stay) => stays[stay] as PlannedStay);
    return {
      from,
      to,
      stays: inRound,
      notBefore: Math.max(soFar, rotation.begins, ...own.map(({ notBefore }) => notBefore)),
      shut: inOrder([...rotation.breaks, ...own.flatMap(({ shut }) => shut)]),
      hasBegun: hasBegun(from),
    };
  });
  return { stays, groups, copies, rounds };
}

function copiesIn(rotation: Rotation, order: readonly Stay[]): readonly PlannedCopy[] {
  const isSame = (a: Stay, b: Stay): boolean => a.table === b.table && a.copy === b.copy;
  return order
    .filter((stay, n) => order.findIndex((other) => isSame(other, stay)) === n)
    .map((stay) => ({
      table: stay.table,
      copy: stay.copy,
      stays: order.flatMap((other, n) => (isSame(other, stay) ? [n] : [])),
      shut: inOrder([...rotation.breaks, ...stretchesOf(rotation, 'closed', stay.table)]),
    }));
}

const placesOf = (names: readonly string[]): ReadonlyMap<string, number> =>
  new Map(names.map((name, n) => [name, n]));

/** A group that has to be there at a time doesn't begin sooner than planned: it might be done before. */
const isFixed = ({ wishes }: Rotation, { group, table }: Stay): boolean =>
  wishes.some((wish) => wish.kind === 'at' && wish.group === group && wish.table === table);

function stretchesOf({ wishes }: Rotation, kind: 'away' | 'closed', whose: string): readonly Stretch[] {
  return wishes.flatMap((wish): readonly Stretch[] => {
    const isOurs = wish.kind === kind && (wish.kind === 'away' ? wish.group === whose : wish.table === whose);
    return isOurs ? [{ from: wish.from, to: wish.to ?? Infinity }] : [];
  });
}

const inOrder = (stretches: readonly Stretch[]): readonly Stretch[] =>
  [...stretches].sort((a, b) => a.from - b.from || a.to - b.to);

/** By stay: what has to be over before it. */
function arcs(
  rotation: Rotation,
  timetable: Timetable,
  order: readonly Stay[],
): readonly (readonly After[])[] {
  const attendedBy = order.map((stay) => adultsAt(rotation, timetable, stay));
  const mustBeApart = apartIn(rotation);
  const resetOf = new Map(rotation.tables.map(({ mark, reset }) => [mark, reset.value]));
  const putBackAt = ({ table, to }: Stay): number => to + (resetOf.get(table) ?? 0);
  return order.map((stay, n) => {
    const last = (is: (other: Stay, at: number) => boolean): number =>
      order.findLastIndex((other, at) => at < n && is(other, at));
    const before: readonly After[] = [
      { stay: last(({ group }) => group === stay.group), needs: 'walk' },
      { stay: last(({ table, copy }) => table === stay.table && copy === stay.copy), needs: 'reset' },
      ...(attendedBy[n] ?? []).map(
        (adult): After => ({
          stay: last((other, at) => putBackAt(other) <= stay.from && (attendedBy[at] ?? []).includes(adult)),
          needs: 'adult',
        }),
      ),
      ...order
        .slice(0, n)
        .flatMap((other, at): readonly After[] =>
          other.to <= stay.from && mustBeApart(other, stay) ? [{ stay: at, needs: 'apart' }] : [],
        ),
    ];
    return before.filter((each) => each.stay >= 0);
  });
}

/** Who stands there meanwhile, where somebody has to. */
function adultsAt({ tables }: Rotation, { stands }: Timetable, stay: Stay): readonly string[] {
  if (!tables.some(({ mark, needsAdult }) => needsAdult && mark === stay.table)) return [];
  return stands
    .filter(
      ({ table, copy, from, to }) =>
        table === stay.table && copy === stay.copy && from < stay.to && to > stay.from,
    )
    .map(({ adult }) => adult);
}

function apartIn({ wishes, tables }: Rotation): (a: Stay, b: Stay) => boolean {
  const besideOf = new Map(tables.map(({ mark, beside }) => [mark, beside]));
  const areNear = (a: string, b: string): boolean =>
    a === b || (besideOf.get(a) ?? []).includes(b) || (besideOf.get(b) ?? []).includes(a);
  const pairs = wishes.flatMap((wish) => (wish.kind === 'apart' ? [wish.groups] : []));
  return (a, b) =>
    areNear(a.table, b.table) &&
    pairs.some((pair) => a.group !== b.group && pair.includes(a.group) && pair.includes(b.group));
}
