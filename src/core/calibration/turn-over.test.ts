import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { scaleOf } from '../../../test/stations/setup.ts';
import { isNotDefined } from '../description/not-defined.ts';
import { ownWeight, turnOverShift } from '../instruments/spring-scale.ts';
import { kilograms, metresPerSecondSquared, newtons } from '../quantities/brands.ts';
import { exactly, measured, standardUncertainty } from '../uncertainty/measured.ts';
import { atBest } from '../uncertainty/propagate.ts';
import { type TurnOver, turnOverShiftBy } from './turn-over.ts';

const g = metresPerSecondSquared(9.80665);
const tested = (said: Partial<TurnOver>): TurnOver => ({
  mark: 'amber',
  mass: measured(kilograms(0.046), { id: 'amber/mass', u: 0.0005 / 1.96, shape: 'normal', origin: 'stated' }),
  shows: newtons(0.25),
  graduations: { step: 0.05, unit: 'N', unitSi: 1 },
  gravity: exactly(g),
  accuracy: exactly(newtons(0)),
  sticksBy: newtons(0.02),
  ...said,
});

describe('the turn-over test', () => {
  it('gives back the shift of a scale that was turned over', () => {
    const grams = fc.double({ min: 30, max: 100, noNaN: true });
    fc.assert(
      fc.property(grams, fc.double({ min: 0.1, max: 0.4, noNaN: true }), (mass, share) => {
        const scale = scaleOf({ grams: mass, movingGrams: mass * share });
        const shows = newtons(ownWeight(scale, atBest, g) - turnOverShift(scale, atBest, g));
        const found = turnOverShiftBy(tested({ mass: exactly(kilograms(mass / 1000)), shows }));
        if (isNotDefined(found)) throw new Error(found.because);
        expect(found.value).toBeCloseTo(turnOverShift(scale, atBest, g), 12);
      }),
      { seed: 214 },
    );
  });

  it('is as uncertain as weighing, graduation, sticking and marks together', () => {
    const accuracy = measured(newtons(0), { id: 'amber/accuracy', u: 0.03, shape: 'even', origin: 'stated' });
    const found = turnOverShiftBy(tested({ accuracy }));
    if (isNotDefined(found)) throw new Error(found.because);
    // M g = 0.451 106 N; by hand: 0.0005/1.96 x 9.80665, 0.05/root 12, 0.04/root 12, 0.03.
    expect(found.value).toBeCloseTo(0.2011059, 6);
    expect(standardUncertainty(found)).toBeCloseTo(Math.hypot(0.0025017, 0.0144338, 0.011547, 0.03), 6);
  });

  it('has no shift below nothing, and none that is more than the scale could have', () => {
    expect(turnOverShiftBy(tested({ shows: newtons(0.5) }))).toMatchObject({
      because: 'turn-over.below-nothing',
    });
    expect(turnOverShiftBy(tested({ shows: newtons(-0.5) }))).toMatchObject({
      because: 'turn-over.more-than-the-scale',
    });
  });
});
