import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ringTimetable } from '../../../test/plain-arranging.ts';
import { groups, rotation, table, time } from '../../../test/rotations.ts';
import { seconds } from '../quantities/brands.ts';
import type { Rotation } from './rotation.ts';
import { type TeachAsked, whatToTeach } from './what-to-teach.ts';
import type { Wish } from './wish.ts';

const room = (labels: string, marks: string, more: Partial<Rotation> = {}): Rotation =>
  rotation({
    groups: groups(...labels),
    tables: [...marks].map((mark) => table(mark, time(300, 0))),
    way: 'signal',
    ...more,
  });
const lasting = (...lengths: readonly number[]) =>
  lengths.map((length) => ({ begins: seconds(300), bell: seconds(300 + length) }));
const teach = (of: Rotation, periods: TeachAsked['periods'], more: Partial<TeachAsked> = {}) =>
  whatToTeach({ rotation: of, periods, together: [], atMost: 500, ...more }, ringTimetable);
const tablesOf = (answer: ReturnType<typeof teach>, plan = 0) =>
  answer.plans[plan]?.periods.map(({ tables }) => tables.join(''));

describe('what to teach in the time there is', () => {
  it('everything, where it fits', () => {
    const answer = teach(room('AB', '123'), lasting(900));
    expect(answer.plans.map(({ kind }) => kind)).toEqual(['own tables']);
    expect(tablesOf(answer)).toEqual(['123']);
    expect(answer.plans[0]).toMatchObject({ leftOut: [], visits: 6 });
    expect(answer.isCutShort).toBe(false);
  });

  it('where the time is short, leaves out what may be left out first, then what comes last', () => {
    const three = room('AB', '123');
    const withMay = {
      ...three,
      tables: three.tables.map((each) => (each.mark === '1' ? { ...each, mayDo: true } : each)),
    };
    const own = teach(withMay, lasting(600)).plans.find(({ kind }) => kind === 'own tables');
    expect(own?.leftOut).toEqual(['1']);
    const last = teach(three, lasting(600)).plans.find(({ kind }) => kind === 'own tables');
    expect(last?.leftOut).toEqual(['3']);
    const wish: Wish = { kind: 'does', table: '1', group: 'A', id: 'd', path: ['wishes', 0] };
    const asked = teach({ ...withMay, wishes: [wish] }, lasting(600));
    expect(asked.plans.find(({ kind }) => kind === 'own tables')?.leftOut).toEqual(['3']);
  });

  it('partners go or stay as one', () => {
    const own = teach(room('AB', '1234'), lasting(900), { together: [['2', '4']] }).plans.find(
      ({ kind }) => kind === 'own tables',
    );
    // One too many: to leave out 4 would take 2 with it.
    expect(own?.leftOut).toEqual(['3']);
  });

  it('two periods have their own tables, in the order that is wished, partners in one', () => {
    // biome-ignore lint/suspicious/noThenProperty: the contract's own word
    const before = { kind: 'before', first: '4', then: '1', group: null, id: 'b', path: null } as Wish;
    const answer = teach(room('AB', '1234', { wishes: [before] }), lasting(600, 600), {
      together: [['2', '4']],
    });
    expect(answer.plans.map(({ kind, leftOut }) => [kind, leftOut])).toEqual([['own tables', []]]);
    expect(tablesOf(answer)).toEqual(['24', '13']);
    for (const period of answer.plans[0]?.periods ?? []) expect(period.timetable?.ends).toBe(900);
  });

  it('where no table has time for every group in one period, the rotation goes on in the next', () => {
    const answer = teach(room('ABCD', '1234'), lasting(600, 600));
    expect(answer.plans[0]).toMatchObject({ kind: 'carried over', leftOut: [], notDone: [], visits: 16 });
    const periods = answer.plans[0]?.periods ?? [];
    expect(periods.map(({ timetable }) => timetable?.rounds)).toEqual([
      [
        { from: 300, to: 600 },
        { from: 600, to: 900 },
      ],
      [
        { from: 300, to: 600 },
        { from: 600, to: 900 },
      ],
    ]);
    const done = periods.flatMap(
      ({ timetable }) => timetable?.stays.map((each) => `${each.group}${each.table}`) ?? [],
    );
    expect(new Set(done).size).toBe(16);
  });

  it('where not all can do the same, groups share out, and both ways are told', () => {
    const answer = teach(room('ABC', '1234'), lasting(900));
    expect(answer.plans.map(({ kind, visits }) => [kind, visits])).toEqual([
      ['own tables', 9],
      ['shared out', 9],
    ]);
    const few = teach(room('ABCD', '1234'), lasting(900));
    expect(few.plans.map(({ kind, visits }) => [kind, visits])).toEqual([
      ['shared out', 12],
      ['own tables', 0],
    ]);
    expect(few.plans[0]?.notDone.length).toBe(4);
  });

  it('says when it may not look further', () => {
    expect(teach(room('AB', '1234'), lasting(600, 600), { atMost: 0 }).isCutShort).toBe(true);
  });

  it('does not plan with a table that is closed all day, nor count it as left out', () => {
    const closed: Wish = { kind: 'closed', table: '2', from: seconds(0), to: null, id: 'c', path: null };
    const answer = teach(room('AB', '12', { wishes: [closed] }), lasting(900));
    expect(tablesOf(answer)).toEqual(['1']);
    expect(answer.plans[0]?.leftOut).toEqual([]);
  });

  it('teaches each table in one period or leaves it out, ends every period by its bell, and no must goes before a may', () => {
    const any = fc.record({
      labels: fc.constantFrom('A', 'AB', 'ABC'),
      may: fc.array(fc.boolean(), { minLength: 1, maxLength: 4 }),
      lengths: fc.array(fc.integer({ min: 200, max: 1500 }), { minLength: 1, maxLength: 2 }),
    });
    fc.assert(
      fc.property(any, ({ labels, may, lengths }) => {
        const of = room(labels, '');
        const tables = may.map((mayDo, n) => ({ ...table(`${n + 1}`, time(300, 0)), mayDo }));
        const answer = teach({ ...of, tables }, lasting(...lengths));
        for (const plan of answer.plans) {
          for (const [n, { timetable }] of plan.periods.entries())
            expect(timetable?.ends ?? 0).toBeLessThanOrEqual(300 + (lengths[n] as number));
          if (plan.kind !== 'own tables') continue;
          const taught = plan.periods.flatMap((period) => period.tables);
          expect([...taught, ...plan.leftOut].sort()).toEqual(tables.map(({ mark }) => mark));
          const isMay = (mark: string): boolean => tables.some((each) => each.mark === mark && each.mayDo);
          if (plan.leftOut.some((mark) => !isMay(mark))) expect(taught.filter(isMay).length).toBe(0);
        }
      }),
    );
  });
});
