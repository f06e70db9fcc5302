import type { Seconds } from '../quantities/brands.ts';
import type { Rotation, RotationTable } from './rotation.ts';
import type { Wish } from './wish.ts';

/** From when to when the tables of one period are there; its times are since it began. */
export interface TeachingPeriod {
  readonly begins: Seconds;
  readonly bell: Seconds;
}

/** Tables that are kept or left out as one: partners of each other. */
export interface TableBlock {
  readonly marks: readonly string[];
  /** How many of them may not be left out as long as one that may be is in. */
  readonly musts: number;
}

/** Tables as blocks, in the order of the rotation; tables that are closed all day are in none. */
export function tableBlocks(
  { tables, wishes }: Rotation,
  together: readonly (readonly string[])[],
): readonly TableBlock[] {
  const open = tables.filter(({ mark, copies }) => copies > 0 && !isShut(wishes, mark));
  const blockOf = new Map(open.map(({ mark }, n) => [mark, n]));
  for (const marks of together) {
    const known = marks.filter((mark) => blockOf.has(mark));
    const all = new Set(known.map((mark) => blockOf.get(mark)));
    const first = Math.min(...known.map((mark) => blockOf.get(mark) ?? Infinity));
    for (const [mark, block] of blockOf) if (all.has(block)) blockOf.set(mark, first);
  }
  return [...new Set(blockOf.values())].map((block) => {
    const own = open.filter(({ mark }) => blockOf.get(mark) === block);
    return { marks: own.map(({ mark }) => mark), musts: own.filter((table) => isMust(table, wishes)).length };
  });
}

const isShut = (wishes: readonly Wish[], mark: string): boolean =>
  wishes.some((wish) => wish.kind === 'closed' && wish.table === mark && wish.from === 0 && wish.to === null);

const isMust = ({ mark, mayDo }: RotationTable, wishes: readonly Wish[]): boolean =>
  !mayDo || wishes.some((wish) => wish.kind === 'does' && wish.table === mark && wish.path !== null);

/**
 * Every way to leave blocks out, the least loss first: the fewest tables that must be, then the fewest that may be left out,
 * then those that come last in the activity.
 */
export function waysToLeaveOut(blocks: readonly TableBlock[]): readonly (readonly TableBlock[])[] {
  const ways = Array.from({ length: 2 ** blocks.length }, (_, bits) => ({
    left: blocks.filter((_, n) => (bits >> n) & 1),
    bits,
  }));
  const musts = (left: readonly TableBlock[]): number => left.reduce((sum, block) => sum + block.musts, 0);
  const all = (left: readonly TableBlock[]): number => left.reduce((sum, { marks }) => sum + marks.length, 0);
  return ways
    .sort((a, b) => musts(a.left) - musts(b.left) || all(a.left) - all(b.left) || b.bits - a.bits)
    .map(({ left }) => left);
}

/**
 * A rotation with these tables only and within these times. Wishes about other tables go with them; wishes about a time
 * of day are those of the first period.
 */
export function withTables(
  rotation: Rotation,
  marks: readonly string[],
  { begins, bell }: TeachingPeriod,
  isFirst: boolean,
): Rotation {
  return {
    ...rotation,
    begins,
    bell,
    groups: isFirst ? rotation.groups : rotation.groups.map((group) => ({ ...group, arrives: begins })),
    breaks: isFirst ? rotation.breaks : [],
    tables: rotation.tables.filter(({ mark }) => marks.includes(mark)),
    wishes: rotation.wishes.filter(
      (wish) => tablesOf(wish).every((mark) => marks.includes(mark)) && (isFirst || !isTimed(wish)),
    ),
  };
}

function tablesOf(wish: Wish): readonly string[] {
  if (wish.kind === 'before') return [wish.first, wish.then];
  return 'table' in wish ? [wish.table] : [];
}

const isTimed = ({ kind }: Wish): boolean => kind === 'at' || kind === 'away' || kind === 'closed';

/** Whether it is plain that not every group can do every table: a group's own time, or a table's, is more than there is. */
export function isPlainlyTooMuch({ groups, tables, wishes, walk, begins, bell, breaks }: Rotation): boolean {
  const has = breaks.reduce(
    (left, { from, to }) => left - Math.max(0, Math.min(to, bell) - Math.max(from, begins)),
    bell - begins,
  );
  const skips = (group: string, table: string): boolean =>
    wishes.some((wish) => wish.kind === 'skips' && wish.group === group && wish.table === table);
  const ofGroup = groups.map(({ label }) =>
    tables.reduce((sum, { mark, run }) => sum + (skips(label, mark) ? 0 : run.value + walk), -walk),
  );
  const ofTable = tables.map(({ mark, run, reset, copies }) => {
    const visits = Math.ceil(groups.filter(({ label }) => !skips(label, mark)).length / copies);
    return visits * (run.value + reset.value) - reset.value;
  });
  return Math.max(0, ...ofGroup, ...ofTable) > has;
}
