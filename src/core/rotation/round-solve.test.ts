import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bestOfAll, faultsOf } from '../../../test/rounds/every-plan.ts';
import { chanceHistory, chanceProblem, plainProblem } from '../../../test/rounds/small-problems.ts';
import type { RoundProblem } from './round-chart.ts';
import { solveRounds } from './round-solve.ts';

const effort = { seed: 1, steps: 200_000 };

/** What the search says, as every plan tried in turn would say it. */
function judged(problem: RoundProblem): object | null {
  const answer = solveRounds(problem, effort);
  if (answer.kind !== 'rounds') return answer.kind === 'impossible' ? null : { kind: 'unknown' };
  return {
    end: answer.end,
    changes: answer.changes,
    faults: faultsOf(problem, answer.chart, answer.from, answer.to),
    isProved: answer.proof !== 'none',
  };
}

function bestByAll(problem: RoundProblem): object | null {
  const best = bestOfAll(problem);
  return best === null ? null : { ...best, faults: [], isProved: true };
}

test.each([1, 2, 3, 4, 5, 6, 7, 8, 9, 12])(
  '%i groups at as many equally long tables take as many rounds as a Latin square has rows',
  (size) => {
    const answer = solveRounds(plainProblem(size, new Array<number>(size).fill(300)), effort);
    expect(answer).toMatchObject({ kind: 'rounds', end: 300 * size, bound: 300 * size, proof: 'bound' });
  },
);

test('small problems with all rules by chance end as soon as the best of every plan, or are impossible as it is', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 1_000_000 }), (seed) => {
      const problem = chanceProblem(seed);
      expect(judged(problem)).toEqual(bestByAll(problem));
    }),
    { seed: 280, numRuns: 200, endOnFailure: true },
  );
});

test('two hundred periods under way are planned again with as few changes as the best of every plan', () => {
  for (let seed = 1; seed <= 200; seed += 1) {
    const problem = chanceHistory(seed);
    expect({ seed, is: judged(problem) }).toEqual({ seed, is: bestByAll(problem) });
  }
});

test('long tables are put into the same rounds', () => {
  const visits = [
    { group: 0, table: 0 },
    { group: 1, table: 1 },
    { group: 0, table: 2 },
    { group: 1, table: 3 },
  ];
  const answer = solveRounds({ ...plainProblem(2, [600, 600, 120, 120]), visits }, effort);
  expect(answer).toMatchObject({ end: 720, proof: 'bound' });
});

test('a visit that is named twice is done once', () => {
  const visits = [
    { group: 0, table: 0 },
    { group: 0, table: 0 },
  ];
  expect(solveRounds({ ...plainProblem(1, [60]), visits }, effort)).toMatchObject({ chart: [[0]], end: 60 });
});

test('with nothing left to do there are no rounds', () => {
  const answer = solveRounds({ ...plainProblem(2, [60]), visits: [], begins: 100 }, effort);
  expect(answer).toMatchObject({ kind: 'rounds', chart: [], end: 100, changes: 0 });
});

test('where all have to wait the next round begins later, and none is empty', () => {
  const problem = plainProblem(1, [60], { away: [{ group: 0, from: 0, to: 500 }] });
  expect(solveRounds(problem, effort)).toMatchObject({ chart: [[0]], from: [500], end: 560 });
});

test('without effort nothing is claimed', () => {
  const problem = plainProblem(4, [60, 60, 60, 60]);
  expect(solveRounds(problem, { seed: 1, steps: 0 })).toEqual({ kind: 'unknown', bound: 240 });
});
