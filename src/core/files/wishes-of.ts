import { type Seconds, seconds } from '../quantities/brands.ts';
import type { Wish, WishedThing } from '../rotation/wish.ts';
import type { ActivityTable } from './activity.ts';
import type { ClassOfDay } from './class-plan.ts';
import { intoPeriod, stretchOf } from './class-plan.ts';
import type { Path } from './context.ts';
import type { GroupsWords, WishWords } from './day-words.ts';

interface Period {
  readonly starts: Seconds | null;
  readonly lasts: Seconds;
}

/** Everything that the activity and the visit wish of one class's plan, each with its place. */
export function wishesOf(
  ofClass: ClassOfDay,
  period: Period,
  tables: readonly ActivityTable[],
  groups: readonly string[],
): readonly Wish[] {
  const { day, label } = ofClass;
  return [
    ...always(ofClass),
    ...tables.flatMap(orderOf),
    ...day.wishes
      .filter((words) => words.ofClass === null || words.ofClass === label)
      .flatMap((words) => wishesIn(words, period, groups)),
    ...day.closed.flatMap(({ table, from, until, path }): readonly Wish[] => {
      const stretch = stretchOf(from, until, period);
      return stretch === null ? [] : [wishAt(path, { kind: 'closed', table, ...stretch })];
    }),
    ...day.apart.flatMap((words) => pairs(words, 'apart', groups)),
    ...day.together.flatMap((words) => pairs(words, 'together', groups)),
  ];
}

/** Everybody is done by the bell, with the adults that there are. */
const always = ({ visit, day }: ClassOfDay): readonly Wish[] => [
  { kind: 'bell', id: 'bell', path: visit?.period == null ? null : ['period'] },
  { kind: 'adults', id: 'adults', path: adultsAt(visit?.helpers ?? null, day.adults !== null) },
];

const adultsAt = (helpers: number | null, areListed: boolean): Path | null => {
  if (areListed) return ['adults'];
  return helpers === null ? null : ['helpers'];
};

/** The order that the activity asks of its tables; no place in the visit file. */
const orderOf = ({ mark, stay }: ActivityTable): readonly Wish[] =>
  stay.after.map((first) => ({
    kind: 'before',
    first,
    // biome-ignore lint/suspicious/noThenProperty: the contract's own word
    then: mark,
    group: null,
    id: `table ${mark} after ${first}`,
    path: null,
  }));

function wishesIn(words: WishWords, period: Period, all: readonly string[]): readonly Wish[] {
  const at = (key: string, thing: WishedThing): Wish => wishAt([...words.path, key], thing);
  const known = words.groups?.filter((group) => all.includes(group)) ?? null;
  const each: readonly (string | null)[] = known ?? [null];
  const named = known ?? all;
  const { first, last, order, away } = words;
  const time = words.at === null ? null : intoPeriod(words.at.time, period);
  const gone = away === null ? null : stretchOf(away.from, away.until, period);
  return [
    ...(first === null ? [] : each.map((group) => at('first', { kind: 'first', table: first, group }))),
    ...(last === null ? [] : each.map((group) => at('last', { kind: 'last', table: last, group }))),
    ...words.mustDo.flatMap((table) => each.map((group) => at('must do', { kind: 'does', table, group }))),
    ...words.skips.flatMap((table) => named.map((group) => at('skips', { kind: 'skips', table, group }))),
    ...(words.at === null || time === null
      ? []
      : named.map((group) => at('at', { kind: 'at', table: words.at?.table ?? '', group, time }))),
    ...(order?.after ?? []).flatMap((earlier) =>
      each.map((group) =>
        at('after', {
          kind: 'before',
          first: earlier,
          // biome-ignore lint/suspicious/noThenProperty: the contract's own word
          then: order?.table ?? '',
          group,
        }),
      ),
    ),
    ...(gone === null ? [] : named.map((group) => at('away from', { kind: 'away', group, ...gone }))),
  ];
}

/** Of three groups that want to be apart, each two do. */
const pairs = (
  { groups, path }: GroupsWords,
  kind: 'apart' | 'together',
  all: readonly string[],
): readonly Wish[] =>
  groups.flatMap((one, n) =>
    groups
      .slice(n + 1)
      .flatMap((other) =>
        all.includes(one) && all.includes(other) ? [wishAt(path, { kind, groups: [one, other] })] : [],
      ),
  );

/** A wish is told from the others by its place and by what it is about. */
function wishAt(path: Path, thing: WishedThing): Wish {
  const about = 'group' in thing && thing.group !== null ? `/${thing.group}` : '';
  const table = 'table' in thing ? `/${thing.table}` : '';
  const both = 'groups' in thing ? `/${thing.groups.join('+')}` : '';
  const earlier = 'first' in thing ? `/${thing.first}` : '';
  return { ...thing, id: `${path.join('/')}${table}${earlier}${about}${both}`, path };
}

/** When each group comes, where the visit says that it is late. */
export const arrivalsOf = ({ day, label }: ClassOfDay, period: Period): ReadonlyMap<string, Seconds> =>
  new Map(
    day.wishes
      .filter((words) => words.ofClass === null || words.ofClass === label)
      .flatMap(({ comesAt, groups }) => {
        const at = comesAt === null ? null : intoPeriod(comesAt, period);
        return at === null ? [] : (groups ?? []).map((group) => [group, seconds(at)] as const);
      }),
  );
