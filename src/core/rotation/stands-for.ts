import { seconds } from '../quantities/brands.ts';
import type { Adult, Rotation } from './rotation.ts';
import type { Stand, Stay } from './timetable.ts';

/**
 * Which adult stands at which table that needs one, from when a group begins until the table is put back. Between
 * any two moments at which somebody begins or is done, each such table has an adult who may stand there; of all
 * ways to see to that, one in which adults change places as rarely as can be (at most `MOST_KEPT` ways
 * are followed at once; with more it is one with few). An adult may hand a group over to another.
 * Where somebody has gone and there are too few for what runs already, as many tables as can be have one. `before`: where
 * they have stood so far, up to `since`.
 *
 * @example
 * import { exactly } from '../uncertainty/measured.ts';
 * const table = (mark) => ({ mark, run: exactly(300), reset: exactly(60), copies: 1, needsAdult: true, mayDo: false, beside: [] });
 * const stay = (table, from, to) => ({ group: 'A', table, copy: 1, from, to, round: null });
 * standsFor({ tables: [table('1'), table('2')], adults: [{ label: 'P', at: null }], way: 'free' }, [stay('1', 0, 300), stay('2', 400, 700)]) // => [{ adult: 'P', table: '1', copy: 1, from: 0, to: 360 }, { adult: 'P', table: '2', copy: 1, from: 400, to: 760 }]
 */
export function standsFor(
  { tables, adults, way }: Pick<Rotation, 'tables' | 'adults' | 'way'>,
  stays: readonly Stay[],
  before: readonly Stand[] = [],
  since = -Infinity,
): readonly Stand[] {
  const held = stays.flatMap((stay): readonly Held[] => {
    const table = tables.find(({ mark }) => mark === stay.table);
    if (table === undefined || !table.needsAdult) return [];
    const reset = way === 'free' ? table.reset.value : 0;
    return [
      {
        place: placeOf(stay),
        table: stay.table,
        copy: stay.copy,
        from: Math.max(stay.from, since),
        to: stay.to + reset,
      },
    ].filter(({ from, to }) => to > from);
  });
  const times = [...new Set(held.flatMap(({ from, to }) => [from, to]))].sort((a, b) => a - b);
  let ways: readonly Standing[] = [
    { last: adults.map(({ label }) => lastPlace(before, label)), changes: 0, chain: null },
  ];
  for (const [n, from] of times.entries()) {
    const now = held.filter((each) => each.from <= from && each.to > from);
    if (now.length === 0) continue;
    ways = followed(ways, now, adults, from, times[n + 1] as number);
  }
  return joined(before, chainOf(ways[0]), adults);
}

const placeOf = ({ table, copy }: { readonly table: string; readonly copy: number }): string =>
  `${table}\n${copy}`;

function lastPlace(before: readonly Stand[], label: string): string | null {
  const last = before.findLast(({ adult }) => adult === label);
  return last === undefined ? null : placeOf(last);
}

/** How many ways of standing are followed at once. */
const MOST_KEPT = 400;

interface Held {
  readonly place: string;
  readonly table: string;
  readonly copy: number;
  readonly from: number;
  readonly to: number;
}

/** One way for the adults to stand so far. */
interface Standing {
  /** By adult: the place at which she last stood. */
  readonly last: readonly (string | null)[];
  readonly changes: number;
  readonly chain: Link | null;
}

interface Link {
  readonly before: Link | null;
  readonly stands: readonly {
    readonly adult: number;
    readonly held: Held;
    readonly from: number;
    readonly to: number;
  }[];
}

/** Every way goes on in every way; of those that leave the adults at the same places the one with the fewest changes is kept. */
function followed(
  ways: readonly Standing[],
  now: readonly Held[],
  adults: readonly Adult[],
  from: number,
  to: number,
): readonly Standing[] {
  const best = new Map<string, Standing>();
  for (const way of ways)
    for (const adultOf of matchings(now, adults, way.last)) {
      const last = [...way.last];
      let changes = way.changes;
      for (const [n, adult] of adultOf.entries()) {
        if (adult === null) continue;
        const { place } = now[n] as Held;
        if (last[adult] !== null && last[adult] !== place) changes += 1;
        last[adult] = place;
      }
      const key = last.join('\r');
      if ((best.get(key)?.changes ?? Infinity) <= changes) continue;
      const stands = adultOf.flatMap((adult, n) =>
        adult === null ? [] : [{ adult, held: now[n] as Held, from, to }],
      );
      best.set(key, { last, changes, chain: { before: way.chain, stands } });
    }
  return [...best.values()].sort((a, b) => a.changes - b.changes).slice(0, MOST_KEPT);
}

/** All ways to give each of these places an adult of its own, or as many as can be; those who stand there already first. */
function matchings(
  now: readonly Held[],
  adults: readonly Adult[],
  last: readonly (string | null)[],
): readonly (readonly (number | null)[])[] {
  const found: (readonly (number | null)[])[] = [];
  const give = (chosen: readonly (number | null)[], without: number): void => {
    const held = now[chosen.length];
    if (held === undefined) {
      found.push(chosen);
      return;
    }
    const may = adults.flatMap(({ at }, adult) =>
      !chosen.includes(adult) && (at === null || at.includes(held.table)) ? [adult] : [],
    );
    may.sort((a, b) => Number(last[b] === held.place) - Number(last[a] === held.place));
    for (const adult of may) {
      if (found.length >= MOST_KEPT) return;
      give([...chosen, adult], without);
    }
    if (without > 0) give([...chosen, null], without - 1);
  };
  for (let without = 0; found.length === 0; without += 1) give([], without);
  return found;
}

const chainOf = (way: Standing | undefined): readonly Link[] => {
  const links: Link[] = [];
  for (let link = way?.chain ?? null; link !== null; link = link.before) links.unshift(link);
  return links;
};

/** An adult who stays at a place stands there once. */
function joined(
  before: readonly Stand[],
  links: readonly Link[],
  adults: readonly Adult[],
): readonly Stand[] {
  const stands: Stand[] = [...before];
  for (const { adult, held, from, to } of links.flatMap((link) => link.stands)) {
    const label = adults[adult]?.label ?? '';
    const index = stands.findLastIndex((each) => each.adult === label);
    const before = stands[index];
    if (
      before !== undefined &&
      before.table === held.table &&
      before.copy === held.copy &&
      before.to === from
    )
      stands[index] = { ...before, to: seconds(to) };
    else
      stands.push({ adult: label, table: held.table, copy: held.copy, from: seconds(from), to: seconds(to) });
  }
  return stands.sort(
    (a, b) =>
      a.from - b.from ||
      adults.findIndex((x) => x.label === a.adult) - adults.findIndex((x) => x.label === b.adult),
  );
}
