import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import type { Dimension } from './dimension.ts';
import { inUnit, symbolsOf, toSi, unitNamed, units } from './unit.ts';

describe('units', () => {
  it('no symbol and no word names two units', () => {
    const names = units.flatMap((unit) => [unit.symbol, ...unit.also]);
    expect(new Set(names).size).toBe(names.length);
  });

  it('every dimension can be written', () => {
    const dimensions: readonly Dimension[] = [
      'length',
      'mass',
      'force',
      'angle',
      'time',
      'ratio',
      'stiffness',
      'acceleration',
    ];
    for (const dimension of dimensions) expect(symbolsOf(dimension), dimension).not.toEqual([]);
  });

  // NIST Special Publication 811, appendix B.8, from memory; each is an exact definition.
  it.each([
    ['in', 0.0254],
    ['ft', 0.3048],
    ['yd', 0.9144],
    ['lb', 0.45359237],
    ['oz', 0.028349523125],
    ['gf', 0.00980665],
    ['kgf', 9.80665],
    ['lbf', 4.4482216152605],
    ['ozf', 0.2780138509537812],
    ['h', 3600],
  ])('one %s is exactly %f in SI', (symbol, si) => {
    expect(toSi(1, symbol)).toBe(si);
  });

  it('sixteen ounces-force are a pound-force, to the last bit', () => {
    expect(toSi(16, 'ozf')).toBe(toSi(1, 'lbf'));
  });

  it('a decimal number of a decimal unit is rounded once: 14.2 cm is 0.142 m', () => {
    expect(toSi(14.2, 'cm')).toBe(0.142);
    expect(toSi(0.3, 'g')).toBe(0.0003);
  });

  it('case counts in a symbol and not in a word', () => {
    expect(unitNamed('Grams')?.symbol).toBe('g');
    expect(unitNamed('Per  Cent')?.symbol).toBe('%');
    expect(unitNamed('mN')?.symbol).toBe('mN');
    expect(unitNamed('MN')).toBeUndefined();
    expect(unitNamed('n')).toBeUndefined();
    expect(unitNamed('toString')).toBeUndefined();
  });

  it('a unit of the program that does not exist is a fault of the program', () => {
    expect(() => inUnit(1, 'stone')).toThrow('stone');
  });
});

describe('a general library of units, as an independent witness', () => {
  /** Its names, where they differ from ours. */
  const spelling: Readonly<Record<string, string>> = { t: 'tonne', 'm/s²': 'm/s^2' };
  const base: Readonly<Record<Dimension, string>> = {
    length: 'm',
    mass: 'kg',
    force: 'N',
    angle: 'rad',
    time: 's',
    ratio: '1',
    stiffness: 'N/m',
    acceleration: 'm/s2',
  };
  /** It knows neither; both are checked against their definition above. */
  const unknownToIt = ['gf', 'kgf', 'ozf'];

  it.each(units.filter((unit) => !unknownToIt.includes(unit.symbol)))('agrees on $symbol', (unit) => {
    const theirs =
      unit.dimension === 'ratio'
        ? Qty(`1 ${unit.symbol}`).baseScalar
        : Qty(`1 ${spelling[unit.symbol] ?? unit.symbol}`).to(base[unit.dimension]).scalar;
    // Seven digits: that is what it gives its pound-force with (4.448222); all others are closer.
    expect(theirs / toSi(1, unit.symbol)).toBeCloseTo(1, 6);
  });
});
