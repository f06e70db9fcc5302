import { expect, it } from 'vitest';
import { serverClock } from './server-clock.ts';

it('the clock of the server is known from the telling that came fastest', () => {
  const clock = serverClock();
  expect(clock.now(0)).toBeNull();
  clock.heard(1_000_000, 900);
  clock.heard(1_001_000, 1400);
  clock.heard(1_002_000, 2900);
  expect(clock.now(3000)).toBe(1_002_600);
});

it('a device that slept, and whose running clock stood still meanwhile, finds the time again', () => {
  const clock = serverClock();
  for (let n = 0; n < 8; n += 1) clock.heard(1_000_000 + n, n);
  for (let n = 0; n < 8; n += 1) clock.heard(9_000_000 + n, 100 + n);
  expect(clock.now(200)).toBe(9_000_100);
});
