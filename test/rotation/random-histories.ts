import { type Seconds, seconds } from '../../src/core/quantities/brands.ts';
import { arrange } from '../../src/core/rotation/arrange.ts';
import type { DoneVisit, History, PeriodChange } from '../../src/core/rotation/history.ts';
import type { Rotation, Way } from '../../src/core/rotation/rotation.ts';
import type { SearchEffort } from '../../src/core/rotation/shop.ts';
import type { Timetable } from '../../src/core/rotation/timetable.ts';
import { type Random, randomFrom } from '../../src/core/uncertainty/random.ts';
import { anyRotation } from './small-rotations.ts';

/** A period in its middle: what was asked and planned, how it has gone, and when that is. */
export interface MidPeriod {
  readonly seed: number;
  readonly rotation: Rotation;
  readonly timetable: Timetable;
  readonly history: History;
  readonly now: number;
}

const HALF_MINUTE = 30;

/** A small period at some moment, with something that has come in between; `null` where there is no timetable. */
export function midPeriod(seed: number, way: Way, effort: SearchEffort): MidPeriod | null {
  const random = randomFrom(1000 + seed);
  const asked = anyRotation(random, way, seed % 3 === 0 ? 2 : 3, seed % 3 === 0 ? 4 : 3);
  const spare = random.even() < 0.6 ? HALF_MINUTE * Math.floor(random.even() * 20) : 0;
  const rotation = {
    ...asked,
    bell: seconds(asked.bell + spare),
    wishes: asked.wishes.filter(({ kind }) => kind !== 'at'),
  };
  const arrangement = arrange(rotation, effort);
  if (arrangement.kind !== 'timetable' || arrangement.timetable.stays.length === 0) return null;
  const { timetable } = arrangement;
  const share = 0.15 + 0.5 * random.even();
  const at =
    HALF_MINUTE * Math.round((rotation.begins + share * (timetable.ends - rotation.begins)) / HALF_MINUTE);
  const isDrill = random.even() < 0.3;
  const now = isDrill ? at + HALF_MINUTE * (2 + Math.floor(random.even() * 14)) : at;
  const done = timetable.stays
    .filter(({ from }) => from < at)
    .map(
      ({ group, table, copy, from, to }): DoneVisit => ({
        group,
        table,
        copy,
        from,
        to: to <= at ? to : null,
      }),
    );
  const drill: readonly PeriodChange[] = isDrill
    ? [{ kind: 'break', from: seconds(at), until: seconds(now) }]
    : [];
  const changes = [...drill, ...otherChanges(random, rotation, done, now)];
  return { seed, rotation, timetable, history: { done, changes }, now };
}

function otherChanges(
  random: Random,
  { groups, tables, adults, bell }: Rotation,
  done: readonly DoneVisit[],
  now: number,
): readonly PeriodChange[] {
  const pick = <T>(some: readonly T[]): T | undefined => some[Math.floor(random.even() * some.length)];
  const table = pick(tables);
  const late = pick(
    groups.filter(({ label }) => !done.some((visit) => visit.group === label && visit.to === null)),
  );
  const adult = pick(adults);
  const later = seconds(now + HALF_MINUTE * Math.ceil(random.even() * 20));
  const all: readonly (readonly [number, PeriodChange | null])[] = [
    [0.4, table === undefined ? null : broken(table.mark, table.copies, random.even() < 0.5 ? later : null)],
    [0.3, late === undefined ? null : { kind: 'late', group: late.label, until: later }],
    [adults.length > 1 ? 0.3 : 0.1, adult === undefined ? null : { kind: 'adult gone', adult: adult.label }],
    [0.3, { kind: 'bell', bell: seconds(bell - HALF_MINUTE * Math.ceil(random.even() * 10)) }],
  ];
  return all.flatMap(([chance, change]) => (change !== null && random.even() < chance ? [change] : []));
}

const broken = (table: string, copies: number, until: Seconds | null): PeriodChange => ({
  kind: 'broken',
  table,
  copy: copies > 1 ? 1 : null,
  until,
});
