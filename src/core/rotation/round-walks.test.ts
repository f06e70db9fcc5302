import { expect, test } from 'vitest';
import { roundBook } from './round-book.ts';
import type { RoundProblem } from './round-chart.ts';
import { soonestCycle } from './round-cycle.ts';
import { solveRounds } from './round-solve.ts';
import { shorterWalks } from './round-walks.ts';

/** Every group once at every table of a row; the longest table first. */
const row = (groups: number, tables: number): RoundProblem => ({
  groups,
  tables,
  visits: Array.from({ length: groups * tables }, (_, n) => ({
    group: Math.floor(n / tables),
    table: n % tables,
  })),
  lengths: Array.from({ length: tables }, (_, table) => 300 + 60 * ((tables - table) % 3)),
  copies: new Array<number>(tables).fill(1),
  limits: [],
  before: [],
  ends: [],
  beside: Array.from({ length: tables - 1 }, (_, table): [number, number] => [table, table + 1]),
  apart: [],
  together: [],
  away: [],
  closed: [],
  at: [],
  breaks: [],
  walk: 30,
  begins: 0,
  bell: null,
  standing: null,
});

test('shorter walks are looked for no longer than was said, and what was found till then is kept', () => {
  const book = roundBook(row(6, 6));
  const cycle = book === null ? null : soonestCycle(book);
  if (book === null || cycle === null) throw new Error('six groups can go round six tables');
  const apart = [0, 3, 1, 4, 2, 5].map((round) => cycle.rounds[round] ?? []);
  expect(shorterWalks(book, apart, cycle.end, 0)).toBe(apart);
  expect(shorterWalks(book, apart, cycle.end, 1e6)).not.toEqual(apart);
});

test('a hundred groups at six tables have a plan within seconds of work', () => {
  const began = performance.now();
  const answer = solveRounds(
    { ...row(100, 6), breaks: [{ from: 3000, to: 3600 }] },
    { seed: 1, steps: 30_000 },
  );
  if (answer.kind !== 'rounds') throw new Error(answer.kind);
  expect(answer.chart.flat().filter((table) => table >= 0)).toHaveLength(600);
  expect(answer.bound).toBeLessThanOrEqual(answer.end);
  expect(performance.now() - began).toBeLessThan(8000);
});
