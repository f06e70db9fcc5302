import type { Entry } from '../../store/entry.ts';
import type { ClockPart, GroupParts, RouteStop } from '../../store/wire.ts';

/** Where a group is and where it goes, as its page says it. */
export interface GroupPlace {
  readonly here: RouteStop | null;
  readonly next: RouteStop | null;
  readonly stops: readonly RouteStop[];
}

/** As the plan has it, and on top of that what the group itself said since and the server has not heard yet. */
export function placeOf(
  route: GroupParts['route'] | undefined,
  unheard: readonly Entry[],
  group: string,
): GroupPlace {
  const stops = unheard.reduce(
    (all, { what }) =>
      (what.kind === 'arrived' || what.kind === 'done') && what.group === group
        ? all.map((stop) => moved(stop, what.table, what.kind === 'arrived'))
        : all,
    route?.stops ?? [],
  );
  return {
    here: stops.find(({ state }) => state === 'here') ?? null,
    next: stops.find(({ state }) => state === 'next') ?? null,
    stops,
  };
}

const moved = (stop: RouteStop, table: string, isArrival: boolean): RouteStop =>
  stop.table === table
    ? { ...stop, state: isArrival ? 'here' : 'done' }
    : isArrival && stop.state === 'here'
      ? { ...stop, state: 'done' }
      : stop;

export interface TimeLeft {
  /** By the server's clock. */
  readonly until: number;
  /** Milliseconds; below 0 when it is past. */
  readonly left: number;
}

/** Until when a group is where it is: the signal, else its own plan, else the end of the period. */
export function timeLeft(clock: ClockPart | undefined, here: RouteStop | null, now: number): TimeLeft | null {
  if (clock === undefined || clock.begun === null) return null;
  const { begun, paused, pausedSince, round, ends } = clock;
  const planned = here === null ? null : begun + paused + here.to;
  const due = round?.due ?? planned ?? ends;
  if (due === null) return null;
  const still = pausedSince === null ? 0 : Math.max(0, now - pausedSince);
  return { until: due + still, left: due + still - now };
}
