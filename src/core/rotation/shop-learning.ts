import { type ClauseBook, LITERALS, SIZE } from './shop-clauses.ts';
import { OVER_BREAK } from './shop-events.ts';
import { BY_BOUNDS, type ShopNet } from './shop-net.ts';

/** What was learnt from the last contradiction, in rows that are kept. */
export interface Lesson {
  /** The clause: first the literal that follows when going back to `depth`. Empty: nothing is possible at all. */
  readonly literals: number[];
  depth: number;
  /** How many depths its literals come from. */
  worth: number;
  /** Claims that had a part in it. */
  readonly met: number[];
  readonly isSeen: Uint8Array;
  readonly causes: number[];
  readonly depthMark: Int32Array;
  mark: number;
}

export function emptyLesson(claims: number): Lesson {
  return {
    literals: [],
    depth: 0,
    worth: 0,
    met: [],
    isSeen: new Uint8Array(claims),
    causes: [],
    depthMark: new Int32Array(claims + 2),
    mark: 0,
  };
}

/**
 * Why the net came to a contradiction, told by one choice of the last depth and earlier ones (first unique
 * implication point: Marques-Silva and Sakallah 1999, from memory).
 */
export function learn(net: ShopNet, book: ClauseBook, lesson: Lesson): void {
  const { literals, met, isSeen, causes } = lesson;
  literals.length = 0;
  met.length = 0;
  causesOfFailure(net, book, causes);
  const depth = deepest(net, causes);
  literals.push(-1);
  if (depth > 0) resolve(net, book, lesson, depth);
  else literals.length = 0;
  for (const claim of met) isSeen[claim] = 0;
}

function resolve(net: ShopNet, book: ClauseBook, lesson: Lesson, depth: number): void {
  const { literals, met, isSeen, causes } = lesson;
  let open = 0;
  let place = net.trailCount - 1;
  for (;;) {
    for (const cause of causes) {
      const claim = cause >> 1;
      const deep = net.depthOf[claim] as number;
      if (isSeen[claim] === 1 || deep === 0) continue;
      isSeen[claim] = 1;
      met.push(claim);
      if (deep === depth) open += 1;
      else literals.push(cause ^ 1);
    }
    while (
      isSeen[(net.trail[place] as number) >> 1] === 0 ||
      net.depthOf[(net.trail[place] as number) >> 1] !== depth
    )
      place -= 1;
    const literal = net.trail[place] as number;
    place -= 1;
    open -= 1;
    if (open === 0) {
      literals[0] = literal ^ 1;
      break;
    }
    causesOf(net, book, literal, causes);
  }
  shorten(net, book, lesson);
  rank(net, lesson);
}

/** Leaves out what follows from the rest of the clause. */
function shorten(net: ShopNet, book: ClauseBook, lesson: Lesson): void {
  const { literals, isSeen, causes } = lesson;
  let kept = 1;
  for (let n = 1; n < literals.length; n += 1) {
    const literal = literals[n] as number;
    if (isImplied(net, book, literal ^ 1, isSeen, causes)) continue;
    literals[kept] = literal;
    kept += 1;
  }
  literals.length = kept;
}

function isImplied(
  net: ShopNet,
  book: ClauseBook,
  literal: number,
  isSeen: Uint8Array,
  causes: number[],
): boolean {
  const reason = net.reason[literal >> 1] as number;
  if (reason < 0 && reason !== BY_BOUNDS) return false;
  causesOf(net, book, literal, causes);
  return causes.every((cause) => isSeen[cause >> 1] === 1 || net.depthOf[cause >> 1] === 0);
}

/** Puts the second deepest literal second, and counts depths. */
function rank(net: ShopNet, lesson: Lesson): void {
  const { literals, depthMark } = lesson;
  lesson.mark += 1;
  lesson.depth = 0;
  lesson.worth = 1;
  for (let n = 1; n < literals.length; n += 1) {
    const literal = literals[n] as number;
    const deep = net.depthOf[literal >> 1] as number;
    if (depthMark[deep] !== lesson.mark) {
      depthMark[deep] = lesson.mark;
      lesson.worth += 1;
    }
    if (deep > lesson.depth) {
      lesson.depth = deep;
      literals[n] = literals[1] as number;
      literals[1] = literal;
    }
  }
}

function deepest(net: ShopNet, causes: readonly number[]): number {
  let depth = 0;
  for (const cause of causes) depth = Math.max(depth, net.depthOf[cause >> 1] as number);
  return depth;
}

/** True literals that together can't be. */
function causesOfFailure(net: ShopNet, book: ClauseBook, causes: number[]): void {
  causes.length = 0;
  if (net.failedClause >= 0) {
    contraries(book, net.failedClause, 0, causes);
    return;
  }
  const own = net.failedBound;
  const slack = (net.value[own] as number) + (net.value[own ^ 1] as number) - 1;
  tell(net, net.event[own] as number, (net.value[own] as number) - slack, causes);
  tell(net, net.event[own ^ 1] as number, net.value[own ^ 1] as number, causes);
}

/** True literals from which a literal follows. */
export function causesOf(net: ShopNet, book: ClauseBook, literal: number, causes: number[]): void {
  causes.length = 0;
  const claim = literal >> 1;
  const reason = net.reason[claim] as number;
  if (reason >= 0) {
    contraries(book, reason, 1, causes);
    return;
  }
  if (reason !== BY_BOUNDS) return;
  const from = net.reasonFrom[claim] as number;
  const to = net.reasonTo[claim] as number;
  // The contrary would add its weight: how much of the time that is missing is not needed.
  const atFrom = net.events.value[from] as number;
  const atTo = net.events.value[to] as number;
  const slack = atFrom + atTo + (net.weight[literal ^ 1] as number) - 1;
  tell(net, from, atFrom - slack, causes);
  tell(net, to, atTo, causes);
}

function contraries(book: ClauseBook, place: number, without: number, causes: number[]): void {
  const { pool } = book;
  const last = place + LITERALS + (pool[place + SIZE] as number);
  for (let n = place + LITERALS + without; n < last; n += 1) causes.push((pool[n] as number) ^ 1);
}

/** The literals through which a bound came to be at least `least`, no further back than that needs. */
function tell(net: ShopNet, last: number, least: number, causes: number[]): void {
  const { before, value, literal, from, weight } = net.events;
  let event = last;
  let need = least;
  for (;;) {
    for (let older = before[event] as number; older >= 0 && (value[older] as number) >= need; ) {
      event = older;
      older = before[event] as number;
    }
    const next = from[event] as number;
    if (next < 0) return;
    const through = literal[event] as number;
    if (through === OVER_BREAK) need = weight[event] as number;
    else {
      if (through >= 0) causes.push(through);
      need -= weight[event] as number;
    }
    event = next;
  }
}
