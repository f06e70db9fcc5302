import { describe, expect, it } from 'vitest';
import { apparatusCopies } from './apparatus-copies.ts';
import { between, type Measured, measured, minus, plus, standardUncertainty } from './measured.ts';

const friction = between('pin/friction', 0.15, 0.35, 'assumed');
const mass = measured(0.2, { id: 'bar/mass', u: 0.01, shape: 'normal', origin: 'stated' });
const copies = apparatusCopies(500, 3);
const over = (value: Measured): readonly number[] =>
  Array.from({ length: 500 }, (_, n) => copies.at(n)(value));
const mean = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each, 0) / values.length;
const deviation = (values: readonly number[]): number =>
  Math.sqrt(mean(values.map((each) => (each - mean(values)) ** 2)));

describe('copies of an apparatus', () => {
  it('have the mean and the standard uncertainty of what is known', () => {
    for (const value of [friction, mass, plus(friction, mass)]) {
      expect(mean(over(value))).toBeCloseTo(value.value, 3);
      expect(deviation(over(value)) / standardUncertainty(value)).toBeCloseTo(1, 1);
    }
  });

  it('stay within the ends of what is known to lie between two ends', () => {
    expect(Math.min(...over(friction))).toBeGreaterThanOrEqual(0.15);
    expect(Math.max(...over(friction))).toBeLessThanOrEqual(0.35);
  });

  it('keep a shared unknown shared', () => {
    expect(Math.max(...over(minus(mass, mass)).map(Math.abs))).toBe(0);
  });

  it('hold two unknowns apart', () => {
    const [a, b] = [over(friction), over(mass)];
    const together = mean(a.map((each, n) => (each - mean(a)) * ((b[n] ?? 0) - mean(b))));
    expect(Math.abs(together / (deviation(a) * deviation(b)))).toBeLessThan(0.15);
  });

  it('are the same for the same seed, whatever is asked first', () => {
    const one = apparatusCopies(10, 5);
    const other = apparatusCopies(10, 5);
    one.at(3)(friction);
    expect(one.at(7)(mass)).toBe(other.at(7)(mass));
    expect(apparatusCopies(10, 6).at(7)(mass)).not.toBe(one.at(7)(mass));
  });
});
