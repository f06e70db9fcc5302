import type { RoundBook } from './round-book.ts';
import { workedOff } from './round-bound.ts';
import { earliestRound } from './round-times.ts';

/** More ways to lay out rounds between breaks than this are not looked through while filling in order of time. */
const MOST_LAYOUTS = 400;

/**
 * No plan ends before this, where so many rounds are needed by level (at least as long as it) and the first can begin at
 * `ready`: the rounds in the order that suits the breaks best, and the walks between.
 */
export function endOfRounds(book: RoundBook, needed: readonly number[], ready: number): number {
  if (needed.every((rounds) => rounds === 0)) return ready;
  const counts = needed.map((rounds, level) => rounds - (needed[level - 1] ?? 0));
  const layouts = counts.reduce((product, count) => product * (count + 1), 1);
  const hasBreaks = book.breaks.some((span) => span.to > ready);
  if (hasBreaks && (book.isFree || layouts <= MOST_LAYOUTS)) return layout(book, counts, ready).end;
  const work = counts.reduce((sum, count, level) => sum + count * (book.lengths[level] as number), 0);
  const walks = ((needed.at(-1) as number) - 1) * book.problem.walk;
  return Math.max(ready + work + walks, workedOff(book.breaks, work, ready));
}

/** The levels of rounds in the order in which they end soonest. */
export function bestOrder(book: RoundBook, counts: readonly number[], ready: number): readonly number[] {
  const order: number[] = [];
  const left = [...counts];
  while (left.some((count) => count > 0)) {
    const { last } = layout(book, left, ready);
    order.unshift(last);
    left[last] = (left[last] as number) - 1;
  }
  return order;
}

interface Layout {
  readonly end: number;
  /** Level of the last round; -1 where there is none. */
  readonly last: number;
}

function layout(book: RoundBook, counts: readonly number[], ready: number): Layout {
  const known = book.layouts.get(ready) ?? new Map<string, Layout>();
  if (known.size === 0) {
    if (book.layouts.size > 5000) book.layouts.clear();
    book.layouts.set(ready, known);
  }
  return layoutOf(book, counts, ready, known);
}

/** By the last round: what comes before it is best ended as soon as it can be. */
function layoutOf(
  book: RoundBook,
  counts: readonly number[],
  ready: number,
  known: Map<string, Layout>,
): Layout {
  const key = counts.join();
  const before = known.get(key);
  if (before !== undefined) return before;
  let best: Layout = { end: Infinity, last: -1 };
  counts.forEach((count, level) => {
    if (count === 0) return;
    const rest = counts.with(level, count - 1);
    const isFirst = rest.every((each) => each === 0);
    const start = isFirst ? ready : layoutOf(book, rest, ready, known).end + book.problem.walk;
    const length = book.lengths[level] as number;
    const end = (earliestRound(book, [], length, start) ?? Infinity) + length;
    if (end < best.end) best = { end, last: level };
  });
  if (best.last < 0) best = { end: Infinity, last: counts.findIndex((count) => count > 0) };
  known.set(key, best);
  return best;
}
