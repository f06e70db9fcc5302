import { describe, expect, it } from 'vitest';
import { greedyTimetable, ringTimetable } from '../../../test/plain-arranging.ts';
import { groups, rotation, table, time } from '../../../test/rotations.ts';
import { seconds } from '../quantities/brands.ts';
import { type GainAsked, gains } from './gain.ts';
import type { Rotation } from './rotation.ts';

const asked: GainAsked = { shorterBy: seconds(60), chance: { seed: 3, tolerance: 0.02 } };
const named = (of: ReturnType<typeof gains>): readonly string[] =>
  of.map(({ change }) => `${change.kind} ${change.table}`);

describe('what would gain most', () => {
  const one = rotation({
    groups: groups('A', 'B', 'C'),
    tables: [table('slow', time(600, 60)), table('quick', time(100, 10))],
    bell: seconds(1750),
  });

  it('to double the table that all wait for gains more than to shorten it; the quick one is not worth a word', () => {
    const found = gains(one, greedyTimetable(one), greedyTimetable, asked);
    expect(named(found)).toEqual(['another copy slow', 'shorter slow']);
    // Two after each other at 600 s, the quick one meanwhile; three at 540 s; three at 600 s now.
    expect(found.map(({ ends }) => ends)).toEqual([1200, 1620]);
    expect(found[0]?.byTheBell).toBeGreaterThan(0.99);
    expect(found[1]?.byTheBell).toBeGreaterThan(0.6);
    expect(found[1]?.byTheBell).toBeLessThan(found[0]?.byTheBell ?? 0);
  });

  it('a wish that tells how many there are of a table does not stand against one more', () => {
    const seen: Rotation[] = [];
    const wish = { kind: 'copies', table: 'slow', copies: 1, id: 'c', path: null } as const;
    const arranging = (of: Rotation) => {
      seen.push(of);
      return greedyTimetable(of);
    };
    gains({ ...one, wishes: [wish] }, greedyTimetable(one), arranging, asked);
    const doubled = seen.find(({ tables }) => tables[0]?.copies === 2);
    expect(doubled?.wishes).toEqual([{ ...wish, copies: 2 }]);
  });

  it('fewer visits left out go before a better chance', () => {
    const short = rotation({
      groups: groups('A', 'B'),
      tables: [table('1', time(300, 0)), table('2', time(360, 0))],
      way: 'signal',
      bell: seconds(650),
    });
    const found = gains(short, ringTimetable(short), ringTimetable, asked);
    // Two rounds of 360 s are too long; two of 300 s are not.
    expect(named(found)).toEqual(['shorter 2']);
    expect(found[0]?.leftOut).toBe(0);
  });

  it('a period that can not be arranged may be made possible, and what can not be arranged gains nothing', () => {
    const arranging = (of: Rotation) => (of.tables[0]?.copies === 2 ? greedyTimetable(of) : null);
    expect(named(gains(one, null, arranging, asked))).toEqual(['another copy slow']);
    expect(gains(one, greedyTimetable(one), () => null, asked)).toEqual([]);
  });

  it('nothing is gained where one group has the tables to itself but a shorter table', () => {
    const alone = { ...one, groups: groups('A') };
    expect(named(gains(alone, greedyTimetable(alone), greedyTimetable, asked))).toEqual(['shorter slow']);
  });
});
