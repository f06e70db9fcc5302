import { describe, expect, test } from 'vitest';
import { seconds } from '../../src/core/quantities/brands.ts';
import { arrange } from '../../src/core/rotation/arrange.ts';
import { checkTimetable } from '../../src/core/rotation/check-timetable.ts';
import type { Rotation } from '../../src/core/rotation/rotation.ts';
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

  test('a group that is wished a table by name is there in every timetable, however short the time', () => {
    let named = 0;
    for (let seed = 101; seed <= 260; seed += 1) {
      const rotation = hurried(anyRotation(randomFrom(seed), way, 3 + (seed % 3), 2 + (seed % 3)));
      const arrangement = arrange(rotation, EFFORT);
      if (arrangement.kind !== 'timetable') continue;
      const { stays, leftOut } = arrangement.timetable;
      for (const { group, table } of namedVisits(rotation)) {
        named += 1;
        const isThere = stays.some((stay) => stay.group === group && stay.table === table);
        const isLeftOut = leftOut.some((each) => each.group === group && each.table === table);
        expect({ seed, group, table, isThere, isLeftOut }).toEqual({
          seed,
          group,
          table,
          isThere: true,
          isLeftOut: false,
        });
      }
    }
    expect(named).toBeGreaterThan(30);
  });
});

/** The same with a bell so early that much has to be left out. */
const hurried = (rotation: Rotation): Rotation => ({
  ...rotation,
  bell: seconds(Math.max(rotation.begins + 600, 0.7 * rotation.bell)),
});

/** The tables that a wish asks a group to do, do first or last, or be at. */
const namedVisits = ({ groups, wishes }: Rotation) =>
  wishes.flatMap((wish) => {
    switch (wish.kind) {
      case 'does':
      case 'first':
      case 'last':
      case 'at':
        return groups
          .filter(({ label }) => wish.group === label)
          .map(({ label }) => ({ group: label, table: wish.table }));
      default:
        return [];
    }
  });
