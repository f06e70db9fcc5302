import { allowedFrom, allowedUpTo } from './shop-breaks.ts';
import { ALWAYS, doubled, type EventRows, eventRows, OVER_BREAK } from './shop-events.ts';
import type { ShopModel } from './shop-model.ts';

/**
 * What is known of every beginning, and of every choice of who goes first, at one place of a search.
 *
 * Two bounds a task: an even one, its earliest beginning, and an odd one, its latest with the sign turned; both only
 * ever rise, and a task has no beginning left where they add up to more than nothing. A *literal* `a` is one claim
 * and `a ^ 1` its contrary; a claim that one task waits for another is an arc from bound to bound.
 *
 * Each rise is kept as an event with its cause, so that a failure can be told by the choices behind it alone (lazy
 * explanations of bounds: Ohrimenko, Stuckey and Codish 2009, from memory).
 */
export interface ShopNet {
  readonly model: ShopModel;
  readonly value: Int32Array;
  /** By bound its last event. */
  readonly event: Int32Array;
  events: EventRows;
  eventCount: number;
  readonly arcs: ArcRows;
  arcCount: number;
  /** By literal: 1 true, -1 false, 0 open; and what it claims: `follows` begins `weight` after `leads`, which is -1 where it claims nothing. */
  readonly truth: Int8Array;
  readonly leads: Int32Array;
  readonly follows: Int32Array;
  readonly weight: Int32Array;
  claimCount: number;
  /** By claim (literal >> 1): how deep it was settled, and why: a clause, `CHOSEN` or `BY_BOUNDS` with two events. */
  readonly depthOf: Int32Array;
  readonly reason: Int32Array;
  readonly reasonFrom: Int32Array;
  readonly reasonTo: Int32Array;
  readonly trail: Int32Array;
  trailCount: number;
  trailHead: number;
  /** By depth: where its trail and its events begin. */
  readonly trailAt: Int32Array;
  readonly eventAt: Int32Array;
  depth: number;
  /** Bounds that rose and whose arcs have not been followed yet. */
  readonly queue: Int32Array;
  readonly isQueued: Uint8Array;
  queueHead: number;
  queueCount: number;
  /** The bound at which a task had no beginning left, or the clause that failed. */
  failedBound: number;
  failedClause: number;
}

/** Arcs by the bound they begin at, as linked rows. */
export interface ArcRows {
  readonly head: Int32Array;
  readonly next: Int32Array;
  readonly literal: Int32Array;
  readonly to: Int32Array;
  readonly weight: Int32Array;
}

export const CHOSEN = -1;
export const BY_BOUNDS = -2;

/** With all its pairs as claims, and room for so many more. */
export function shopNet(model: ShopModel, moreClaims: number): ShopNet {
  const { count, pairs } = model;
  const claims = pairs.length + moreClaims;
  const row = (length: number): Int32Array => new Int32Array(length);
  const mostArcs = 4 * claims + 2 * model.arcs.length + 2 * count;
  const net: ShopNet = {
    model,
    value: row(2 * count),
    event: row(2 * count),
    events: eventRows(Math.max(1024, 16 * count)),
    eventCount: 2 * count,
    arcs: {
      head: row(2 * count).fill(-1),
      next: row(mostArcs),
      literal: row(mostArcs),
      to: row(mostArcs),
      weight: row(mostArcs),
    },
    arcCount: 0,
    truth: new Int8Array(2 * claims),
    leads: row(2 * claims).fill(-1),
    follows: row(2 * claims),
    weight: row(2 * claims),
    claimCount: 0,
    depthOf: row(claims),
    reason: row(claims),
    reasonFrom: row(claims),
    reasonTo: row(claims),
    trail: row(claims),
    trailCount: 0,
    trailHead: 0,
    trailAt: row(claims + 2),
    eventAt: row(claims + 2),
    depth: 0,
    queue: row(2 * count),
    isQueued: new Uint8Array(2 * count),
    queueHead: 0,
    queueCount: 0,
    failedBound: -1,
    failedClause: -1,
  };
  for (let task = 0; task < count; task += 1) {
    const forbidden = model.forbidden[task] as Int32Array;
    net.value[2 * task] = allowedFrom(forbidden, model.earliest[task] as number);
    net.value[2 * task + 1] = -allowedUpTo(forbidden, model.latest[task] as number);
  }
  for (const { first, second, there, back } of pairs) {
    const claim = addClaim(net);
    setClaim(net, 2 * claim, first, second, there);
    setClaim(net, 2 * claim + 1, second, first, back);
  }
  for (const { first, then, gap } of model.arcs) addArc(net, first, then, gap, ALWAYS);
  for (let bound = 0; bound < 2 * count; bound += 1) enqueue(net, bound);
  settleEvents(net);
  return net;
}

/** A claim with nothing to it yet; returns its number. */
export function addClaim(net: ShopNet): number {
  net.claimCount += 1;
  return net.claimCount - 1;
}

/** Says what a literal claims: `then` begins at least `weight` after `first` does. */
export function setClaim(net: ShopNet, literal: number, first: number, then: number, weight: number): void {
  net.leads[literal] = first;
  net.follows[literal] = then;
  net.weight[literal] = weight;
  addArc(net, first, then, weight, literal);
}

/** An arc for the earliest beginnings and one, the other way, for the latest. */
export function addArc(net: ShopNet, first: number, then: number, weight: number, literal: number): void {
  addHalf(net, 2 * first, 2 * then, weight, literal);
  addHalf(net, 2 * then + 1, 2 * first + 1, weight, literal);
}

function addHalf(net: ShopNet, from: number, to: number, weight: number, literal: number): void {
  const { arcs } = net;
  const arc = net.arcCount;
  net.arcCount += 1;
  arcs.next[arc] = arcs.head[from] as number;
  arcs.head[from] = arc;
  arcs.literal[arc] = literal;
  arcs.to[arc] = to;
  arcs.weight[arc] = weight;
  enqueue(net, from);
}

function enqueue(net: ShopNet, bound: number): void {
  if (net.isQueued[bound] === 1) return;
  net.isQueued[bound] = 1;
  let place = net.queueHead + net.queueCount;
  if (place >= net.queue.length) place -= net.queue.length;
  net.queue[place] = bound;
  net.queueCount += 1;
}

/** The bound next in the queue; it is taken out. */
export function dequeue(net: ShopNet): number {
  const bound = net.queue[net.queueHead] as number;
  net.queueHead = net.queueHead + 1 === net.queue.length ? 0 : net.queueHead + 1;
  net.queueCount -= 1;
  net.isQueued[bound] = 0;
  return bound;
}

/** At the root: what is known now is taken for given, and needs no cause any more. */
export function settleEvents(net: ShopNet): void {
  const { events, value } = net;
  for (let bound = 0; bound < value.length; bound += 1) {
    events.bound[bound] = bound;
    events.value[bound] = value[bound] as number;
    events.before[bound] = -1;
    events.literal[bound] = ALWAYS;
    events.from[bound] = -1;
    net.event[bound] = bound;
  }
  net.eventCount = value.length;
}

/** A bound rises, and over a break where it would lie in one; false where its task has no beginning left. */
export function raiseBound(
  net: ShopNet,
  bound: number,
  value: number,
  literal: number,
  from: number,
  weight: number,
): boolean {
  note(net, bound, value, literal, from, weight);
  const forbidden = net.model.forbidden[bound >> 1] as Int32Array;
  if (forbidden.length > 0) liftOverBreak(net, bound, forbidden);
  if ((net.value[bound] as number) + (net.value[bound ^ 1] as number) > 0) {
    net.failedBound = bound;
    return false;
  }
  enqueue(net, bound);
  return true;
}

function liftOverBreak(net: ShopNet, bound: number, forbidden: Int32Array): void {
  const value = net.value[bound] as number;
  const isEarliest = (bound & 1) === 0;
  const lifted = isEarliest ? allowedFrom(forbidden, value) : -allowedUpTo(forbidden, -value);
  if (lifted === value) return;
  // The least value from which it would have been lifted as far: the weight of such an event.
  let least = value;
  for (let n = 0; n < forbidden.length; n += 2)
    if (isEarliest ? forbidden[n + 1] === lifted : forbidden[n] === -lifted)
      least = isEarliest ? (forbidden[n] as number) + 1 : 1 - (forbidden[n + 1] as number);
  note(net, bound, lifted, OVER_BREAK, net.event[bound] as number, least);
}

function note(
  net: ShopNet,
  bound: number,
  value: number,
  literal: number,
  from: number,
  weight: number,
): void {
  if (net.eventCount === net.events.bound.length) net.events = doubled(net.events);
  const { events } = net;
  const event = net.eventCount;
  net.eventCount = event + 1;
  events.bound[event] = bound;
  events.value[event] = value;
  events.before[event] = net.event[bound] as number;
  events.literal[event] = literal;
  events.from[event] = from;
  events.weight[event] = weight;
  net.event[bound] = event;
  net.value[bound] = value;
}

/** A literal becomes true. */
export function settle(net: ShopNet, literal: number, reason: number): void {
  net.truth[literal] = 1;
  net.truth[literal ^ 1] = -1;
  net.depthOf[literal >> 1] = net.depth;
  net.reason[literal >> 1] = reason;
  net.trail[net.trailCount] = literal;
  net.trailCount += 1;
}

/** One choice deeper. */
export function deepen(net: ShopNet): void {
  net.depth += 1;
  net.trailAt[net.depth] = net.trailCount;
  net.eventAt[net.depth] = net.eventCount;
}

/** Back to a depth: all that was known only below it is forgotten. */
export function retreat(net: ShopNet, depth: number): void {
  const { events } = net;
  if (depth >= net.depth) return;
  while (net.queueCount > 0) dequeue(net);
  const eventAt = net.eventAt[depth + 1] as number;
  for (let event = net.eventCount - 1; event >= eventAt; event -= 1) {
    const bound = events.bound[event] as number;
    const before = events.before[event] as number;
    net.event[bound] = before;
    net.value[bound] = events.value[before] as number;
  }
  net.eventCount = eventAt;
  const trailAt = net.trailAt[depth + 1] as number;
  for (let place = net.trailCount - 1; place >= trailAt; place -= 1) {
    const literal = net.trail[place] as number;
    net.truth[literal] = 0;
    net.truth[literal ^ 1] = 0;
  }
  net.trailCount = trailAt;
  net.trailHead = trailAt;
  net.depth = depth;
}
