import type { Rotation } from './rotation.ts';
import type { Stay, Timetable } from './timetable.ts';

/** A rule and what breaks it, for whoever looks into it. */
export interface BrokenRule {
  readonly rule: string;
  readonly about: string;
}

export const stayText = ({ group, table, from, to }: Stay): string => `${group} ${table} ${from}-${to}`;

export const breaks = (rule: string, ...stays: readonly Stay[]): BrokenRule => ({
  rule,
  about: stays.map(stayText).join(', '),
});

/** All pairs of stays, the earlier one first. */
export const pairsOfStays = (stays: readonly Stay[]): readonly (readonly [Stay, Stay])[] =>
  stays.flatMap((one, n) =>
    stays
      .slice(n + 1)
      .map((other) => (one.from <= other.from ? ([one, other] as const) : ([other, one] as const))),
  );

export const overlap = (
  one: { readonly from: number; readonly to: number },
  other: { readonly from: number; readonly to: number },
): boolean => one.from < other.to && other.from < one.to;

/** Each visit as long as its table, between beginning and bell, over no break; rounds in order and long enough. */
export function brokenByTimes(rotation: Rotation, timetable: Timetable): readonly BrokenRule[] {
  const { stays, rounds } = timetable;
  const runOf = new Map(rotation.tables.map(({ mark, run }) => [mark, run.value]));
  const last = Math.max(rotation.begins, ...stays.map(({ to }) => to), ...(rounds ?? []).map(({ to }) => to));
  return [
    ...stays
      .filter(({ from, to, table }) => to - from !== runOf.get(table))
      .map((stay) => breaks('length', stay)),
    ...stays.filter(({ from }) => from < rotation.begins).map((stay) => breaks('begins', stay)),
    ...stays.filter(({ to }) => to > rotation.bell).map((stay) => breaks('bell', stay)),
    ...stays
      .filter((stay) => rotation.breaks.some((each) => overlap(each, stay)))
      .map((stay) => breaks('break', stay)),
    ...(stays.length > 0 && timetable.ends !== last
      ? [{ rule: 'ends', about: `${timetable.ends}, not ${last}` }]
      : []),
    ...(timetable.bound > timetable.ends ? [{ rule: 'bound', about: String(timetable.bound) }] : []),
    ...(rotation.way === 'signal' ? brokenByRounds(rotation, timetable) : []),
  ];
}

function brokenByRounds(
  { walk, tables, bell, breaks: shut }: Rotation,
  { stays, rounds }: Timetable,
): readonly BrokenRule[] {
  if (rounds === null) return [{ rule: 'rounds', about: 'none' }];
  const resetOf = new Map(tables.map(({ mark, reset }) => [mark, reset.value]));
  const isOff = (stay: Stay): boolean => {
    const round = rounds[(stay.round ?? 0) - 1];
    if (round === undefined) return true;
    return stay.from !== round.from || stay.to > round.to;
  };
  return [
    ...stays.filter(isOff).map((stay) => breaks('round', stay)),
    ...rounds.flatMap(({ from, to }, n) => {
      const before = rounds[n - 1];
      const about = `round ${n + 1}`;
      const late = stays.filter(
        (stay) => stay.round === n && stay.to + (resetOf.get(stay.table) ?? 0) > from,
      );
      return [
        ...(before !== undefined && before.to + walk > from ? [{ rule: 'walk between rounds', about }] : []),
        ...(late.length > 0 && n > 0 ? [breaks('reset before a round', ...late)] : []),
        ...(to > bell ? [{ rule: 'bell', about }] : []),
        ...(shut.some((each) => overlap(each, { from, to })) ? [{ rule: 'break', about }] : []),
      ];
    }),
  ];
}

/** A group is there, at one table at a time, walks between them, and repeats none. */
export function brokenByGroups(
  { groups, walk, wishes }: Rotation,
  { stays }: Timetable,
): readonly BrokenRule[] {
  return groups.flatMap(({ label, arrives }) => {
    const own = stays.filter(({ group }) => group === label);
    const away = wishes.flatMap((wish) =>
      wish.kind === 'away' && wish.group === label ? [{ from: wish.from, to: wish.to ?? Infinity }] : [],
    );
    return [
      ...pairsOfStays(own).flatMap(([one, other]) => [
        ...(one.to + walk > other.from ? [breaks('one place at a time', one, other)] : []),
        ...(one.table === other.table ? [breaks('repeats', one, other)] : []),
      ]),
      ...own.filter(({ from }) => from < arrives).map((stay) => breaks('arrives', stay)),
      ...own.filter((stay) => away.some((each) => overlap(each, stay))).map((stay) => breaks('away', stay)),
    ];
  });
}

/** A copy takes one group at a time and is put back; a closed table takes none; each that needs one has an adult. */
export function brokenByTables(rotation: Rotation, timetable: Timetable): readonly BrokenRule[] {
  const { stays } = timetable;
  return rotation.tables.flatMap(({ mark, copies, reset, needsAdult }) => {
    const own = stays.filter(({ table }) => table === mark);
    const most = rotation.wishes.reduce(
      (least, wish) => (wish.kind === 'copies' && wish.table === mark ? wish.copies : least),
      copies,
    );
    const closed = rotation.wishes.flatMap((wish) =>
      wish.kind === 'closed' && wish.table === mark ? [{ from: wish.from, to: wish.to ?? Infinity }] : [],
    );
    return [
      ...own.filter(({ copy }) => copy < 1 || copy > most).map((stay) => breaks('copies', stay)),
      ...own
        .filter((stay) => closed.some((each) => overlap(each, stay)))
        .map((stay) => breaks('closed', stay)),
      ...pairsOfStays(own)
        .filter(([one, other]) => one.copy === other.copy && one.to + reset.value > other.from)
        .map(([one, other]) => breaks('one group at a time', one, other)),
      ...(needsAdult ? own.flatMap((stay) => brokenByStands(rotation, timetable, stay, reset.value)) : []),
    ];
  });
}

/** At every moment of a visit, and until the table is put back, one adult stands there who may; nobody stands at two. */
function brokenByStands(
  { adults, way }: Rotation,
  { stands }: Timetable,
  stay: Stay,
  reset: number,
): readonly BrokenRule[] {
  const until = way === 'free' ? stay.to + reset : stay.to;
  const here = stands
    .filter(({ table, copy }) => table === stay.table && copy === stay.copy)
    .filter((stand) => overlap(stand, { from: stay.from, to: until }))
    .sort((a, b) => a.from - b.from);
  let covered: number = stay.from;
  for (const { from, to } of here) if (from <= covered) covered = Math.max(covered, to);
  const mayNot = here.filter(({ adult, table }) => {
    const at = adults.find(({ label }) => label === adult)?.at;
    return at === undefined || (at !== null && !at.includes(table));
  });
  const twice = here.filter((stand) =>
    stands.some((other) => other !== stand && other.adult === stand.adult && overlap(stand, other)),
  );
  return [
    ...(covered < until ? [breaks('no adult', stay)] : []),
    ...(mayNot.length > 0 ? [breaks('adult may not stand there', stay)] : []),
    ...(twice.length > 0 ? [breaks('adult at two places', stay)] : []),
  ];
}
