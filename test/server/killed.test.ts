import { expect, it } from 'vitest';
import { killedClass } from '../../bench/live/killed-class.mjs';

it('a server that is killed again and again loses nothing that it answered as stored, and doubles nothing', async () => {
  const { rounds, acknowledged, lost, doubled, changed, missing, outOfOrder } = await killedClass({
    rounds: 4,
    seed: 7,
  });
  expect(rounds).toBe(4);
  expect(acknowledged).toBeGreaterThan(20);
  expect({ lost, doubled, changed, missing, outOfOrder }).toEqual({
    lost: 0,
    doubled: 0,
    changed: 0,
    missing: 0,
    outOfOrder: 0,
  });
}, 120_000);
