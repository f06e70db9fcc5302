import type { RoundBook } from './round-book.ts';

/** Visits of which a round can hold only so many: enough rounds have to be long enough to hold them all. */
export interface Cover {
  readonly visits: readonly number[];
  /** By level of a round: how many of them it holds at most. */
  readonly holds: readonly number[];
  /** The level of the shortest of them: what holds one of them is at least as long. */
  readonly shortest: number;
}

/** With more tables than this, only tables next to each other in length are counted together. */
const MOST_TABLES_FOR_SUBSETS = 9;

/** What each bearer holds, by threshold of length, and what each set of tables holds. */
export function coversOf(book: RoundBook): readonly Cover[] {
  const covers = [...bearerCovers(book), ...tableCovers(book, tableSets(book))];
  const best = new Map<string, Cover>();
  for (const cover of covers) {
    const key = `${cover.holds.join()}:${cover.shortest}`;
    const before = best.get(key);
    if (before === undefined || before.visits.length < cover.visits.length) best.set(key, cover);
  }
  return [...best.values()];
}

function bearerCovers(book: RoundBook): readonly Cover[] {
  return book.bearers.flatMap((bearer) =>
    book.lengths.flatMap((_, level) => {
      const visits = bearer.visits.filter((visit) => (book.levelOf[visit] as number) <= level);
      const isNew = visits.some((visit) => book.levelOf[visit] === level);
      return isNew ? [coverOf(book, visits, bearer.capacity)] : [];
    }),
  );
}

/** Covers of all visits at tables whose lengths are next to each other: few, for use in every round. */
export function intervalCovers(book: RoundBook): readonly Cover[] {
  return tableCovers(book, intervals(book));
}

function tableCovers(book: RoundBook, sets: readonly (readonly number[])[]): readonly Cover[] {
  const visitsAt = visitsByTable(book);
  const levelAt = visitsAt.map((visits) => book.levelOf[visits[0] ?? -1] ?? -1);
  const held = heldByTables(book, visitsAt);
  return sets.flatMap((set) => {
    const tables = set.filter((table) => (levelAt[table] as number) >= 0);
    if (tables.length === 0) return [];
    const holds = book.lengths.map((_, level) =>
      held(tables.filter((table) => (levelAt[table] as number) >= level)),
    );
    const shortest = Math.max(...tables.map((table) => levelAt[table] as number));
    return [
      { visits: tables.flatMap((table) => visitsAt[table] ?? []).sort((a, b) => a - b), holds, shortest },
    ];
  });
}

const visitsByTable = (book: RoundBook): readonly (readonly number[])[] => {
  const at = Array.from({ length: book.problem.tables }, (): number[] => []);
  for (const [visit, table] of book.tableOf.entries()) at[table]?.push(visit);
  return at;
};

/** How much a round holds of all visits at these tables, each set reckoned once: most sets share theirs. */
function heldByTables(book: RoundBook, visitsAt: readonly (readonly number[])[]) {
  const known = new Map<string, number>();
  return (tables: readonly number[]): number => {
    const key = tables.join();
    const before = known.get(key);
    if (before !== undefined) return before;
    const held = mostAtOnce(
      book,
      tables.flatMap((table) => visitsAt[table] ?? []),
    );
    known.set(key, held);
    return held;
  };
}

function coverOf(book: RoundBook, visits: readonly number[], capacity: number): Cover {
  const holds = book.lengths.map((_, level) => {
    const fit = visits.filter((visit) => (book.levelOf[visit] as number) >= level);
    return Math.min(capacity, mostAtOnce(book, fit));
  });
  return { visits, holds, shortest: Math.max(...visits.map((visit) => book.levelOf[visit] as number)) };
}

/** No more of these in one round: one a group, so many a table as it has copies, so many as a limit lets. */
function mostAtOnce(book: RoundBook, visits: readonly number[]): number {
  const { groups, copies, limits } = book.problem;
  const seen = new Set(visits.map((visit) => book.groupOf[visit]));
  const atTable = new Map<number, number>();
  for (const visit of visits) {
    const table = book.tableOf[visit] as number;
    atTable.set(table, Math.min(copies[table] as number, (atTable.get(table) ?? 0) + 1));
  }
  const sum = (is: (table: number) => boolean): number =>
    [...atTable].reduce((total, [table, count]) => total + (is(table) ? count : 0), 0);
  const byLimits = limits.map(
    ({ tables, capacity }) =>
      Math.min(
        capacity,
        sum((table) => tables.includes(table)),
      ) + sum((table) => !tables.includes(table)),
  );
  return Math.min(
    groups,
    seen.size,
    sum(() => true),
    ...byLimits,
  );
}

function tableSets(book: RoundBook): readonly (readonly number[])[] {
  const { tables } = book.problem;
  if (tables > MOST_TABLES_FOR_SUBSETS) return intervals(book);
  return Array.from({ length: 2 ** tables - 1 }, (_, set) =>
    Array.from({ length: tables }, (__, table) => table).filter((table) => ((set + 1) >> table) & 1),
  );
}

function intervals(book: RoundBook): readonly (readonly number[])[] {
  const { tables, lengths } = book.problem;
  const levels = Array.from({ length: tables }, (_, table) => book.lengths.indexOf(lengths[table] as number));
  return book.lengths.flatMap((_, from) =>
    book.lengths
      .slice(from)
      .map((__, more) =>
        levels.flatMap((level, table) => (level >= from && level <= from + more ? [table] : [])),
      ),
  );
}
