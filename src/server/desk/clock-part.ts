import { timetableOf } from '../../documents/text/period-words.ts';
import type { ClockPart } from '../../store/wire.ts';
import { type PlanNow, runningUntil } from './plan-now.ts';
import { intoThePeriod, stoodStill, type VisitClock } from './visit-clock.ts';

/** The clock that every page shows; of a pause that goes on only its beginning is told. */
export function clockPart(clock: VisitClock, plan: PlanNow | null, now: number): ClockPart {
  const { begun, pausedSince } = clock;
  const paused = stoodStill(clock, Number.POSITIVE_INFINITY, false);
  return {
    now,
    begun,
    pausedSince,
    paused,
    ends: begun === null || plan === null ? null : begun + paused + 1000 * plan.period.lasts,
    round: plan === null ? null : roundNow(clock, plan),
  };
}

/** The round that runs, and when its signal is due: each lasts as planned from the signal before. */
function roundNow(clock: VisitClock, { period, roundsOver }: PlanNow): ClockPart['round'] {
  const rounds = timetableOf(period)?.rounds ?? null;
  const { begun } = clock;
  if (rounds === null || begun === null) return null;
  const running = runningUntil(period);
  const all = [...(running === null ? [] : [running]), ...rounds.map(({ to }) => to)];
  const over = roundsOver + (running === null ? 0 : 1);
  const ends = all[over];
  if (ends === undefined) return null;
  const before = period.underWay === null ? 0 : givenBefore(clock, period.underWay.now);
  const last = clock.signals.at(-1);
  const [from, since] = last === undefined || over === 0 ? [0, begun] : [all[over - 1] ?? 0, last.when];
  const stood = stoodStill(clock, Number.POSITIVE_INFINITY, false) - stoodStill(clock, since, false);
  return { number: before + over + 1, of: before + all.length, due: since + 1000 * (ends - from) + stood };
}

/** Signals given before a plan was made in the middle of the period. */
const givenBefore = (clock: VisitClock, now: number): number =>
  clock.signals.filter(({ when }) => (intoThePeriod(clock, when) ?? 0) < now).length;
