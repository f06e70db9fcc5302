import type { Shop } from '../../src/core/rotation/shop.ts';

/** What a schedule breaks, in words; nothing where it keeps all that the shop asks. */
export function faultsOf(shop: Shop, starts: readonly number[]): readonly string[] {
  const end = (task: number): number => at(starts, task) + at(shop.lengths, task);
  const overBreak = (task: number): boolean =>
    at(shop.lengths, task) > 0 &&
    shop.blocked.some(
      ({ from, to, tasks }) =>
        from < to && (tasks === null || tasks.includes(task)) && at(starts, task) < to && end(task) > from,
    );
  const tasks = starts.map((_, task) => task);
  return [
    ...tasks.filter((task) => !Number.isInteger(starts[task])).map((task) => `${task} begins between units`),
    ...tasks
      .filter((task) => at(starts, task) < Math.max(0, shop.earliest?.[task] ?? 0))
      .map((task) => `${task} begins too early`),
    ...tasks
      .filter((task) => end(task) > (shop.latest?.[task] ?? Infinity))
      .map((task) => `${task} ends too late`),
    ...tasks.filter(overBreak).map((task) => `${task} runs over a break`),
    ...shop.before
      .filter(({ first, then, gap }) => at(starts, then) < end(first) + gap)
      .map(({ first, then }) => `${then} does not wait for ${first}`),
    ...shop.resources.flatMap((resource, n) =>
      resource.tasks
        .filter((task, place) => isCrowded(shop, starts, n, task, place))
        .map((task) => `${n} has too many at the beginning of ${task}`),
    ),
  ];
}

/** More than a resource bears are running when a task begins on it: a count grows only then. */
function isCrowded(shop: Shop, starts: readonly number[], n: number, task: number, place: number): boolean {
  const { capacity, tasks, after } = shop.resources[n] as Shop['resources'][number];
  const hold = (other: number): number => at(shop.lengths, at(tasks, other)) + at(after, other);
  const time = at(starts, task);
  const running = tasks.filter((other, k) => at(starts, other) <= time && time < at(starts, other) + hold(k));
  return hold(place) > 0 && running.length > capacity;
}

/** The soonest end of all schedules, each beginning at each whole time up to a horizon tried in turn; `null` where there is none. */
export function soonestOfAll(shop: Shop, horizon = timeForAll(shop)): number | null {
  const starts: number[] = [];
  const grown = shop.lengths.map((_, task) => shopOfFirst(shop, task + 1));
  let best = Infinity;
  const place = (task: number, end: number): void => {
    if (task === shop.lengths.length) {
      best = end;
      return;
    }
    const length = at(shop.lengths, task);
    for (let time = 0; time + length < Math.min(best, horizon + 1); time += 1) {
      starts[task] = time;
      if (faultsOf(grown[task] as Shop, starts).length === 0) place(task + 1, Math.max(end, time + length));
    }
    starts.length = task;
  };
  place(0, 0);
  return best === Infinity ? null : best;
}

const timeForAll = ({ lengths, resources, before, earliest, blocked }: Shop): number =>
  Math.max(0, ...(earliest ?? []), ...blocked.map(({ to }) => to).filter(Number.isFinite)) +
  [
    ...lengths,
    ...resources.flatMap(({ after }) => after),
    ...before.map(({ gap }) => Math.max(0, gap)),
  ].reduce((sum, each) => sum + each, 0);

/** The shop with its first tasks alone. */
function shopOfFirst(shop: Shop, count: number): Shop {
  const isIn = (task: number): boolean => task < count;
  return {
    ...shop,
    lengths: shop.lengths.slice(0, count),
    resources: shop.resources.map(({ capacity, tasks, after }) => ({
      capacity,
      tasks: tasks.filter(isIn),
      after: after.filter((_, place) => isIn(at(tasks, place))),
    })),
    before: shop.before.filter(({ first, then }) => isIn(first) && isIn(then)),
  };
}

const at = (row: readonly number[], place: number): number => row[place] as number;
