import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupRoles } from './group-roles.ts';
import { type GroupsAsked, groupsOf } from './groups-of.ts';

const asked = (pupils: number, more: Partial<GroupsAsked> = {}): GroupsAsked => ({
  pupils,
  size: null,
  groups: null,
  places: null,
  tables: null,
  labels: [],
  ...more,
});
const sizes = (of: GroupsAsked): readonly number[] => groupsOf(of).groups.map(({ pupils }) => pupils);

describe('a class as groups', () => {
  it('26 pupils by fours are two groups of five and four of four, called by letters', () => {
    const { groups, findings } = groupsOf(asked(26, { size: 4 }));
    expect(groups.map(({ label, pupils }) => `${label}${pupils}`)).toEqual([
      'A5',
      'B5',
      'C4',
      'D4',
      'E4',
      'F4',
    ]);
    expect(findings).toEqual([{ kind: 'other size', wanted: 4, larger: 2, smaller: 0 }]);
  });

  it('keeps to the number of groups, or to the places at the tables, where they are said', () => {
    expect(sizes(asked(26, { size: 4, groups: 5 }))).toEqual([6, 5, 5, 5, 5]);
    expect(sizes(asked(23, { size: 4 }))).toEqual([4, 4, 4, 4, 4, 3]);
    expect(sizes(asked(23, { size: 4, places: 5 }))).toEqual([5, 5, 5, 4, 4]);
  });

  it('has groups that wait rather than groups of nine, and says so', () => {
    const { groups, findings } = groupsOf(asked(27, { places: 3 }));
    expect(groups.length).toBe(6);
    expect(findings).toContainEqual({ kind: 'more groups than places', groups: 6, places: 3 });
  });

  it('says what five pupils by fours, two pupils, seven groups of five pupils and nobody come to', () => {
    expect(groupsOf(asked(5, { size: 4 })).findings).toEqual([
      { kind: 'other size', wanted: 4, larger: 1, smaller: 0 },
    ]);
    expect(groupsOf(asked(2)).findings).toEqual([{ kind: 'small groups', pupils: 2, groups: 1 }]);
    const seven = groupsOf(asked(5, { groups: 7 }));
    expect(seven.groups.length).toBe(5);
    expect(seven.findings[0]).toEqual({ kind: 'fewer pupils than groups', wanted: 7, groups: 5 });
    for (const pupils of [0, -3, 2.5]) expect(groupsOf(asked(pupils)).findings).toEqual([{ kind: 'nobody' }]);
  });

  it('says when there are too few tables for everybody to pull', () => {
    expect(groupsOf(asked(15, { groups: 3, tables: 4 })).findings).toEqual([
      { kind: 'not all pull', pupils: 1, tables: 4 },
    ]);
    expect(groupsOf(asked(15, { groups: 3, tables: 5 })).findings).toEqual([]);
  });

  it('takes the labels that are given and letters that are not among them', () => {
    const { groups } = groupsOf(asked(16, { labels: ['Gulls', 'A'] }));
    expect(groups.map(({ label }) => label)).toEqual(['Gulls', 'A', 'B', 'C']);
    expect(groupsOf(asked(84, { groups: 28 })).groups.at(-1)?.label).toBe('AB');
  });

  it('leaves nobody out, has sizes that differ by one at most, and no label twice', () => {
    const any = fc.record({
      pupils: fc.integer({ min: 1, max: 200 }),
      size: fc.option(fc.integer({ min: 1, max: 12 })),
      groups: fc.option(fc.integer({ min: 1, max: 40 })),
      places: fc.option(fc.integer({ min: 1, max: 20 })),
      tables: fc.option(fc.integer({ min: 1, max: 12 })),
      labels: fc.uniqueArray(fc.constantFrom('A', 'B', 'C', 'Gulls', 'AA')),
    });
    fc.assert(
      fc.property(any, (of) => {
        const found = sizes(of);
        expect(found.reduce((a, b) => a + b, 0)).toBe(of.pupils);
        expect((found[0] ?? 0) - (found.at(-1) ?? 0)).toBeLessThanOrEqual(1);
        const labels = groupsOf(of).groups.map(({ label }) => label);
        expect(new Set(labels).size).toBe(labels.length);
        if (of.size === null && of.groups === null && of.places === null && of.pupils > 5)
          expect(Math.min(...found)).toBeGreaterThanOrEqual(3);
      }),
    );
  });
});

describe('who pulls, reads, writes and checks', () => {
  it('in a group of three one pupil writes and checks; in one of five two read', () => {
    expect(groupRoles(3, 3)).toMatchObject({ joined: [['write', 'check']], doubled: [], untilAllPull: 3 });
    expect(groupRoles(4, 4)).toMatchObject({ joined: [], doubled: [], untilAllPull: 4 });
    expect(groupRoles(5, 5)).toMatchObject({ joined: [], doubled: ['read'], untilAllPull: 5 });
  });

  it('at every table every duty is done, one pupil pulls, and everybody has pulled once after as many tables as pupils', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 10 }), (pupils) => {
        const { steps } = groupRoles(pupils, pupils);
        for (const seats of steps) {
          const duties = seats.flatMap((seat) => seat.duties);
          expect(new Set(duties)).toEqual(new Set(['pull', 'read', 'write', 'check']));
          expect(duties.filter((duty) => duty === 'pull').length).toBe(1);
          expect(seats.every((seat) => seat.duties.length > 0)).toBe(true);
        }
        const pulled = steps.flatMap((seats) =>
          seats.filter(({ duties }) => duties.includes('pull')).map(({ pupil }) => pupil),
        );
        expect([...pulled].sort((a, b) => a - b)).toEqual(Array.from({ length: pupils }, (_, n) => n + 1));
      }),
    );
  });
});
