import { type Seconds, seconds } from '../quantities/brands.ts';
import { randomFrom } from '../uncertainty/random.ts';
import { type PeriodTimes, periodTimes } from './chance-draws.ts';
import { type ChancePlan, chancePlan } from './chance-plan.ts';
import { type Chance, chanceOf, spreadOf, type Tally, type TimeSpread, tallyOf } from './chance-tally.ts';
import { ASSUMED_SPLIT, type TimeSplit } from './chance-times.ts';
import {
  emptyTrial,
  type Play,
  playFree,
  playPlannedSignals,
  playSlowestSignals,
  type SignalPolicy,
} from './chance-trial.ts';
import type { Rotation } from './rotation.ts';
import type { Timetable } from './timetable.ts';

export interface ChanceAsked {
  readonly seed: number;
  /** Where all move together; without meaning where tables free up. `planned` unless it is said. */
  readonly signal?: SignalPolicy;
  /** What makes a stay long; the assumed split unless it is said. */
  readonly split?: TimeSplit;
  /** Periods are tried until every chance lies within this of what is told, 19 times of 20; 0.01 unless it is said. */
  readonly tolerance?: number;
  readonly atMost?: number;
  /** In the middle of the period: what was over by then is known, and who was at a table is not done before. */
  readonly now?: Seconds;
}

/** What chance does to a timetable. Times are since the period began. */
export interface ChanceToFinish {
  readonly signal: SignalPolicy | null;
  /** Nobody was cut off, by a signal or otherwise, and the last group was done by the bell. */
  readonly allDone: Chance;
  /** When the last group is done or cut off. */
  readonly ends: TimeSpread;
  /** How many stays are not done by their signal or the bell, on average, and how many there are. */
  readonly unfinished: number;
  readonly stays: readonly StayChance[];
  /** Where all move together; else empty. */
  readonly signals: readonly SignalChance[];
  /** Without a table, breaks and the walk left out, until the group's last table is done. */
  readonly waits: readonly { readonly group: string; readonly expected: Seconds }[];
  /** Ready, and nobody there, until the last group has begun at it. */
  readonly idle: readonly { readonly table: string; readonly copy: number; readonly expected: Seconds }[];
  readonly trials: number;
  readonly tolerance: number;
  /** Whether the tolerance was reached. */
  readonly isWithin: boolean;
  /** `null` where the caller said how times split. */
  readonly assumed: TimeSplit | null;
}

export interface StayChance {
  readonly group: string;
  readonly table: string;
  /** Share of the periods in which it is done by its signal, or the bell. */
  readonly done: number;
}

export interface SignalChance {
  /** From 1. */
  readonly round: number;
  /** The planned signal. */
  readonly at: Seconds;
  /** All in the round are done by the planned time of its signal. */
  readonly allDone: Chance;
  /** How many groups are not, on average. */
  readonly unfinished: number;
  /** When the last group of the round is done; where signals are planned, when it would be if it could stay. */
  readonly done: TimeSpread;
}

const TOLERANCE = 0.01;
const MOST_TRIALS = 40_000;
const BLOCK = 1_000;
/** So that from - to of the end rest on fifty periods on either side. */
const LEAST_TRIALS = 2_000;

/**
 * How likely all are done by the bell, and how long groups wait, from many periods whose times are drawn from what
 * the rotation says of them. Orders stay as planned: that of the tables for a group and of the groups at a table.
 *
 * Holds where stays are log-normal about their value and split as told (`TimeSplit`). It neglects that groups hurry
 * when the signal is near, and that a teacher would change the plan. The same seed gives the same answer.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = { mark: '1', run: exactly(360), reset: exactly(30), copies: 1, needsAdult: false, mayDo: false, beside: [] };
 * const rotation = { groups: [{ label: 'A', pupils: 4, arrives: 0 }], tables: [table], adults: [], walk: 30,
 *   begins: 300, bell: 700, breaks: [], way: 'free', wishes: [] };
 * const stays = [{ group: 'A', table: '1', copy: 1, from: 300, to: 660, round: null }];
 * chanceToFinish(rotation, { way: 'free', stays, rounds: null, stands: [] }, { seed: 1 }).ends.middle // => 660
 */
export function chanceToFinish(rotation: Rotation, timetable: Timetable, asked: ChanceAsked): ChanceToFinish {
  const plan = chancePlan(rotation, timetable, asked.now ?? null);
  const times = periodTimes(rotation, asked.split ?? ASSUMED_SPLIT, randomFrom(asked.seed));
  const signal = timetable.way === 'signal' ? (asked.signal ?? 'planned') : null;
  const play = playOf(plan, times, rotation, signal);
  const most = asked.atMost ?? MOST_TRIALS;
  const tolerance = asked.tolerance ?? TOLERANCE;
  const { walk, begins, bell } = rotation;
  const tally = tallyOf(plan, times.reset, { most, walk, begins, bell });
  const trial = emptyTrial(plan);
  while (tally.trials() < most && !isWithin(tally, tolerance)) {
    const stop = Math.min(most, tally.trials() + BLOCK);
    while (tally.trials() < stop) {
      times.next();
      play(trial);
      tally.add(trial);
    }
  }
  return {
    ...told(plan, tally, rotation),
    signal,
    tolerance,
    isWithin: isWithin(tally, tolerance),
    assumed: asked.split === undefined ? ASSUMED_SPLIT : null,
  };
}

function playOf(
  plan: ChancePlan,
  times: PeriodTimes,
  { walk, begins }: Rotation,
  signal: SignalPolicy | null,
): Play {
  switch (signal) {
    case null:
      return playFree(plan, times, walk);
    case 'planned':
      return playPlannedSignals(plan, times);
    case 'slowest':
      return playSlowestSignals(plan, times, walk, begins);
  }
}

function isWithin(tally: Tally, tolerance: number): boolean {
  const trials = tally.trials();
  if (trials < LEAST_TRIALS) return false;
  return [tally.allDone(), ...Array.from(tally.roundsDone())].every((hits) => {
    const { from, to } = chanceOf(hits, trials);
    return to - from <= 2 * tolerance;
  });
}

function told(plan: ChancePlan, tally: Tally, { groups, tables }: Rotation) {
  const trials = tally.trials();
  const expected = (sum: number | undefined): Seconds => seconds(Math.round((sum ?? 0) / trials));
  const stays = plan.stays.map(
    (stay, n): StayChance => ({
      group: groups[stay.group]?.label ?? '',
      table: tables[stay.pair % tables.length]?.mark ?? '',
      done: (tally.staysDone()[n] ?? 0) / trials,
    }),
  );
  return {
    allDone: chanceOf(tally.allDone(), trials),
    ends: spreadOf(tally.ends()),
    stays,
    unfinished: stays.reduce((sum, { done }) => sum + 1 - done, 0),
    signals: plan.rounds.map(
      ({ to }, n): SignalChance => ({
        round: n + 1,
        at: seconds(to),
        allDone: chanceOf(tally.roundsDone()[n] ?? 0, trials),
        unfinished: (tally.roundUnfinished()[n] ?? 0) / trials,
        done: spreadOf(tally.roundEnds(n)),
      }),
    ),
    waits: plan.groups.map(({ label }, n) => ({ group: label, expected: expected(tally.waits()[n]) })),
    idle: plan.copies.map(({ table, copy }, n) => ({ table, copy, expected: expected(tally.idle()[n]) })),
    trials,
  };
}
