import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evidenceOf } from './evidence.ts';
import type { Explanation } from './explanation.ts';
import type { Leads, Weighable } from './weighable.ts';

const plain: Explanation = {
  code: 'good',
  facts: undefined,
  key: 'good',
  tableKey: 'good',
  kind: 'good',
  persists: 'reading',
  rate: 0.9,
  value: 2,
  low: 2,
  high: 2,
  gain: 1,
  noise: 0.01,
  measure: 2,
  fixed: null,
  beyond: null,
  informs: true,
  ofStation: false,
  led: null,
};
const prior = [
  [0.04, 0.01],
  [0.01, 0.02],
];
const led: Leads = { share: 0.8, worth: 2 };

/** A reading that is good, or where the table led its group: half as much again. */
const weighable = (setup: number, value: number, group: string): Weighable => ({
  setup,
  group,
  led,
  unexplained: 0.001,
  explanations: [
    { ...plain, value, led: false },
    { ...plain, code: 'led', key: 'led', tableKey: 'led', kind: 'doing', value, low: 3, high: 3, led: true },
  ],
});
const readings = fc.array(
  fc
    .record({
      setup: fc.integer({ min: 0, max: 1 }),
      value: fc.double({ min: 1, max: 4, noNaN: true }),
      group: fc.constantFrom('A', 'B', 'C'),
    })
    .map(({ setup, value, group }) => weighable(setup, value, group)),
  { minLength: 2, maxLength: 10 },
);
const seeded = { seed: 71, numRuns: 200 };

describe('evidence of a table', () => {
  it('is the same to the last digit, taken in one by one or all at once, and leaves what it goes on from alone', () => {
    fc.assert(
      fc.property(readings, (all) => {
        let found = evidenceOf([], prior, 1);
        for (let n = 1; n <= all.length; n += 1) {
          const before = structuredClone(found);
          const next = evidenceOf(all.slice(0, n), prior, 1, found);
          expect(found).toEqual(before);
          found = next;
        }
        expect(found).toEqual(evidenceOf(all, prior, 1));
      }),
      seeded,
    );
  });

  it('is found anew where other readings came before', () => {
    fc.assert(
      fc.property(readings, readings, (some, all) => {
        expect(evidenceOf(all, prior, 1, evidenceOf(some, prior, 1))).toEqual(evidenceOf(all, prior, 1));
      }),
      seeded,
    );
  });

  it('of one reading is the density of its explanations, by rate, with the doubt of the apparatus', () => {
    const [reading] = [weighable(0, 2.1, 'A')];
    const density = (figure: number) => {
      const variance = 0.04 + 0.01;
      return Math.exp(-((2.1 - figure) ** 2) / (2 * variance)) / Math.sqrt(2 * Math.PI * variance);
    };
    // Led with probability 0.8, and nobody read before; both explanations at a rate of 0.9, per logarithm of 2.
    const by = 0.9 * 2 * (0.2 * density(2) + 0.8 * density(3)) + 0.001;
    expect(evidenceOf([reading], prior, 1).logarithm).toBeCloseTo(Math.log(by), 10);
  });
});
