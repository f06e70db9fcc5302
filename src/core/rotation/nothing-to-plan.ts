import type { UnknownReason } from './arrangement.ts';
import type { Rotation } from './rotation.ts';

/**
 * Why there is nothing to arrange, whatever is wished: every table is closed all the time, or between the beginning
 * and the bell, breaks not counted, there is less time than the quickest open table takes. `null` where there may be
 * something; that no break is too long for a stay between two of them is left to the search.
 *
 * @example
 * const rotation = { groups: [], tables: [], adults: [], walk: 30, begins: 300, bell: 300, breaks: [], way: 'free', wishes: [] };
 * nothingToPlan(rotation) // => 'all-closed'
 */
export function nothingToPlan(rotation: Rotation): Exclude<UnknownReason, 'effort'> | null {
  const { begins, bell, tables, wishes } = rotation;
  const isClosed = (mark: string): boolean =>
    wishes.some(
      (wish) =>
        wish.kind === 'closed' && wish.table === mark && wish.from <= begins && (wish.to ?? bell) >= bell,
    );
  const open = tables.filter(({ mark, copies }) => copies > 0 && !isClosed(mark));
  if (open.length === 0) return 'all-closed';
  return timeForTables(rotation) < Math.min(...open.map(({ run }) => run.value)) ? 'no-time' : null;
}

/**
 * Seconds between the beginning and the bell without the breaks.
 *
 * @example timeForTables({ begins: 300, bell: 1200, breaks: [{ from: 600, to: 900 }, { from: 800, to: 1000 }] }) // => 500
 */
export function timeForTables({
  begins,
  bell,
  breaks,
}: Pick<Rotation, 'begins' | 'bell' | 'breaks'>): number {
  let time = 0;
  let at: number = begins;
  for (const { from, to } of [...breaks].sort((a, b) => a.from - b.from)) {
    time += Math.max(0, Math.min(from, bell) - at);
    at = Math.max(at, to);
  }
  return time + Math.max(0, bell - at);
}
