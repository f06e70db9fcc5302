import { timetableOf } from '../../documents/text/period-words.ts';
import type { ClockPart } from '../../store/wire.ts';
import type { PlanNow } from './plan-now.ts';
import { stoodStill, type VisitClock } from './visit-clock.ts';

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
  const rounds = timetableOf(period)?.rounds ?? [];
  const runs = rounds[roundsOver];
  const { begun } = clock;
  if (runs === undefined || begun === null) return null;
  const last = clock.signals.at(-1);
  const [from, since] = last === undefined ? [0, begun] : [rounds[roundsOver - 1]?.to ?? 0, last.when];
  const stood = stoodStill(clock, Number.POSITIVE_INFINITY, false) - stoodStill(clock, since, false);
  return { number: roundsOver + 1, of: rounds.length, due: since + 1000 * (runs.to - from) + stood };
}
