import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { habitRate, shownBy, shownTogether } from './group-habit.ts';

const rates = fc.double({ min: 0.001, max: 0.2, noNaN: true });

describe('the habit of a group', () => {
  it('is expected as often as everywhere as long as nothing was shown', () => {
    fc.assert(
      fc.property(rates, (rate) => {
        expect(habitRate(rate, 0)).toBeCloseTo(rate, 12);
      }),
    );
  });

  it('is expected in about every second reading after one sure instance, whatever the base rate', () => {
    for (const rate of [0.01, 0.03, 0.06]) {
      const next = habitRate(rate, shownBy(rate, 1, 1));
      expect(next).toBeGreaterThan(0.35);
      expect(next).toBeLessThan(0.5);
    }
  });

  it('shows in many readings of which none shows it alone', () => {
    // Each reading is twice as probable if the scale kept its old zero.
    const after = (0.06 * 2) / (0.06 * 2 + 0.94);
    const alone = shownBy(0.06, after, 1);
    expect(habitRate(0.06, alone)).toBeLessThan(0.1);
    expect(habitRate(0.06, 8 * alone)).toBeGreaterThan(0.5);
  });

  it('grows with what a reading makes of the mistake, and not at all where the table explains it', () => {
    fc.assert(
      fc.property(rates, fc.double({ min: 0, max: 1, noNaN: true }), (rate, after) => {
        const shown = shownBy(rate, after, 1);
        if (after > rate) expect(shown).toBeGreaterThanOrEqual(0);
        else expect(shown).toBeLessThanOrEqual(0);
        expect(Math.abs(shownBy(rate, after, 0))).toBe(0);
      }),
    );
  });

  it('adds up over readings, so that each can be taken out again', () => {
    const together = shownTogether([
      new Map([
        ['a', 3],
        ['b', -1],
      ]),
      new Map([['a', -2]]),
    ]);
    expect([...together]).toEqual([
      ['a', 1],
      ['b', -1],
    ]);
  });
});
