import { allowedFrom } from './shop-breaks.ts';
import type { Held, ShopModel } from './shop-model.ts';

/** The rows that a first schedule is made in, kept from one try to the next. */
export interface ListRows {
  readonly starts: Int32Array;
  readonly ready: Int32Array;
  readonly waitsFor: Int32Array;
  readonly isDone: Uint8Array;
  /** By resource when each of its places is free, and what is left to do on it. */
  readonly free: readonly Int32Array[];
  readonly left: Float64Array;
  /** By task: its resources, and how long it holds each. */
  readonly uses: readonly (readonly { readonly resource: number; readonly hold: number }[])[];
  readonly followers: readonly (readonly { readonly then: number; readonly gap: number }[])[];
}

export function listRows(model: ShopModel): ListRows {
  const { count, resources, arcs } = model;
  return {
    starts: new Int32Array(count),
    ready: new Int32Array(count),
    waitsFor: new Int32Array(count),
    isDone: new Uint8Array(count),
    free: resources.map(({ capacity }) => new Int32Array(capacity)),
    left: new Float64Array(resources.length),
    uses: usesOf(count, resources),
    followers: Array.from({ length: count }, (_, task) => arcs.filter(({ first }) => first === task)),
  };
}

function usesOf(count: number, resources: readonly Held[]): ListRows['uses'] {
  const uses: { resource: number; hold: number }[][] = Array.from({ length: count }, () => []);
  resources.forEach(({ tasks, holds }, resource) => {
    tasks.forEach((task, place) => {
      uses[task]?.push({ resource, hold: holds[place] as number });
    });
  });
  return uses;
}

/** What is added to how late the latest task is: no end comes near it. */
export const LATE = 2 ** 30;

/**
 * A schedule in which nothing waits that could go on: of all tasks that can begin soonest, the one next whose
 * resources have the most left to do, each times its `pull`, and its own `liking`. Into `rows.starts`; returns when
 * all is done, `LATE` and how late where a task ends too late, or `Infinity` where the order runs in a circle.
 */
export function listSchedule(
  model: ShopModel,
  rows: ListRows,
  pull: Float64Array,
  liking: Float64Array,
): number {
  const { starts, ready, waitsFor, isDone, free, left, uses, followers } = rows;
  begin(model, rows);
  let end = 0;
  let late = 0;
  for (let done = 0; done < model.count; done += 1) {
    let next = -1;
    let best = 0;
    for (let task = 0; task < model.count; task += 1) {
      if (isDone[task] === 1 || (waitsFor[task] as number) > 0) continue;
      if (next >= 0 && (ready[task] as number) > (ready[next] as number)) continue;
      let weight = liking[task] as number;
      for (const { resource } of uses[task] as ListRows['uses'][number])
        weight += (left[resource] as number) * (pull[resource] as number);
      if (next >= 0 && ready[task] === ready[next] && weight <= best) continue;
      next = task;
      best = weight;
    }
    // Nothing can go on: the order runs in a circle.
    if (next < 0) return Infinity;
    const start = ready[next] as number;
    isDone[next] = 1;
    starts[next] = start;
    end = Math.max(end, start + (model.lengths[next] as number));
    late = Math.max(late, start - (model.latest[next] as number));
    for (const { resource, hold } of uses[next] as ListRows['uses'][number]) {
      const places = free[resource] as Int32Array;
      places[soonest(places)] = start + hold;
      left[resource] = (left[resource] as number) - hold / places.length;
      const time = places[soonest(places)] as number;
      for (const task of (model.resources[resource] as Held).tasks)
        if (isDone[task] === 0) raise(model, ready, task, time);
    }
    for (const { then, gap } of followers[next] as ListRows['followers'][number]) {
      waitsFor[then] = (waitsFor[then] as number) - 1;
      raise(model, ready, then, start + gap);
    }
  }
  return late > 0 ? LATE + late : end;
}

function begin(model: ShopModel, rows: ListRows): void {
  rows.isDone.fill(0);
  rows.waitsFor.fill(0);
  for (const { then } of model.arcs) rows.waitsFor[then] = (rows.waitsFor[then] as number) + 1;
  for (let task = 0; task < model.count; task += 1)
    rows.ready[task] = allowedFrom(model.forbidden[task] as Int32Array, model.earliest[task] as number);
  model.resources.forEach(({ holds, capacity }, resource) => {
    rows.free[resource]?.fill(0);
    rows.left[resource] = holds.reduce((sum, hold) => sum + hold, 0) / capacity;
  });
}

function raise(model: ShopModel, ready: Int32Array, task: number, time: number): void {
  if (time > (ready[task] as number)) ready[task] = allowedFrom(model.forbidden[task] as Int32Array, time);
}

function soonest(places: Int32Array): number {
  let first = 0;
  for (let place = 1; place < places.length; place += 1)
    if ((places[place] as number) < (places[first] as number)) first = place;
  return first;
}
