import { describe, expect, it } from 'vitest';
import type { ClockPart, RouteStop } from '../../store/wire.ts';
import { placeOf, timeLeft } from './whereabouts-of-group.ts';

const stop = (table: string, state: RouteStop['state'], to: number): RouteStop => ({
  table,
  title: table,
  from: to - 10,
  to,
  state,
});
const route = { stops: [stop('1', 'here', 10), stop('2', 'next', 20)], waiting: null };
const entry = (kind: 'arrived' | 'done', table: string) => ({
  id: 'd.1',
  visit: 'v',
  device: 'd',
  sequence: 1,
  made: 1,
  seat: { kind: 'group', group: 'A' } as const,
  what: { kind, group: 'A', table },
});
const clock: ClockPart = { now: 0, begun: 1000, pausedSince: null, paused: 5, ends: 9000, round: null };

describe('where a group is', () => {
  it('is as the plan has it until the group says otherwise', () => {
    expect(placeOf(route, [], 'A').here?.table).toBe('1');
    const done = placeOf(route, [entry('done', '1')], 'A');
    expect([done.here, done.next?.table]).toEqual([null, '2']);
    expect(placeOf(route, [entry('arrived', '2')], 'A').stops.map(({ state }) => state)).toEqual([
      'done',
      'here',
    ]);
  });

  it('is until the signal, else until its own plan says, else until the end', () => {
    const [here = null] = route.stops;
    const round = { number: 1, of: 4, due: 4000 };
    expect(timeLeft({ ...clock, round }, here, 1500)).toEqual({ until: 4000, left: 2500 });
    expect(timeLeft(clock, here, 1500)?.until).toBe(1015);
    expect(timeLeft(clock, null, 1500)?.until).toBe(9000);
  });

  it('has as long left at the end of a pause as at its beginning', () => {
    const paused = { ...clock, pausedSince: 1500 };
    expect(timeLeft(paused, null, 1500)?.left).toBe(7500);
    expect(timeLeft(paused, null, 4500)?.left).toBe(7500);
  });

  it('has no end before it has begun', () => {
    expect(timeLeft({ ...clock, begun: null }, null, 1500)).toBeNull();
  });
});
