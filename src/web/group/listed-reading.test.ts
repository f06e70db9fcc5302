import { describe, expect, it } from 'vitest';
import type { Happening } from '../../store/entry.ts';
import { emptyOutbox, type Outbox, refused, stored, written } from '../../store/outbox.ts';
import type { OwnReading } from '../../store/wire.ts';
import { listedReadings } from './listed-reading.ts';

const seat = { kind: 'group', group: 'A' } as const;
const reading = (said: string): Happening => ({
  kind: 'reading',
  group: 'A',
  setup: 'L1',
  written: said,
  ease: null,
  turns: null,
  note: null,
});
const wrote = (...what: readonly Happening[]): Outbox =>
  what.reduce((box, each) => written(box, seat, each, 1), emptyOutbox('v', 'd'));
const known = (id: string, said: string, more: Partial<OwnReading> = {}): OwnReading => ({
  id,
  setup: 'L1',
  written: said,
  before: [],
  isVoid: false,
  again: null,
  ...more,
});
const none = new Set<string>();
const shown = (known: readonly OwnReading[], box: Outbox, fresh: ReadonlySet<string> = none) =>
  listedReadings(known, box, fresh).map(({ written, before, isVoid, whereabouts }) => ({
    written,
    before,
    isVoid,
    whereabouts,
  }));

describe("a group's list of readings", () => {
  it('shows what only this device knows, and where it is', () => {
    expect(shown([], wrote(reading('4 N')))).toEqual([
      { written: '4 N', before: [], isVoid: false, whereabouts: 'here' },
    ]);
  });

  it('shows a reading once that both know, as stored', () => {
    const box = stored(wrote(reading('4 N')), ['d.1']);
    expect(shown([known('d.1', '4 N')], box)).toEqual([
      { written: '4 N', before: [], isVoid: false, whereabouts: 'stored' },
    ]);
  });

  it('is on this device again while a correction of a stored reading is', () => {
    const box = stored(wrote(reading('4 N'), { kind: 'correction', of: 'd.1', written: '5 N' }), ['d.1']);
    expect(shown([known('d.1', '4 N')], box)).toEqual([
      { written: '5 N', before: ['4 N'], isVoid: false, whereabouts: 'here' },
    ]);
  });

  it("leaves to the server what it has told since: a teacher's correction is not undone by an old one", () => {
    const box = stored(wrote(reading('4 N'), { kind: 'correction', of: 'd.1', written: '5 N' }), [
      'd.1',
      'd.2',
    ]);
    const told = [known('d.1', '6 N', { before: ['4 N', '5 N'] })];
    expect(shown(told, box)[0]?.written).toBe('6 N');
    expect(shown([known('d.1', '4 N')], box, new Set(['d.2']))[0]?.written).toBe('5 N');
  });

  it('strikes through what was voided and puts it back', () => {
    const box = wrote({ kind: 'void', of: 'x.9' });
    expect(shown([known('x.9', '4 N')], box)[0]?.isVoid).toBe(true);
    const back = written(box, seat, { kind: 'restore', of: 'x.9' }, 2);
    expect(shown([known('x.9', '4 N')], back)[0]?.isVoid).toBe(false);
  });

  it('changes nothing by what was refused, and shows that it was', () => {
    const box = refused(wrote({ kind: 'void', of: 'x.9' }), ['d.1'], 'handed');
    const [one] = listedReadings([known('x.9', '4 N')], box, none);
    expect([one?.isVoid, one?.whereabouts, one?.refusal]).toEqual([false, 'refused', 'handed']);
  });
});
