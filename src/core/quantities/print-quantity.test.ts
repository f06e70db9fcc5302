import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decimalsFor, decimalText, printQuantity, significant } from './print-quantity.ts';

const number = fc.double({ min: -1e6, max: 1e6, noNaN: true });

describe('decimal text', () => {
  it.each([
    [2.675, 2, '2.68'],
    [1.005, 2, '1.01'],
    [-2.5, 0, '-3'],
    [0.5, 0, '1'],
    [0.45, 0, '0'],
    [0.05, 1, '0.1'],
    [0.049, 1, '0.0'],
    [99.96, 1, '100.0'],
    [0, 2, '0.00'],
    [1250, -2, '1300'],
    [40, -2, '0'],
    [60, -2, '100'],
    [3, -2, '0'],
    [1e21, 1, '1000000000000000000000.0'],
    [1e-20, 3, '0.000'],
  ])('%d to %d decimals is %s', (value, decimals, text) => {
    expect(decimalText(value, decimals)).toBe(text);
  });

  it('dust of arithmetic does not tip a half over: 14.2 × 1.1 is 15.62', () => {
    expect(14.2 * 1.1).not.toBe(15.62);
    expect(decimalText(14.2 * 1.1, 2)).toBe('15.62');
    expect(0.1 * 3 - 0.05).toBeGreaterThan(0.25);
    expect(0.7 + 0.1 - 0.55).toBeLessThan(0.25);
    expect([decimalText(0.1 * 3 - 0.05, 1), decimalText(0.7 + 0.1 - 0.55, 1)]).toEqual(['0.3', '0.3']);
  });

  it('a zero never has a sign', () => {
    expect(decimalText(-0, 1)).toBe('0.0');
    expect(decimalText(-0.04, 1)).toBe('0.0');
  });

  it('a comma stands where a point stood', () => {
    fc.assert(
      fc.property(number, fc.integer({ min: -2, max: 8 }), (value, decimals) => {
        expect(decimalText(value, decimals, 'comma')).toBe(decimalText(value, decimals).replace('.', ','));
      }),
    );
  });

  it('is never further off than half its last digit', () => {
    fc.assert(
      fc.property(number, fc.integer({ min: -3, max: 8 }), (value, decimals) => {
        const off = Math.abs(Number(decimalText(value, decimals)) - value);
        expect(off).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9 * Math.abs(value) + 1e-15);
      }),
    );
  });

  it('rounds up and down alike: the text of -x is the text of x with a minus', () => {
    fc.assert(
      fc.property(number, fc.integer({ min: 0, max: 6 }), (value, decimals) => {
        const text = decimalText(Math.abs(value), decimals);
        const isZero = /^[0.]+$/.test(text);
        expect(decimalText(-Math.abs(value), decimals)).toBe(isZero ? text : `-${text}`);
      }),
    );
  });

  it.each([Number.NaN, Infinity, -Infinity])('%d is no number to print', (value) => {
    expect(() => decimalText(value, 2)).toThrow(RangeError);
  });
});

describe('a printed quantity', () => {
  it('carries its unit', () => {
    expect(printQuantity(0.25 * 9.80665, 'N', 2)).toBe('2.45 N');
    expect(printQuantity(0.25 * 9.80665, 'gf', 0)).toBe('250 gf');
    expect(printQuantity(Math.PI / 6, 'deg', 1)).toBe('30.0 deg');
    expect(printQuantity(Math.PI / 6, '°', 0)).toBe('30°');
    expect(printQuantity(0.123, '%', 0)).toBe('12 %');
    expect(printQuantity(0.3, '', 2, 'comma')).toBe('0,30');
  });
});

describe('significant digits', () => {
  it.each([
    [9.80665, 3, '9.81'],
    [9.996, 3, '10.0'],
    [0.00098, 1, '0.001'],
    [0.0999, 2, '0.10'],
    [123456, 3, '123000'],
    [999999, 3, '1000000'],
    [2, 6, '2.00000'],
    [-0.012345, 3, '-0.0123'],
    [1.5e-12, 2, '1.5e-12'],
    [1.5e20, 2, '1.5e20'],
    [0, 3, '0'],
  ])('%d to %d digits is %s', (value, digits, text) => {
    expect(significant(value, digits)).toBe(text);
  });

  it('six digits are within half of the sixth', () => {
    fc.assert(
      fc.property(number, (value) => {
        const off = Math.abs(Number(significant(value, 6)) - value);
        expect(off).toBeLessThanOrEqual(5.0000001e-6 * Math.abs(value));
      }),
    );
  });
});

describe('the decimals that an uncertainty allows', () => {
  it.each([
    [0.034, 2],
    [0.012, 3],
    [0.0194, 3],
    [0.0196, 2],
    [0.096, 2],
    [0.00996, 3],
    [0.5, 1],
    [1, 1],
    [3, 0],
    [14, 0],
    [40, -1],
    [0, 6],
    [1e-12, 6],
  ])('u = %d allows %d', (u, decimals) => {
    expect(decimalsFor(u)).toBe(decimals);
  });
});
