import { type Seconds, seconds } from '../../src/core/quantities/brands.ts';
import type { Adult, Rotation, RotationTable, Way } from '../../src/core/rotation/rotation.ts';
import type { Wish, WishedThing } from '../../src/core/rotation/wish.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';
import type { Random } from '../../src/core/uncertainty/random.ts';

/** A table as most are: one of it, put back within the walk, nobody needed. */
export const tableLike = (
  mark: string,
  minutes: number,
  more: Partial<RotationTable> = {},
): RotationTable => ({
  mark,
  run: exactly(seconds(60 * minutes)),
  reset: exactly(seconds(30)),
  copies: 1,
  needsAdult: false,
  mayDo: false,
  beside: [],
  ...more,
});

/** Groups A, B, …, of which all are there from the start. */
export const rotationLike = (
  groups: number,
  tables: readonly RotationTable[],
  more: Partial<Rotation> = {},
): Rotation => ({
  groups: Array.from({ length: groups }, (_, n) => ({
    label: String.fromCharCode(65 + n),
    pupils: 4,
    arrives: seconds(0),
  })),
  tables,
  adults: [],
  walk: seconds(30),
  begins: seconds(0),
  bell: seconds(60 * 600),
  breaks: [],
  way: 'signal',
  wishes: [],
  ...more,
});

/** A wish that stands in some file. */
export const wish = (id: string, thing: WishedThing): Wish => ({ ...thing, id, path: ['wishes', id] });

export const minutes = (count: number): Seconds => seconds(60 * count);

const pick = <T>(random: Random, some: readonly T[]): T => some[Math.floor(random.even() * some.length)] as T;

/** A small rotation of any kind: tables of unequal lengths, some rules, the bell early or late. */
export function anyRotation(random: Random, way: Way, groups: number, tables: number): Rotation {
  const marks = Array.from({ length: tables }, (_, n) => String(n + 1));
  const chance = (share: number): boolean => random.even() < share;
  const tableList = marks.map((mark, n) =>
    tableLike(mark, pick(random, [3, 4, 4, 6]), {
      reset: exactly(seconds(pick(random, [0, 30, 60]))),
      copies: chance(0.2) ? 2 : 1,
      needsAdult: chance(0.3),
      mayDo: chance(0.2),
      beside: [marks[n - 1], marks[n + 1]].filter((each) => each !== undefined),
    }),
  );
  const adults: readonly Adult[] = chance(0.5)
    ? [{ label: 'P', at: null }]
    : [
        { label: 'P', at: marks.slice(0, Math.ceil(tables / 2)) },
        { label: 'Q', at: marks.slice(Math.floor(tables / 2)) },
      ];
  const base = rotationLike(groups, tableList, {
    way,
    adults,
    begins: minutes(pick(random, [0, 2])),
    bell: minutes(Math.round(tables * 4 + random.even() * groups * 5)),
    breaks: chance(0.25) ? [{ from: minutes(9), to: minutes(11) }] : [],
  });
  return {
    ...base,
    groups: base.groups.map((group) => ({ ...group, arrives: minutes(chance(0.15) ? 5 : 0) })),
    wishes: anyWishes(random, base, marks, chance),
  };
}

function anyWishes(
  random: Random,
  { groups, way }: Rotation,
  marks: readonly string[],
  chance: (share: number) => boolean,
): readonly Wish[] {
  const label = (): string => pick(random, groups).label;
  const two = (): readonly [string, string] => [groups[0]?.label ?? '', groups[1]?.label ?? ''];
  const mark = (): string => pick(random, marks);
  const things: readonly (readonly [number, WishedThing])[] = [
    [
      0.2,
      // biome-ignore lint/suspicious/noThenProperty: the contract's own word
      { kind: 'before', first: marks[0] ?? '', then: marks[1] ?? '', group: chance(0.5) ? label() : null },
    ],
    [0.1, { kind: 'first', table: mark(), group: label() }],
    [0.1, { kind: 'last', table: mark(), group: label() }],
    [0.1, { kind: 'skips', table: mark(), group: label() }],
    [0.1, { kind: 'does', table: mark(), group: label() }],
    [0.1, { kind: 'closed', table: mark(), from: minutes(6), to: chance(0.5) ? minutes(10) : null }],
    [0.1, { kind: 'away', group: label(), from: minutes(8), to: chance(0.5) ? minutes(12) : null }],
    [0.1, { kind: 'at', table: mark(), group: label(), time: minutes(6) }],
    [0.15, { kind: 'apart', groups: two() }],
    [way === 'signal' ? 0.1 : 0, { kind: 'together', groups: two() }],
    [0.15, { kind: 'shared part', part: 'sand', tables: marks.slice(0, 2) }],
  ];
  return things.flatMap(([share, thing], n) => (chance(share) ? [wish(`wish ${n}`, thing)] : []));
}
