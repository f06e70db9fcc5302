import {
  longWaitsOf,
  type PeriodWords,
  paperTask,
  staysOf,
  timetableOf,
} from '../../documents/text/period-words.ts';
import type { LoggedStay } from '../../store/visit-log.ts';
import type { GroupParts, RouteStop } from '../../store/wire.ts';
import type { PlanNow } from './plan-now.ts';
import type { VisitClock } from './visit-clock.ts';

/** Where a group has been, is, and goes to: as it said itself, else as plan and signal have it. */
export function routePart(
  words: PeriodWords,
  plan: PlanNow,
  clock: VisitClock,
  logged: readonly LoggedStay[],
  group: string,
): GroupParts['route'] {
  const own = logged.filter((stay) => stay.group === group);
  const stays = staysOf(plan.period).filter((stay) => stay.group === group);
  const open = own.find(({ to }) => to === null)?.table ?? null;
  const isSignal = timetableOf(plan.period)?.rounds != null;
  const over = plan.roundsOver;
  const left = new Set(own.filter(({ to }) => to !== null).map(({ table }) => table));
  const first = stays.find(({ isDone }) => !isDone);
  const here = clock.begun === null ? null : (open ?? byPlan());
  function byPlan(): string | null {
    if (isSignal) {
      const now = stays.find(({ isDone, round }) => !isDone && round === over + 1);
      return now === undefined || left.has(now.table) ? null : now.table;
    }
    return own.length === 0 ? (first?.table ?? null) : null;
  }
  const stops = stays.map(({ table, from, to, isDone, round }): RouteStop => {
    const isOver = isDone || left.has(table) || (isSignal && round !== null && round <= over);
    return {
      table,
      title: words.titles.get(table) ?? '',
      from: 1000 * from,
      to: 1000 * to,
      state: table === here ? 'here' : isOver ? 'done' : 'next',
    };
  });
  return { stops: withElsewhere(words, stops, open), waiting: waitingText(words, group, stops) };
}

/** A group at a table that is not on its route is shown there all the same. */
function withElsewhere(
  { titles }: PeriodWords,
  stops: readonly RouteStop[],
  open: string | null,
): readonly RouteStop[] {
  if (open === null || stops.some(({ table }) => table === open)) return stops;
  const next = stops.findIndex(({ state }) => state === 'next');
  const at = next === -1 ? stops.length : next;
  const time = stops[at]?.from ?? stops.at(-1)?.to ?? 0;
  const here: RouteStop = { table: open, title: titles.get(open) ?? '', from: time, to: time, state: 'here' };
  return [...stops.slice(0, at), here, ...stops.slice(at)];
}

/** What there is to do in the wait that is on now or comes before the next table; `null` where there is none. */
function waitingText(words: PeriodWords, group: string, stops: readonly RouteStop[]): string | null {
  const { say, language, period } = words;
  const next = stops.findIndex(({ state }) => state === 'next');
  const until = next === -1 ? 1000 * period.lasts : (stops[next]?.from ?? 0);
  const since = next === -1 ? (stops.at(-1)?.to ?? 0) : (stops[next - 1]?.to ?? 0);
  const wait = longWaitsOf(period).find(
    (each) => each.group === group && 1000 * each.from >= since - 1000 && 1000 * each.from < until,
  );
  if (wait === undefined) return null;
  const { task } = wait;
  if (task === null) return say('sheet.routes.wait.nothing');
  return task.kind === 'setup'
    ? say('sheet.routes.wait.setup', { setup: task.setup, table: task.table })
    : paperTask(language, task);
}
