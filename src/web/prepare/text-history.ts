import { withBench } from '../engine/bench-texts.ts';
import type { Texts } from '../engine/prepare-wire.ts';

/** The texts as they were, as they are, and as they were before an undo. */
export interface TextHistory {
  readonly before: readonly Texts[];
  readonly now: Texts;
  readonly after: readonly Texts[];
}

/** So many steps back. */
const DEPTH = 200;

export const historyFrom = (now: Texts): TextHistory => ({ before: [], now: withBench(now), after: [] });

/**
 * A step forward; `isSameStroke` writes on in the step before, as typing in one field does. Whatever texts
 * are put in, no bench book of another kit is lost.
 */
export function withTexts(history: TextHistory, texts: Texts, isSameStroke = false): TextHistory {
  const now = withBench({ ...texts, books: { ...history.now.books, ...texts.books } });
  if (sameTexts(now, history.now)) return history;
  const before =
    isSameStroke && history.before.length > 0 ? history.before : [...history.before, history.now];
  return { before: before.slice(-DEPTH), now, after: [] };
}

export function undone({ before, now, after }: TextHistory): TextHistory | null {
  const last = before.at(-1);
  return last === undefined ? null : { before: before.slice(0, -1), now: last, after: [now, ...after] };
}

export function redone({ before, now, after }: TextHistory): TextHistory | null {
  const [next, ...rest] = after;
  return next === undefined ? null : { before: [...before, now], now: next, after: rest };
}

export const sameTexts = (a: Texts, b: Texts): boolean =>
  (['kit', 'activity', 'visit', 'bench'] as const).every(
    (kind) => a[kind]?.text === b[kind]?.text && a[kind]?.name === b[kind]?.name,
  );
