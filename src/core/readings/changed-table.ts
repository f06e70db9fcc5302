import type { Cause } from './causes.ts';
import { type Explanation, explanationOf, tableKeyOf } from './explanation.ts';
import type { Figure } from './figure.ts';
import { plausible, type StationTable, type TakenReading } from './station-table.ts';
import type { TableChange } from './table-hypothesis.ts';
import type { Leads } from './weighable.ts';

/**
 * Share of groups that go where the table leads them, and what that share is worth in readings of a group's own: by a
 * card, which is read anew at each setup, eight of ten; a changed station is put right without a word by one of ten, and
 * then stays so for the group's next reading. Common practice, no source.
 */
export const LED: Readonly<Record<TableChange['kind'], Leads>> = {
  card: { share: 0.8, worth: 2 },
  station: { share: 0.9, worth: 0.3 },
};

/** Kept with each reading: every further reading of the table asks for the same again. */
const known = new WeakMap<TakenReading, Map<string, readonly Explanation[]>>();

/** What may have happened at one reading if the table is changed like this. */
export function explanationsUnder(
  table: StationTable,
  taken: TakenReading,
  kind: TableChange['kind'],
  key: string,
): readonly Explanation[] {
  const all = known.get(taken) ?? new Map<string, readonly Explanation[]>();
  known.set(taken, all);
  const name = `${kind}\n${key}`;
  const before = all.get(name);
  if (before !== undefined) return before;
  const found = kind === 'card' ? ledByTheCard(taken, key) : onChangedStation(table, taken, key);
  all.set(name, found);
  return found;
}

function ledByTheCard(taken: TakenReading, key: string): readonly Explanation[] {
  const { written } = taken.opened;
  if (written === null) return taken.explanations;
  // The setup may have no such mistake: the card then leads nobody here.
  if (!taken.possible.has(key)) return taken.explanations;
  // Who is led reads as well as anybody else; who is not may still slip.
  const well = taken.explanations.find(({ kind }) => kind === 'good')?.rate ?? 1;
  return taken.explanations.map((each) =>
    each.tableKey === key
      ? { ...each, rate: well, led: true, informs: each.fixed === null }
      : { ...each, led: false },
  );
}

function onChangedStation(table: StationTable, taken: TakenReading, key: string): readonly Explanation[] {
  const { written } = taken.opened;
  const at = table.apparatus.setups[taken.setup];
  if (written === null || at === undefined) return taken.explanations;
  const { causes } = taken;
  const good = causes.find(({ kind }) => kind === 'good');
  const change = causes.find((cause) => tableKeyOf(cause) === key);
  if (good === undefined || change === undefined) return taken.explanations;
  const found = causes.flatMap((cause): readonly Explanation[] => {
    if (tableKeyOf(cause) === key) return [];
    if (cause.kind === 'good') {
      const read = explanationOf({ ...change, rate: good.rate }, written, at.at.setup, at);
      const right = explanationOf(good, written, at.at.setup, at);
      return [
        { ...read, informs: read.fixed === null, ofStation: true, led: true },
        { ...right, led: false },
      ];
    }
    const figure = onTop(cause, good.figure, change.figure);
    if (figure === undefined) return [];
    const there = explanationOf({ ...cause, figure }, written, at.at.setup, at);
    return [{ ...there, informs: there.informs && there.fixed === null, led: true }];
  });
  return plausible(found, at);
}

/** Where a mistake's figure lies when it is made at the changed station; `undefined` where nobody can say. */
function onTop(cause: Cause, good: Figure | null, now: Figure | null): Figure | null | undefined {
  const { figure } = cause;
  if (now === null || figure === null || good === null) return figure === null ? null : undefined;
  if (cause.kind === 'reading' && cause.unit !== null) return now;
  const [middle, moved] = [(good.low + good.high) / 2, (now.low + now.high) / 2];
  // Reckoned in the head, it knows nothing of the station.
  if (cause.kind === 'reading') return figure;
  return { ...figure, low: figure.low + moved - middle, high: figure.high + moved - middle };
}
