import type { AskedPlan } from './asked-plan.ts';
import { beyondShared, type LossProblem, type LossRoom, type Option } from './loss-room.ts';

/** How much is left out: how many visits at tables that are not left out first, how many in all, and the most of one group and of one such table. */
export interface LossLevel {
  readonly ordinary: number;
  readonly all: number;
  readonly ofGroup: number;
  readonly ofTable: number;
}

/** What each group loses, chosen group by group: what is chosen so far and what can still be. */
export interface LossWalk {
  /** By group, those within the level. */
  readonly options: readonly (readonly Option[])[];
  /** By table: how many visits are lost there so far, and how many more are kept or ahead than it bears, alone or with others. */
  readonly lostAt: readonly number[];
  readonly over: (group: number) => readonly number[];
  /** Takes a way for a group, or takes it back. */
  readonly take: (option: Option, isTaken: boolean) => void;
  /** Whether a way for this group leads on, as far as can be told by counting; after it was taken. */
  readonly leadsOn: (group: number, lost: number, ordinary: number) => boolean;
  /** Whether these numbers can still come out right after this group. */
  readonly canComeOut: (group: number, lost: number, ordinary: number) => boolean;
  /** Whether no table loses more by it than it may. */
  readonly isFair: (option: Option) => boolean;
}

/** Starts to choose what each group loses. */
export function lossWalk({ asked, mayDo }: LossProblem, room: LossRoom, level: LossLevel): LossWalk {
  const { caps, mostAt } = room;
  const options = room
    .options()
    .map((some) =>
      some.filter(
        ({ lost, ordinary }) =>
          lost.length <= level.ofGroup && ordinary <= level.ordinary && lost.length <= level.all,
      ),
    );
  const tables = asked.runs.length;
  const ahead = aheadOf(options, asked);
  const kept = new Array<number>(tables).fill(0);
  const lostAt = new Array<number>(tables).fill(0);
  const bearable = new Array<number>(tables).fill(0);
  const ordinaryOnes = new Array<number>(tables).fill(0);
  return {
    options,
    lostAt,
    over: (group) => {
      const rest = ahead[group] as Ahead;
      const visits = kept.map((count, table) => count + (rest.visits[table] as number));
      const over = visits.map((count, table) => count - (mostAt[table] as number));
      for (const { tables: some, takes, most } of caps) {
        if (takes[some[0] as number] !== 1) continue;
        const beyond =
          some.reduce((sum, table) => sum + Math.min(visits[table] as number, mostAt[table] as number), 0) -
          most;
        if (beyond > 0) for (const table of some) over[table] = (over[table] as number) + beyond;
      }
      return over;
    },
    take: (option, isTaken) => {
      const one = isTaken ? 1 : -1;
      for (const table of option.kept) kept[table] = (kept[table] as number) + one;
      for (const table of option.lost) lostAt[table] = (lostAt[table] as number) + one;
    },
    leadsOn: (group, lost, ordinary) => {
      const rest = ahead[group + 1] as Ahead;
      let [over, overOrdinary] = [0, 0];
      for (let table = 0; table < tables; table += 1) {
        const most = mostAt[table] as number;
        if ((kept[table] as number) > most) return false;
        const visits = (kept[table] as number) + (rest.visits[table] as number);
        const beyond = Math.max(0, visits - most);
        over += beyond;
        overOrdinary += mayDo[table] ? 0 : beyond;
        bearable[table] = Math.min(visits, most);
        ordinaryOnes[table] = mayDo[table] ? 0 : Math.min(visits, most);
      }
      if (over + beyondShared(caps, bearable) > level.all - lost) return false;
      if (overOrdinary + beyondShared(caps, ordinaryOnes) > level.ordinary - ordinary) return false;
      return caps.every(({ tables: some, takes, most }) => {
        let sum = 0;
        for (const table of some) sum += (kept[table] as number) * (takes[table] as number);
        return sum <= most;
      });
    },
    canComeOut: (group, lost, ordinary) => {
      const rest = ahead[group + 1] as Ahead;
      return (
        lost + rest.least <= level.all &&
        lost + rest.most >= level.all &&
        ordinary + rest.leastOrdinary <= level.ordinary &&
        ordinary + rest.mostOrdinary >= level.ordinary
      );
    },
    isFair: ({ lost }) => lost.every((table) => mayDo[table] || (lostAt[table] as number) < level.ofTable),
  };
}

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
