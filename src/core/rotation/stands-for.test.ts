import { describe, expect, test } from 'vitest';
import { seconds } from '../quantities/brands.ts';
import { exactly } from '../uncertainty/measured.ts';
import type { Adult, Rotation } from './rotation.ts';
import { standsFor } from './stands-for.ts';
import type { Stay } from './timetable.ts';

const rotation = (adults: readonly Adult[], reset = 0): Pick<Rotation, 'tables' | 'adults' | 'way'> => ({
  tables: ['1', '2', '3'].map((mark) => ({
    mark,
    run: exactly(seconds(300)),
    reset: exactly(seconds(reset)),
    copies: 1,
    needsAdult: mark !== '3',
    mayDo: false,
    beside: [],
  })),
  adults,
  way: 'free',
});

const stay = (table: string, from: number, to: number): Stay => ({
  group: 'A',
  table,
  copy: 1,
  from: seconds(from),
  to: seconds(to),
  round: null,
});

const anywhere = (label: string): Adult => ({ label, at: null });

describe('where adults stand', () => {
  test('an adult stays at her table while others come and go, also through a gap', () => {
    const stays = [stay('1', 0, 300), stay('2', 100, 400), stay('1', 500, 800), stay('2', 500, 800)];
    const stands = standsFor(rotation([anywhere('P'), anywhere('Q')]), stays);
    const placesOf = (adult: string): number =>
      new Set(stands.filter((each) => each.adult === adult).map(({ table }) => table)).size;
    expect([placesOf('P'), placesOf('Q')]).toEqual([1, 1]);
  });

  test('a table that needs nobody has nobody, and one that is put back still has somebody', () => {
    expect(standsFor(rotation([anywhere('P')], 60), [stay('1', 0, 300), stay('3', 0, 300)])).toEqual([
      { adult: 'P', table: '1', copy: 1, from: 0, to: 360 },
    ]);
  });

  test('who may stand at one table only is kept for it from the start', () => {
    const adults = [anywhere('P'), { label: 'Q', at: ['1'] }];
    const stands = standsFor(rotation(adults), [stay('1', 0, 300), stay('2', 200, 500)]);
    expect(stands).toEqual([
      { adult: 'Q', table: '1', copy: 1, from: 0, to: 300 },
      { adult: 'P', table: '2', copy: 1, from: 200, to: 500 },
    ]);
  });

  test('a group is handed over where nothing else will do', () => {
    const tables = rotation([]).tables.map((table) => ({ ...table, needsAdult: true }));
    const adults = [
      { label: 'P', at: ['1', '2'] },
      { label: 'Q', at: ['2', '3'] },
    ];
    const stays = [stay('1', 0, 200), stay('2', 0, 400), stay('3', 200, 400)];
    expect(standsFor({ tables, adults, way: 'free' }, stays)).toEqual([
      { adult: 'P', table: '1', copy: 1, from: 0, to: 200 },
      { adult: 'Q', table: '2', copy: 1, from: 0, to: 200 },
      { adult: 'P', table: '2', copy: 1, from: 200, to: 400 },
      { adult: 'Q', table: '3', copy: 1, from: 200, to: 400 },
    ]);
  });
});
