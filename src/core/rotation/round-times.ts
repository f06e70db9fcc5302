import type { RoundBook, Span } from './round-book.ts';

/** When the rounds of a chart begin and end. */
export interface RoundTimes {
  readonly from: readonly number[];
  readonly to: readonly number[];
}

/**
 * The earliest time from `ready` on at which a round of `length` with these visits can begin: over no break, none
 * of its groups away, none of its tables closed, and over every time at which one of them has to be there. `null`
 * where there is none. Beginning a round sooner never makes a later one begin later, so earliest is best.
 */
export function earliestRound(
  book: RoundBook,
  visits: readonly number[],
  length: number,
  ready: number,
): number | null {
  let start = ready;
  for (const visit of visits)
    for (const time of book.at[visit] as readonly number[]) start = Math.max(start, time - length + 1);
  for (let moved = true; moved; ) {
    const before = start;
    start = pastSpans(book.breaks, length, start);
    for (const visit of visits) start = pastSpans(book.shut[visit] as readonly Span[], length, start);
    moved = start !== before;
  }
  if (start === Infinity) return null;
  for (const visit of visits)
    for (const time of book.at[visit] as readonly number[]) if (start > time) return null;
  return start;
}

function pastSpans(spans: readonly Span[], length: number, start: number): number {
  let at = start;
  for (const span of spans) if (span.from < at + length && span.to > at) at = span.to;
  return at;
}

/** When every round of a chart can begin and end, each as early as it can; `null` where one never can. */
export function timeRounds(book: RoundBook, rounds: readonly (readonly number[])[]): RoundTimes | null {
  const from: number[] = [];
  const to: number[] = [];
  let ready = book.problem.begins;
  for (const visits of rounds) {
    const length = Math.max(0, ...visits.map((visit) => book.lengthOf[visit] as number));
    const start = earliestRound(book, visits, length, ready);
    if (start === null) return null;
    from.push(start);
    to.push(start + length);
    ready = start + length + book.problem.walk;
  }
  return { from, to };
}
