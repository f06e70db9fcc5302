import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { measureNextAtTables } from '../../src/core/bench.ts';
import type { Prepared } from '../../src/core/prepare.ts';
import { classWith, groupHabits, judgements, tableFindings } from '../../src/core/readings/class-state.ts';
import { classSummary } from '../../src/core/readings/class-summary.ts';
import { reckonedAt } from '../../src/core/readings/reckoned-reading.ts';
import { rehearse } from '../../src/core/rehearse.ts';
import { classFor, type Review, review, setupsOf } from '../../src/core/review.ts';
import { chanceToSee } from '../../src/core/setups/chance-to-see.ts';
import { byTrialsOrLinear } from '../../src/core/setups/predict-by-trials.ts';
import { nextText } from '../../src/documents/text/next-text.ts';
import { rehearsalAnswers, rehearsalText } from '../../src/documents/text/rehearsal-text.ts';
import { reviewCsv } from '../../src/documents/text/review-csv.ts';
import { reviewJson } from '../../src/documents/text/review-json.ts';
import { reviewTable } from '../../src/documents/text/review-table.ts';
import { trialsText } from '../../src/documents/text/trials-text.ts';
import { anyBench, fittedBench } from './any-bench.ts';
import { type AnyClass, anyClass, csvOf, rowsOf } from './any-class.ts';
import { anyTable, preparedTable } from './any-table.ts';
import { faultsIn } from './finite.ts';

const LANGUAGES = ['en', 'es'] as const;
const UNSAID = /undefined|NaN|Infinity|\bnull\b|\{[a-z]+\}/;

const dataOf = (found: Review) => ({
  judged: found.judged.map(({ judgement, at }) => ({ judgement, reckoned: reckonedAt({ judgement, at }) })),
  tables: found.tables,
  groups: found.groups,
  refused: found.refused,
  notes: found.notes,
  summary: classSummary(found),
});

const together = (all: readonly { readonly probability: number }[]): number =>
  all.reduce((sum, { probability }) => sum + probability, 0);

/** One more reading at a time; a reading of no setup is a failed test. */
const oneByOne = (prepared: Prepared, { judged }: Review) =>
  judged.reduce((state, { judgement }) => {
    const next = classWith(state, judgement.reading);
    if (next === null) throw new Error(`no setup for ${judgement.reading.setup}`);
    return next;
  }, classFor(prepared));

function reviewHolds(prepared: Prepared, written: AnyClass): void {
  const rows = rowsOf(prepared, written);
  const found = review(prepared, csvOf(rows));
  const data = dataOf(found);
  expect(faultsIn(data)).toEqual([]);
  expect(found.judged.length + found.refused.length).toBe(rows.length);
  expect(found.judged.map(({ judgement }) => judgement.reading.written.trim())).toEqual(
    rows.map(({ reading }) => reading.trim()),
  );
  for (const causes of [
    ...found.judged.map(({ judgement }) => judgement.causes),
    ...found.tables.map(({ behind }) => behind),
  ])
    expect(together(causes)).toBeLessThanOrEqual(1 + 1e-9);
  expect(dataOf(review(prepared, csvOf(rows)))).toEqual(data);
  const state = oneByOne(prepared, found);
  expect(judgements(state)).toEqual(found.judged.map(({ judgement }) => judgement));
  expect(tableFindings(state)).toEqual(found.tables);
  expect(groupHabits(state)).toEqual(found.groups);
  // What a group itself wrote may well be one of these words.
  const isSaid = rows.some(({ reading, advantage }) => UNSAID.test(`${reading} ${advantage}`));
  for (const language of LANGUAGES) {
    expect(() => JSON.parse(reviewJson(language, found))).not.toThrow();
    const text = reviewTable(language, found, 'readings.csv') + reviewCsv(language, found);
    if (!isSaid) expect(text).not.toMatch(UNSAID);
  }
}

describe('any class at any table', () => {
  it('is reviewed to the last row, in finite numbers, alike each time, one by one as all at once, in words', () => {
    fc.assert(
      fc.property(anyTable, anyClass, (table, written) => reviewHolds(preparedTable(table), written)),
      { seed: 4, numRuns: 80 },
    );
  });

  it('gets no praise for a number that is out of all reason', () => {
    fc.assert(
      fc.property(
        anyTable,
        anyClass,
        fc.constantFrom('1e300', '-40', '8e9 N', '1e309', '9'.repeat(400)),
        (table, written, absurd) => {
          const prepared = preparedTable(table);
          const rows = rowsOf(prepared, written).map((row, n) =>
            n === 0 ? { ...row, reading: absurd } : row,
          );
          const [first] = review(prepared, csvOf(rows)).judged;
          expect(['look again', 'unreadable', 'not judged']).toContain(first?.judgement.verdict);
        },
      ),
      { seed: 5, numRuns: 60 },
    );
  });

  it('is not asked to look again for reading what the table shows', () => {
    fc.assert(
      fc.property(anyTable, fc.constantFrom(1, 5, 12), (table, groups) => {
        const prepared = preparedTable(table);
        const rows = rowsOf(prepared, { groups, shape: 'honest', factor: 1, slips: [] });
        const judged = review(prepared, csvOf(rows)).judged.filter(
          ({ at }) => at.prediction.outcome.kind === 'reading' && at.prediction.outcome.expected >= 0,
        );
        expect(judged.map(({ judgement }) => judgement.verdict).filter((each) => each !== 'good')).toEqual(
          [],
        );
      }),
      { seed: 6, numRuns: 60 },
    );
  });
});

describe('any table', () => {
  it('has finite figures, before and after bench readings that contradict each other', () => {
    fc.assert(
      fc.property(anyTable, anyBench, (table, bench) => {
        const prepared = preparedTable(table);
        const { fit, confused, predictions } = fittedBench(prepared, bench);
        const readings = fit.readings.map(({ observation: _, ...rest }) => rest);
        const figures = [...setupsOf(prepared).map(({ prediction }) => prediction), ...predictions].map(
          ({ working, ...rest }) => ({ ...rest, working: working() }),
        );
        expect(
          faultsIn({ unknowns: fit.unknowns, knowledge: fit.knowledge, readings, confused, figures }),
        ).toEqual([]);
        expect(fit.readings.filter(({ isUsed, because }) => isUsed === (because !== null))).toEqual([]);
        const again = fittedBench(prepared, bench);
        expect(again.fit.unknowns).toEqual(fit.unknowns);
      }),
      { seed: 7, numRuns: 120 },
    );
  });

  it('has chances, ranges by trials and a next measurement, the same for the same seed, in words', () => {
    fc.assert(
      fc.property(anyTable, fc.nat(1000), (table, seed) => {
        const prepared = preparedTable(table);
        const [first, second] = setupsOf(prepared);
        if (first === undefined) return;
        const next = measureNextAtTables(prepared);
        const ask = () => ({
          chance: second === undefined ? null : chanceToSee(first.setup, second.setup, { seed, copies: 20 }),
          range: byTrialsOrLinear(first.setup, first.prediction, { seed, atMost: 1000 }),
        });
        const asked = ask();
        expect(faultsIn({ ...asked, next })).toEqual([]);
        expect(ask()).toEqual(asked);
        const ranges = [{ setup: first.setup.mark, range: asked.range }];
        for (const language of LANGUAGES)
          expect(
            trialsText(language, prepared, seed, ranges) + nextText(language, prepared, next),
          ).not.toMatch(UNSAID);
      }),
      { seed: 8, numRuns: 100 },
    );
  });

  it('is rehearsed by any number of groups', () => {
    fc.assert(
      fc.property(
        anyTable,
        fc.constantFrom(1, 5, 12),
        fc.nat(8),
        fc.nat(1000),
        (table, groups, mistakes, seed) => {
          const prepared = preparedTable(table);
          const rehearsal = rehearse(prepared, { groups, mistakes, seed });
          expect(rehearsal.rows.length).toBe(groups * setupsOf(prepared).length);
          expect(faultsIn(dataOf(rehearsal.review))).toEqual([]);
          expect(rehearse(prepared, { groups, mistakes, seed }).csv).toBe(rehearsal.csv);
          for (const language of LANGUAGES)
            expect(
              rehearsalText(language, prepared, rehearsal) + rehearsalAnswers(language, rehearsal),
            ).not.toMatch(UNSAID);
        },
      ),
      { seed: 9, numRuns: 60 },
    );
  });
});
