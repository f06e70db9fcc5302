import { type Seconds, seconds } from '../quantities/brands.ts';
import type { FilledWait } from './class-period.ts';
import type { Rotation } from './rotation.ts';
import type { Stay, Timetable, Wait } from './timetable.ts';

/** What there is for a group that waits. */
export interface ExtraTasks {
  /** Shorter waits stay waits. */
  readonly least: Seconds;
  /** Setups with more to find, in the order in which they are given. */
  readonly setups: readonly { readonly table: string; readonly setup: string }[];
  /** To be done without a table, in their order. */
  readonly papers: readonly { readonly text: string; readonly texts: Readonly<Record<string, string>> }[];
}

/**
 * What each group does that waits: more to find at the table it just left, as long as nobody needs it and whoever has
 * to stand there does; else a paper task; no group gets the same twice. A table is left in time to be put back for the
 * next group. Where a table is free for a part of the wait only, the rest is a wait of its own.
 *
 * @example
 * const stay = (group, from, to) => ({ group, table: '1', copy: 1, from: seconds(from), to: seconds(to), round: null });
 * const timetable = { stays: [stay('A', 0, 300)], waits: [{ group: 'A', from: seconds(300), to: seconds(600) }], stands: [] };
 * const rotation = { tables: [], breaks: [], wishes: [] };
 * const extra = { least: seconds(120), setups: [{ table: '1', setup: 'L3' }], papers: [] };
 * extraTasks(rotation, timetable, extra)[0].task // => { kind: 'setup', table: '1', setup: 'L3' }
 */
export function extraTasks(
  rotation: Pick<Rotation, 'tables' | 'wishes'>,
  timetable: Pick<Timetable, 'stays' | 'waits' | 'stands'>,
  extra: ExtraTasks,
): readonly FilledWait[] {
  const given = new Map<string, Set<string>>();
  const isNew = (group: string, key: string): boolean => !given.get(group)?.has(key);
  const give = (group: string, key: string): void => {
    given.set(group, (given.get(group) ?? new Set()).add(key));
  };
  const paper = (wait: Wait): FilledWait => {
    const at = extra.papers.findIndex((_, n) => isNew(wait.group, `paper ${n}`));
    const found = extra.papers[at];
    if (found === undefined) return { ...wait, task: null };
    give(wait.group, `paper ${at}`);
    return { ...wait, task: { kind: 'paper', ...found } };
  };
  return [...timetable.waits]
    .sort((a, b) => a.from - b.from)
    .filter((wait) => isLong(wait, extra.least))
    .flatMap((wait): readonly FilledWait[] => {
      const left = lastBefore(timetable.stays, wait);
      const found = extra.setups.find(
        ({ table, setup }) => table === left?.table && isNew(wait.group, `${table} ${setup}`),
      );
      if (left === undefined || found === undefined) return [paper(wait)];
      const at = { ...wait, to: freeUntil(rotation, timetable, left, wait) };
      if (!isLong(at, extra.least)) return [paper(wait)];
      give(wait.group, `${found.table} ${found.setup}`);
      const rest = { ...wait, from: at.to };
      return [
        { ...at, task: { kind: 'setup', ...found } },
        ...(isLong(rest, extra.least) ? [paper(rest)] : []),
      ];
    });
}

const isLong = ({ from, to }: Wait, least: Seconds): boolean => to > from && to - from >= least;

const lastBefore = (stays: readonly Stay[], { group, from }: Wait): Stay | undefined =>
  stays
    .filter((stay) => stay.group === group && stay.to <= from)
    .reduce<Stay | undefined>(
      (last, stay) => (last === undefined || stay.to > last.to ? stay : last),
      undefined,
    );

/** Until when the table that was left is to be had; not after the wait, and not before it where it is not to be had at all. */
function freeUntil(
  { tables, wishes }: Pick<Rotation, 'tables' | 'wishes'>,
  { stays, stands }: Pick<Timetable, 'stays' | 'stands'>,
  left: Stay,
  { from, to }: Wait,
): Seconds {
  const table = tables.find(({ mark }) => mark === left.table);
  const reset = table?.reset.value ?? 0;
  const isSame = (other: { readonly table: string; readonly copy: number }): boolean =>
    other.table === left.table && other.copy === left.copy;
  const sharing = wishes.flatMap((wish) =>
    wish.kind === 'shared part' && wish.tables.includes(left.table) ? wish.tables : [],
  );
  const others = stays.filter(
    (stay) => (isSame(stay) || sharing.includes(stay.table)) && stay !== left && stay.to > left.to,
  );
  const closed = wishes.flatMap((wish) =>
    wish.kind === 'closed' && wish.table === left.table && (wish.to ?? Infinity) > from ? [wish.from] : [],
  );
  const attended = stands
    .filter((stand) => isSame(stand) && stand.from <= from)
    .map((stand) => stand.to as number);
  const ends = [
    to,
    ...others.map((stay) => stay.from - reset),
    ...closed,
    ...(table?.needsAdult === true ? [Math.max(0, ...attended)] : []),
  ];
  return seconds(Math.max(from, Math.floor(Math.min(...ends))));
}
