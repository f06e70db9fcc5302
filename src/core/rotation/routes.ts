/**
 * In how many places a group's way round the tables differs from the one that stood: tables that are no longer on
 * it, tables that are new on it, and of those that stay, the fewest that have to be moved for the rest to keep
 * their order.
 *
 * @example routeChanges(['1', '2', '3', '4'], ['2', '3', '1', '5']) // => 3
 */
export function routeChanges<T>(stood: readonly T[], route: readonly T[]): number {
  const stays = route.filter((table) => stood.includes(table));
  const out = stood.length - stays.length;
  const added = route.length - stays.length;
  return out + added + stays.length - longestInOrder(stays.map((table) => stood.indexOf(table)));
}

/** How many of these numbers can be kept so that they rise. */
function longestInOrder(places: readonly number[]): number {
  const best: number[] = [];
  for (const [n, place] of places.entries()) {
    const before = best.filter((_, other) => other < n && (places[other] as number) < place);
    best.push(1 + Math.max(0, ...before));
  }
  return Math.max(0, ...best);
}

/**
 * Every way round these tables with just so many moved from the order that stood; a new table may come anywhere.
 * At most `most` of them.
 */
export function routesWith(
  stood: readonly number[],
  tables: readonly number[],
  moved: number,
  most: number,
): readonly (readonly number[])[] {
  const kept = stood.filter((table) => tables.includes(table));
  const added = tables.filter((table) => !stood.includes(table));
  if (moved > Math.max(0, kept.length - 1)) return [];
  const found = new Map<string, readonly number[]>();
  const place = (route: readonly number[], left: readonly number[]): void => {
    if (found.size >= most) return;
    const [table, ...rest] = left;
    if (table === undefined) {
      const inOrder = route.filter((each) => kept.includes(each)).map((each) => kept.indexOf(each));
      if (inOrder.length - longestInOrder(inOrder) === moved) found.set(route.join(), route);
      return;
    }
    for (let at = 0; at <= route.length; at += 1)
      place([...route.slice(0, at), table, ...route.slice(at)], rest);
  };
  for (const taken of subsets(kept, moved))
    place(
      kept.filter((table) => !taken.includes(table)),
      [...taken, ...added],
    );
  return [...found.values()];
}

function subsets(all: readonly number[], count: number): readonly (readonly number[])[] {
  if (count === 0) return [[]];
  return all.flatMap((each, n) => subsets(all.slice(n + 1), count - 1).map((rest) => [each, ...rest]));
}
