import type { Random } from '../uncertainty/random.ts';
import { addClause, type ClauseBook, clauseBook, dropWorst } from './shop-clauses.ts';
import { type CrowdBook, crowdBook, crowdClauses } from './shop-crowd.ts';
import { ALWAYS } from './shop-events.ts';
import { emptyLesson, type Lesson, learn } from './shop-learning.ts';
import type { ShopModel } from './shop-model.ts';
import {
  CHOSEN,
  deepen,
  raiseBound,
  retreat,
  type ShopNet,
  settle,
  settleEvents,
  shopNet,
} from './shop-net.ts';
import { bumpClaim, type ClaimOrder, claimOrder, fadeClaims, popClaim, pushClaim } from './shop-order.ts';
import { spread } from './shop-spread.ts';

/** A search for schedules that end by a target, which can only be lowered: what was learnt stays true. */
export interface ShopSearch {
  readonly net: ShopNet;
  readonly book: ClauseBook;
  readonly order: ClaimOrder;
  readonly lesson: Lesson;
  readonly crowd: CrowdBook;
  /** By claim: which of its literals is tried first. */
  readonly side: Uint8Array;
  /** Contradictions met so far. */
  failures: number;
  restarts: number;
}

/** `found`: the starts are the earliest beginnings. `none`: there is no schedule by the target. `spent`: nobody knows. */
export type SearchEnd = 'found' | 'none' | 'spent';

const FIRST_RUN = 200;
const KEPT_AT_FIRST = 2000;

export function shopSearch(model: ShopModel, random: Random): ShopSearch {
  const crowd = crowdBook(model);
  const net = shopNet(model, crowd.mostClaims);
  const claims = net.depthOf.length;
  const order = claimOrder(claims);
  for (let claim = 0; claim < net.claimCount; claim += 1) {
    // At first those that leave the least room, as far as nobody knows better.
    const room = (net.weight[2 * claim] as number) + (net.weight[2 * claim + 1] as number);
    order.activity[claim] = (room / model.horizon) * (0.9 + 0.1 * random.even());
    pushClaim(order, claim);
  }
  return {
    net,
    book: clauseBook(2 * claims),
    order,
    lesson: emptyLesson(claims),
    crowd,
    side: new Uint8Array(claims),
    failures: 0,
    restarts: 0,
  };
}

/** Tries the order of a schedule first. */
export function leanOn(search: ShopSearch, starts: ArrayLike<number>): void {
  const { net, side } = search;
  for (let claim = 0; claim < net.claimCount; claim += 1) {
    const first = starts[net.leads[2 * claim] as number] as number;
    const then = starts[net.follows[2 * claim] as number] as number;
    side[claim] = first + (net.weight[2 * claim] as number) <= then ? 0 : 1;
  }
}

/** A schedule that ends by `end`, met with at most so many contradictions more. */
export function searchShop(search: ShopSearch, end: number, most: number): SearchEnd {
  const { net, book } = search;
  const last = search.failures + most;
  goBack(search, 0);
  if (!lowerTarget(net, end)) return 'none';
  let run = search.failures + runLength(search);
  for (;;) {
    if (!spread(net, book)) {
      search.failures += 1;
      if (!takeLesson(search)) return 'none';
      continue;
    }
    if (search.failures >= last) return 'spent';
    if (search.failures >= run) {
      search.restarts += 1;
      run = search.failures + runLength(search);
      goBack(search, 0);
    }
    if (net.depth === 0) tidy(search);
    const claim = nextClaim(search);
    if (claim >= 0) {
      deepen(net);
      settle(net, 2 * claim + (search.side[claim] as number), CHOSEN);
      continue;
    }
    const clauses = crowdClauses(net, search.crowd);
    if (clauses.length === 0) return 'found';
    for (const clause of clauses) if (!addRule(search, clause)) return 'none';
  }
}

/** All end by it: at the root. */
function lowerTarget(net: ShopNet, end: number): boolean {
  const { lengths, count } = net.model;
  for (let task = 0; task < count; task += 1) {
    const value = (lengths[task] as number) - end;
    const bound = 2 * task + 1;
    if (value > (net.value[bound] as number) && !raiseBound(net, bound, value, ALWAYS, -1, 0)) return false;
    if ((net.value[bound] as number) + (net.value[2 * task] as number) > 0) return false;
  }
  return true;
}

/** How many contradictions until it begins again: 1, 1, 2, 1, 1, 2, 4, ... times the first (Luby and others 1993). */
function runLength(search: ShopSearch): number {
  let place = search.restarts + 1;
  for (;;) {
    const bits = 32 - Math.clz32(place);
    if (place === 2 ** bits - 1) return FIRST_RUN * 2 ** (bits - 1);
    place -= 2 ** (bits - 1) - 1;
  }
}

/** Learns from a contradiction and goes back to where it can be used; false where nothing is left. */
function takeLesson(search: ShopSearch): boolean {
  const { net, book, order, lesson } = search;
  if (net.depth === 0) return false;
  learn(net, book, lesson);
  const [literal] = lesson.literals;
  if (literal === undefined) return false;
  for (const claim of lesson.met) bumpClaim(order, claim);
  fadeClaims(order);
  goBack(search, lesson.depth);
  settle(
    net,
    literal,
    lesson.literals.length === 1 ? CHOSEN : addClause(book, lesson.literals, lesson.worth),
  );
  return true;
}

/**
 * A clause of the shop itself that the choices so far break: goes back as far as two of its literals are open. False
 * where it can't be kept at all.
 */
function addRule(search: ShopSearch, clause: readonly number[]): boolean {
  const { net, book, order, side } = search;
  clause.forEach((literal, place) => {
    pushClaim(order, literal >> 1);
    bumpClaim(order, literal >> 1);
    if (net.leads[literal ^ 1] === -1) side[literal >> 1] = place === 0 ? literal & 1 : 1;
  });
  const depthOf = (literal: number): number =>
    net.truth[literal] === 0 ? net.depth + 1 : (net.depthOf[literal >> 1] as number);
  const literals = [...clause].sort((a, b) => depthOf(b) - depthOf(a));
  const [deepest, next] = literals;
  if (deepest === undefined) return false;
  const depth = next === undefined ? 0 : depthOf(next);
  if (depth <= net.depth) goBack(search, Math.max(0, depth - 1));
  if (depth > 0) {
    addClause(book, literals, 0);
    return true;
  }
  if (net.truth[deepest] === 0) settle(net, deepest, CHOSEN);
  return net.truth[deepest] === 1;
}

function goBack(search: ShopSearch, depth: number): void {
  const { net, order, side } = search;
  if (depth < net.depth)
    for (let place = net.trailAt[depth + 1] as number; place < net.trailCount; place += 1) {
      const literal = net.trail[place] as number;
      side[literal >> 1] = literal & 1;
      pushClaim(order, literal >> 1);
    }
  retreat(net, depth);
}

/** At the root, where all has been followed. */
function tidy(search: ShopSearch): void {
  settleEvents(search.net);
  if (search.book.learnt.length > KEPT_AT_FIRST + 100 * search.restarts) dropWorst(search.book);
}

function nextClaim(search: ShopSearch): number {
  const { net, order } = search;
  while (order.count > 0) {
    const claim = popClaim(order);
    if (net.truth[2 * claim] === 0) return claim;
  }
  return -1;
}
