import { expect, it } from 'vitest';
import { spanText, toTheEnd } from './clock-time.ts';

const clock = { now: 0, begun: 1000, pausedSince: null, paused: 0, ends: 900_000, round: null };

it('a span is told in minutes and seconds, past or to come', () => {
  expect([spanText(90_000), spanText(-5400), spanText(0), spanText(6_000_000)]).toEqual([
    '1:30',
    '0:05',
    '0:00',
    '100:00',
  ]);
});

it('the signal of the round comes before the end of the period, and a pause holds both', () => {
  expect(toTheEnd({ ...clock, begun: null }, 5000)).toBe(null);
  expect(toTheEnd(clock, 100_000)).toEqual({ left: 800_000, at: 900_000 });
  const round = { number: 1, of: 3, due: 300_000 };
  expect(toTheEnd({ ...clock, round }, 310_000)).toEqual({ left: -10_000, at: 300_000 });
  const paused = { ...clock, round, pausedSince: 100_000 };
  expect(toTheEnd(paused, 150_000)?.left).toBe(200_000);
  expect(toTheEnd(paused, 180_000)?.left).toBe(200_000);
});
