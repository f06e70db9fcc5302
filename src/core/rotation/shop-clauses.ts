/**
 * Clauses: of each at least one literal is true. Two of its literals are watched (Moskewicz and others 2001, from
 * memory); a clause is a place in the pool: its size, its worth (0 is never dropped), then its literals.
 */
export interface ClauseBook {
  pool: Int32Array;
  poolCount: number;
  /** By literal: the clauses that watch it, each with another of its literals. */
  readonly watches: number[][];
  /** Learnt ones, oldest first. */
  learnt: number[];
}

export const SIZE = 0;
export const WORTH = 1;
export const LITERALS = 2;

export function clauseBook(literals: number): ClauseBook {
  return {
    pool: new Int32Array(4096),
    poolCount: 0,
    watches: Array.from({ length: literals }, () => []),
    learnt: [],
  };
}

/** Adds a clause of two literals or more; the first two are watched. Returns its place. */
export function addClause(book: ClauseBook, literals: readonly number[], worth: number): number {
  const size = literals.length;
  while (book.poolCount + size + LITERALS > book.pool.length) {
    const grown = new Int32Array(2 * book.pool.length);
    grown.set(book.pool);
    book.pool = grown;
  }
  const place = book.poolCount;
  book.poolCount += size + LITERALS;
  book.pool[place + SIZE] = size;
  book.pool[place + WORTH] = worth;
  for (let n = 0; n < size; n += 1) book.pool[place + LITERALS + n] = literals[n] as number;
  watch(book, place);
  if (worth > 0) book.learnt.push(place);
  return place;
}

function watch(book: ClauseBook, place: number): void {
  const one = book.pool[place + LITERALS] as number;
  const other = book.pool[place + LITERALS + 1] as number;
  book.watches[one]?.push(place, other);
  book.watches[other]?.push(place, one);
}

/**
 * Drops the half of the learnt clauses that is worth least (most depths; then longest, then oldest). Only at the
 * root, where no clause is the reason of anything that will be asked for.
 */
export function dropWorst(book: ClauseBook): void {
  const { pool } = book;
  const ranked = book.learnt
    .map((place, age) => ({
      place,
      age,
      worth: pool[place + WORTH] as number,
      size: pool[place + SIZE] as number,
    }))
    .sort((a, b) => a.worth - b.worth || a.size - b.size || b.age - a.age);
  const dropped = new Set(
    ranked
      .slice(Math.floor(ranked.length / 2))
      .filter(({ worth }) => worth > 2)
      .map(({ place }) => place),
  );
  for (const watching of book.watches) watching.length = 0;
  const kept: number[] = [];
  let count = 0;
  for (let place = 0; place < book.poolCount; ) {
    const length = (pool[place + SIZE] as number) + LITERALS;
    if (!dropped.has(place)) {
      pool.copyWithin(count, place, place + length);
      if ((pool[count + WORTH] as number) > 0) kept.push(count);
      watch(book, count);
      count += length;
    }
    place += length;
  }
  book.poolCount = count;
  book.learnt = kept;
}
