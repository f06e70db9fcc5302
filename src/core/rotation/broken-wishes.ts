import { type BrokenRule, breaks, overlap, pairsOfStays } from './broken-rules.ts';
import type { Rotation } from './rotation.ts';
import type { Stay, Timetable } from './timetable.ts';
import type { Wish } from './wish.ts';

/** What a timetable breaks of the wishes for order, times, neighbours and visits. */
export const brokenByWishes = (rotation: Rotation, timetable: Timetable): readonly BrokenRule[] => [
  ...rotation.wishes.flatMap((wish) => brokenByWish(rotation, timetable, wish)),
  ...neitherDoneNorLeftOut(rotation, timetable),
];

function brokenByWish(rotation: Rotation, timetable: Timetable, wish: Wish): readonly BrokenRule[] {
  const { stays } = timetable;
  const isAt = (stay: Stay, table: string, group: string | null): boolean =>
    stay.table === table && (group === null || stay.group === group);
  const missing = (isMissing: boolean): readonly BrokenRule[] =>
    isMissing ? [{ rule: wish.kind, about: wish.id }] : [];
  const heldBy = (stay: Stay): { readonly from: number; readonly to: number } => {
    const reset = rotation.tables.find(({ mark }) => mark === stay.table)?.reset.value ?? 0;
    return { from: stay.from, to: stay.to + reset };
  };
  switch (wish.kind) {
    case 'does':
      return missing(
        rotation.groups.some(
          ({ label }) =>
            (wish.group === null || wish.group === label) &&
            !stays.some((stay) => isAt(stay, wish.table, label)),
        ),
      );
    case 'skips':
      return missing(stays.some((stay) => isAt(stay, wish.table, wish.group)));
    case 'at':
      return missing(
        !stays.some((stay) => isAt(stay, wish.table, wish.group) && isThere(timetable, stay, wish.time)),
      );
    case 'before':
      return pairsOfStays(stays)
        .filter(
          ([early, late]) =>
            early.group === late.group && (wish.group === null || wish.group === early.group),
        )
        .filter(([early, late]) => early.table === wish.then && late.table === wish.first)
        .map(([early, late]) => breaks('before', early, late));
    case 'first':
    case 'last': {
      const own = stays.filter((stay) => isAt(stay, wish.table, wish.group));
      const isOff = (stay: Stay): boolean =>
        stays.some(
          (other) =>
            other !== stay &&
            other.group === stay.group &&
            (wish.kind === 'first' ? other.from < stay.from : other.from > stay.from),
        );
      return [
        ...own.filter(isOff).map((stay) => breaks(wish.kind, stay)),
        ...missing(wish.group !== null && own.length === 0),
      ];
    }
    case 'apart':
    case 'together':
      return pairsOfStays(stays)
        .filter(([one, other]) => one.group !== other.group)
        .filter((pair) => pair.every(({ group }) => wish.groups.includes(group)))
        .filter(([one, other]) => overlap(spanOf(timetable, one), spanOf(timetable, other)))
        .filter(([one, other]) => areNear(rotation, one.table, other.table) === (wish.kind === 'apart'))
        .map(([one, other]) => breaks(wish.kind, one, other));
    case 'shared part':
      return pairsOfStays(stays)
        .filter((pair) => pair.every(({ table }) => wish.tables.includes(table)))
        .filter(([one, other]) => overlap(heldBy(one), heldBy(other)))
        .map(([one, other]) => breaks('shared part', one, other));
    default:
      return [];
  }
}

/** Where all move on a signal, a group is at its table until the signal. */
const spanOf = ({ rounds }: Timetable, stay: Stay): { readonly from: number; readonly to: number } =>
  stay.round === null ? stay : (rounds?.[stay.round - 1] ?? stay);

const isThere = (timetable: Timetable, stay: Stay, time: number): boolean => {
  const { from, to } = spanOf(timetable, stay);
  return from <= time && time < to;
};

const areNear = ({ tables }: Rotation, one: string, other: string): boolean => {
  const isBeside = (mark: string, next: string): boolean =>
    tables.some((table) => table.mark === mark && table.beside.includes(next));
  return one === other || isBeside(one, other) || isBeside(other, one);
};

/** Every visit that is wanted is in the timetable or told as left out, and not both. */
function neitherDoneNorLeftOut(rotation: Rotation, { stays, leftOut }: Timetable): readonly BrokenRule[] {
  const { groups, tables, wishes, begins, bell } = rotation;
  const has = (some: readonly { group: string; table: string }[], group: string, table: string): boolean =>
    some.some((each) => each.group === group && each.table === table);
  const isUnwanted = (group: string, table: string, copies: number): boolean =>
    copies < 1 ||
    wishes.some(
      (wish) =>
        (wish.kind === 'skips' && wish.group === group && wish.table === table) ||
        (wish.kind === 'copies' && wish.table === table && wish.copies < 1) ||
        (wish.kind === 'closed' &&
          wish.table === table &&
          wish.from <= begins &&
          (wish.to ?? Infinity) >= bell),
    );
  return groups.flatMap(({ label }) =>
    tables.flatMap(({ mark, copies }): readonly BrokenRule[] => {
      const about = `${label} ${mark}`;
      const isDone = has(stays, label, mark);
      const isOut = has(leftOut, label, mark);
      if (isDone && isOut) return [{ rule: 'left out and done', about }];
      if (!isDone && !isOut && !isUnwanted(label, mark, copies))
        return [{ rule: 'neither done nor left out', about }];
      return [];
    }),
  );
}
