import type { RoundBook, Span } from './round-book.ts';

/** Which visits have still to be, and what of them weighs on each bearer. */
export interface RoundsLeft {
  /** By visit: 1 where it has still to be. */
  readonly open: Uint8Array;
  /** By bearer and level: open visits at least as long as that level. */
  readonly loads: Int32Array;
  readonly count: number;
}

export function allLeft(book: RoundBook): RoundsLeft {
  const open = new Uint8Array(book.groupOf.length).fill(1);
  return leftOf(book, open);
}

export function leftOf(book: RoundBook, open: Uint8Array): RoundsLeft {
  const levels = book.lengths.length;
  const loads = new Int32Array(book.bearers.length * levels);
  let count = 0;
  for (let visit = 0; visit < open.length; visit += 1) {
    if (open[visit] === 0) continue;
    count += 1;
    for (const bearer of book.weighsOn[visit] as readonly number[])
      for (let level = book.levelOf[visit] as number; level < levels; level += 1)
        loads[bearer * levels + level] = (loads[bearer * levels + level] as number) + 1;
  }
  return { open, loads, count };
}

/** By level: how many rounds have to be at least as long as it, since some bearer has so many visits. */
export function roundsNeeded(book: RoundBook, left: RoundsLeft): number[] {
  const levels = book.lengths.length;
  const needed = new Array<number>(levels).fill(0);
  for (let bearer = 0; bearer < book.bearers.length; bearer += 1) {
    const capacity = book.bearers[bearer]?.capacity as number;
    for (let level = 0; level < levels; level += 1) {
      const rounds = Math.ceil((left.loads[bearer * levels + level] as number) / capacity);
      if (rounds > (needed[level] as number)) needed[level] = rounds;
    }
  }
  return needed;
}

/** When so much has been worked off from `ready` on, outside the spans; it may be cut anywhere. */
export function workedOff(spans: readonly Span[], work: number, ready: number): number {
  let now = ready;
  let left = work;
  for (const span of spans) {
    if (span.to <= now) continue;
    if (now + left <= span.from) break;
    left -= Math.max(0, span.from - now);
    now = span.to;
  }
  return now + left;
}

/**
 * No plan of what is left ends before this, by each bearer alone: a group and a table have to find their own time
 * between what shuts them, and what has to come after a visit comes after it.
 */
export function boundOfBearers(book: RoundBook, left: RoundsLeft, ready: number): number {
  let bound = ready;
  eachOwnBound(book, left, ready, (end) => {
    if (end > bound) bound = end;
  });
  return bound;
}

/** An end that some visits of a bearer force, and how many of them would have to be gone for it to be forced no more. */
export type OwnBound = (end: number, visits: readonly number[], count: number) => void;

/**
 * Each bearer alone. Its visits with the most to come after them: in the last round of theirs there is one
 * with at least the least of it. Group and table also have their own closing times.
 */
export function eachOwnBound(book: RoundBook, left: RoundsLeft, ready: number, onBound: OwnBound): void {
  const { walk } = book.problem;
  for (let bearer = 0; bearer < book.bearers.length; bearer += 1) {
    const visits = book.byTail[bearer] as readonly number[];
    const spans = book.shutOf[bearer] as readonly Span[];
    if (spans.length === 0 && (book.tails[visits[0] ?? -1] ?? 0) === 0) continue;
    const { capacity } = book.bearers[bearer] as { capacity: number };
    const before: number[] = [];
    let shortest = Infinity;
    let work = 0;
    const own = (): number => (capacity === 1 ? work : Math.ceil(before.length / capacity) * shortest);
    const tell = (end: number): void => {
      const rounds = Math.ceil(before.length / capacity);
      onBound(end, before, capacity === 1 ? 1 : before.length - capacity * (rounds - 1));
    };
    for (const visit of visits) {
      if (left.open[visit] === 0) continue;
      before.push(visit);
      work += book.lengthOf[visit] as number;
      shortest = Math.min(shortest, book.lengthOf[visit] as number);
      const tail = book.tails[visit] as number;
      if (tail > 0) tell(ready + own() + (Math.ceil(before.length / capacity) - 1) * walk + tail);
    }
    if (spans.length === 0 || before.length === 0) continue;
    const walks = Math.ceil(before.length / capacity) * walk;
    tell(workedOff(spans, own() + walks, ready) - walk);
  }
}
