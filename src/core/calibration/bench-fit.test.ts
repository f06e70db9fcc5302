import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { anyLeverSetup, type LeverSetup, leverSetup } from '../../../test/stations/lever-setups.ts';
import type { Predicted } from '../setups/difference.ts';
import { asRead } from '../setups/good-range.ts';
import { figureAt, mapSetup } from '../setups/map-setup.ts';
import { predict } from '../setups/predict.ts';
import type { Setup } from '../setups/setup.ts';
import { element } from '../uncertainty/matrix.ts';
import { COVERAGE_95, type Measured, measured, standardUncertainty } from '../uncertainty/measured.ts';
import { propagate } from '../uncertainty/propagate.ts';
import { randomFrom } from '../uncertainty/random.ts';
import { benchFit, type Observation, type Shift } from './bench-fit.ts';
import { setupWithKnowledge } from './knowledge.ts';
import { movedBy, observationAt } from './observation.ts';
import { rekeyedPrediction } from './rekey.ts';

interface Reference {
  readonly unknowns: readonly string[];
  readonly best: readonly number[];
  readonly prior: readonly number[];
  readonly graduation: number;
  readonly readings: readonly { way: 'raise' | 'lower'; parts: number; load: number; read: number }[];
  readonly mode: readonly number[];
  readonly covariance: readonly (readonly number[])[];
  readonly drawn: { readonly mean: readonly number[]; readonly u: readonly number[] };
}
const reference = JSON.parse(
  readFileSync(new URL('../../../test/reference/bench-fit.json', import.meta.url), 'utf8'),
) as Reference;

/** The law of the script, over measured values: what it finds, this has to find by its own way. */
function tackleReading(row: Reference['readings'][number], n: number): Observation {
  const [e, z, t, b] = reference.unknowns.map((id, k) =>
    measured(reference.best[k] ?? 0, {
      id,
      u: reference.prior[k] ?? 0,
      shape: 'normal',
      origin: 'stated',
    }),
  ) as [Measured, Measured, Measured, Measured];
  const sign = row.way === 'raise' ? 1 : -1;
  const lag = measured(sign * 0.5, {
    id: 'reading/tube friction',
    u: 1 / Math.sqrt(12),
    shape: 'even',
    origin: 'stated',
  });
  const figure = (shift: Shift): Measured | null => {
    const inputs = [e, z, t, b].map(movedBy(shift)) as [Measured, Measured, Measured, Measured];
    const [eff, off, rub, block] = inputs;
    const shown = propagate(
      (at) => {
        const W = (row.load + at(block)) * 9.80665;
        let sum = 0;
        for (let k = 1; k <= row.parts; k += 1) sum += at(eff) ** (row.way === 'raise' ? k : -k);
        return W / sum + at(off) - at(lag) * at(rub);
      },
      [...inputs, lag],
    );
    return shown === null ? null : asRead(shown, { step: reference.graduation, unit: 'N', unitSi: 1 }, 0.03);
  };
  return {
    name: String(n),
    date: '2026-04-30',
    value: row.read,
    figureAt: figure,
    setting: null,
    decided: null,
  };
}

describe('unknowns fitted to bench readings', () => {
  const fit = benchFit(reference.readings.map(tackleReading));

  it('lie where scipy finds them, and are tied as it says', () => {
    expect(fit.isConverged).toBe(true);
    for (const { unknown, shift } of fit.unknowns) {
      const k = reference.unknowns.indexOf(unknown.id);
      expect(shift / unknown.u).toBeCloseTo(
        ((reference.mode[k] ?? 0) - (reference.best[k] ?? 0)) / unknown.u,
        6,
      );
    }
    const place = fit.unknowns.map(({ unknown }) => reference.unknowns.indexOf(unknown.id));
    const { covariance } = fit.knowledge;
    for (const [i, k] of place.entries())
      for (const [j, l] of place.entries()) {
        const u = (reference.prior[k] ?? 1) * (reference.prior[l] ?? 1);
        expect(element(covariance, i, j) / u).toBeCloseTo(element(reference.covariance, k, l) / u, 6);
      }
  });

  it('have a normal law that is as wide as the posterior itself, but for a hundredth', () => {
    for (const { unknown, shift, u } of fit.unknowns) {
      const k = reference.unknowns.indexOf(unknown.id);
      const mean = (reference.drawn.mean[k] ?? 0) - (reference.best[k] ?? 0);
      expect(Math.abs(shift - mean)).toBeLessThan(0.02 * u);
      expect(u / (reference.drawn.u[k] ?? 0)).toBeCloseTo(1, 1.9);
    }
  });

  it('follow one reading as a table follows its arrival reading, where the law is straight', () => {
    // What a table shares in its settings is noise on the bench: here it has none.
    const seeded = { seed: 210, numRuns: 60 };
    fc.assert(
      fc.property(anyLeverSetup, fc.double({ min: -1, max: 1, noNaN: true }), (said, off) => {
        const [first, other] = pairOf({ ...said, way: 'raise', doubt: said.doubt / 20 });
        fc.pre(first.prediction.read !== null && first.prediction.outcome.kind === 'reading');
        const before = other.prediction.read;
        fc.pre(before !== null && other.prediction.outcome.kind === 'reading');
        if (first.prediction.read === null || before === null) return;
        const reading = first.prediction.read.value + off * standardUncertainty(first.prediction.read);
        const { knowledge } = benchFit([observationAt(first.setup, 'one', '2026-04-30', reading)]);
        const bench = figureAt(setupWithKnowledge(other.setup, knowledge));
        const arrived = rekeyedPrediction(other, first, reading).read;
        if (bench === null || arrived === null) throw new Error('a figure was lost');
        const u = standardUncertainty(before);
        expect(Math.abs(bench.value - arrived.value)).toBeLessThan(0.02 * u);
        expect(Math.abs(standardUncertainty(bench) - standardUncertainty(arrived))).toBeLessThan(0.02 * u);
      }),
      seeded,
    );
  });

  it('hold 19 of 20 true states of benches that are drawn from the files', () => {
    const random = randomFrom(211);
    const [setup, other] = pairOf(sample()).map((each) => each.setup) as [Setup, Setup];
    let held = 0;
    const benches = 400;
    for (let n = 0; n < benches; n += 1) {
      const drawn = new Map<string, number>();
      const truth = <Q extends number>(value: Measured<Q>): Measured<Q> => {
        for (const { unknown } of value.parts)
          if (!drawn.has(unknown.id)) drawn.set(unknown.id, random.normal() * unknown.u);
        return movedBy(drawn)(value);
      };
      const real = [setup, other].map((each) => mapSetup(each, truth)) as [Setup, Setup];
      const read = real.map((each) => {
        const figure = figureAt(each);
        if (figure === null) throw new Error('no figure');
        const scatter = figure.parts.filter(({ unknown }) => unknown.id.startsWith('reading/'));
        return scatter.reduce(
          (sum, { slope, unknown }) => sum + slope * unknown.u * random.normal(),
          figure.value,
        );
      });
      const { unknowns } = benchFit(
        [setup, other].map((each, k) => observationAt(each, String(k), '2026-04-30', read[k] ?? 0)),
      );
      const [one] = unknowns.filter(({ unknown }) => unknown.id.endsWith('friction'));
      if (one === undefined) throw new Error('no friction among the unknowns');
      if (Math.abs((drawn.get(one.unknown.id) ?? 0) - one.shift) <= COVERAGE_95 * one.u) held += 1;
    }
    expect(held / benches).toBeGreaterThan(0.92);
    expect(held / benches).toBeLessThan(0.98);
  });
});

describe('a reading that does not fit', () => {
  const honest = reference.readings.map(tackleReading);
  const at = (n: number, value: number, more: Partial<Observation> = {}): readonly Observation[] =>
    honest.map((each, k) => (k === n ? { ...each, value, ...more } : each));

  it('is told and not used when it lies far from the files', () => {
    const fit = benchFit(at(3, 3.6));
    const [far] = fit.readings.filter(({ isUsed }) => !isUsed);
    expect(far?.observation.name).toBe('3');
    expect(far?.because).toBe('far from the files');
    expect(far?.off).toBeGreaterThan(3);
    expect(fit.knowledge).toEqual(benchFit(honest.filter((_, k) => k !== 3)).knowledge);
  });

  it('is used all the same where the teacher says so', () => {
    const fit = benchFit(at(3, 3.6, { decided: 'use' }));
    expect(fit.readings.every(({ observation, isUsed }) => isUsed || observation.name !== '3')).toBe(true);
    expect(fit.knowledge).not.toEqual(benchFit(honest.filter((_, k) => k !== 3)).knowledge);
  });

  it('is left out where the teacher says so, however well it fits', () => {
    const [reading] = benchFit(at(0, 4.6, { decided: 'leave out' })).readings;
    expect(reading?.because).toBe('left out');
  });

  it('is one of several that agree where the files are likelier wrong than the readings', () => {
    const worn: Shift = new Map([['efficiency', -0.16]]);
    const read = honest.map((each) => ({ ...each, value: each.figureAt(worn)?.value ?? 0 }));
    const fit = benchFit(read);
    expect(fit.agreeing.length).toBeGreaterThanOrEqual(2);
    expect(fit.agreeing.every(({ because }) => because === 'far from the files')).toBe(true);
    // One slip among them does not agree with the rest.
    const slipped = read.map((each, k) => (k === 0 ? { ...each, value: each.value - 4 } : each));
    expect(benchFit(slipped).agreeing.map(({ observation }) => observation.name)).not.toContain('0');
  });

  it('is told where it is at odds with the others, though the files allow it', () => {
    const wide = (n: number, value: number): Observation => ({
      ...tackleReading({ way: 'raise', parts: 2, load: 0.5, read: value }, n),
    });
    const fit = benchFit([wide(0, 2.75), wide(1, 2.7), wide(2, 2.75), wide(3, 3.2), wide(4, 2.75)]);
    expect(fit.readings.map(({ off }) => Math.abs(off) < 3)).toEqual([true, true, true, true, true]);
    expect(fit.readings[3]?.because).toBe('at odds with the others');
    expect(fit.readings[3]?.offOthers).toBeGreaterThan(3);
  });
});

const at = (said: LeverSetup, mark: string): Predicted => {
  const setup = { ...leverSetup(said), mark };
  return { setup, prediction: predict(setup) };
};
/** The same bar, load and scale with another arm. */
const pairOf = (said: LeverSetup): readonly [Predicted, Predicted] => [
  at(said, 'X1'),
  at({ ...said, far: said.far * 0.9 }, 'X2'),
];

/** A sound table whose pull goes up. */
function sample(): LeverSetup {
  const [said] = fc.sample(anyLeverSetup, { seed: 42, numRuns: 1 });
  if (said === undefined) throw new Error('no setup');
  return { ...said, classIs: 'second', loadMass: 0.6, handCarries: false, way: 'raise' };
}
