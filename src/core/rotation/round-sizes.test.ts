import { expect, test } from 'vitest';
import { faultsOf } from '../../../test/rounds/every-plan.ts';
import { oneBefore, plainProblem } from '../../../test/rounds/small-problems.ts';
import type { RoundProblem } from './round-chart.ts';
import { solveRounds } from './round-solve.ts';

const lengths = [360, 300, 420, 240, 300, 480, 360, 300, 240];
const twice = { walk: 30, copies: lengths.map(() => 2) };
const order = [oneBefore(0, 5, null)];
const line = lengths.slice(1).map((_, table): readonly [number, number] => [table, table + 1]);

/** Twelve groups at nine tables with a rule of each kind; ends are proved, by a count of rounds that nothing beats. */
const proved: readonly (readonly [string, Partial<RoundProblem>, number])[] = [
  ['nothing set up twice', { walk: 30 }, 6090],
  ['some tables set up twice', { walk: 30, copies: [2, 1, 2, 1, 1, 2, 1, 1, 1] }, 5370],
  ['every table set up twice', twice, 4200],
  ['adults for four groups', { ...twice, limits: [{ tables: [0, 2, 5, 6, 7], capacity: 4 }] }, 6540],
  [
    'a table before another',
    { ...twice, before: order, ends: [{ which: 'last', table: 2, group: 3 }] },
    4200,
  ],
  ['a break', { ...twice, breaks: [{ from: 1800, to: 2400 }] }, 4800],
  [
    'groups apart and together',
    {
      ...twice,
      beside: line,
      apart: [
        [0, 1],
        [2, 3],
      ],
      together: [[4, 5]],
    },
    4200,
  ],
  ['a table closed at first', { ...twice, closed: [{ table: 5, from: 0, to: 900 }] }, 4200],
  [
    'visits at a time of day',
    {
      ...twice,
      at: [
        { group: 5, table: 5, time: 900 },
        { group: 2, table: 5, time: 2000 },
      ],
    },
    4200,
  ],
];

test.each(proved)('twelve groups at nine tables with %s end at the bound', (_, more, end) => {
  const problem = plainProblem(12, lengths, more);
  const answer = solveRounds(problem, { seed: 1, steps: 100_000 });
  expect(answer).toMatchObject({ kind: 'rounds', end, bound: end, proof: 'bound' });
  if (answer.kind === 'rounds') expect(faultsOf(problem, answer.chart, answer.from, answer.to)).toEqual([]);
});

/** What is left open is said: between the bound and the end, by no more than this part of the end. */
const open: readonly (readonly [string, Partial<RoundProblem>, number])[] = [
  ['a late group', { ...twice, away: [{ group: 4, from: 0, to: 500 }] }, 0.03],
  [
    'two that leave early',
    {
      ...twice,
      away: [
        { group: 4, from: 4000, to: Infinity },
        { group: 5, from: 3700, to: Infinity },
      ],
    },
    0.15,
  ],
  [
    'a bit of everything',
    {
      ...twice,
      before: order,
      breaks: [{ from: 1800, to: 2400 }],
      away: [{ group: 4, from: 0, to: 500 }],
      closed: [{ table: 3, from: 2500, to: 3200 }],
    },
    0.08,
  ],
];

test.each(open)('twelve groups at nine tables with %s end near the bound', (_, more, part) => {
  const problem = plainProblem(12, lengths, more);
  const answer = solveRounds(problem, { seed: 1, steps: 50_000 });
  if (answer.kind !== 'rounds') throw new Error(`no plan, but ${answer.kind}`);
  expect(faultsOf(problem, answer.chart, answer.from, answer.to)).toEqual([]);
  expect(answer.end - answer.bound).toBeLessThanOrEqual(part * answer.end);
});

test('a bell one second before the bound is said to be impossible', () => {
  expect(solveRounds(plainProblem(12, lengths, { ...twice, bell: 4199 }), { seed: 1, steps: 1000 })).toEqual({
    kind: 'impossible',
  });
});

test('twelve groups under way whose table breaks change only the cells of that table', () => {
  const problem = plainProblem(12, lengths, { walk: 30 });
  const plan = solveRounds(problem, { seed: 1, steps: 100_000 });
  if (plan.kind !== 'rounds') throw new Error(`no plan, but ${plan.kind}`);
  const standing = plan.chart.slice(4);
  const lost = standing.flat().filter((table) => table === 2).length;
  const visits = standing.flatMap((row) =>
    row.flatMap((table, group) => (table < 0 || table === 2 ? [] : [{ group, table }])),
  );
  const answer = solveRounds({ ...problem, visits, standing }, { seed: 1, steps: 100_000 });
  expect(answer).toMatchObject({ kind: 'rounds', changes: lost });
});
