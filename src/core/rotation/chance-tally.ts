import { type Seconds, seconds } from '../quantities/brands.ts';
import { quantileOf } from '../uncertainty/coverage-interval.ts';
import type { ChancePlan, PlannedGroup } from './chance-plan.ts';
import { openBetween } from './chance-stretch.ts';
import type { Trial } from './chance-trial.ts';

/** A share of the periods, and between which shares it lies 19 times of 20 for having tried only so many. */
export interface Chance {
  readonly share: number;
  readonly from: number;
  readonly to: number;
}

/** As often before `middle` as after; 19 of 20 times from - to. */
export interface TimeSpread {
  readonly middle: Seconds;
  readonly from: Seconds;
  readonly to: Seconds;
}

const Z = 1.959964;

/**
 * A share with Wilson's interval (Wilson, 1927; from memory): it stays within 0 and 1, also where all or none were.
 *
 * @example chanceOf(50, 100).from // => 0.4038
 */
export function chanceOf(hits: number, trials: number): Chance {
  const share = hits / trials;
  const base = 1 + (Z * Z) / trials;
  const middle = (share + (Z * Z) / (2 * trials)) / base;
  const half = (Z / base) * Math.sqrt((share * (1 - share)) / trials + (Z * Z) / (4 * trials * trials));
  return {
    share,
    from: Math.max(0, Math.min(share, middle - half)),
    to: Math.min(1, Math.max(share, middle + half)),
  };
}

/** Whole seconds, from a sample in any order. */
export function spreadOf(values: Float64Array): TimeSpread {
  const sorted = values.slice().sort();
  const at = (share: number): Seconds => seconds(Math.round(quantileOf(sorted, share)));
  return { middle: at(0.5), from: at(0.025), to: at(0.975) };
}

/** What is added up over the periods. */
export interface Tally {
  readonly add: (trial: Trial) => void;
  readonly trials: () => number;
  /** Periods in which nobody was cut off and all were done by the bell. */
  readonly allDone: () => number;
  /** By round: periods in which all were done by its planned signal. */
  readonly roundsDone: () => ArrayLike<number>;
  /** By round: stays that were not, over all periods. */
  readonly roundUnfinished: () => ArrayLike<number>;
  /** By stay: periods in which it was done by its signal, or the bell. */
  readonly staysDone: () => ArrayLike<number>;
  readonly ends: () => Float64Array;
  readonly roundEnds: (round: number) => Float64Array;
  /** Sums of seconds, by group and by copy. */
  readonly waits: () => ArrayLike<number>;
  readonly idle: () => ArrayLike<number>;
}

/** Room for at most so many periods. */
export function tallyOf(
  plan: ChancePlan,
  resets: Float64Array,
  asked: { readonly most: number; readonly walk: number; readonly begins: number; readonly bell: number },
): Tally {
  const { stays, groups, copies, rounds } = plan;
  const ends = new Float64Array(asked.most);
  const roundEnds = rounds.map(() => new Float64Array(asked.most));
  const roundsDone = new Float64Array(rounds.length);
  const roundUnfinished = new Float64Array(rounds.length);
  const staysDone = new Float64Array(stays.length);
  const waits = new Float64Array(groups.length);
  const idle = new Float64Array(copies.length);
  let trials = 0;
  let allDone = 0;
  const add = (trial: Trial): void => {
    let done = 0;
    let end = asked.begins;
    for (let n = 0; n < stays.length; n += 1) {
      const over = trial.over[n] as number;
      if (over > end) end = over;
      if (trial.isDone[n] === 1 && over <= asked.bell) {
        done += 1;
        staysDone[n] = (staysDone[n] as number) + 1;
      }
    }
    if (done === stays.length) allDone += 1;
    ends[trials] = end;
    for (const [n, { to, stays: inRound }] of rounds.entries()) {
      (roundEnds[n] as Float64Array)[trials] = trial.roundDone[n] as number;
      let late = 0;
      for (const stay of inRound)
        if (trial.isDone[stay] === 0 || (trial.over[stay] as number) > to) late += 1;
      roundUnfinished[n] = (roundUnfinished[n] as number) + late;
      if (late === 0) roundsDone[n] = (roundsDone[n] as number) + 1;
    }
    for (const [n, group] of groups.entries())
      waits[n] = (waits[n] as number) + waited(group, trial, asked.walk);
    for (const [n, { stays: atCopy, shut }] of copies.entries()) {
      let free = asked.begins;
      for (const stay of atCopy) {
        idle[n] = (idle[n] as number) + openBetween(shut, free, trial.start[stay] as number);
        free = (trial.over[stay] as number) + (resets[(stays[stay] as { pair: number }).pair] as number);
      }
    }
    trials += 1;
  };
  return {
    add,
    trials: () => trials,
    allDone: () => allDone,
    roundsDone: () => roundsDone,
    roundUnfinished: () => roundUnfinished,
    staysDone: () => staysDone,
    ends: () => ends.subarray(0, trials),
    roundEnds: (round) => (roundEnds[round] as Float64Array).subarray(0, trials),
    waits: () => waits,
    idle: () => idle,
  };
}

/** Time without a table and not on the way to one, from when it is there until its last table is done. */
function waited({ stays, notBefore, shut }: PlannedGroup, trial: Trial, walk: number): number {
  let sum = 0;
  let ready = notBefore;
  for (const stay of stays) {
    sum += openBetween(shut, ready, trial.start[stay] as number);
    ready = (trial.over[stay] as number) + walk;
  }
  return sum;
}
