import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLeverSetup, leverSetup } from '../../../test/stations/lever-setups.ts';
import type { Predicted } from '../setups/difference.ts';
import { predict } from '../setups/predict.ts';
import type { Setup } from '../setups/setup.ts';
import { standardUncertainty } from '../uncertainty/measured.ts';
import { arrivalCheckOf, stepsOutside } from './arrival-check.ts';
import { rekeyed } from './rekey.ts';
import { followedSpan, isFollowed, movesTheKey, plausibleSpan, rekeyTable } from './rekey-table.ts';

const predicted = (setup: Setup): Predicted => ({ setup, prediction: predict(setup) });
const tables = fc
  .tuple(anyLeverSetup, anyLeverSetup)
  .map(([one, other]) => [
    predicted({ ...leverSetup(one), mark: 'X1' }),
    predicted({ ...leverSetup({ ...other, way: 'raise' }), mark: 'X2' }),
  ]);
const seeded = { seed: 43, numRuns: 150 };

describe('the table that re-keys itself', () => {
  it('has a row for every graduation of the good range and more, each on the marks of the scale', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const arrival = arrivalCheckOf(table);
        fc.pre(arrival !== null);
        if (arrival === null || arrival.prediction.outcome.kind !== 'reading') return;
        const { good } = arrival.prediction.outcome;
        const { step } = arrival.prediction.graduations ?? { step: 0 };
        const { rows } = rekeyTable(table, arrival);
        expect(rows[0]?.reading).toBeLessThanOrEqual(good.from + 1e-9);
        expect(rows.at(-1)?.reading).toBeGreaterThanOrEqual(good.to - 1e-9);
        for (const [n, { reading }] of rows.entries()) {
          expect(Math.abs(reading / step - Math.round(reading / step))).toBeLessThan(1e-9);
          expect(reading - (rows[0]?.reading ?? 0)).toBeCloseTo(n * step, 9);
          expect(isFollowed(arrival, reading)).toBe(true);
        }
        expect(isFollowed(arrival, (rows.at(-1)?.reading ?? 0) + 0.6 * step)).toBe(false);
        expect(isFollowed(arrival, (rows[0]?.reading ?? 0) - 0.6 * step)).toBe(false);
      }),
      seeded,
    );
  });

  it('has only rows that call good the reading they are for, and ends where the next one would not', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const arrival = arrivalCheckOf(table);
        fc.pre(arrival !== null);
        if (arrival === null) return;
        const { step } = arrival.prediction.graduations ?? { step: 0 };
        const ownAt = (reading: number) => {
          const own = rekeyed(table, arrival, reading).find(({ setup }) => setup === arrival.setup.mark);
          return own?.good ?? null;
        };
        const { rows } = rekeyTable(table, arrival);
        for (const { reading, good } of rows) {
          const own = good.find(({ setup }) => setup === arrival.setup.mark)?.good;
          expect(own?.from).toBeLessThanOrEqual(reading + 1e-9);
          expect(own?.to).toBeGreaterThanOrEqual(reading - 1e-9);
        }
        const wide = plausibleSpan(arrival);
        const [first, last] = [rows[0]?.reading ?? 0, rows.at(-1)?.reading ?? 0];
        for (const next of [first - step, last + step]) {
          if (wide === null || next < wide.from - 1e-9 || next > wide.to + 1e-9) continue;
          const own = ownAt(next);
          expect(own === null || next < own.from - 1e-9 || next > own.to + 1e-9).toBe(true);
        }
      }),
      seeded,
    );
  });

  it('ends no later than where z = 1.96 sqrt((1 + K)/(1 - K)) and no earlier than a graduation before', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        const table = [predicted(leverSetup({ ...said, way: 'raise' }))];
        const arrival = arrivalCheckOf(table);
        const read = arrival?.prediction.read ?? null;
        const span = arrival === null ? null : followedSpan(arrival);
        const wide = arrival === null ? null : plausibleSpan(arrival);
        fc.pre(arrival !== null && read !== null && span !== null && wide !== null);
        if (arrival === null || read === null || span === null || wide === null) return;
        const { step } = arrival.prediction.graduations ?? { step: 0 };
        const shared = read.parts.filter(({ unknown }) => !unknown.id.startsWith('reading/'));
        const V = standardUncertainty(read) ** 2;
        const K = standardUncertainty({ ...read, parts: shared }) ** 2 / V;
        const most = 1.96 * Math.sqrt(((1 + K) / (1 - K)) * V);
        // An end of the range is rounded outward by less than a graduation, and then shared out by 1 - K.
        expect(span.to).toBeLessThan(read.value + most + step / (1 - K) + 1e-6);
        expect(span.to).toBeGreaterThan(Math.min(wide.to, read.value + most) - step - 1e-6);
      }),
      seeded,
    );
  });

  it('moves the key unless every row is the key as packed', () => {
    fc.assert(
      fc.property(tables, (table) => {
        const arrival = arrivalCheckOf(table);
        fc.pre(arrival !== null);
        if (arrival === null) return;
        const rekey = rekeyTable(table, arrival);
        const packed = (mark: string) => {
          const outcome = table.find(({ setup }) => setup.mark === mark)?.prediction.outcome;
          return outcome !== undefined && 'good' in outcome ? outcome.good : null;
        };
        const asPrinted = {
          ...rekey,
          rows: rekey.rows.map((row) => ({
            ...row,
            good: row.good.map(({ setup }) => ({ setup, good: packed(setup) })),
          })),
        };
        expect(movesTheKey(asPrinted, table)).toBe(false);
        const isSame = JSON.stringify(asPrinted.rows) === JSON.stringify(rekey.rows);
        expect(movesTheKey(rekey, table)).toBe(!isSame);
      }),
      seeded,
    );
  });

  it('asks for more at every setup of the same scale and bar when the arrival reading is higher', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        const raise = { ...said, way: 'raise' } as const;
        const table = [
          predicted({ ...leverSetup(raise), mark: 'X1' }),
          predicted({ ...leverSetup({ ...raise, loadMass: said.loadMass * 0.9 }), mark: 'X2' }),
        ];
        const arrival = arrivalCheckOf(table);
        fc.pre(arrival !== null);
        if (arrival === null) return;
        const ends = rekeyTable(table, arrival).rows.map(({ good }) => good.map((each) => each.good?.to));
        // Where the pointer would leave its marks there is no range to compare.
        for (const [n, row] of ends.entries())
          for (const [k, to] of row.entries()) {
            const before = ends[n - 1]?.[k];
            if (to !== undefined && before !== undefined) expect(to).toBeGreaterThanOrEqual(before - 1e-9);
          }
      }),
      seeded,
    );
  });
});

describe('the arrival check of a table', () => {
  it('is one figure read moving up, never a band or a setup for groups that wait', () => {
    fc.assert(
      fc.property(tables, fc.boolean(), (table, isExtra) => {
        const changed = table.map((at) => ({ ...at, setup: { ...at.setup, isExtra } }));
        const check = arrivalCheckOf(changed);
        if (isExtra) expect(check).toBeNull();
        else if (check !== null) {
          expect(check.prediction.outcome.kind).toBe('reading');
          expect(check.setup.way).toBe('raise');
          expect(followedSpan(check)).not.toBeNull();
        } else
          for (const { setup, prediction } of table)
            expect(setup.way === 'raise' && prediction.outcome.kind === 'reading').toBe(false);
      }),
      seeded,
    );
  });

  it('is the setup without surprises, though another shows more marks', () => {
    const [said] = fc.sample(anyLeverSetup, { seed: 44, numRuns: 1 });
    if (said === undefined) throw new Error('no setup');
    const sound = { ...said, classIs: 'second', way: 'raise', loadMass: 0.8, near: 0.2, far: 0.4 } as const;
    const quiet = predicted({ ...leverSetup(sound), mark: 'X1' });
    const loud = predicted({ ...leverSetup({ ...sound, far: 0.26 }), mark: 'X2' });
    const found = {
      code: 'lever.short-arm',
      severity: 'warning',
      at: loud.setup.place(null),
      facts: {},
    } as const;
    const warned = { ...loud, prediction: { ...loud.prediction, diagnostics: [found] } };
    expect(quiet.prediction.diagnostics).toEqual([]);
    expect(arrivalCheckOf([quiet, loud])?.setup.mark).toBe('X2');
    expect(arrivalCheckOf([quiet, warned])?.setup.mark).toBe('X1');
  });

  it('says what to do outside: zero as the setup is zeroed, check, read again, take the row, or close', () => {
    const [said] = fc.sample(anyLeverSetup, { seed: 44, numRuns: 1 });
    if (said === undefined) throw new Error('no setup');
    const first = { ...said, classIs: 'first', way: 'raise', loadMass: 0.8, handCarries: false } as const;
    const keysOf = (zeroed: 'hook down' | 'in place') =>
      stepsOutside(predicted(leverSetup({ ...first, zeroed })), true).map(({ key }) =>
        key.replace('arrival.outside.', ''),
      );
    expect(keysOf('in place')).toEqual(['zero-in-place', 'check', 'again', 'row', 'close']);
    expect(keysOf('hook down')[0]).toBe('zero-hook-down');
    const unmoved = stepsOutside(predicted(leverSetup(first)), false).map(({ key }) => key);
    expect(unmoved).not.toContain('arrival.outside.row');
    expect(unmoved.at(-1)).toBe('arrival.outside.close');
  });
});
