import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { setupsOf } from '../review.ts';
import { figureAt, mapSetup } from '../setups/map-setup.ts';
import { element, type Matrix, multiply, transpose } from '../uncertainty/matrix.ts';
import {
  covariance,
  type Measured,
  measured,
  plus,
  standardUncertainty,
  times,
} from '../uncertainty/measured.ts';
import { type Knowledge, setupWithKnowledge, withKnowledge } from './knowledge.ts';
import { movedBy } from './observation.ts';

const NAMES = ['pin/friction', 'scale/accuracy', 'bar/mass'] as const;
const unknowns = NAMES.map((id) => ({ id, u: 0.5, shape: 'normal', origin: 'assumed' }) as const);
const values = unknowns.map((unknown): Measured => measured(1, unknown));
const number = fc.double({ min: -2, max: 2, noNaN: true });
const row = fc.tuple(number, number, number);

/** Some covariance, and where each unknown now lies. */
const anyKnowledge: fc.Arbitrary<Knowledge> = fc.record({
  unknowns: fc.constant(unknowns),
  shift: row,
  covariance: fc
    .tuple(row, row, row)
    .map(
      (L): Matrix => multiply(L, transpose(L)).map((each, i) => each.map((c, j) => c + (i === j ? 0.01 : 0))),
    ),
});

describe('what is known of some unknowns', () => {
  it('gives each of them its value, its doubt, and what ties it to the others', () => {
    fc.assert(
      fc.property(anyKnowledge, (knowledge) => {
        const known = values.map((value) => withKnowledge(value, knowledge));
        for (const [i, a] of known.entries()) {
          expect(a.value).toBeCloseTo(1 + (knowledge.shift[i] ?? 0), 12);
          // A tie below a millionth is left out of a value: so much may lack between two of them.
          for (const [j, b] of known.entries())
            expect(Math.abs(covariance(a, b) - element(knowledge.covariance, i, j))).toBeLessThanOrEqual(
              2e-6 * standardUncertainty(a) * standardUncertainty(b),
            );
        }
      }),
      { seed: 215 },
    );
  });

  it('holds for every straight sum of them, and leaves what it says nothing of alone', () => {
    const other = measured(3, { id: 'cart/mass', u: 0.2, shape: 'even', origin: 'stated' });
    fc.assert(
      fc.property(anyKnowledge, row, (knowledge, factors) => {
        const sum = plus(...values.map((value, n) => times(value, factors[n] ?? 0)), other);
        const known = withKnowledge(sum, knowledge);
        const variance = factors.reduce(
          (all, a, i) =>
            all + factors.reduce((part, b, j) => part + a * b * element(knowledge.covariance, i, j), 0),
          0.04,
        );
        expect(standardUncertainty(known) ** 2).toBeCloseTo(variance, 8);
        expect(withKnowledge(other, knowledge)).toBe(other);
      }),
      { seed: 216 },
    );
  });

  it('keeps the names, so that a budget keeps its rows', () => {
    const knowledge: Knowledge = {
      unknowns,
      shift: [0, 0, 0],
      covariance: [
        [0.04, -0.01, 0],
        [-0.01, 0.09, 0.02],
        [0, 0.02, 0.01],
      ],
    };
    const known = withKnowledge(plus(...values), knowledge);
    expect(known.parts.map(({ unknown }) => unknown.id)).toEqual([...NAMES]);
    expect(known.parts.map(({ unknown }) => unknown.origin)).toEqual(['assumed', 'assumed', 'assumed']);
  });
});

describe('a setup whose values are moved', () => {
  it('moves its figure as the slopes of its unknowns say, at every machine of the demo', () => {
    let checked = 0;
    for (const { setup } of setupsOf(demoPrepared())) {
      const figure = figureAt(setup);
      if (figure === null) continue;
      for (const { unknown, slope } of figure.parts) {
        if (unknown.id.startsWith('reading/')) continue;
        const step = unknown.u * 1e-3;
        const moved = [step, -step].map(
          (shift) => figureAt(mapSetup(setup, movedBy(new Map([[unknown.id, shift]]))))?.value ?? 0,
        );
        const found = ((moved[0] ?? 0) - (moved[1] ?? 0)) / (2 * step);
        expect(found, `${setup.mark} ${unknown.id}`).toBeCloseTo(slope, 6);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThan(100);
  });

  it('has the uncertainty that the files gave it, where what is known is what the files say', () => {
    for (const { setup } of setupsOf(demoPrepared())) {
      const figure = figureAt(setup);
      if (figure === null) continue;
      const own = figure.parts.map(({ unknown }) => unknown).filter(({ id }) => !id.startsWith('reading/'));
      const asFiled: Knowledge = {
        unknowns: own,
        shift: own.map(() => 0),
        covariance: own.map(({ u }, i) => own.map((_, j) => (i === j ? u ** 2 : 0))),
      };
      const again = figureAt(setupWithKnowledge(setup, asFiled));
      if (again === null) throw new Error(`${setup.mark} lost its figure`);
      expect(again.value).toBe(figure.value);
      expect(standardUncertainty(again)).toBeCloseTo(standardUncertainty(figure), 12);
    }
  });
});
