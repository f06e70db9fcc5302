import type { Rotation } from '../../src/core/rotation/rotation.ts';
import type { MidPeriod } from './random-histories.ts';

/**
 * What is left of a period, worked out anew from what the words mean and with nothing of the program's own: for a
 * judge that lists every plan.
 */
export interface FromNow {
  readonly groups: readonly string[];
  readonly visits: readonly Visit[];
  readonly begins: number;
  readonly bell: number;
  readonly held: readonly (Visit & {
    readonly until: number;
    readonly ready: number;
    readonly round: number | null;
  })[];
  readonly runOf: (table: string) => number;
  readonly resetOf: (table: string) => number;
  readonly copiesOf: (table: string) => number;
  readonly isOrdinary: (table: string) => boolean;
  /** Times at which this visit can't be. */
  readonly shut: (visit: Visit) => readonly { readonly from: number; readonly to: number }[];
  /** Whether the adults and the parts that tables share are enough for these tables, as far as the last one goes. */
  readonly canAttend: (tables: readonly string[]) => boolean;
  readonly areNear: (one: string, other: string) => boolean;
  readonly ahead: readonly (Visit & { readonly round: number | null; readonly from: number })[];
}

export interface Visit {
  readonly group: string;
  readonly table: string;
}

export function periodFromNow({ rotation, timetable, history, now }: MidPeriod): FromNow {
  const { tables, walk, way, wishes } = rotation;
  const changes = history.changes;
  const find = (mark: string): Rotation['tables'][number] => {
    const table = tables.find((each) => each.mark === mark);
    if (table === undefined) throw new Error(`no table ${mark}`);
    return table;
  };
  const isBroken = (table: string, copy: number): boolean =>
    changes.some((each) => each.kind === 'broken' && each.table === table && (each.copy ?? copy) === copy);
  const pauses = [
    ...rotation.breaks,
    ...changes.flatMap((each) => (each.kind === 'break' ? [{ from: each.from, to: each.until }] : [])),
  ].sort((a, b) => a.from - b.from);
  const held = history.done
    .filter(({ to, table, copy }) => to !== null || !isBroken(table, copy))
    .map(({ group, table, from, to }) => {
      let until: number = to ?? from + find(table).run.value;
      if (to === null) {
        for (const pause of pauses)
          if (pause.to > from && pause.from < until) until += pause.to - Math.max(pause.from, from);
        until = Math.max(until, now);
      }
      const round =
        timetable.stays.find((stay) => stay.group === group && stay.table === table)?.round ?? null;
      return { group, table, until, ready: until + find(table).reset.value, round };
    });
  const isHeld = ({ group, table }: Visit): boolean =>
    held.some((each) => each.group === group && each.table === table);
  const begins = Math.max(
    rotation.begins,
    now,
    ...(way === 'signal' ? held.map(({ until, ready }) => Math.max(until + walk, ready)) : []),
  );
  const bell = changes.reduce(
    (last: number, each) => (each.kind === 'bell' ? each.bell : last),
    rotation.bell,
  );
  const brokenUntil = (table: string): number =>
    Math.max(
      0,
      ...changes.map((each) =>
        each.kind === 'broken' && each.table === table && each.copy === null ? (each.until ?? Infinity) : 0,
      ),
    );
  const copiesOf = (table: string): number =>
    find(table).copies -
    changes.filter((each) => each.kind === 'broken' && each.table === table && each.copy !== null).length;
  const shut = ({ group, table }: Visit): readonly { readonly from: number; readonly to: number }[] => [
    ...pauses,
    { from: 0, to: rotation.groups.find(({ label }) => label === group)?.arrives ?? 0 },
    ...changes.flatMap((each) =>
      each.kind === 'late' && each.group === group ? [{ from: 0, to: each.until as number }] : [],
    ),
    { from: now, to: brokenUntil(table) },
    ...wishes.flatMap((wish) =>
      (wish.kind === 'closed' && wish.table === table) || (wish.kind === 'away' && wish.group === group)
        ? [{ from: wish.from as number, to: wish.to ?? Infinity }]
        : [],
    ),
  ];
  const isShutFromNow = (visit: Visit): boolean =>
    wishes.some(
      (wish) =>
        wish.kind === 'closed' &&
        wish.table === visit.table &&
        wish.from <= begins &&
        (wish.to ?? Infinity) >= bell,
    ) ||
    (brokenUntil(visit.table) >= bell && now <= begins);
  const isSkipped = ({ group, table }: Visit): boolean =>
    wishes.some((wish) => wish.kind === 'skips' && wish.group === group && wish.table === table);
  const stood = ({ group, table }: Visit): boolean =>
    timetable.stays.some((stay) => stay.group === group && stay.table === table);
  const isTooLate = ({ group, table }: Visit): boolean =>
    wishes.some(
      (wish) =>
        wish.kind === 'before' &&
        wish.first === table &&
        (wish.group === null || wish.group === group) &&
        isHeld({ group, table: wish.then }),
    );
  const adults = rotation.adults.filter(
    ({ label }) => !changes.some((each) => each.kind === 'adult gone' && each.adult === label),
  );
  return {
    groups: rotation.groups.map(({ label }) => label),
    visits: rotation.groups
      .flatMap(({ label }) => tables.map(({ mark }) => ({ group: label, table: mark })))
      .filter(
        (visit) =>
          stood(visit) &&
          !isHeld(visit) &&
          !isShutFromNow(visit) &&
          !isSkipped(visit) &&
          !isTooLate(visit) &&
          copiesOf(visit.table) > 0,
      ),
    begins,
    bell,
    held,
    runOf: (table) => find(table).run.value,
    resetOf: (table) => find(table).reset.value,
    copiesOf,
    isOrdinary: (table) => !find(table).mayDo,
    shut,
    canAttend: (some) => {
      const needing = some.filter((table) => find(table).needsAdult);
      const last = some.at(-1) as string;
      const isTaken = wishes.some(
        (wish) =>
          wish.kind === 'shared part' &&
          wish.tables.includes(last) &&
          some.slice(0, -1).some((table) => wish.tables.includes(table)),
      );
      if (isTaken) return false;
      if (!find(last).needsAdult) return true;
      return subsetsWith(needing, needing.length - 1).every(
        (set) =>
          adults.filter(({ at }) => at === null || set.some((table) => at.includes(table))).length >=
          set.length,
      );
    },
    areNear: (one, other) =>
      one === other || find(one).beside.includes(other) || find(other).beside.includes(one),
    ahead: timetable.stays.filter((stay) => !isHeld(stay)),
  };
}

/** Every set of some of these with the one at this place among them. */
function subsetsWith(all: readonly string[], place: number): readonly (readonly string[])[] {
  return Array.from({ length: 2 ** all.length }, (_, set) => set)
    .filter((set) => Math.floor(set / 2 ** place) % 2 === 1)
    .map((set) => all.filter((_, n) => Math.floor(set / 2 ** n) % 2 === 1));
}
