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

/** One way for a group to leave tables out. */
export interface Option {
  readonly lost: readonly number[];
  readonly kept: readonly number[];
  readonly ordinary: number;
}

/** What a group may do: its tables, those that it has to do, and how long it has for all. */
interface GroupChoice {
  readonly tables: readonly number[];
  readonly must: readonly number[];
  readonly room: number;
  readonly takes: readonly number[];
}

const choiceOf = ({ asked, must, bearers }: LossProblem, group: number): GroupChoice => {
  const own = ({ group: whose }: GroupAtTable): boolean => whose === group;
  const bearer = bearers.find((each) => each.kind === 'group' && each.group === group);
  return {
    tables: asked.visits.filter(own).map(({ table }) => table),
    must: must.filter(own).map(({ table }) => table),
    room: bearer?.room ?? Infinity,
    takes: bearer?.takes ?? [],
  };
};

/** Whether a group has time and rounds for these tables. */
function hasTime(
  { room, takes }: GroupChoice,
  profile: RoundProfile,
  lengths: readonly number[],
  kept: readonly number[],
): boolean {
  let sum = 0;
  for (const table of kept) sum += takes[table] as number;
  if (kept.length > 0 && sum > room) return false;
  for (const [level, length] of profile.lengths.entries()) {
    let count = 0;
    for (const table of kept) if ((lengths[table] as number) >= length) count += 1;
    if (count > (profile.counts[level] as number)) return false;
  }
  return true;
}

/** How many of these tables a group can keep at most, beside those that it has to: the shortest go furthest. */
function mostKept(
  choice: GroupChoice,
  profile: RoundProfile,
  lengths: readonly number[],
  among: readonly number[],
): number {
  let kept = choice.must;
  if (!hasTime(choice, profile, lengths, kept)) return -Infinity;
  for (const table of [...among].sort((a, b) => (lengths[a] as number) - (lengths[b] as number)))
    if (!kept.includes(table) && hasTime(choice, profile, lengths, [...kept, table])) kept = [...kept, table];
  return kept.filter((table) => among.includes(table)).length;
}

/** The ways of each group to leave tables out that leave it time for the others, those that lose least first. */
function optionsOf(
  problem: LossProblem,
  profile: RoundProfile,
  choices: readonly GroupChoice[],
): readonly (readonly Option[])[] {
  const lengths = lengthsOf(problem.asked);
  const known = new Map<string, readonly Option[]>();
  return choices.map((choice) => {
    const key = JSON.stringify([choice.tables, choice.must, choice.room]);
    const options = known.get(key) ?? optionsOfGroup(problem, profile, lengths, choice);
    known.set(key, options);
    return options;
  });
}

function optionsOfGroup(
  { mayDo }: LossProblem,
  profile: RoundProfile,
  lengths: readonly number[],
  choice: GroupChoice,
): readonly Option[] {
  const free = choice.tables.filter((table) => !choice.must.includes(table));
  const options: Option[] = [];
  for (let set = 0; set < 2 ** free.length; set += 1) {
    const lost = free.filter((_, n) => Math.floor(set / 2 ** n) % 2 === 1);
    const kept = choice.tables.filter((table) => !lost.includes(table));
    if (hasTime(choice, profile, lengths, kept))
      options.push({ lost, kept, ordinary: lost.filter((table) => !mayDo[table]).length });
  }
  return options.sort((a, b) => a.ordinary - b.ordinary || a.lost.length - b.lost.length);
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
  /** By group: every way to leave tables out for which it has time. */
  readonly options: () => readonly (readonly Option[])[];
  readonly caps: readonly Cap[];
  /** By table: at most so many visits. */
  readonly mostAt: readonly number[];
  /** How few visits are left out at least, by what each group and each table has room for. */
  readonly leastOrdinary: number;
  readonly least: number;
  /** How many one group loses at least, and how many one table that is not left out first. */
  readonly leastOfGroup: number;
  readonly leastOfTable: number;
}

/** Reckons once for a choice of rounds what every listing of sets asks. */
export function lossRoom(problem: LossProblem, profile: RoundProfile): LossRoom {
  const { asked, mayDo } = problem;
  const lengths = lengthsOf(asked);
  const choices = Array.from({ length: asked.groups }, (_, group) => choiceOf(problem, group));
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
  const ofGroups = (isCounted: (table: number) => boolean): number =>
    choices.reduce((sum, choice) => {
      const among = choice.tables.filter(isCounted);
      return sum + among.length - mostKept(choice, profile, lengths, among);
    }, 0);
  const isOrdinary = (table: number): boolean => !mayDo[table];
  const lostOf = (choice: GroupChoice): number =>
    choice.tables.length - mostKept(choice, profile, lengths, choice.tables);
  const always = (): boolean => true;
  let options: readonly (readonly Option[])[] | null = null;
  return {
    options: () => {
      options ??= optionsOf(problem, profile, choices);
      return options;
    },
    caps: shared,
    mostAt,
    leastOrdinary: Math.max(ofGroups(isOrdinary), needs(isOrdinary)),
    least: Math.max(ofGroups(always), needs(always)),
    leastOfGroup: Math.max(0, ...choices.map(lostOf)),
    leastOfTable: Math.max(
      0,
      ...mostAt.map((most, table) => (isOrdinary(table) ? visitsAt(table) - most : 0)),
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
export function beyondShared(caps: readonly Cap[], visits: readonly number[]): number {
  let over = 0;
  for (const { tables, takes, most } of caps) {
    if (takes[tables[0] as number] !== 1) continue;
    let sum = 0;
    for (const table of tables) sum += visits[table] as number;
    over = Math.max(over, sum - most);
  }
  return over;
}
