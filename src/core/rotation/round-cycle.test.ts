import { expect, test } from 'vitest';
import { oneBefore, plainProblem } from '../../../test/rounds/small-problems.ts';
import type { RoundAnswer, RoundProblem } from './round-chart.ts';
import { isCyclic } from './round-cycle.ts';
import { solveRounds } from './round-solve.ts';

const planOf = (problem: RoundProblem): RoundAnswer & { readonly kind: 'rounds' } => {
  const answer = solveRounds(problem, { seed: 1, steps: 50_000 });
  if (answer.kind !== 'rounds') throw new Error(`no plan, but ${answer.kind}`);
  return answer;
};

test.each([
  [3, 3],
  [6, 6],
  [8, 6],
  [12, 9],
])('%i groups at %i tables move on by one place each round', (groups, tables) => {
  const lengths = Array.from({ length: tables }, (_, table) => 240 + 60 * (table % 3));
  const { chart, proof } = planOf(plainProblem(groups, lengths, { walk: 30 }));
  expect({ proof, isCyclic: isCyclic(chart) }).toEqual({ proof: 'bound', isCyclic: true });
});

test('the first group begins at the first table and goes on to the next', () => {
  const { chart } = planOf(plainProblem(4, [300, 300, 300, 300]));
  expect(chart.map((row) => row[0])).toEqual([0, 1, 2, 3]);
});

test('two groups go round together where every table is set up twice', () => {
  const { chart, end } = planOf(plainProblem(6, [300, 300, 300], { copies: [2, 2, 2] }));
  expect({ end, isCyclic: isCyclic(chart) }).toEqual({ end: 900, isCyclic: true });
});

test('a circle that breaks a rule is not taken', () => {
  const before = [oneBefore(2, 0, 0)];
  const { chart } = planOf(plainProblem(3, [300, 300, 300], { before }));
  const order = chart.map((row) => row[0]);
  expect(order.indexOf(2)).toBeLessThan(order.indexOf(0));
});

test('a circle that would end later is not taken', () => {
  const lengths = [480, 420, 360, 300, 300, 240];
  expect(planOf(plainProblem(4, lengths, { walk: 30 }))).toMatchObject({ end: 2790, proof: 'bound' });
});

test('of plans that end as soon, groups go more often to the table beside', () => {
  const beside = [
    [0, 1],
    [1, 2],
    [2, 3],
    [3, 4],
    [4, 5],
  ] as const;
  const lengths = [480, 300, 420, 240, 360, 300];
  const near = (chart: readonly (readonly number[])[]): number =>
    chart.slice(1).reduce(
      (sum, row, round) =>
        sum +
        row.filter((table, group) => {
          const before = chart[round]?.[group] as number;
          return table >= 0 && before >= 0 && Math.abs(table - before) === 1;
        }).length,
      0,
    );
  const plain = planOf(plainProblem(4, lengths));
  const walked = planOf(plainProblem(4, lengths, { beside }));
  expect(walked.end).toBe(plain.end);
  expect(near(walked.chart)).toBeGreaterThan(near(plain.chart));
});
