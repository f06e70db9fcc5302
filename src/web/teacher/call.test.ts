import { expect, it } from 'vitest';
import type { TeacherGroup, TeacherReading, TeacherTable } from '../../store/wire.ts';
import { callsOf, tablesOf } from './call.ts';

const reading = (id: string, group: string, when: number, odd: boolean, isVoid = false): TeacherReading => ({
  id,
  group,
  written: '4 N',
  before: [],
  when,
  isVoid,
  verdict: odd ? 'look-again' : 'good',
  verdictText: '',
  cause: null,
  say: null,
  remarks: [],
  isAskedAgain: odd,
});
const table = (mark: string, readings: readonly TeacherReading[], findings: readonly string[] = []) =>
  ({
    mark,
    title: '',
    isClosed: false,
    findings,
    setups: [{ mark: `${mark}a`, summary: '', strip: '', range: '', readings }],
  }) satisfies TeacherTable;
const group = (label: string, at: string | null, behind = 0): TeacherGroup => ({
  label,
  table: at,
  since: null,
  next: null,
  behind,
  device: null,
  isFreed: false,
  heard: null,
  toLookAt: 0,
});
const short = (tables: readonly TeacherTable[], groups: readonly TeacherGroup[]) =>
  callsOf(tables, groups).map((call) =>
    call.kind === 'reading' ? `${call.reading.id} now ${call.now}` : `${call.kind} ${call.table}`,
  );

it('whole tables come first, then odd readings with the newest on top, then who is late', () => {
  const tables = [
    table('1', [reading('r1', 'A', 5, true), reading('r2', 'B', 9, true)]),
    table('2', [], ['x']),
  ];
  const groups = [group('A', '2', 120_000), group('B', null)];
  expect(short(tables, groups)).toEqual(['table 2', 'r2 now null', 'r1 now 2', 'late 2']);
});

it('of a group and a setup only the last reading that stands calls the teacher', () => {
  const readAgain = table('1', [reading('r1', 'A', 1, true), reading('r2', 'A', 2, false)]);
  const struck = table('2', [reading('r3', 'A', 3, false), reading('r4', 'A', 4, true, true)]);
  const stillOdd = table('3', [reading('r5', 'A', 5, true), reading('r6', 'A', 6, true)]);
  expect(short([readAgain, struck, stillOdd], [group('A', '3')])).toEqual(['r6 now 3']);
});

it('tables are found among the parts, whatever else there is', () => {
  expect(tablesOf({ trouble: [], 'table/1': table('1', []) }).map(({ mark }) => mark)).toEqual(['1']);
});
