import { randomFrom } from '../uncertainty/random.ts';
import type { SearchEffort, Shop, ShopAnswer } from './shop.ts';
import { alikeArcs, alikeRows, inAlikeOrder } from './shop-alike.ts';
import { lacksTime, shopBound } from './shop-bounds.ts';
import { firstSchedule, type Schedule } from './shop-first.ts';
import { LATE } from './shop-greedy.ts';
import { shopModel } from './shop-model.ts';
import { mirrorArcs } from './shop-reversed.ts';
import { leanOn, searchShop, shopSearch } from './shop-search.ts';

export interface ShopOptions {
  /** Stops at a schedule that ends by this. */
  readonly enough?: number;
  /** Beginnings of a schedule to look near first; it may break rules. */
  readonly near?: readonly number[];
}

/** How often it begins again near another first schedule: what is learnt is kept. */
const LEGS = 5;

/**
 * When each task begins so that all are done soonest, with its proof.
 *
 * First schedules are made by always going on with what has the most left to do. Then the orders of all pairs that
 * can't run at once are searched for a sooner end until none is left: a choice of who goes first, its consequences
 * for all earliest and latest beginnings, and from each contradiction a new rule. (Grimes, Hebrard and Malapert 2009
 * on open shops; Schutt, Feydy, Stuckey and Wallace 2011 on learning from schedules; both from memory.)
 *
 * @throws RangeError where a time is no whole number.
 *
 * @example
 * const each = [0, 1, 2];
 * solveShop(
 *   {
 *     lengths: [6, 5, 5, 6, 5, 5, 6, 5, 5],
 *     resources: each.flatMap((n) => [
 *       { capacity: 1, tasks: each.map((m) => 3 * n + m), after: [0, 0, 0] },
 *       { capacity: 1, tasks: each.map((m) => 3 * m + n), after: [0, 0, 0] },
 *     ]),
 *     before: [], earliest: null, latest: null, blocked: [],
 *   },
 *   { seed: 1, steps: 1000 },
 * ).kind // => 'schedule'
 */
export function solveShop(shop: Shop, effort: SearchEffort, options: ShopOptions = {}): ShopAnswer {
  const model = shopModel(shop);
  const bound = model === null ? Infinity : shopBound(model);
  if (model === null || bound === Infinity || lacksTime(model)) return { kind: 'impossible' };
  const random = randomFrom(effort.seed);
  const enough = Math.max(bound, options.enough ?? bound);
  const first = firstSchedule(model, enough, effort.steps, random);
  let best = first === null || first.end >= LATE ? null : first;
  if (best !== null && best.end <= enough) return answer(best, bound, best.end === bound ? 'bound' : 'none');
  const alike = alikeRows(model);
  const hint = options.near ?? first?.starts ?? model.earliest;
  const ordered = alike.length > 0 ? alikeArcs(alike) : mirrorArcs(model, hint);
  const search = shopSearch({ ...model, arcs: [...model.arcs, ...ordered] }, random);
  leanOn(search, inAlikeOrder(alike, hint));
  const leg = Math.ceil(effort.steps / LEGS);
  for (let until = leg; ; ) {
    const end = searchShop(
      search,
      best === null ? model.horizon : best.end - 1,
      Math.min(until, effort.steps) - search.failures,
    );
    if (end === 'none') return best === null ? { kind: 'impossible' } : answer(best, best.end, 'search');
    if (end === 'found') best = scheduleOf(model.lengths, search.net.value);
    else {
      if (until >= effort.steps)
        return best === null ? { kind: 'unknown', bound } : answer(best, bound, 'none');
      until += leg;
      const other = firstSchedule(model, enough, effort.steps, random);
      if (other !== null && other.end < (best?.end ?? LATE)) best = other;
      if (other !== null) leanOn(search, inAlikeOrder(alike, other.starts));
    }
    if (best !== null && best.end <= enough)
      return answer(best, bound, best.end === bound ? 'bound' : 'none');
  }
}

/** The earliest beginnings; every other bound is a latest one. */
function scheduleOf(lengths: Int32Array, bounds: Int32Array): Schedule {
  const starts = Int32Array.from(lengths, (_, task) => bounds[2 * task] as number);
  return {
    starts,
    end: lengths.reduce((end, length, task) => Math.max(end, (starts[task] as number) + length), 0),
  };
}

function answer(best: Schedule, bound: number, proof: 'bound' | 'search' | 'none'): ShopAnswer {
  return { kind: 'schedule', starts: [...best.starts], end: best.end, bound, proof };
}
