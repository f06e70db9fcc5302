import type { RoundBook } from './round-book.ts';
import { boundOfRest, roundSearch } from './round-state.ts';

/** No plan ends before this, before anything was searched. */
export function roundBound(book: RoundBook): number {
  return boundOfRest(roundSearch(book, Infinity, Infinity, 0, new Float64Array()), book.problem.begins);
}
