import type { PeriodTimes } from './chance-draws.ts';
import type { ChancePlan, KnownStay, PlannedRound, PlannedStay } from './chance-plan.ts';
import { beginAround, type Over, workAround } from './chance-stretch.ts';

/** How a signal is given: at the planned time, done or not, or when the slowest group is done. */
export type SignalPolicy = 'planned' | 'slowest';

/** What happened in one period; filled anew each time. */
export interface Trial {
  readonly start: Float64Array;
  readonly over: Float64Array;
  /** 1 where the group was done, 0 where it was cut off. */
  readonly isDone: Uint8Array;
  /** By round: when its last group was done, or would have been had it stayed. */
  readonly roundDone: Float64Array;
}

/** Plays one period through with the times as they stand. */
export type Play = (trial: Trial) => void;

export const emptyTrial = ({ stays, rounds }: ChancePlan): Trial => ({
  start: new Float64Array(stays.length),
  over: new Float64Array(stays.length),
  isDone: new Uint8Array(stays.length),
  roundDone: new Float64Array(rounds.length),
});

/**
 * As tables free up: each group goes to its next table when both are free, in the planned order of the group and of
 * the table, and begins nothing that by the plan would reach into a break.
 */
export function playFree({ stays }: ChancePlan, times: PeriodTimes, walk: number): Play {
  const over: Over = { at: 0, isDone: true };
  return (trial) => {
    for (let n = 0; n < stays.length; n += 1) {
      const stay = stays[n] as PlannedStay;
      const ready = readyAt(stay, stays, times, trial, walk);
      begin(trial, n, stay, ready, times, over);
    }
  };
}

/**
 * All together at the planned times: at the signal every group leaves, done or not. A table that was left late is put
 * back late, and the next group begins late at it.
 */
export function playPlannedSignals({ stays, rounds }: ChancePlan, times: PeriodTimes): Play {
  return (trial) => {
    for (let round = 0; round < rounds.length; round += 1) {
      const { from, to, stays: inRound } = rounds[round] as PlannedRound;
      let last = 0;
      for (const n of inRound) {
        const stay = stays[n] as PlannedStay;
        if (stay.known?.isOver === true) {
          keep(trial, n, stay.known);
          last = Math.max(last, stay.known.least);
          continue;
        }
        const ready = stay.known?.from ?? Math.max(from, stay.notBefore, putBack(stay, stays, times, trial));
        const done = Math.max(ready + (times.run[stay.pair] as number), stay.known?.least ?? 0);
        last = Math.max(last, done);
        trial.start[n] = Math.min(ready, to);
        trial.over[n] = Math.min(done, to);
        trial.isDone[n] = done <= to ? 1 : 0;
      }
      trial.roundDone[round] = inRound.length === 0 ? to : last;
    }
  };
}

/** All together, when the slowest is done; a round begins as early as it may. */
export function playSlowestSignals(
  { stays, rounds }: ChancePlan,
  times: PeriodTimes,
  walk: number,
  begins: number,
): Play {
  const over: Over = { at: 0, isDone: true };
  return (trial) => {
    let ready = begins;
    for (let round = 0; round < rounds.length; round += 1) {
      const { from, to, stays: inRound, notBefore, shut, hasBegun } = rounds[round] as PlannedRound;
      const earliest = Math.max(ready, notBefore);
      const begun = hasBegun ? from : beginAround(shut, earliest, to - from);
      const opens = begun === Infinity ? earliest : begun;
      let last = opens;
      for (const n of inRound) {
        const stay = stays[n] as PlannedStay;
        begin(trial, n, stay, Math.max(opens, putBack(stay, stays, times, trial)), times, over);
      }
      for (const n of inRound) last = Math.max(last, trial.over[n] as number);
      trial.roundDone[round] = last;
      ready = last + walk;
    }
  };
}

function begin(trial: Trial, n: number, stay: PlannedStay, ready: number, times: PeriodTimes, over: Over) {
  const { known } = stay;
  if (known?.isOver === true) return keep(trial, n, known);
  const start = known === null ? beginAround(stay.shut, ready, stay.length) : known.from;
  if (start === Infinity) {
    trial.start[n] = ready;
    trial.over[n] = ready;
    trial.isDone[n] = 0;
    return;
  }
  workAround(stay.shut, start, times.run[stay.pair] as number, over);
  trial.start[n] = start;
  trial.over[n] = Math.max(over.at, known?.least ?? 0);
  trial.isDone[n] = over.isDone ? 1 : 0;
}

/** What was over before now is as it was. */
function keep(trial: Trial, n: number, { from, least }: KnownStay): void {
  trial.start[n] = from;
  trial.over[n] = least;
  trial.isDone[n] = 1;
}

function readyAt(
  stay: PlannedStay,
  stays: readonly PlannedStay[],
  times: PeriodTimes,
  trial: Trial,
  walk: number,
): number {
  let ready = stay.notBefore;
  for (const { stay: before, needs } of stay.after) {
    const over = trial.over[before] as number;
    const more =
      needs === 'walk'
        ? walk
        : needs === 'reset' || needs === 'adult'
          ? (times.reset[(stays[before] as PlannedStay).pair] as number)
          : 0;
    if (over + more > ready) ready = over + more;
  }
  return ready;
}

/** When the table is ready again after whoever was there before. */
function putBack(stay: PlannedStay, stays: readonly PlannedStay[], times: PeriodTimes, trial: Trial): number {
  for (const { stay: before, needs } of stay.after)
    if (needs === 'reset')
      return (trial.over[before] as number) + (times.reset[(stays[before] as PlannedStay).pair] as number);
  return 0;
}
