import { describe, expect, it } from 'vitest';
import { seconds } from '../quantities/brands.ts';
import { type DoneContext, readDoneFile } from './done-file.ts';

const context: DoneContext = {
  groups: ['A', 'B', 'red'],
  tables: ['1', '2', 'capstan'],
  copies: { '2': 2 },
  classes: [],
  starts: seconds(33_300),
  decimal: 'point',
};
const read = (text: string, other: Partial<DoneContext> = {}) =>
  readDoneFile({ name: 'done.csv', text }, { ...context, ...other });
const short = ({ stays }: ReturnType<typeof read>) =>
  stays.map(({ group, table, from, to }) => [group, table, from, to]);

describe('readDoneFile', () => {
  it('reads who was where, and takes a blank "to" for a group that is still there', () => {
    const found = read('group,table,from,to\r\nA,1,09:20,09:26\r\nB,2,09:20:30,\r\n');
    expect(found.refused).toEqual([]);
    expect(short(found)).toEqual([
      ['A', '1', 300, 660],
      ['B', '2', 330, null],
    ]);
  });

  it('takes minutes from the start too, bare or with their unit, in any order of columns', () => {
    const found = read('to;from;mesa;grupo\n12;5,5;1;a\n;6 min;Capstan;RED\n', { starts: null });
    expect(found.refused).toEqual([]);
    expect(short(found)).toEqual([
      ['A', '1', 330, 720],
      ['red', 'capstan', 360, null],
    ]);
  });

  it('keeps every row that it can not use, with its line and the reason', () => {
    const { stays, refused } = read(
      [
        'group,table,from,to',
        'C,1,09:20,09:25',
        'A,9,09:20,09:25',
        'A,1,,09:25',
        'A,1,soon,',
        'A,1,09:25,09:20',
        'A,1,09:00,09:20',
        'B,2,09:20,09:25',
        'b,2,09:30,',
      ].join('\n'),
    );
    expect(stays).toHaveLength(1);
    expect(refused.map(({ line, because }) => [line, because])).toEqual([
      [2, 'done.unknown-group'],
      [3, 'done.unknown-table'],
      [4, 'done.no-from'],
      [5, 'done.no-time'],
      [6, 'done.backwards'],
      [7, 'done.no-time'],
      [9, 'done.twice'],
    ]);
  });

  it('reads no clock where nobody says when the period starts', () => {
    expect(read('group,table,from\nA,1,09:20\n', { starts: null }).refused[0]?.because).toBe('done.no-time');
  });

  it('refuses a row that can not be true beside one before it, and names that line', () => {
    const { stays, refused } = read(
      'group,table,from,to\nA,1,09:20,09:26\nB,1,09:25,09:31\nA,2,09:24,\nB,1,09:26,09:32\nred,1,09:31,\n',
    );
    expect(stays.map(({ line }) => line)).toEqual([2, 5]);
    expect(refused.map(({ line, because, other }) => [line, because, other])).toEqual([
      [3, 'done.taken', 2],
      [4, 'done.two-tables', 2],
      [6, 'done.taken', 5],
    ]);
  });

  it('takes as many groups at once as a table has copies, each at a free one', () => {
    const text = 'group,table,from,to\nA,2,5,\nB,2,6,\nred,2,7,\n';
    const { stays, refused } = read(text);
    expect(stays.map(({ group, copy }) => [group, copy])).toEqual([
      ['A', 1],
      ['B', 2],
    ]);
    expect(refused.map(({ line, because }) => [line, because])).toEqual([[4, 'done.taken']]);
    const named = read('group,table,copy,from,to\nA,2,2,5,\nB,2,2,6,\nred,2,3,7,\nB,1,1,4,5\n');
    expect(named.refused.map(({ line, because, other }) => [line, because, other])).toEqual([
      [3, 'done.taken', 2],
      [4, 'done.no-copy', null],
    ]);
  });

  it('refuses a class that does not come, and keeps classes apart', () => {
    const text = 'class,group,table,from,to\n5a,A,1,5,9\n5b,A,1,5,9\n6,A,2,9,\n';
    const { stays, refused } = read(text, { classes: ['5a', '5b'] });
    expect(stays.map(({ ofClass }) => ofClass)).toEqual(['5a', '5b']);
    expect(refused.map(({ line, because }) => [line, because])).toEqual([[4, 'done.unknown-class']]);
  });

  it('says so where no row names the columns', () => {
    expect(read('A,1\nB,2\n').lacksHeading).toBe(true);
    expect(read('group,table,from\n').lacksHeading).toBe(false);
    expect(read('A,1\nB,2\n').refused.map(({ because }) => because)).toEqual([
      'done.no-heading',
      'done.no-heading',
    ]);
  });
});
