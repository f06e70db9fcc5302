import { expect, test } from 'vitest';
import type { Happening, Stored } from './entry.ts';
import { visitLog } from './visit-log.ts';

/** One after the other, a second between them, all by the device that is named before the colon. */
const entries = (...happened: readonly (readonly [device: string, what: Happening])[]): readonly Stored[] => {
  const counts = new Map<string, number>();
  return happened.map(([device, what], n) => {
    const sequence = (counts.get(device) ?? 0) + 1;
    counts.set(device, sequence);
    const made = 1000 * (n + 1);
    const seat = { kind: 'teacher' } as const;
    const entry = { id: `${device}.${sequence}`, visit: 'v', device, sequence, made, seat, what };
    return { entry, position: n + 1, received: made, behind: 0 };
  });
};
const signal = { kind: 'signal', round: 1 } as const;
const late = { kind: 'late', group: 'A', minutes: 10 } as const;

test('a signal, a late group, an arrival reading and the beginning are taken back as if they had not been', () => {
  const all = entries(
    ['t', { kind: 'begun' }],
    ['t', signal],
    ['t', late],
    ['t', { kind: 'arrival', setup: 'L1', written: '2' }],
    ...[1, 2, 3, 4].map((n) => ['t', { kind: 'recalled', of: `t.${n}` }] as const),
  );
  const { begun, signals, late: lates, arrival } = visitLog(all);
  expect([begun, signals, lates, arrival]).toEqual([null, [], {}, []]);
  expect(visitLog([...all].reverse())).toEqual(visitLog(all));
});

test('what was taken back can be done again, and counts from then', () => {
  const { signals } = visitLog(entries(['t', signal], ['t', { kind: 'recalled', of: 't.1' }], ['t', signal]));
  expect(signals).toEqual([{ round: 1, when: 3000 }]);
});

test('a reading is not taken back like that: it is struck through, and kept', () => {
  const reading = {
    kind: 'reading',
    group: 'A',
    setup: 'L1',
    written: '2',
    ease: null,
    turns: null,
    note: null,
  };
  const { readings } = visitLog(entries(['t', reading as Happening], ['t', { kind: 'recalled', of: 't.1' }]));
  expect(readings.map(({ reading: { written }, isVoid }) => [written, isVoid])).toEqual([['2', false]]);
});

test('a group that is freed waits for its next device; freed once that came, it stays there', () => {
  const handed = { kind: 'handed', group: 'A' } as const;
  const freed = { kind: 'freed', group: 'A', from: 'old' } as const;
  const waiting = visitLog(entries(['old', handed], ['t', freed]));
  expect([waiting.holders, waiting.freed]).toEqual([{}, { A: 'old' }]);
  const taken = visitLog(entries(['old', handed], ['t', freed], ['new', handed], ['t', freed]));
  expect([taken.holders, taken.freed]).toEqual([{ A: 'new' }, {}]);
  const left = visitLog(entries(['old', handed], ['t', freed], ['t', { kind: 'recalled', of: 't.1' }]));
  expect([left.holders, left.freed]).toEqual([{ A: 'old' }, {}]);
});
