import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { anyLeverSetup, leverSetup } from '../../../test/stations/lever-setups.ts';
import { figureAt } from '../setups/map-setup.ts';
import { predict } from '../setups/predict.ts';
import { measured, plus, standardUncertainty } from '../uncertainty/measured.ts';
import { benchFit, type Observation } from './bench-fit.ts';
import { type Candidate, candidatesAt } from './candidate.ts';
import { setupWithKnowledge } from './knowledge.ts';
import { measureNext, narrowedBy } from './measure-next.ts';
import { movedBy, observationAt } from './observation.ts';
import { confusedPairs } from './told-apart.ts';

describe('what to measure next', () => {
  it('narrows a reading by just what a bench reading then narrows it, whatever is read', () => {
    fc.assert(
      fc.property(anyLeverSetup, fc.double({ min: -2, max: 2, noNaN: true }), (said, off) => {
        const small = { ...said, way: 'raise' as const, doubt: said.doubt / 20 };
        const [one, two] = [small, { ...small, far: small.far * 0.9 }].map((each, n) => {
          const setup = { ...leverSetup(each), mark: `X${n}` };
          return { setup, prediction: predict(setup), load: null };
        });
        if (one === undefined || two === undefined) return;
        const read = figureAt(one.setup);
        fc.pre(read !== null && one.prediction.outcome.kind === 'reading');
        fc.pre(two.prediction.outcome.kind === 'reading');
        if (read === null) return;
        const [candidate] = candidatesAt([one], []);
        if (candidate === undefined) throw new Error('nothing to measure');
        const [foretold] = narrowedBy([two], candidate)?.setups ?? [];
        const value = read.value + off * standardUncertainty(read);
        const { knowledge } = benchFit([observationAt(one.setup, 'one', '2026-04-30', value)]);
        const after = figureAt(setupWithKnowledge(two.setup, knowledge));
        if (after === null || foretold === undefined) throw new Error('no figure left');
        expect(foretold.uAfter / foretold.uBefore).toBeLessThanOrEqual(1 + 1e-12);
        expect(standardUncertainty(after) / foretold.uAfter).toBeCloseTo(1, 1.5);
      }),
      { seed: 212, numRuns: 80 },
    );
  });

  it('is, at every table of the demo, the best of all there is, and never widens a range', () => {
    const { tables, kit } = demoPrepared();
    for (const { setups } of tables) {
      const candidates = candidatesAt(setups, kit?.parts ?? []);
      const next = measureNext(setups, candidates);
      const all = candidates.flatMap((each) => narrowedBy(setups, each) ?? []);
      const most = Math.max(0, ...all.map(({ narrows }) => narrows));
      expect(next?.narrows ?? 0).toBeGreaterThan(most / 1.26 - 0.5);
      for (const { before, after } of all.flatMap((each) => each.setups)) {
        expect(after.from).toBeGreaterThanOrEqual(before.from - 1e-9);
        expect(after.to).toBeLessThanOrEqual(before.to + 1e-9);
      }
    }
  });
});

describe('two unknowns that the readings tie together', () => {
  const unknown = (id: string, u: number) => measured(1, { id, u, shape: 'normal', origin: 'stated' });
  const own = measured(0, { id: 'reading/graduation', u: 0.05, shape: 'even', origin: 'stated' });
  const [axle, rim] = [unknown('cart/axle friction', 1), unknown('cart/rolling arm', 0.8)];
  const both: Observation = {
    name: '1',
    date: '2026-04-30',
    value: 2.3,
    figureAt: (shift) => movedBy(shift)(plus(axle, rim, own)),
    setting: null,
    decided: null,
  };
  const candidate = (part: typeof axle, field: string): Candidate => ({
    measurement: { kind: 'ruler', part: 'cart', field },
    law: { setting: null, figureAt: (shift) => movedBy(shift)(plus(part, own)) },
  });

  it('are told with what would tell them apart', () => {
    const again = candidate(plus(axle, rim), 'both');
    const [pair, ...others] = confusedPairs(benchFit([both]), [again, candidate(rim, 'rolling arm')]);
    expect(others).toEqual([]);
    expect(pair?.correlation).toBeLessThan(-0.95);
    expect(pair?.by?.measurement).toEqual({ kind: 'ruler', part: 'cart', field: 'rolling arm' });
    // var(axle) = var(rim) + the noise of the first reading once the rim is known.
    expect(Math.abs(pair?.by?.correlation ?? 1)).toBeLessThan(0.8);
  });

  it('are told as well where a third shares the sum, and no two of them are tied closely', () => {
    const pin = unknown('cart/pin', 0.95);
    const sum: Observation = { ...both, figureAt: (shift) => movedBy(shift)(plus(axle, rim, pin, own)) };
    const pairs = confusedPairs(benchFit([sum]), [candidate(pin, 'pin')]);
    expect(pairs).toHaveLength(3);
    // -cov / (u u): the sum is known to 0.05, the rest is left as wide as the files have it.
    const variance = 1 + 0.8 ** 2 + 0.95 ** 2 + 0.05 ** 2;
    const tie = (a: number, b: number): number =>
      (-a * b) / Math.sqrt((variance - a ** 2) * (variance - b ** 2));
    expect(pairs.map(({ correlation }) => correlation)).toEqual([
      expect.closeTo(tie(1, 0.95), 9),
      expect.closeTo(tie(1, 0.8), 9),
      expect.closeTo(tie(0.8, 0.95), 9),
    ]);
  });

  it('are not told where one of them is known well by itself', () => {
    const alone: Observation = {
      ...both,
      name: '2',
      value: 1,
      figureAt: (shift) => movedBy(shift)(plus(rim, own)),
    };
    expect(confusedPairs(benchFit([both, alone]), [])).toEqual([]);
  });
});
