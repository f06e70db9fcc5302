import type { Seconds } from '../../core/quantities/brands.ts';
import { seconds } from '../../core/quantities/brands.ts';
import type { Dated } from '../../store/sane-order.ts';

/** The time of a visit as its entries tell it; milliseconds by the server's clock. */
export interface VisitClock {
  readonly begun: number | null;
  readonly pausedSince: number | null;
  /** Pauses since it began, the one that goes on included. */
  readonly pauses: readonly Pause[];
  /** Signals given, in their order. */
  readonly signals: readonly { readonly round: number; readonly when: number }[];
}

interface Pause {
  readonly from: number;
  readonly to: number | null;
}

/** The clock of a visit from its entries in sane order. */
export function visitClock(dated: readonly Dated[]): VisitClock {
  let begun: number | null = null;
  let since: number | null = null;
  const pauses: Pause[] = [];
  const signals: { round: number; when: number }[] = [];
  for (const { stored, when } of dated) {
    const { what } = stored.entry;
    if (what.kind === 'begun') begun ??= when;
    else if (what.kind === 'signal' && !signals.some(({ round }) => round === what.round))
      signals.push({ round: what.round, when });
    else if (what.kind === 'paused') since ??= when;
    else if (what.kind === 'resumed' && since !== null) {
      pauses.push({ from: since, to: when });
      since = null;
    }
  }
  const all = since === null ? pauses : [...pauses, { from: since, to: null }];
  const start = begun;
  return {
    begun,
    pausedSince: since,
    pauses:
      start === null
        ? []
        : all
            .filter(({ to }) => to === null || to > start)
            .map(({ from, to }) => ({ from: Math.max(from, start), to })),
    signals,
  };
}

/** How long it had stood still until then; a pause that goes on counts only where asked. */
export const stoodStill = ({ pauses }: VisitClock, until: number, goesOn = true): number =>
  pauses.reduce(
    (sum, { from, to }) =>
      from >= until || (to === null && !goesOn) ? sum : sum + Math.min(to ?? until, until) - from,
    0,
  );

/** A moment as seconds of the period, pauses left out; `null` before it has begun. */
export function intoThePeriod(clock: VisitClock, when: number): Seconds | null {
  if (clock.begun === null) return null;
  return seconds(Math.max(0, Math.round((when - clock.begun - stoodStill(clock, when)) / 1000)));
}
