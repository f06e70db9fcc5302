import { type Seconds, seconds } from '../quantities/brands.ts';
import { isAmong } from './among.ts';
import { type AskedPlan, askedPlan } from './asked-plan.ts';
import type { SoFar } from './history.ts';
import type { Rotation } from './rotation.ts';
import type { GroupAtTable } from './round-chart.ts';
import type { Stay, Timetable } from './timetable.ts';
import { visitsOf, wantedVisits } from './visits-wished.ts';
import type { Wish } from './wish.ts';
import { wishesSaid } from './wishes-said.ts';

/** What is left of a period that is under way, and the plan that stood for it. */
export interface StillToDo {
  /** As it is from the next beginning on. */
  readonly rotation: Rotation;
  readonly asked: AskedPlan;
  readonly must: readonly GroupAtTable[];
  /** By group: the tables still ahead in the plan that stood, in order. */
  readonly routes: readonly (readonly number[])[];
  /** By round and group, -1 for none: the rounds of the plan that stood and have not begun. */
  readonly chart: readonly (readonly number[])[];
  /** How many rounds have begun. */
  readonly roundsBegun: number;
}

/**
 * What is to be done from now on: what the plan that stood had in it and what has neither been done nor runs. What
 * was left out stays so: the groups' papers say it. What should have come before something that is done comes no more.
 */
export function stillToDo(
  changed: Rotation,
  timetable: Timetable,
  { over, running }: SoFar,
  now: Seconds,
): StillToDo {
  const held = [...over, ...running];
  const begins = seconds(
    Math.max(
      changed.begins,
      now,
      ...(changed.way === 'signal' ? held.map((stay) => readyAfter(changed, stay)) : []),
    ),
  );
  const rotation = { ...changed, begins };
  const isHeld = (group: string, table: string): boolean =>
    held.some((stay) => stay.group === group && stay.table === table);
  const wishes = wishesSaid(rotation).wishes.filter((wish) => isOpen(wish, held, now, isHeld));
  const stood = (group: string, table: string): boolean =>
    timetable.stays.some((stay) => stay.group === group && stay.table === table);
  const isLeft = ({ group, table }: GroupAtTable): boolean => {
    const [label, mark] = [rotation.groups[group]?.label ?? '', rotation.tables[table]?.mark ?? ''];
    const isTooLate = wishes.some(
      (wish) =>
        wish.kind === 'before' &&
        wish.first === mark &&
        (wish.group === null || wish.group === label) &&
        isHeld(label, wish.then),
    );
    return stood(label, mark) && !isHeld(label, mark) && !isTooLate;
  };
  const visits = wantedVisits(rotation).filter(isLeft);
  const must = visitsOf(rotation, wishes, visits, false).filter((visit) => isAmong(visits, visit));
  const asked = { ...askedPlan(rotation, wishes, visits), underWay: underWayOf(rotation, held) };
  const ahead = timetable.stays.filter((stay) => !isHeld(stay.group, stay.table));
  const roundsBegun = Math.max(0, ...held.map((stay) => roundOf(timetable, stay) ?? 0));
  return {
    rotation,
    asked,
    must,
    routes: rotation.groups.map(({ label }) => routeOf(rotation, ahead, label)),
    chart: chartAhead(rotation, timetable, roundsBegun),
    roundsBegun,
  };
}

/** When the next round can begin after this visit: the group has walked, and the table is put back. */
function readyAfter({ tables, walk }: Rotation, { table, to }: Stay): number {
  const reset = tables.find(({ mark }) => mark === table)?.reset.value ?? 0;
  return to + Math.max(walk, reset);
}

/** Whether a wish still asks for something: what has happened can't be wished otherwise. */
function isOpen(
  wish: Wish,
  held: readonly Stay[],
  now: Seconds,
  isHeld: (group: string, table: string) => boolean,
): boolean {
  if (wish.kind === 'at') return wish.time >= now && !isHeld(wish.group, wish.table);
  if (wish.kind === 'skips') return !isHeld(wish.group, wish.table);
  if (wish.kind === 'first') return !held.some(({ group }) => wish.group === null || wish.group === group);
  return true;
}

const underWayOf = ({ groups, tables }: Rotation, held: readonly Stay[]): AskedPlan['underWay'] =>
  held.flatMap(({ group, table, copy, to }) => {
    const visit = {
      group: groups.findIndex(({ label }) => label === group),
      table: tables.findIndex(({ mark }) => mark === table),
    };
    return visit.group < 0 || visit.table < 0 ? [] : [{ ...visit, copy, to }];
  });

const routeOf = ({ tables }: Rotation, ahead: readonly Stay[], label: string): readonly number[] =>
  ahead
    .filter(({ group }) => group === label)
    .sort((a, b) => a.from - b.from)
    .map((stay) => tables.findIndex(({ mark }) => mark === stay.table))
    .filter((table) => table >= 0);

/** The round in which a visit stood, or that was on when it began; `null` where tables free up. */
export function roundOf({ rounds, stays }: Timetable, { group, table, from }: Stay): number | null {
  if (rounds === null) return null;
  const stood = stays.find((stay) => stay.group === group && stay.table === table);
  return stood?.round ?? Math.max(1, rounds.filter((round) => round.from <= from).length);
}

function chartAhead(
  { groups, tables }: Rotation,
  { rounds, stays }: Timetable,
  begun: number,
): readonly (readonly number[])[] {
  return (rounds ?? []).slice(begun).map((_, n) =>
    groups.map(({ label }) => {
      const stay = stays.find(({ group, round }) => group === label && round === begun + n + 1);
      return tables.findIndex(({ mark }) => mark === stay?.table);
    }),
  );
}
