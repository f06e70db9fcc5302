import { FEEL } from '../instruments/ease-score.ts';
import { type Concordance, concordance, ranksOf, type SignTest, signTest } from '../uncertainty/ordinal.ts';
import type { JudgedAt } from './judged-at.ts';
import { numbersWritten } from './written-number.ts';

/** How easy the setups of one table felt, as orders: which is easier and never by how much. */
export interface FeltOrder {
  readonly table: string;
  /** Setups from the easiest to the hardest by their mean place, with that place. */
  readonly setups: readonly { readonly setup: string; readonly meanPlace: number }[];
  /** Groups that put all of these setups in order, and those that left one out. */
  readonly groups: number;
  readonly incomplete: number;
  /** Two setups: who found which easier. */
  readonly pair: SignTest | null;
  /** Three or more: how far the groups agree; `null` for one group, or where nobody makes a difference. */
  readonly agreement: Concordance | null;
  /** The order that the key expects, easiest first, and whether the mean places agree; `null` where it has none. */
  readonly expected: { readonly order: readonly string[]; readonly agrees: boolean } | null;
}

/**
 * Felt places, paired within a group: each group is its own judge, so that what is "easy" to it doesn't
 * matter. Only groups that felt all setups of the table that anybody felt are compared.
 */
export function feltOrders(judged: readonly JudgedAt[]): readonly FeltOrder[] {
  const tables = [...new Set(judged.map(({ at }) => at.setup.table))].sort();
  return tables.flatMap((table) => {
    const own = judged.filter(({ at }) => at.setup.table === table);
    const places = new Map<string, Map<string, number>>();
    for (const each of own) {
      const place = placeWritten(each);
      const { group } = each.judgement.reading;
      if (place === null || group === '') continue;
      const of = places.get(group) ?? new Map<string, number>();
      if (!of.has(each.at.setup.mark)) of.set(each.at.setup.mark, place);
      places.set(group, of);
    }
    const setups = [...new Set([...places.values()].flatMap((of) => [...of.keys()]))].sort();
    return setups.length < 2 ? [] : [orderFound(table, setups, [...places.values()], own)];
  });
}

/** The place that a group wrote: in the column for it, or as the reading of a setup that is only felt. */
function placeWritten({ judgement: { reading, meaning }, at }: JudgedAt): number | null {
  const [inColumn] = numbersWritten((reading.ease ?? '').trim());
  if (inColumn !== undefined) return inColumn;
  return at.setup.watched === 'ease' && meaning.kind === 'number' ? meaning.number : null;
}

function orderFound(
  table: string,
  setups: readonly string[],
  places: readonly ReadonlyMap<string, number>[],
  own: readonly JudgedAt[],
): FeltOrder {
  const complete = places.flatMap((of): readonly (readonly number[])[] => {
    const row = setups.flatMap((setup) => of.get(setup) ?? []);
    return row.length === setups.length ? [row] : [];
  });
  const meanPlaces = setups.map((_, n) =>
    complete.length === 0
      ? 0
      : complete.reduce((sum, row) => sum + (ranksOf(row)[n] ?? 0), 0) / complete.length,
  );
  const order = setups
    .map((setup, n) => ({ setup, meanPlace: meanPlaces[n] ?? 0 }))
    .sort((a, b) => a.meanPlace - b.meanPlace);
  const pairs = complete.map((row): readonly [number, number] => [row[0] ?? 0, row[1] ?? 0]);
  return {
    table,
    setups: order,
    groups: complete.length,
    incomplete: places.length - complete.length,
    pair: setups.length === 2 ? signTest(order[0]?.setup === setups[0] ? pairs : turned(pairs)) : null,
    agreement: setups.length > 2 ? concordance(complete) : null,
    expected: complete.length === 0 ? null : expectedOrder(order, own),
  };
}

const turned = (pairs: readonly (readonly [number, number])[]): readonly (readonly [number, number])[] =>
  pairs.map(([a, b]) => [b, a]);

/** By the pulls of the key. What a hand can't tell apart has no order there. */
function expectedOrder(
  found: readonly { readonly setup: string; readonly meanPlace: number }[],
  own: readonly JudgedAt[],
): FeltOrder['expected'] {
  const pulls = found.map(({ setup, meanPlace }) => ({
    setup,
    meanPlace,
    pull: own.find(({ at }) => at.setup.mark === setup)?.at.prediction.pull?.value ?? null,
  }));
  if (pulls.some(({ pull }) => pull === null)) return null;
  const order = [...pulls].sort((a, b) => (a.pull ?? 0) - (b.pull ?? 0));
  const agrees = order.every(({ pull, meanPlace }, n) =>
    order
      .slice(n + 1)
      .every((next) => (next.pull ?? 0) <= (pull ?? 0) * (1 + FEEL) || next.meanPlace > meanPlace),
  );
  return { order: order.map(({ setup }) => setup), agrees };
}
