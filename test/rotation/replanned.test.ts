import { describe, expect, test } from 'vitest';
import { seconds } from '../../src/core/quantities/brands.ts';
import { checkTimetable } from '../../src/core/rotation/check-timetable.ts';
import { replan } from '../../src/core/rotation/replan.ts';
import type { Timetable } from '../../src/core/rotation/timetable.ts';
import { bestChart, bestOrder, type Score } from './every-plan-from-now.ts';
import { type FromNow, periodFromNow, type Visit } from './period-from-now.ts';
import { type MidPeriod, midPeriod } from './random-histories.ts';

const EFFORT = { seed: 1, steps: 100_000 };

/** What holds of the whole period, also where the bell has moved or somebody came late. */
const RULES = [
  'one place at a time',
  'one group at a time',
  'walk between rounds',
  'closed',
  'away',
  'before',
  'apart',
  'together',
  'shared part',
  'no adult',
  'adult at two places',
  'left out and done',
  'neither done nor left out',
];

const mustOf = ({ rotation }: MidPeriod, from: FromNow): readonly Visit[] =>
  rotation.wishes.flatMap((wish) => {
    const isOf = wish.kind === 'does' || wish.kind === 'last' || wish.kind === 'first';
    if (!isOf || wish.group === null) return [];
    const { group, table } = wish;
    if (!from.visits.some((visit) => visit.group === group && visit.table === table)) return [];
    if (from.held.some((each) => each.group === group && (wish.kind === 'first' || each.table === table)))
      return [];
    return [{ group, table }];
  });

const lostIn = (from: FromNow, { stays }: Timetable): readonly [number, number] => {
  const out = from.visits.filter(
    ({ group, table }) => !stays.some((stay) => stay.group === group && stay.table === table),
  );
  return [out.filter(({ table }) => from.isOrdinary(table)).length, out.length];
};

describe.each(['signal', 'free'] as const)('a hundred periods planned anew in their middle, %s', (way) => {
  test('nobody repeats, and lost visits, changes and end are those of the best of all plans', () => {
    let periods = 0;
    for (let seed = 1; periods < 100; seed += 1) {
      const period = midPeriod(seed, way, EFFORT);
      if (period === null) continue;
      const from = periodFromNow(period);
      if (from.visits.length < 2 || from.visits.length > 6) continue;
      periods += 1;
      const { rotation, timetable, history, now } = period;
      const anew = replan(rotation, timetable, history, seconds(now), EFFORT);
      const judge = (must: readonly Visit[]): Score | null =>
        way === 'signal' ? bestChart(rotation, from, must) : bestOrder(rotation, from, must);
      const best = judge(mustOf(period, from)) ?? judge([]);
      if (anew.kind !== 'timetable') expect({ seed, anew, best }).toBeNull();
      if (anew.kind !== 'timetable') return;
      const { stays, rounds, ends } = anew.timetable;
      expect(new Set(stays.map(({ group, table }) => `${group} ${table}`)).size).toBe(stays.length);
      const lastHeld = Math.max(0, ...from.held.map(({ until }) => until));
      const last = Math.max(best?.[1] === from.visits.length ? 0 : (best?.[3] ?? 0), lastHeld);
      expect({
        seed,
        proof: anew.proof,
        score: [...lostIn(from, anew.timetable), anew.changes, ends],
      }).toEqual({
        seed,
        proof: 'search',
        score: [...(best?.slice(0, 3) ?? []), last],
      });
      expect(rounds === null).toBe(way === 'free');
      const broken = checkTimetable(anew.rotation, anew.timetable).filter(({ rule }) => RULES.includes(rule));
      const isPlain = !history.changes.some(({ kind }) => kind === 'break' || kind === 'adult gone');
      expect({ seed, broken: isPlain ? broken : [] }).toEqual({ seed, broken: [] });
    }
  });
});
