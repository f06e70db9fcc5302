import { expect, test } from 'vitest';
import { faultsOf } from '../../../test/rounds/every-plan.ts';
import { oneBefore, plainProblem } from '../../../test/rounds/small-problems.ts';
import { pairShortTables } from './round-pairs.ts';

const effort = { seed: 1, steps: 20_000 };

test('two short tables are done in one round where that saves a round', () => {
  const pairing = pairShortTables(plainProblem(2, [600, 240, 300], { walk: 30 }), effort);
  expect(pairing).toMatchObject({ pairs: [{ first: 1, second: 2 }], gained: 330, answer: { end: 1230 } });
});

test('a paired stop lasts as long as both tables and the walk between, and keeps the rules as one table', () => {
  const pairing = pairShortTables(plainProblem(4, [600, 240, 300, 480, 270, 240], { walk: 30 }), effort);
  const { pairs, problem, answer } = pairing as NonNullable<typeof pairing>;
  for (const { first, second } of pairs) {
    expect(problem.visits.filter((visit) => visit.table === second)).toEqual([]);
    expect(problem.visits.filter((visit) => visit.table === first)).toHaveLength(4);
  }
  expect(pairs.length).toBeGreaterThan(0);
  expect(faultsOf(problem, answer.chart, answer.from, answer.to)).toEqual([]);
});

test('with as many groups as tables nothing is gained by pairs: each table has a group in every round', () => {
  expect(pairShortTables(plainProblem(3, [600, 240, 300], { walk: 30 }), effort)).toBeNull();
});

test('equally long tables are not paired, since the round would only last twice as long', () => {
  expect(pairShortTables(plainProblem(2, [300, 300, 300]), effort)).toBeNull();
});

test('in a pair the table that has to come before comes first', () => {
  const before = [oneBefore(2, 1, null)];
  const pairing = pairShortTables(plainProblem(2, [600, 240, 300], { walk: 30, before }), effort);
  expect(pairing?.pairs).toEqual([{ first: 2, second: 1 }]);
});

test('tables are not paired where one has to come between them', () => {
  const before = [oneBefore(1, 0, null), oneBefore(0, 2, null)];
  expect(pairShortTables(plainProblem(2, [600, 240, 300], { walk: 30, before }), effort)).toBeNull();
});

test('a pair that fits before the bell is found where all tables in rounds of their own do not fit', () => {
  const pairing = pairShortTables(plainProblem(2, [600, 240, 300], { walk: 30, bell: 1300 }), effort);
  expect(pairing).toMatchObject({ pairs: [{ first: 1, second: 2 }], gained: null, answer: { end: 1230 } });
});

test('a plan that stood before is not paired anew', () => {
  expect(pairShortTables(plainProblem(2, [600, 240, 300], { standing: [[0, 1]] }), effort)).toBeNull();
});
