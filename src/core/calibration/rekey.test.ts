import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLeverSetup, type LeverSetup, leverSetup } from '../../../test/stations/lever-setups.ts';
import { recompute } from '../../../test/stations/working.ts';
import type { Predicted } from '../setups/difference.ts';
import { predict } from '../setups/predict.ts';
import type { GoodRange } from '../setups/prediction.ts';
import { covariance, standardUncertainty } from '../uncertainty/measured.ts';
import { asPacked, rekeyed, rekeyedPrediction } from './rekey.ts';

const seeded = { seed: 41, numRuns: 150 };

const at = (said: LeverSetup, mark: string, name: (id: string) => string = (id) => id): Predicted => {
  const setup = { ...leverSetup(said, { name }), mark };
  return { setup, prediction: predict(setup) };
};
/** The same bar, load and scale with another arm, read up. */
const pairOf = (said: LeverSetup): readonly [Predicted, Predicted] => [
  at({ ...said, way: 'raise' }, 'X1'),
  at({ ...said, way: 'raise', far: said.far * 0.9 }, 'X2'),
];
const goodOf = ({ prediction }: Predicted): GoodRange | null =>
  'good' in prediction.outcome ? prediction.outcome.good : null;
const expectedOf = ({ prediction }: Predicted): number | null =>
  prediction.outcome.kind === 'reading' ? prediction.outcome.expected : null;

describe('a table that follows its arrival reading', () => {
  it('never widens a range when the reading is just what was expected', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        const table = [...pairOf(said), at({ ...said, way: 'held' }, 'X3')];
        const [arrival] = table;
        const expected = arrival === undefined ? null : expectedOf(arrival);
        fc.pre(arrival !== undefined && expected !== null);
        if (arrival === undefined || expected === null) return;
        for (const { setup, good } of rekeyed(table, arrival, expected)) {
          const before = table.find((each) => each.setup.mark === setup);
          const packed = before === undefined ? null : goodOf(before);
          if (good === null || packed === null) throw new Error(`${setup} lost its range`);
          expect(good.from).toBeGreaterThanOrEqual(packed.from - 1e-9);
          expect(good.to).toBeLessThanOrEqual(packed.to + 1e-9);
        }
      }),
      seeded,
    );
  });

  it('moves by covariance over variance, and its variance falls by covariance squared over variance', () => {
    fc.assert(
      fc.property(anyLeverSetup, fc.double({ min: -2, max: 2, noNaN: true }), (said, off) => {
        const [arrival, other] = pairOf(said);
        const [a, b] = [arrival.prediction.read, other.prediction.read];
        fc.pre(a !== null && b !== null && arrival.prediction.outcome.kind === 'reading');
        if (a === null || b === null) return;
        // What is one reading's own is left out of what the two have in common.
        const own = (id: string) => id.startsWith('reading/');
        const C = covariance({ ...b, parts: b.parts.filter(({ unknown }) => !own(unknown.id)) }, a);
        const V = standardUncertainty(a) ** 2;
        const { read } = rekeyedPrediction(other, arrival, a.value + off * Math.sqrt(V));
        if (read === null) throw new Error('no figure left');
        expect(read.value).toBeCloseTo(b.value + (C / V) * off * Math.sqrt(V), 9);
        expect(standardUncertainty(read) ** 2).toBeCloseTo(standardUncertainty(b) ** 2 - C ** 2 / V, 9);
      }),
      seeded,
    );
  });

  it('says the same as the posterior of one unknown reckoned by hand', () => {
    // One shared unknown of u = 0.3, each reading with a noise of its own of u = 0.4: gain 0.09/0.25.
    const shared = { id: 'scale/accuracy', u: 0.3, shape: 'normal', origin: 'stated' } as const;
    const noise = { id: 'reading/hand scatter', u: 0.4, shape: 'normal', origin: 'assumed' } as const;
    const [arrival, other] = pairOf(sample());
    const parts = [shared, noise].map((unknown) => ({ unknown, slope: 1 }));
    const withFigure = (of: Predicted, value: number): Predicted => ({
      ...of,
      prediction: { ...of.prediction, read: { value, parts }, lower: null },
    });
    const { read } = rekeyedPrediction(withFigure(other, 5), withFigure(arrival, 2), 2.5);
    if (read === null) throw new Error('no figure left');
    expect(read.value).toBeCloseTo(5 + 0.36 * 0.5, 12);
    expect(standardUncertainty(read) ** 2).toBeCloseTo(0.25 - 0.09 ** 2 / 0.25, 12);
  });

  it('leaves a setup that has nothing in common with the arrival setup as it was', () => {
    fc.assert(
      fc.property(anyLeverSetup, fc.double({ min: -2, max: 2, noNaN: true }), (said, off) => {
        const [arrival] = pairOf(said);
        const stranger = at(said, 'X9', (id) => `other ${id}`);
        fc.pre(arrival.prediction.read !== null && stranger.prediction.read !== null);
        const reading = (expectedOf(arrival) ?? 0) + off * 0.1;
        const after = rekeyedPrediction(stranger, arrival, reading);
        expect(after.outcome).toEqual(stranger.prediction.outcome);
        expect(after.budget).toEqual(stranger.prediction.budget);
      }),
      seeded,
    );
  });

  it('follows a reading once, however often it is asked', () => {
    const [arrival, other] = pairOf(sample());
    const reading = (expectedOf(arrival) ?? 0) + 0.1;
    const once = rekeyedPrediction(other, arrival, reading);
    const twice = rekeyedPrediction({ ...other, prediction: once }, arrival, reading);
    expect(twice.outcome).toEqual(once.outcome);
    expect(asPacked({ ...other, prediction: once }).prediction.outcome).toEqual(other.prediction.outcome);
    expect(once.rekeyedBy).toEqual({ setup: 'X1', reading });
  });

  it('gives every printed figure of its working again from the numbers beside it', () => {
    fc.assert(
      fc.property(anyLeverSetup, (said) => {
        const [arrival] = pairOf(said);
        fc.pre(arrival.prediction.read !== null);
        const any = at(said, 'X4');
        for (const line of rekeyedPrediction(any, arrival, (expectedOf(arrival) ?? 0) + 0.1).working()) {
          const off = Math.abs(recompute(line) - line.value);
          expect(off, `${line.what}: ${line.formula}`).toBeLessThanOrEqual(
            1e-9 * Math.max(1, Math.abs(line.value)),
          );
        }
      }),
      seeded,
    );
  });
});

/** A sound table whose pull goes up. */
function sample(): LeverSetup {
  const [said] = fc.sample(anyLeverSetup, { seed: 42, numRuns: 1 });
  if (said === undefined) throw new Error('no setup');
  return { ...said, classIs: 'second', loadMass: 0.6, handCarries: false };
}
