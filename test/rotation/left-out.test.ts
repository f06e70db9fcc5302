import { describe, expect, test } from 'vitest';
import { arrange } from '../../src/core/rotation/arrange.ts';
import { type AskedPlan, askedPlan } from '../../src/core/rotation/asked-plan.ts';
import { checkTimetable } from '../../src/core/rotation/check-timetable.ts';
import { searchPlan } from '../../src/core/rotation/plan-search.ts';
import type { Rotation, Way } from '../../src/core/rotation/rotation.ts';
import type { GroupAtTable } from '../../src/core/rotation/round-chart.ts';
import { distinct, visitsOf, wantedVisits } from '../../src/core/rotation/visits-wished.ts';
import { wishesSaid } from '../../src/core/rotation/wishes-said.ts';
import { randomFrom } from '../../src/core/uncertainty/random.ts';
import { anyRotation, minutes, rotationLike, tableLike, wish } from './small-rotations.ts';

const EFFORT = { seed: 1, steps: 100_000 };

type Numbers = readonly [ordinary: number, all: number, ofGroup: number, ofTable: number];

/** What the record of what is left out counts, in its order. */
function numbersOf(rotation: Rotation, lost: readonly GroupAtTable[]): Numbers {
  const isOrdinary = (table: number): boolean => rotation.tables[table]?.mayDo === false;
  const ordinary = lost.filter(({ table }) => isOrdinary(table));
  const most = (some: readonly GroupAtTable[], by: 'group' | 'table'): number =>
    Math.max(0, ...some.map((visit) => some.filter((other) => other[by] === visit[by]).length));
  return [ordinary.length, lost.length, most(lost, 'group'), most(ordinary, 'table')];
}

const compare = (a: Numbers, b: Numbers): number =>
  a.reduce((order, each, n) => (order !== 0 ? order : each - (b[n] as number)), 0);

/** All sets of visits, best first, until one is met whose others can be planned. */
function bestNumbers(rotation: Rotation, asked: AskedPlan, must: readonly GroupAtTable[]): Numbers | null {
  const free = asked.visits.filter(
    ({ group, table }) => !must.some((each) => each.group === group && each.table === table),
  );
  const sets = Array.from({ length: 2 ** free.length }, (_, set) => {
    const lost = free.filter((__, n) => Math.floor(set / 2 ** n) % 2 === 1);
    return { lost, numbers: numbersOf(rotation, lost) };
  });
  const met = sets
    .sort((a, b) => compare(a.numbers, b.numbers))
    .find(({ lost }) => {
      const visits = asked.visits.filter((visit) => !lost.includes(visit));
      const aim = { bell: asked.bell, standing: null };
      return searchPlan({ ...asked, visits }, aim, EFFORT).kind === 'plan';
    });
  return met?.numbers ?? null;
}

describe.each(['signal', 'free'] as const)(
  'what is left out of small periods that are too short, %s',
  (way) => {
    test('no set of visits is smaller, nor shared out more fairly, than the one that is left out', () => {
      let periods = 0;
      for (let seed = 1; periods < 40; seed += 1) {
        const random = randomFrom(5000 + seed);
        const rotation = anyRotation(random, way, seed % 2 === 0 ? 3 : 2, seed % 2 === 0 ? 3 : 4);
        const arrangement = arrange(rotation, EFFORT);
        if (arrangement.kind !== 'timetable' || arrangement.shortage === null) continue;
        periods += 1;
        const { wishes } = wishesSaid(rotation);
        const wanted = wantedVisits(rotation);
        const must = visitsOf(rotation, wishes, wanted, false);
        const asked = askedPlan(rotation, wishes, distinct([...wanted, ...must]));
        const lost = arrangement.timetable.leftOut.map(({ group, table }) => ({
          group: rotation.groups.findIndex(({ label }) => label === group),
          table: rotation.tables.findIndex(({ mark }) => mark === table),
        }));
        expect({ seed, numbers: numbersOf(rotation, lost), proof: arrangement.shortage.proof }).toEqual({
          seed,
          numbers: bestNumbers(rotation, asked, must),
          proof: 'search',
        });
      }
    });
  },
);

describe('what is left out of a class', () => {
  const six = (way: Way, more: Partial<Rotation> = {}): Rotation =>
    rotationLike(
      6,
      [6, 6, 6, 6, 6, 6].map((length, n) => tableLike(String(n + 1), length)),
      { way, bell: minutes(26), ...more },
    );

  test('with four rounds of six each group loses two tables and each table two groups', () => {
    const arrangement = arrange(six('signal'), EFFORT);
    expect(arrangement).toMatchObject({
      kind: 'timetable',
      shortage: { visits: 12, by: 60 * 12.5, proof: 'search' },
    });
    if (arrangement.kind !== 'timetable') return;
    const { leftOut } = arrangement.timetable;
    for (const by of ['group', 'table'] as const)
      expect(new Set(leftOut.map((each) => leftOut.filter((o) => o[by] === each[by]).length))).toEqual(
        new Set([2]),
      );
  });

  test('tables that may be left out go first, and what was wished by name stays', () => {
    const asked = six('signal', { wishes: [wish('A 5', { kind: 'does', group: 'A', table: '5' })] });
    const rotation = { ...asked, groups: asked.groups.slice(0, 4) };
    const tables = rotation.tables.map((table, n) => ({ ...table, mayDo: n === 4 || n === 5 }));
    const arrangement = arrange({ ...rotation, tables }, EFFORT);
    if (arrangement.kind !== 'timetable') expect(arrangement.kind).toBe('timetable');
    if (arrangement.kind !== 'timetable') return;
    const { leftOut, stays } = arrangement.timetable;
    expect(stays.some(({ group, table }) => group === 'A' && table === '5')).toBe(true);
    expect(checkTimetable({ ...rotation, tables }, arrangement.timetable)).toEqual([]);
    expect(leftOut.filter(({ table }) => table !== '5' && table !== '6')).toHaveLength(1);
  });

  test('a group that comes late loses what it has no time for, and nobody else loses anything', () => {
    const rotation = six('free', { bell: minutes(45) });
    const groups = rotation.groups.map((group, n) => (n === 0 ? { ...group, arrives: minutes(20) } : group));
    const arrangement = arrange({ ...rotation, groups }, EFFORT);
    expect(arrangement).toMatchObject({ kind: 'timetable', shortage: { visits: 3, by: 60 * 13.5 } });
    if (arrangement.kind === 'timetable')
      expect(new Set(arrangement.timetable.leftOut.map(({ group }) => group))).toEqual(new Set(['A']));
  });
});
