import type { AskedPlan } from './asked-plan.ts';
import type { GroupAtTable } from './round-chart.ts';
import { type Bearer, lengthsOf, type RoundProfile } from './time-room.ts';

/** Which visits may be left out, and what bounds how few. */
export interface LossProblem {
  readonly asked: AskedPlan;
  /** Visits that have to stay. */
  readonly must: readonly GroupAtTable[];
  /** By table: left out before one that is not. */
  readonly mayDo: readonly boolean[];
  readonly bearers: readonly Bearer[];
}

/** How much is left out: how many visits at tables that are not left out first, how many in all, and the most of one group and of one such table. */
export interface LossLevel {
  readonly ordinary: number;
  readonly all: number;
  readonly ofGroup: number;
  readonly ofTable: number;
}

/** One way for a group to leave tables out. */
export interface Option {
  readonly lost: readonly number[];
  readonly kept: readonly number[];
  readonly ordinary: number;
}

/** The ways of each group to leave tables out that leave it time for the others, those that lose least first. */
function optionsOf(problem: LossProblem, profile: RoundProfile): readonly (readonly Option[])[] {
  const { asked, must, mayDo, bearers } = problem;
  const lengths = lengthsOf(asked);
  return Array.from({ length: asked.groups }, (_, group) => {
    const tables = asked.visits.filter((visit) => visit.group === group).map(({ table }) => table);
    const free = tables.filter(
      (table) => !must.some((visit) => visit.group === group && visit.table === table),
    );
    const bearer = bearers.find((each) => each.kind === 'group' && each.group === group);
    const options: Option[] = [];
    for (let set = 0; set < 2 ** free.length; set += 1) {
      const lost = free.filter((__, n) => Math.floor(set / 2 ** n) % 2 === 1);
      const kept = tables.filter((table) => !lost.includes(table));
      const takes = kept.reduce((sum, table) => sum + (bearer?.takes[table] ?? 0), 0);
      const fitsRounds = profile.lengths.every(
        (length, level) =>
          kept.filter((table) => (lengths[table] as number) >= length).length <=
          (profile.counts[level] as number),
      );
      if ((kept.length > 0 && takes > (bearer?.room ?? Infinity)) || !fitsRounds) continue;
      options.push({ lost, kept, ordinary: lost.filter((table) => !mayDo[table]).length });
    }
    return options.sort((a, b) => a.ordinary - b.ordinary || a.lost.length - b.lost.length);
  });
}

/** At most so many visits of a bearer that last at least so long. */
export interface Cap {
  readonly tables: readonly number[];
  readonly takes: readonly number[];
  readonly most: number;
}

/** What the tables and adults bear, given how many rounds of which length there are at most. */
function capsOf({ asked, bearers }: LossProblem, profile: RoundProfile): readonly Cap[] {
  const lengths = lengthsOf(asked);
  const ones = lengths.map(() => 1);
  return bearers
    .filter(({ kind }) => kind !== 'group')
    .flatMap(({ tables, capacity, room, most, takes }): readonly Cap[] => [
      { tables, takes, most: room },
      { tables, takes: ones, most },
      ...profile.lengths.map((length, level) => ({
        tables: tables.filter((table) => (lengths[table] as number) >= length),
        takes: ones,
        most: capacity * (profile.counts[level] as number),
      })),
    ])
    .filter((cap) => cap.tables.length > 0 && cap.most < Infinity);
}

/** What one choice of rounds leaves room for. */
export interface LossRoom {
  readonly options: readonly (readonly Option[])[];
  readonly caps: readonly Cap[];
  /** By table: at most so many visits. */
  readonly mostAt: readonly number[];
  /** How few visits are left out at least, by what each group and each table has room for. */
  readonly leastOrdinary: number;
  readonly least: number;
}

/** Reckons once for a choice of rounds what every listing of sets asks. */
export function lossRoom(problem: LossProblem, profile: RoundProfile): LossRoom {
  const options = optionsOf(problem, profile);
  const caps = capsOf(problem, profile);
  const visitsAt = (table: number): number =>
    problem.asked.visits.filter((visit) => visit.table === table).length;
  const mostAt = problem.mayDo.map((_, table) =>
    Math.min(
      visitsAt(table),
      ...caps
        .filter(({ tables }) => tables.length === 1 && tables[0] === table)
        .map((cap) => Math.floor(cap.most / (cap.takes[table] as number))),
    ),
  );
  const shared = sharedCaps(caps);
  const needs = (isCounted: (table: number) => boolean): number => {
    const ofTables = mostAt.reduce(
      (sum, most, table) => sum + (isCounted(table) ? visitsAt(table) - most : 0),
      0,
    );
    const others = mostAt.map((most, table) => (isCounted(table) ? most : 0));
    return ofTables + beyondShared(shared, others);
  };
  const ofGroups = (lost: (option: Option) => number): number =>
    options.reduce((sum, some) => sum + Math.min(...some.map(lost)), 0);
  return {
    options,
    caps: shared,
    mostAt,
    leastOrdinary: Math.max(
      ofGroups(({ ordinary }) => ordinary),
      needs((table) => !problem.mayDo[table]),
    ),
    least: Math.max(
      ofGroups(({ lost }) => lost.length),
      needs(() => true),
    ),
  };
}

/** Those of several tables; where visits take unequal times, in numbers of the shortest too. */
const sharedCaps = (caps: readonly Cap[]): readonly Cap[] =>
  caps
    .filter(({ tables }) => tables.length > 1)
    .flatMap((cap) => {
      const shortest = Math.min(...cap.tables.map((table) => cap.takes[table] as number));
      const inNumbers = { ...cap, takes: cap.takes.map(() => 1), most: Math.floor(cap.most / shortest) };
      return shortest > 1 ? [cap, inNumbers] : [cap];
    });

/** By how many visits these are more than one set of tables bears. */
function beyondShared(caps: readonly Cap[], visits: readonly number[]): number {
  let over = 0;
  for (const { tables, takes, most } of caps) {
    if (takes[tables[0] as number] !== 1) continue;
    let sum = 0;
    for (const table of tables) sum += visits[table] as number;
    over = Math.max(over, sum - most);
  }
  return over;
}

/** What came of listing sets: stopped by whoever looks at them, all listed, or too many looked through. */
export type Listing = 'stopped' | 'all' | 'cut';

/**
 * Lists sets of visits to leave out with exactly these numbers and none that a group, table or adult plainly has no
 * time for. Of groups that are alike only one of the ways to share losses among them is listed. `shuffled`
 * puts the ways of each group into another order.
 */
export function listLossSets(
  problem: LossProblem,
  room: LossRoom,
  level: LossLevel,
  alike: readonly number[],
  shuffled: (count: number) => readonly number[],
  onSet: (lost: readonly GroupAtTable[]) => boolean,
): Listing {
  const { asked, mayDo } = problem;
  if (room.leastOrdinary > level.ordinary || room.least > level.all) return 'all';
  const { caps, mostAt } = room;
  const options = room.options.map((some) => {
    const fit = some.filter(
      ({ lost, ordinary }) =>
        lost.length <= level.ofGroup && ordinary <= level.ordinary && lost.length <= level.all,
    );
    return shuffled(fit.length).map((n) => fit[n] as Option);
  });
  const tables = asked.runs.length;
  const ahead = aheadOf(options, asked);
  const kept = new Array<number>(tables).fill(0);
  const lostAt = new Array<number>(tables).fill(0);
  const bearable = new Array<number>(tables).fill(0);
  const chosen: number[] = [];
  let looked = 0;
  const hasRoom = (group: number, lost: number): boolean => {
    const rest = ahead[group] as Ahead;
    let over = 0;
    for (let table = 0; table < tables; table += 1) {
      const most = mostAt[table] as number;
      if ((kept[table] as number) > most) return false;
      const visits = (kept[table] as number) + (rest.visits[table] as number);
      over += Math.max(0, visits - most);
      bearable[table] = Math.min(visits, most);
    }
    over += beyondShared(caps, bearable);
    if (over > level.all - lost) return false;
    for (const { tables: some, takes, most } of caps) {
      let sum = 0;
      for (const table of some) sum += (kept[table] as number) * (takes[table] as number);
      if (sum > most) return false;
    }
    return true;
  };
  const choose = (group: number, lost: number, ordinary: number): Listing => {
    if (group === asked.groups) {
      if (lost !== level.all || ordinary !== level.ordinary) return 'all';
      const set = chosen.flatMap((n, each) =>
        ((options[each] as readonly Option[])[n] as Option).lost.map((table) => ({ group: each, table })),
      );
      return onSet(set) ? 'stopped' : 'all';
    }
    const some = options[group] as readonly Option[];
    const twin = alike[group] as number;
    const rest = ahead[group + 1] as Ahead;
    for (let n = twin < group ? (chosen[twin] as number) : 0; n < some.length; n += 1) {
      looked += 1;
      if (looked > MOST_LOOKED) return 'cut';
      const option = some[n] as Option;
      const more = lost + option.lost.length;
      const moreOrdinary = ordinary + option.ordinary;
      if (more + rest.least > level.all || more + rest.most < level.all) continue;
      if (
        moreOrdinary + rest.leastOrdinary > level.ordinary ||
        moreOrdinary + rest.mostOrdinary < level.ordinary
      )
        continue;
      if (option.lost.some((table) => !mayDo[table] && (lostAt[table] as number) >= level.ofTable)) continue;
      for (const table of option.kept) kept[table] = (kept[table] as number) + 1;
      for (const table of option.lost) lostAt[table] = (lostAt[table] as number) + 1;
      chosen.push(n);
      const listing = hasRoom(group + 1, more) ? choose(group + 1, more, moreOrdinary) : 'all';
      chosen.pop();
      for (const table of option.kept) kept[table] = (kept[table] as number) - 1;
      for (const table of option.lost) lostAt[table] = (lostAt[table] as number) - 1;
      if (listing !== 'all') return listing;
    }
    return 'all';
  };
  return choose(0, 0, 0);
}

const MOST_LOOKED = 20_000;

/** What the groups from one on can still lose, and how many visits they have at each table. */
interface Ahead {
  readonly least: number;
  readonly most: number;
  readonly leastOrdinary: number;
  readonly mostOrdinary: number;
  readonly visits: readonly number[];
}

function aheadOf(options: readonly (readonly Option[])[], asked: AskedPlan): readonly Ahead[] {
  const after: Ahead[] = [
    { least: 0, most: 0, leastOrdinary: 0, mostOrdinary: 0, visits: asked.runs.map(() => 0) },
  ];
  for (let group = options.length - 1; group >= 0; group -= 1) {
    const rest = after.at(-1) as Ahead;
    const sizes = options[group]?.map(({ lost }) => lost.length) ?? [];
    const ordinary = options[group]?.map((option) => option.ordinary) ?? [];
    after.push({
      least: rest.least + Math.min(...sizes),
      most: rest.most + Math.max(...sizes),
      leastOrdinary: rest.leastOrdinary + Math.min(...ordinary),
      mostOrdinary: rest.mostOrdinary + Math.max(...ordinary),
      visits: rest.visits.map(
        (count, table) =>
          count + asked.visits.filter((visit) => visit.group === group && visit.table === table).length,
      ),
    });
  }
  return after.reverse();
}
