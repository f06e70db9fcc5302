import { type ClauseBook, LITERALS, SIZE } from './shop-clauses.ts';
import { BY_BOUNDS, dequeue, raiseBound, type ShopNet, settle } from './shop-net.ts';

/**
 * Follows everything that is settled to its consequences: clauses with one literal left, tasks that wait for others,
 * orders for which no time is left. False where there is a contradiction; the net says which.
 */
export function spread(net: ShopNet, book: ClauseBook): boolean {
  net.failedBound = -1;
  net.failedClause = -1;
  for (;;) {
    while (net.trailHead < net.trailCount) {
      const literal = net.trail[net.trailHead] as number;
      net.trailHead += 1;
      if (!spreadClauses(net, book, literal) || !spreadOrder(net, literal)) return false;
    }
    if (net.queueCount === 0) return true;
    if (!spreadBound(net, dequeue(net))) return false;
  }
}

/** The order that a literal claims, on both bounds. */
function spreadOrder(net: ShopNet, literal: number): boolean {
  const first = net.leads[literal] as number;
  if (first < 0) return true;
  const then = net.follows[literal] as number;
  const weight = net.weight[literal] as number;
  return (
    raiseThrough(net, 2 * first, 2 * then, literal, weight) &&
    raiseThrough(net, 2 * then + 1, 2 * first + 1, literal, weight)
  );
}

function raiseThrough(net: ShopNet, from: number, to: number, literal: number, weight: number): boolean {
  const value = (net.value[from] as number) + weight;
  return (
    value <= (net.value[to] as number) ||
    raiseBound(net, to, value, literal, net.event[from] as number, weight)
  );
}

/** What follows from a bound that rose: others rise, and orders for which it is too late are turned round. */
function spreadBound(net: ShopNet, bound: number): boolean {
  const { arcs, truth, value } = net;
  const own = value[bound] as number;
  for (let arc = arcs.head[bound] as number; arc >= 0; arc = arcs.next[arc] as number) {
    const literal = arcs.literal[arc] as number;
    const state = literal < 0 ? 1 : (truth[literal] as number);
    if (state < 0) continue;
    const to = arcs.to[arc] as number;
    const weight = arcs.weight[arc] as number;
    if (state > 0) {
      if (own + weight <= (value[to] as number)) continue;
      if (!raiseBound(net, to, own + weight, literal, net.event[bound] as number, weight)) return false;
      // Along a circle a bound can rise from itself: it is in the queue again then.
      if (value[bound] !== own) return true;
    } else if (own + weight + (value[to ^ 1] as number) > 0) {
      net.reasonFrom[literal >> 1] = net.event[bound] as number;
      net.reasonTo[literal >> 1] = net.event[to ^ 1] as number;
      settle(net, literal ^ 1, BY_BOUNDS);
    }
  }
  return true;
}

/** Clauses that watch the contrary of a literal that became true look for another literal to watch. */
function spreadClauses(net: ShopNet, book: ClauseBook, literal: number): boolean {
  const { truth } = net;
  const { pool } = book;
  const contrary = literal ^ 1;
  const watching = book.watches[contrary] as number[];
  let kept = 0;
  for (let n = 0; n < watching.length; n += 2) {
    const place = watching[n] as number;
    const guess = watching[n + 1] as number;
    if (truth[guess] === 1) {
      watching[kept] = place;
      watching[kept + 1] = guess;
      kept += 2;
      continue;
    }
    const at = place + LITERALS;
    if (pool[at] === contrary) {
      pool[at] = pool[at + 1] as number;
      pool[at + 1] = contrary;
    }
    const other = pool[at] as number;
    if (truth[other] === 1 || !watchAnother(net, book, place, other)) {
      watching[kept] = place;
      watching[kept + 1] = other;
      kept += 2;
      if (truth[other] === 1) continue;
      if (truth[other] === 0) {
        settle(net, other, place);
        continue;
      }
      net.failedClause = place;
      for (let rest = n + 2; rest < watching.length; rest += 1, kept += 1)
        watching[kept] = watching[rest] as number;
      watching.length = kept;
      return false;
    }
  }
  watching.length = kept;
  return true;
}

/** Whether a clause found another literal that isn't false, and watches it now in place of its second. */
function watchAnother(net: ShopNet, book: ClauseBook, place: number, other: number): boolean {
  const { pool } = book;
  const at = place + LITERALS;
  const size = pool[place + SIZE] as number;
  for (let n = 2; n < size; n += 1) {
    const literal = pool[at + n] as number;
    if (net.truth[literal] === -1) continue;
    pool[at + n] = pool[at + 1] as number;
    pool[at + 1] = literal;
    (book.watches[literal] as number[]).push(place, other);
    return true;
  }
  return false;
}
