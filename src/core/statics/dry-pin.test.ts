import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pinReaction, pullOnDryPin } from './dry-pin.ts';

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
/** Nothing at all, or something that could be measured. */
const amount = (most: number) => fc.oneof(fc.constant(0), real(1e-6, most));

describe('a pull against a dry pin', () => {
  test('balances moment and friction circle for any direction of pull, raising and coming back', () => {
    fc.assert(
      fc.property(
        amount(10),
        real(0.01, 1),
        fc.tuple(amount(0.0099), fc.constantFrom(1, -1)).map(([size, sign]) => size * sign),
        amount(50),
        real(-Math.PI, Math.PI),
        (moment, arm, circle, weight, angle) => {
          const upright = Math.sin(angle);
          const pull = pullOnDryPin({ moment, arm, circle, weight, upright });
          if (pull === null) throw new Error('a pull outside the friction circle turns the body');
          const left = pull * arm;
          const rubbing = circle * pinReaction(weight, pull, upright);
          const largest = Math.max(Math.abs(left), moment, Math.abs(rubbing), Number.MIN_VALUE);
          expect(Math.abs(left - moment - rubbing) / largest).toBeLessThan(1e-9);
        },
      ),
      { seed: 21 },
    );
  });

  test('has no answer where the line of pull passes through the friction circle', () => {
    expect(pullOnDryPin({ moment: 1, arm: 0.001, circle: 0.001, weight: 1, upright: 1 })).toBeNull();
  });

  test('is moment over arm where the pin does not rub', () => {
    expect(pullOnDryPin({ moment: 6, arm: 3, circle: 0, weight: 10, upright: -1 })).toBe(2);
  });
});
