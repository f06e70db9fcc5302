import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { CausePosterior } from './cause-posterior.ts';
import { atRates, type Counted, classRates, timesAsMany } from './class-rate.ts';
import type { ByKind } from './likely-cause.ts';

const EXPECTED: ByKind = { doing: 0.1, reading: 0.1, unexplained: 0.01 };
const OF_HABITS: ByKind = { doing: 0.05, reading: 0.05, unexplained: 0 };

/** A number that is a mistake of doing with this probability, and else good. */
const doing = (probability: number, code = 'way.speeding-up'): CausePosterior => {
  const cause = { kind: 'doing' as const, code, tableKey: code, wouldShow: null, ofStation: 0 };
  const good = { ...cause, kind: 'good' as const, code: 'good', tableKey: 'good' };
  return {
    causes: [
      { ...good, probability: 1 - probability, ofChance: 0 },
      { ...cause, probability, ofChance: probability },
    ],
    shown: new Map(),
    chance: { doing: probability, reading: 0, unexplained: 0 },
  };
};

const counted = (group: string, posterior: CausePosterior): Counted => ({
  group,
  posterior,
  expected: EXPECTED,
  ofHabits: OF_HABITS,
});

/** So many times as many mistakes of doing, on the average of logarithms. */
const timesOf = (numbers: readonly Counted[], kind: keyof ByKind = 'doing'): number =>
  Math.exp(
    classRates(numbers).reduce((sum, { times, probability }) => sum + probability * Math.log(times[kind]), 0),
  );

describe('how often a class makes mistakes', () => {
  it('is as the base rates say before anything is read', () => {
    expect(timesOf([])).toBeCloseTo(1, 10);
    expect(classRates([]).reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 10);
  });

  it('is less after many good readings, for every kind', () => {
    const good = Array.from({ length: 60 }, (_, n) => counted(`group ${n % 8}`, doing(0)));
    expect(timesOf(good)).toBeLessThan(0.3);
    expect(timesOf(good, 'reading')).toBeLessThan(0.3);
  });

  it('counts a habit once, and each mistake of different groups', () => {
    const rest = Array.from({ length: 24 }, (_, n) => counted(`group ${n % 8}`, doing(0)));
    const bad = Array.from({ length: 6 }, () => doing(1));
    const oneGroup = timesOf([...rest, ...bad.map((each) => counted('group 0', each))]);
    const six = timesOf([...rest, ...bad.map((each, n) => counted(`group ${n}`, each))]);
    const once = timesOf([...rest, counted('group 0', doing(1))]);
    expect(six).toBeGreaterThan(2 * oneGroup);
    expect(oneGroup).toBeLessThan(1.5 * once);
  });

  it('is one number for weighing the tables: a power of the root of two, none of which needs a reading', () => {
    expect(timesAsMany([])).toBe(1);
    const good = Array.from({ length: 60 }, (_, n) => counted(`group ${n % 8}`, doing(0)));
    const half = good.map((each, n) => (n % 2 === 0 ? counted(each.group, doing(1, `slip ${n}`)) : each));
    expect(timesAsMany(good)).toBeLessThan(0.5);
    expect(timesAsMany(half)).toBeGreaterThan(4);
    for (const numbers of [good, half]) {
      const power = 2 * Math.log2(timesAsMany(numbers));
      expect(Math.abs(power - Math.round(power))).toBeLessThan(1e-9);
    }
  });

  it('takes readings without a group each for itself', () => {
    const nobody = Array.from({ length: 6 }, () => counted('', doing(1)));
    const one = nobody.map((each) => ({ ...each, group: 'group 1' }));
    expect(timesOf(nobody)).toBeGreaterThan(timesOf(one));
  });

  it('leaves probabilities that add up to one, and moves none that nothing is left open of', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 40 }), (chances) => {
        const numbers = chances.map((each, n) => counted(`group ${n % 5}`, doing(each)));
        const rates = classRates(numbers);
        for (const { posterior } of numbers) {
          const sum = atRates(posterior, rates).reduce((all, { probability }) => all + probability, 0);
          expect(sum).toBeCloseTo(1, 3);
        }
        const [good] = atRates(doing(0), rates);
        expect(good?.code).toBe('good');
        expect(good?.probability).toBeCloseTo(1, 12);
      }),
      { seed: 7, numRuns: 50 },
    );
  });
});
