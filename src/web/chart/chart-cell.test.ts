import { expect, test } from 'vitest';
import type { Happening } from '../../store/entry.ts';
import { emptyOutbox, type Outbox, stored, written } from '../../store/outbox.ts';
import type { ChartRow, TeacherParts } from '../../store/wire.ts';
import { changeOf, chartCells, EMPTY_CELL, takenBack } from './chart-cell.ts';

const row: ChartRow = { setup: 'L1', asks: 'number', unit: 'N', isExtra: false };
const reading = (text: string, group = 'A'): Happening => ({
  kind: 'reading',
  group,
  setup: 'L1',
  written: text,
  ease: null,
  turns: null,
  note: null,
});
const outboxOf = (...what: readonly Happening[]): Outbox =>
  what.reduce((box, each) => written(box, { kind: 'teacher' }, each, 0), emptyOutbox('v', 'd'));
const cellIn = (outbox: Outbox, parts: Partial<TeacherParts> = {}, fresh: ReadonlySet<string> = new Set()) =>
  chartCells(parts, 'A', outbox, fresh).get('L1');

const told = (text: string): Partial<TeacherParts> =>
  ({
    'table/1': {
      mark: '1',
      title: 'Lever',
      isClosed: false,
      findings: [],
      setups: [
        {
          mark: 'L1',
          summary: '',
          strip: '',
          range: '',
          readings: [
            {
              id: 'tablet.1',
              group: 'A',
              written: text,
              before: [],
              when: 0,
              isVoid: false,
              verdict: 'good',
              verdictText: 'good',
              cause: null,
              say: null,
              remarks: [],
              isAskedAgain: false,
            },
          ],
        },
      ],
    },
  }) as unknown as Partial<TeacherParts>;

test('a row shows what was typed at once, on this device only, and another group keeps its own', () => {
  const box = outboxOf(reading('2.2 N'), reading('9 N', 'B'));
  expect(cellIn(box)).toMatchObject({ id: 'd.1', written: '2.2 N', whereabouts: 'here', many: 1 });
});

test('what came from a tablet is written over only by a correction of it, and is judged no more until that is stored', () => {
  const cell = cellIn(outboxOf(), told('2.0 N')) ?? EMPTY_CELL;
  expect(cell).toMatchObject({ id: 'tablet.1', whereabouts: 'stored', verdict: { verdict: 'good' } });
  const change = changeOf(cell, '2.4', row, 'A');
  expect(change).toEqual({ kind: 'correction', of: 'tablet.1', written: '2.4 N' });
  const after = cellIn(outboxOf(change as Happening), told('2.0 N'));
  expect(after).toMatchObject({ written: '2.4 N', whereabouts: 'here', verdict: null });
});

test('what is stored and told shows as the server has it, what is stored and not told yet as it was typed', () => {
  const box = stored(outboxOf({ kind: 'correction', of: 'tablet.1', written: '2.4 N' }), ['d.1']);
  expect(cellIn(box, told('2.4 N'))?.verdict).not.toBeNull();
  expect(cellIn(box, told('2.0 N'), new Set(['d.1']))?.written).toBe('2.4 N');
});

test('a row that is emptied strikes through what stood there; one that was empty and stays so writes nothing', () => {
  const cell = cellIn(outboxOf(reading('2.2 N'))) ?? EMPTY_CELL;
  expect(changeOf(cell, ' ', row, 'A')).toEqual({ kind: 'void', of: 'd.1' });
  expect(changeOf(EMPTY_CELL, '', row, 'A')).toBeNull();
  expect(changeOf(cell, '2.2', row, 'A')).toBeNull();
  expect(cellIn(outboxOf(reading('2.2 N'), { kind: 'void', of: 'd.1' }))).toBeUndefined();
});

test.each(['about 2', 'O.8', '-', '2,3', '225 g', '1/4', '??'])(
  '"%s" is kept as it stands, with the printed unit only behind a number',
  (text) => {
    const change = changeOf(EMPTY_CELL, text, row, 'A');
    expect(change).toMatchObject({ kind: 'reading', written: /\d$/.test(text) ? `${text} N` : text });
  },
);

test('a place in the order felt is a number and what else is written there is kept as words', () => {
  const ease: ChartRow = { ...row, asks: 'ease', unit: null };
  expect(changeOf(EMPTY_CELL, '4', ease, 'A')).toMatchObject({ written: '4', ease: 4 });
  expect(changeOf(EMPTY_CELL, '0', ease, 'A')).toMatchObject({ written: '0', ease: null });
  expect(changeOf(EMPTY_CELL, '4 or 5', ease, 'A')).toMatchObject({ written: '4 or 5', ease: null });
});

test('each change is taken back by its opposite, and nothing is ever erased', () => {
  const cell = { ...EMPTY_CELL, id: 'd.1', written: '2.2 N' };
  expect(takenBack(reading('2.2 N'), EMPTY_CELL, 'd.1')).toEqual({ kind: 'void', of: 'd.1' });
  expect(takenBack({ kind: 'correction', of: 'd.1', written: '3 N' }, cell, 'd.2')).toEqual({
    kind: 'correction',
    of: 'd.1',
    written: '2.2 N',
  });
  expect(takenBack({ kind: 'void', of: 'd.1' }, cell, 'd.2')).toEqual({ kind: 'restore', of: 'd.1' });
});
