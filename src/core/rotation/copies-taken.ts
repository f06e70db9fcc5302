import type { Rotation } from './rotation.ts';
import type { Stay } from './timetable.ts';

/**
 * Which copy of its table each visit takes: the first that is ready when it begins. As long as no more visits
 * run or are put back at once than there are copies, one always is (intervals in the order of their beginnings).
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = { mark: '4', run: exactly(360), reset: exactly(60), copies: 2, needsAdult: false, mayDo: false, beside: [] };
 * const visits = [{ group: 'A', table: '4', from: 0, to: 360, round: null }, { group: 'B', table: '4', from: 100, to: 460, round: null }];
 * copiesTaken({ tables: [table] }, visits, []).map(({ copy }) => copy) // => [1, 2]
 */
export function copiesTaken(
  { tables }: Pick<Rotation, 'tables'>,
  visits: readonly Omit<Stay, 'copy'>[],
  settled: readonly Stay[],
): readonly Stay[] {
  const taken: Stay[] = [...settled];
  for (const visit of [...visits].sort((a, b) => a.from - b.from)) {
    const reset = tables.find(({ mark }) => mark === visit.table)?.reset.value ?? 0;
    const ready = visit.round === null ? reset : 0;
    const isFree = (copy: number): boolean =>
      taken.every(
        (stay) =>
          stay.table !== visit.table ||
          stay.copy !== copy ||
          stay.to + ready <= visit.from ||
          visit.to + ready <= stay.from,
      );
    let copy = 1;
    while (!isFree(copy)) copy += 1;
    taken.push({ ...visit, copy });
  }
  return taken.slice(settled.length);
}
