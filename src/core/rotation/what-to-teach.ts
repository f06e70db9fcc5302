import { seconds } from '../quantities/brands.ts';
import type { Arranging } from './gain.ts';
import type { Rotation } from './rotation.ts';
import {
  isPlainlyTooMuch,
  type TableBlock,
  type TeachingPeriod,
  tableBlocks,
  waysToLeaveOut,
  withTables,
} from './table-choice.ts';
import type { LeftOut, Timetable } from './timetable.ts';

export interface TeachAsked {
  readonly rotation: Rotation;
  /** One or several periods on different days; the rotation's own beginning and bell don't count. */
  readonly periods: readonly TeachingPeriod[];
  /** Tables that are kept or left out as one, and in one period. */
  readonly together: readonly (readonly string[])[];
  /** How many timetables may be looked for. */
  readonly atMost: number;
}

/**
 * One way to teach in the time there is. `own tables`: each period has its own tables and every group does all of
 * them. `carried over`: one rotation that is broken off at the bell and goes on in the next period. `shared out`: the
 * same, with every table, and groups leave out different ones.
 */
export interface TeachPlan {
  readonly kind: 'own tables' | 'carried over' | 'shared out';
  readonly periods: readonly TaughtPeriod[];
  /** Tables that nobody does. */
  readonly leftOut: readonly string[];
  /** Where groups leave out different tables. */
  readonly notDone: readonly LeftOut[];
  readonly visits: number;
}

export interface TaughtPeriod {
  readonly tables: readonly string[];
  /** `null` where there is nothing left to teach. Times are since this period began. */
  readonly timetable: Timetable | null;
}

export interface TeachAnswer {
  /** The best first: one in which nothing is missing, then the one with the most visits. */
  readonly plans: readonly TeachPlan[];
  /** Fewer timetables could be looked for than it takes to be sure that no other leaves out less. */
  readonly isCutShort: boolean;
}

/**
 * What to teach in 40 minutes, in 60, or in two periods: which tables in which, and what is left out. Tables that may
 * be left out go first; partners stay together; a table that comes before another comes in the same period or an
 * earlier one. Where every group can't do the same tables, what the groups can share out is told beside it.
 */
export function whatToTeach(asked: TeachAsked, arranging: Arranging): TeachAnswer {
  const blocks = tableBlocks(asked.rotation, asked.together);
  const budget: Budget = { left: asked.atMost, isSpent: false };
  const ways = waysToLeaveOut(blocks);
  const own = firstOf(ways, (left) => ownTables(asked, blocks, left, arranging, budget));
  const isAllIn = own !== null && own.leftOut.length === 0;
  const carried =
    isAllIn || asked.periods.length < 2
      ? null
      : firstOf(ways, (left) => carriedOver(asked, blocks, left, arranging, budget));
  const isEnough = isAllIn || (carried !== null && carried.leftOut.length === 0);
  const shared = isEnough ? null : sharedOut(asked, blocks, arranging);
  const plans = [own, carried, shared].filter((plan) => plan !== null);
  return {
    plans: plans.sort((a, b) => isMissing(a) - isMissing(b) || b.visits - a.visits),
    isCutShort: budget.isSpent,
  };
}

const isMissing = ({ leftOut, notDone }: TeachPlan): number => (leftOut.length + notDone.length > 0 ? 1 : 0);

interface Budget {
  left: number;
  isSpent: boolean;
}

function firstOf<T, R>(list: readonly T[], find: (each: T) => R | null): R | null {
  for (const each of list) {
    const found = find(each);
    if (found !== null) return found;
  }
  return null;
}

/** Every group does everything in it, in time; `null` where that was not found. */
function wholeTimetable(rotation: Rotation, arranging: Arranging, budget: Budget): Timetable | null {
  if (isPlainlyTooMuch(rotation)) return null;
  if (budget.left <= 0) {
    budget.isSpent = true;
    return null;
  }
  budget.left -= 1;
  const found = arranging(rotation);
  return found !== null && found.leftOut.length === 0 && found.ends <= rotation.bell ? found : null;
}

function ownTables(
  { rotation, periods }: TeachAsked,
  blocks: readonly TableBlock[],
  left: readonly TableBlock[],
  arranging: Arranging,
  budget: Budget,
): TeachPlan | null {
  const kept = blocks.filter((block) => !left.includes(block));
  const fitsAlone = kept.every(({ marks }) =>
    periods.some((period, n) => !isPlainlyTooMuch(withTables(rotation, marks, period, n === 0))),
  );
  if (!fitsAlone) return null;
  const known = new Map<string, Timetable | null>();
  const timetableOf = (marks: readonly string[], period: number): Timetable | null => {
    const key = `${period} ${marks.join('\n')}`;
    const of = withTables(rotation, marks, periods[period] as TeachingPeriod, period === 0);
    if (!known.has(key)) known.set(key, wholeTimetable(of, arranging, budget));
    return known.get(key) ?? null;
  };
  return firstOf(splits(kept, periods, rotation), (split) => {
    const taught: TaughtPeriod[] = [];
    for (const [period, marks] of split.entries()) {
      const timetable = marks.length === 0 ? null : timetableOf(marks, period);
      if (marks.length > 0 && timetable === null) return null;
      taught.push({ tables: marks, timetable });
    }
    return planOf('own tables', taught, left);
  });
}

/** Every way to share blocks out over the periods that keeps the order of the tables, the most even first. */
function splits(
  blocks: readonly TableBlock[],
  periods: readonly TeachingPeriod[],
  { tables, wishes }: Rotation,
): readonly (readonly (readonly string[])[])[] {
  const count = periods.length ** blocks.length;
  const found = Array.from({ length: count }, (_, code) => {
    const periodOf = blocks.map((_, n) => Math.floor(code / periods.length ** n) % periods.length);
    return periods.map((_, period) =>
      blocks.flatMap(({ marks }, n) => (periodOf[n] === period ? marks : [])),
    );
  });
  const runs = new Map(tables.map(({ mark, run }) => [mark, run.value]));
  const room = (split: readonly (readonly string[])[]): number =>
    Math.min(
      ...split.map((marks, n) => {
        const { begins, bell } = periods[n] as TeachingPeriod;
        return bell - begins - marks.reduce((sum, mark) => sum + (runs.get(mark) ?? 0), 0);
      }),
    );
  const placeOf = (split: readonly (readonly string[])[], mark: string): number =>
    split.findIndex((marks) => marks.includes(mark));
  return found
    .filter((split) =>
      wishes.every(
        (wish) =>
          wish.kind !== 'before' ||
          placeOf(split, wish.then) < 0 ||
          placeOf(split, wish.first) <= placeOf(split, wish.then),
      ),
    )
    .map((split) => ({ split, room: room(split) }))
    .sort((a, b) => b.room - a.room)
    .map(({ split }) => split);
}

/** All periods end to end, with what lies between two of them as a break. */
function endToEnd(
  rotation: Rotation,
  marks: readonly string[],
  periods: readonly TeachingPeriod[],
): Rotation {
  const [first, ...later] = periods as [TeachingPeriod, ...TeachingPeriod[]];
  const joined = withTables(rotation, marks, first, true);
  const breaks = [...joined.breaks];
  let { bell } = joined;
  for (const each of later) {
    breaks.push({ from: bell, to: seconds(bell + each.begins) });
    bell = seconds(bell + each.bell);
  }
  return { ...joined, breaks, bell };
}

function carriedOver(
  { rotation, periods }: TeachAsked,
  blocks: readonly TableBlock[],
  left: readonly TableBlock[],
  arranging: Arranging,
  budget: Budget,
): TeachPlan | null {
  const marks = blocks.filter((block) => !left.includes(block)).flatMap((block) => block.marks);
  const timetable = wholeTimetable(endToEnd(rotation, marks, periods), arranging, budget);
  return timetable === null ? null : planOf('carried over', cutApart(timetable, periods), left);
}

function sharedOut(
  { rotation, periods }: TeachAsked,
  blocks: readonly TableBlock[],
  arranging: Arranging,
): TeachPlan | null {
  const marks = blocks.flatMap((block) => block.marks);
  const timetable = arranging(endToEnd(rotation, marks, periods));
  return timetable === null
    ? null
    : planOf('shared out', cutApart(timetable, periods), [], timetable.leftOut);
}

/** One timetable over all periods as one of each. */
function cutApart(timetable: Timetable, periods: readonly TeachingPeriod[]): readonly TaughtPeriod[] {
  let start = 0;
  return periods.map(({ bell }): TaughtPeriod => {
    const [from, to] = [start, start + bell];
    start = to;
    const own = <T extends { readonly from: number; readonly to: number }>(
      list: readonly T[],
    ): readonly T[] =>
      list
        .filter((each) => each.from >= from && each.from < to)
        .map((each) => ({
          ...each,
          from: seconds(each.from - from),
          to: seconds(Math.min(each.to, to) - from),
        }));
    const stays = own(timetable.stays);
    const firstRound = Math.min(...stays.map(({ round }) => round ?? 1));
    const ends = seconds(Math.max(0, ...stays.map((stay) => stay.to)));
    return {
      tables: [...new Set(stays.map(({ table }) => table))].sort(),
      timetable:
        stays.length === 0
          ? null
          : {
              ...timetable,
              stays: stays.map((stay) => ({
                ...stay,
                round: stay.round === null ? null : stay.round - firstRound + 1,
              })),
              rounds: timetable.rounds === null ? null : own(timetable.rounds),
              waits: own(timetable.waits),
              stands: own(timetable.stands),
              leftOut: [],
              ends,
              // Nothing is claimed of a part: the proof is of the whole.
              bound: seconds(0),
              proof: 'none',
            },
    };
  });
}

function planOf(
  kind: TeachPlan['kind'],
  periods: readonly TaughtPeriod[],
  left: readonly TableBlock[],
  notDone: readonly LeftOut[] = [],
): TeachPlan {
  return {
    kind,
    periods,
    leftOut: left.flatMap(({ marks }) => marks),
    notDone,
    visits: periods.reduce((sum, { timetable }) => sum + (timetable?.stays.length ?? 0), 0),
  };
}
