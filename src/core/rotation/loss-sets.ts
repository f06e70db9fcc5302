import type { LossProblem, LossRoom, Option } from './loss-room.ts';
import { type LossLevel, lossWalk } from './loss-walk.ts';
import type { GroupAtTable } from './round-chart.ts';

/** What came of listing sets: stopped by whoever looks at them, all listed, or too many looked through. */
export type Listing = 'stopped' | 'all' | 'cut';

/** Looks at a set; true stops the listing. */
export type OnLossSet = (lost: readonly GroupAtTable[]) => boolean;

/**
 * Lists every set of visits to leave out with exactly these numbers but those that a group, table or adult plainly
 * has no time for. Of groups that are alike only one of the ways to share losses among them is listed. `looks`
 * is how many ways of single groups may be looked at; it goes down.
 */
export function listLossSets(
  problem: LossProblem,
  room: LossRoom,
  level: LossLevel,
  alike: readonly number[],
  looks: { left: number },
  onSet: OnLossSet,
): Listing {
  if (room.leastOrdinary > level.ordinary || room.least > level.all) return 'all';
  const walk = lossWalk(problem, room, level);
  const chosen: number[] = [];
  const choose = (group: number, lost: number, ordinary: number): Listing => {
    const some = walk.options[group];
    if (some === undefined)
      return onSet(setOf(chosen.map((n, each) => walk.options[each]?.[n]))) ? 'stopped' : 'all';
    const twin = alike[group] as number;
    for (let n = twin < group ? (chosen[twin] as number) : 0; n < some.length; n += 1) {
      looks.left -= 1;
      if (looks.left < 0) return 'cut';
      const option = some[n] as Option;
      const more = lost + option.lost.length;
      const moreOrdinary = ordinary + option.ordinary;
      if (!walk.canComeOut(group, more, moreOrdinary) || !walk.isFair(option)) continue;
      walk.take(option, true);
      chosen.push(n);
      const listing = walk.leadsOn(group, more, moreOrdinary) ? choose(group + 1, more, moreOrdinary) : 'all';
      chosen.pop();
      walk.take(option, false);
      if (listing !== 'all') return listing;
    }
    return 'all';
  };
  return walk.options.some((some) => some.length === 0) ? 'all' : choose(0, 0, 0);
}

/** How many ways of one group are followed where sets are only sampled. */
const WIDTH = 3;

/**
 * Some sets with exactly these numbers that look as if they could be planned: each group loses about as much as the
 * others, and most where most is to be lost. `noise` from 0 to 1 draws what else is preferred.
 */
export function sampleLossSets(
  problem: LossProblem,
  room: LossRoom,
  level: LossLevel,
  noise: () => number,
  looks: { left: number },
  onSet: OnLossSet,
): boolean {
  if (room.leastOrdinary > level.ordinary || room.least > level.all) return false;
  const walk = lossWalk(problem, room, level);
  const chosen: Option[] = [];
  const choose = (group: number, lost: number, ordinary: number): boolean => {
    const some = walk.options[group];
    if (some === undefined) return onSet(setOf(chosen));
    const left = walk.options.length - group;
    const over = walk.over(group);
    const unlike = (option: Option): number =>
      Math.abs(option.lost.length - (level.all - lost) / left) +
      Math.abs(option.ordinary - (level.ordinary - ordinary) / left);
    const gain = (option: Option): number =>
      option.lost.reduce(
        (sum, table) => sum + (over[table] as number) - (walk.lostAt[table] as number) / 8,
        0,
      );
    const fit = some.filter(
      (option) =>
        walk.canComeOut(group, lost + option.lost.length, ordinary + option.ordinary) && walk.isFair(option),
    );
    looks.left -= fit.length;
    const ranked = fit
      .map((option) => ({ option, rank: 100 * Math.floor(unlike(option) + 0.01) - gain(option) + noise() }))
      .sort((a, b) => a.rank - b.rank);
    let followed = 0;
    for (const { option } of ranked) {
      if (followed >= WIDTH || looks.left < 0) return false;
      walk.take(option, true);
      chosen.push(option);
      const more = lost + option.lost.length;
      const moreOrdinary = ordinary + option.ordinary;
      const leadsOn = walk.leadsOn(group, more, moreOrdinary);
      if (leadsOn) followed += 1;
      const isStopped = leadsOn && choose(group + 1, more, moreOrdinary);
      chosen.pop();
      walk.take(option, false);
      if (isStopped) return true;
    }
    return false;
  };
  return walk.options.every((some) => some.length > 0) && choose(0, 0, 0);
}

const setOf = (options: readonly (Option | undefined)[]): readonly GroupAtTable[] =>
  options.flatMap((option, group) => option?.lost.map((table) => ({ group, table })) ?? []);
