import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { COVERAGE_95 } from '../uncertainty/measured.ts';
import type { Dimension } from './dimension.ts';
import { printQuantity } from './print-quantity.ts';
import type { ReadFault } from './read-fault.ts';
import { readQuantity, type Written } from './read-quantity.ts';
import { toSi, unitNamed, units } from './unit.ts';

const anything: readonly Dimension[] = [
  'length',
  'mass',
  'force',
  'angle',
  'time',
  'ratio',
  'stiffness',
  'acceleration',
];

function read(text: string, dimensions = anything, decimal: 'point' | 'comma' = 'point'): Written {
  const found = readQuantity(text, { dimensions, decimal });
  if (found.kind === 'read-fault') throw new Error(`${text}: ${found.fault}`);
  return found;
}

function refuse(text: string, dimensions = anything, decimal: 'point' | 'comma' = 'point'): ReadFault {
  const found = readQuantity(text, { dimensions, decimal });
  if (found.kind === 'written') throw new Error(`${text} was read as ${found.value}`);
  return found;
}

describe('a quantity is read as it is written', () => {
  it.each<[string, number, Dimension, string]>([
    ['300 g', 0.3, 'mass', 'g'],
    ['2.5 N', 2.5, 'force', 'N'],
    ['2.5N', 2.5, 'force', 'N'],
    ['250 gf', 2.4516625, 'force', 'gf'],
    ['250 grams-force', 2.4516625, 'force', 'gf'],
    ['12 ozf', 12 * 0.2780138509537812, 'force', 'ozf'],
    ['1/4 in', 0.00635, 'length', 'in'],
    ['½ in', 0.0127, 'length', 'in'],
    ['1½ in', 0.0381, 'length', 'in'],
    ['1-1/2 in', 0.0381, 'length', 'in'],
    ['36"', 0.9144, 'length', 'in'],
    ['5\' 6"', 1.6764, 'length', 'ft'],
    ['2 1/4 in', 0.05715, 'length', 'in'],
    ['3 ft 6 in', 1.0668, 'length', 'ft'],
    ['3 ft 6 1/2 in', 1.0795, 'length', 'ft'],
    ['2 lb 3 oz', 35 * 0.028349523125, 'mass', 'lb'],
    ['1 h 20 min', 4800, 'time', 'h'],
    ['35 deg', (35 * Math.PI) / 180, 'angle', 'deg'],
    ['35°', (35 * Math.PI) / 180, 'angle', 'deg'],
    ['40 min', 2400, 'time', 'min'],
    ['5 %', 0.05, 'ratio', '%'],
    ['0.3', 0.3, 'ratio', ''],
    ['.3', 0.3, 'ratio', ''],
    ['-2 cm', -0.02, 'length', 'cm'],
    ['−2 cm', -0.02, 'length', 'cm'],
    ['−3 ft 6 in', -1.0668, 'length', 'ft'],
    ['120 N/m', 120, 'stiffness', 'N/m'],
    ['9.81 m/s2', 9.81, 'acceleration', 'm/s²'],
    ['9.81 m/s^2', 9.81, 'acceleration', 'm/s²'],
    ['9.81 m/s²', 9.81, 'acceleration', 'm/s²'],
    ['  7\u00a0inches ', 0.1778, 'length', 'in'],
  ])('%s', (text, value, dimension, unit) => {
    const found = read(text);
    expect(found.value).toBeCloseTo(value, 12);
    expect(found).toMatchObject({ dimension, unit, text });
  });

  it('half a last digit is the doubt of a bare value', () => {
    const half = (step: number) => step / 2 / Math.sqrt(3);
    expect(read('300 g').u).toBeCloseTo(half(0.001), 15);
    expect(read('2.50 N').u).toBeCloseTo(half(0.01), 15);
    expect(read('1/4 in').u).toBeCloseTo(half(0.25 * 0.0254), 15);
    expect(read('2 1/16 in').u).toBeCloseTo(half(0.0254 / 16), 15);
    expect(read('3 ft 6 in').u).toBeCloseTo(half(0.0254), 15);
    expect(read('300 g')).toMatchObject({ shape: 'even', origin: 'bare' });
  });

  it('what stands behind ± holds 19 of 20', () => {
    for (const text of ['14.2 cm ± 0.1 cm', '14.2 cm +- 1 mm', '14.2 cm +/- 0.1 cm', '14.2±0.1 cm']) {
      const found = read(text);
      expect(found).toMatchObject({ value: 0.142, shape: 'normal', origin: 'stated', unit: 'cm' });
      expect(found.u).toBeCloseTo(0.001 / COVERAGE_95, 15);
    }
  });

  it('per cent behind ± are of the value; of a ratio in per cent they are points', () => {
    expect(read('14.2 cm ± 1 %').u).toBeCloseTo(0.00142 / 1.96, 15);
    expect(read('-2 N ± 5 %').u).toBeCloseTo(0.1 / 1.96, 15);
    expect(read('25 % ± 5 %')).toMatchObject({ value: 0.25, unit: '%' });
    expect(read('25 % ± 5 %').u).toBeCloseTo(0.05 / 1.96, 15);
    expect(refuse('0.3 ± 10 %').fault).toBe('ambiguous-percent');
    expect(refuse('14.2 ± 1 %', ['length']).fault).toBe('no-unit');
  });

  it('two dots mean anywhere between', () => {
    for (const text of ['20 g .. 30 g', '20..30 g', '20 g..30 g', '0.02 kg..30 g']) {
      const found = read(text);
      expect(found).toMatchObject({ shape: 'even', origin: 'stated', dimension: 'mass' });
      expect(found.value).toBeCloseTo(0.025, 15);
      expect(found.u).toBeCloseTo(0.01 / Math.sqrt(12), 15);
    }
    expect(read('0.25..0.35').value).toBeCloseTo(0.3, 15);
    expect(read('0.3..0.3').u).toBe(0);
    expect(read('3 ft..3 ft 6 in').value).toBeCloseTo(0.9906, 12);
  });

  it('where the file has decimal commas, a comma is the mark and a point is a fault', () => {
    expect(read('1,5 N', ['force'], 'comma').value).toBe(1.5);
    expect(read('0,25..0,35', ['ratio'], 'comma').u).toBeCloseTo(0.1 / Math.sqrt(12), 15);
    expect(read('20..30 g', ['mass'], 'comma').value).toBeCloseTo(0.025, 15);
    expect(refuse('1.5 N', ['force'], 'comma')).toMatchObject({
      fault: 'decimal-point',
      facts: { written: '1.5', instead: '1,5' },
      span: [0, 3],
    });
    expect(refuse('1,5 N')).toMatchObject({ fault: 'decimal-comma', facts: { instead: '1.5' } });
    expect(refuse('2.0 N ± 0,1 N').span).toEqual([8, 11]);
    expect(refuse('1,000 g').facts).toEqual({ written: '1,000', instead: '1.000', thousands: '1000' });
  });
});

describe('what can not be read says why and where', () => {
  it.each<[string, readonly Dimension[], string, readonly [number, number]]>([
    ['', ['mass'], 'empty', [0, 0]],
    ['   ', ['mass'], 'empty', [0, 3]],
    ['300', ['mass'], 'no-unit', [0, 3]],
    ['14.2 cm ± 0.1', ['length'], 'no-unit', [10, 13]],
    ['20 g..30', ['mass'], 'no-unit', [6, 8]],
    ['3 ft 6', ['length'], 'no-unit', [5, 6]],
    ['5 stone', ['mass'], 'unknown-unit', [2, 7]],
    ['heavy', ['mass'], 'not-a-number', [0, 5]],
    ['1e3 N', ['force'], 'not-a-number', [0, 5]],
    ['1/0 in', ['length'], 'not-a-number', [0, 6]],
    ['٣ N', ['force'], 'not-a-number', [0, 3]],
    ['3 deg', ['length'], 'wrong-dimension', [0, 5]],
    ['14 cm ± 2 g', ['length'], 'wrong-dimension', [8, 11]],
    ['3 g..4 cm', ['mass', 'length'], 'wrong-dimension', [5, 9]],
    ['30..20 g', ['mass'], 'empty-range', [0, 8]],
    ['20-30 g', ['mass'], 'hyphen-range', [0, 7]],
    ['20 g – 30 g', ['mass'], 'hyphen-range', [0, 11]],
    ['3 N ± -1 N', ['force'], 'negative-uncertainty', [6, 10]],
    ['300 g each', ['mass'], 'left-over', [6, 10]],
    ['300 g 2', ['mass'], 'left-over', [6, 7]],
    ['300 g, about', ['mass'], 'left-over', [5, 12]],
    ['3 ft 6 cm', ['length'], 'left-over', [5, 9]],
    ['5. N', ['force'], 'left-over', [1, 4]],
  ])('"%s" wanted as %s: %s', (text, dimensions, fault, span) => {
    expect(refuse(text, dimensions)).toMatchObject({ fault, span });
  });

  it('three dots are no range: 0.2...5 could be 0.2 to 5 or to 0.5', () => {
    expect(refuse('0.2...5').fault).toBe('left-over');
  });

  it('a number too large to hold is a fault, not infinity', () => {
    expect(refuse(`${'9'.repeat(400)} N`).fault).toBe('too-large');
    expect(refuse(`${'9'.repeat(400)} kg`, ['force']).fault).toBe('too-large');
    expect(refuse(`1 N ± ${'9'.repeat(400)} N`).fault).toBe('too-large');
    expect(refuse(`1..${'9'.repeat(400)} N`).fault).toBe('too-large');
  });

  it('a mass where a force is needed is told what it would be in grams-force and in newtons', () => {
    expect(refuse('250 g', ['force'])).toMatchObject({
      fault: 'mass-for-force',
      facts: { written: '250 g', asForce: '250 gf', asNewtons: '2.45 N' },
    });
    expect(refuse('2.5 oz', ['force']).facts).toMatchObject({ asForce: '2.5 ozf', asNewtons: '0.695 N' });
    expect(refuse('2,5 kg', ['force'], 'comma').facts).toMatchObject({ asForce: '2,5 kgf' });
    expect(refuse('1 t', ['force']).facts).toMatchObject({ asForce: '1000000 gf' });
  });

  it('a force where a mass is needed is told which mass weighs that', () => {
    expect(refuse('2.45 N', ['mass'])).toMatchObject({ fault: 'force-for-mass', facts: { asMass: '250 g' } });
  });

  it('a load may be a mass or a force', () => {
    expect(read('300 g', ['mass', 'force']).dimension).toBe('mass');
    expect(read('3 N', ['mass', 'force']).dimension).toBe('force');
  });

  it.each([
    ['5 Kg', 'kg'],
    ['5 newtn', 'N'],
    ['5 Gf', 'gf'],
    ['5 inchs', 'in'],
    ['5 m/s', 'm/s²'],
  ])('%s was probably meant as %s', (text, nearest) => {
    expect(refuse(text)).toMatchObject({ fault: 'unknown-unit', nearest });
  });

  it('the reversed range is offered the right way round', () => {
    expect(refuse('30..20 g').facts).toMatchObject({ instead: '20 g..30 g' });
    expect(read('20 g..30 g').value).toBeCloseTo(0.025, 12);
  });
});

describe('whatever is typed', () => {
  const pieces = fc.constantFrom(
    ...['1', '20', '0.5', '1,5', '1/4', '1/0', '..', '.', ',', '±', '+-', '-', '−', '–', ' ', '\n', 'é'],
    ...['g', 'N', 'ft', 'in', 'lb', 'oz', '%', '°', 'm/s^2', 'm/s', '/', 'e3', '9'.repeat(200), '½'],
  );
  const typed = fc.oneof(
    fc.string({ unit: 'binary' }),
    fc.array(pieces, { maxLength: 9 }).map((list) => list.join('')),
  );
  const wanted = fc.record({
    dimensions: fc.subarray([...anything]),
    decimal: fc.constantFrom('point' as const, 'comma' as const),
  });

  it('nothing is thrown, nothing is not a number, and a fault points into the text', () => {
    fc.assert(
      fc.property(typed, wanted, (text, asked) => {
        const found = readQuantity(text, asked);
        if (found.kind === 'written') {
          expect(Number.isFinite(found.value) && Number.isFinite(found.u) && found.u >= 0).toBe(true);
          expect(asked.dimensions).toContain(found.dimension);
          expect(Object.is(found.value, -0)).toBe(false);
        } else {
          const [from, to] = found.span;
          expect(0 <= from && from <= to && to <= text.length).toBe(true);
        }
      }),
      { numRuns: 3000 },
    );
  });

  it('a printed quantity is read back as what was printed', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...units.map((unit) => unit.symbol)),
        fc.integer({ min: -99999, max: 99999 }),
        fc.integer({ min: 0, max: 4 }),
        fc.constantFrom('point' as const, 'comma' as const),
        (unit, count, decimals, decimal) => {
          const si = toSi(count / 10 ** decimals, unit);
          const text = printQuantity(si, unit, decimals, decimal);
          const back = read(text, anything, decimal);
          expect(back).toMatchObject({ unit, dimension: unitNamed(unit)?.dimension });
          expect(Math.abs(back.value - si)).toBeLessThanOrEqual(1e-14 * Math.abs(si));
          expect(printQuantity(back.value, unit, decimals, decimal)).toBe(text);
        },
      ),
    );
  });

  it('the same length in inches and in millimetres is the same length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 4000 }), (tenths) => {
        const inches = read(`${tenths}/10 in`).value;
        const millimetres = read(`${(tenths * 254) / 100} mm`).value;
        expect(inches).toBeCloseTo(millimetres, 12);
      }),
    );
  });
});
