import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/core/rotation/arrange.ts';
import { checkTimetable } from '../../src/core/rotation/check-timetable.ts';
import { randomFrom } from '../../src/core/uncertainty/random.ts';
import { anyRotation } from './small-rotations.ts';

const EFFORT = { seed: 1, steps: 3000 };

describe.each(['signal', 'free'] as const)('small periods, %s', (way) => {
  test('every timetable keeps every rule, read off its times alone', () => {
    const kinds = { timetable: 0, clash: 0, unknown: 0 };
    for (let seed = 1; seed <= 60; seed += 1) {
      const random = randomFrom(seed);
      const rotation = anyRotation(random, way, 3 + (seed % 2), 3 + (seed % 3 === 0 ? 1 : 0));
      const arrangement = arrange(rotation, EFFORT);
      kinds[arrangement.kind] += 1;
      if (arrangement.kind !== 'timetable') continue;
      expect({ seed, broken: checkTimetable(rotation, arrangement.timetable) }).toEqual({ seed, broken: [] });
      expect(arrangement.timetable.leftOut.length).toBe(arrangement.shortage?.visits ?? 0);
    }
    expect(kinds.unknown).toBe(0);
    expect(kinds.timetable).toBeGreaterThan(30);
  });
});
