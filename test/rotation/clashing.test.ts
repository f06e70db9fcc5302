import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/core/rotation/arrange.ts';
import type { Rotation } from '../../src/core/rotation/rotation.ts';
import type { Wish } from '../../src/core/rotation/wish.ts';
import { minutes, rotationLike, tableLike, wish } from './small-rotations.ts';

const EFFORT = { seed: 1, steps: 20_000 };

/** Four tables in a row and four groups; there is time for everything twice. */
const plain = (wishes: readonly Wish[], more: Partial<Rotation> = {}): Rotation =>
  rotationLike(
    4,
    ['1', '2', '3', '4'].map((mark, n) =>
      tableLike(mark, 5, {
        beside: [String(n), String(n + 2)].filter((each) => each !== '0' && each !== '5'),
      }),
    ),
    { bell: minutes(50), wishes, ...more },
  );

const needingAdults = (rotation: Rotation, marks: readonly string[]): Rotation => ({
  ...rotation,
  tables: rotation.tables.map((table) => ({ ...table, needsAdult: marks.includes(table.mark) })),
});

const inOrder = (first: string, then: string): Wish =>
  wish(`${first} before ${then}`, { kind: 'before', first, then, group: null });
const at = (group: string, table: string, time: number): Wish =>
  wish(`${group} at ${table}`, { kind: 'at', group, table, time: minutes(time) });
const away = (group: string, from: number, to: number | null): Wish =>
  wish(`${group} away`, { kind: 'away', group, from: minutes(from), to: to === null ? null : minutes(to) });
const closed = (table: string, from: number, to: number | null): Wish =>
  wish(`${table} closed`, {
    kind: 'closed',
    table,
    from: minutes(from),
    to: to === null ? null : minutes(to),
  });
const first = (group: string, table: string): Wish =>
  wish(`${group} first ${table}`, { kind: 'first', group, table });

/** What is wished, beside what can be kept; what can't be kept together, whichever way groups move. */
const impossible: readonly (readonly [string, Rotation, readonly string[]])[] = [
  [
    'an order that comes back to its beginning',
    plain([inOrder('1', '2'), inOrder('2', '3'), inOrder('3', '1'), inOrder('1', '4')]),
    ['1 before 2', '2 before 3', '3 before 1'],
  ],
  [
    'two groups that are to be apart and together',
    plain([
      wish('apart', { kind: 'apart', groups: ['A', 'B'] }),
      wish('together', { kind: 'together', groups: ['B', 'A'] }),
      wish('others', { kind: 'apart', groups: ['C', 'D'] }),
    ]),
    ['apart', 'together'],
  ],
  [
    'a table that needs somebody where nobody may stand',
    needingAdults(plain([], { adults: [{ label: 'P', at: ['1'] }] }), ['1', '3']),
    ['adults', 'does 3'],
  ],
  [
    'a bell before a table that all have to do',
    plain([wish('all do 1', { kind: 'does', table: '1', group: null })], { bell: minutes(20) }),
    ['all do 1', 'bell', 'copies 1'],
  ],
  [
    'a closed table that has to be done',
    plain([
      closed('2', 0, null),
      wish('B does 2', { kind: 'does', group: 'B', table: '2' }),
      inOrder('1', '3'),
    ]),
    ['2 closed', 'B does 2'],
  ],
  [
    'a group that is away for too long',
    plain([away('C', 4, null), wish('C does 4', { kind: 'does', group: 'C', table: '4' })]),
    ['C away', 'C does 4'],
  ],
  [
    'two groups at one table at one time',
    plain([at('A', '1', 7), at('B', '1', 7), at('C', '2', 7)]),
    ['A at 1', 'B at 1', 'copies 1'],
  ],
  [
    'two tables that are each to be the first',
    plain([first('D', '1'), first('D', '2'), first('A', '1')]),
    ['D first 1', 'D first 2'],
  ],
  [
    'a first table that another has to come before',
    plain([first('A', '2'), inOrder('1', '2'), inOrder('2', '3')]),
    ['1 before 2', 'A first 2'],
  ],
  [
    'a group at a table while the table is closed',
    plain([at('A', '3', 12), closed('3', 10, 15)]),
    ['3 closed', 'A at 3'],
  ],
  [
    'a group at a table that it skips',
    plain([at('A', '3', 12), wish('A skips 3', { kind: 'skips', group: 'A', table: '3' })]),
    ['A at 3', 'A skips 3'],
  ],
  [
    'one adult at two tables at one time',
    needingAdults(plain([at('A', '1', 7), at('B', '4', 7)], { adults: [{ label: 'P', at: null }] }), [
      '1',
      '4',
    ]),
    ['A at 1', 'B at 4', 'adults'],
  ],
];

/** The same with one wish given up, whether it was written or goes without saying. */
function givenUp(rotation: Rotation, given: Wish): Rotation {
  const wishes = rotation.wishes.filter(({ id }) => id !== given.id);
  if (wishes.length < rotation.wishes.length) return { ...rotation, wishes };
  switch (given.kind) {
    case 'bell':
      return { ...rotation, bell: minutes(10_000) };
    case 'adults':
      return needingAdults(rotation, []);
    case 'copies':
      return {
        ...rotation,
        tables: rotation.tables.map((table) =>
          table.mark === given.table ? { ...table, copies: 9 } : table,
        ),
      };
    case 'does': {
      const skips = rotation.groups.map(({ label }) =>
        wish(`${label} ${given.table}`, { kind: 'skips', group: label, table: given.table }),
      );
      return { ...rotation, wishes: [...wishes, ...skips] };
    }
    default:
      throw new Error(`${given.id} was never wished`);
  }
}

describe.each(['signal', 'free'] as const)('wishes that can not be kept, %s', (way) => {
  test.each(impossible)('%s', (_, asked, names) => {
    const rotation = { ...asked, way };
    const arrangement = arrange(rotation, EFFORT);
    if (arrangement.kind !== 'clash') expect(arrangement.kind).toBe('clash');
    if (arrangement.kind !== 'clash') return;
    const isTogether = way === 'free' && names.includes('together');
    expect(arrangement.wishes.map(({ id }) => id).sort()).toEqual(isTogether ? ['together'] : names);
    expect(arrangement.proof).toBe('smallest');
    for (const given of arrangement.wishes)
      expect([given.id, arrange(givenUp(rotation, given), EFFORT).kind]).toEqual([given.id, 'timetable']);
  });
});

describe('several clashes at once', () => {
  test('each is told, and they share no wish', () => {
    const rotation = plain([inOrder('1', '2'), inOrder('2', '1'), first('D', '3'), first('D', '4')]);
    const arrangement = arrange(rotation, EFFORT);
    if (arrangement.kind !== 'clash') expect(arrangement.kind).toBe('clash');
    if (arrangement.kind !== 'clash') return;
    const sets = [arrangement.wishes, ...arrangement.alsoClashing].map((set) =>
      set.map(({ id }) => id).sort(),
    );
    expect(sets.sort()).toEqual([
      ['1 before 2', '2 before 1'],
      ['D first 3', 'D first 4'],
    ]);
  });

  const all = (asked: Rotation): readonly (readonly string[])[] => {
    const arrangement = arrange(asked, EFFORT);
    if (arrangement.kind !== 'clash') throw new Error(`a ${arrangement.kind}, not a clash`);
    return [arrangement.wishes, ...arrangement.alsoClashing].map((set) => set.map(({ id }) => id).sort());
  };
  const together = wish('together', { kind: 'together', groups: ['A', 'B'] });
  const doesTwo = wish('B does 2', { kind: 'does', group: 'B', table: '2' });

  test('what is never there as tables free up does not hide what clashes for want of time', () => {
    const closing = plain([together, closed('2', 0, null), doesTwo], { way: 'free' });
    expect(all(closing)).toEqual([['together'], ['2 closed', 'B does 2']]);
    const allDo = wish('all do 1', { kind: 'does', table: '1', group: null });
    const hasty = plain([together, allDo], { way: 'free', bell: minutes(15) });
    expect(all(hasty)).toEqual([['together'], ['all do 1', 'bell', 'copies 1']]);
    const both = plain([together, inOrder('1', '3'), inOrder('3', '1'), closed('2', 0, null), doesTwo], {
      way: 'free',
    });
    expect(all(both)).toEqual([['together'], ['1 before 3', '3 before 1'], ['2 closed', 'B does 2']]);
  });

  test.each(['signal', 'free'] as const)(
    'the smallest is told first, whether it is of order or of time, %s',
    (way) => {
      const circle = [inOrder('1', '3'), inOrder('3', '4'), inOrder('4', '1')];
      const sets = all(plain([...circle, closed('2', 0, null), doesTwo], { way }));
      expect(sets).toEqual([
        ['2 closed', 'B does 2'],
        ['1 before 3', '3 before 4', '4 before 1'],
      ]);
    },
  );
});
