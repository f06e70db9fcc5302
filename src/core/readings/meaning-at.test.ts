import { describe, expect, it, test } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { setupNamed } from '../review.ts';
import { ownUnit } from './judgement.ts';
import { meaningAt, type ReadingPlace } from './meaning-at.ts';

const prepared = demoPrepared();

function placeOf(mark: string): ReadingPlace {
  const at = setupNamed(prepared, mark);
  if (at === null) throw new Error(`no setup ${mark}`);
  return { setup: at.setup, outcome: at.prediction.outcome, own: ownUnit(at.setup) };
}

const lever = placeOf('L1');
const range = lever.setup.scale?.range ?? 0;
const onItsStop: ReadingPlace = { ...lever, outcome: { kind: 'on its stop', wouldShow: 0.05, stop: 0.1 } };

describe('of two meanings the one is used that can be read at the setup', () => {
  test.each([
    ['1,234', 'grams', 1234, 1.234],
    ['1.234', 'grams', 1234, 1.234],
    ['1,234', 'newtons', 1.234, 1234],
    ['2,150', 'kilograms', 2.15, 2150],
  ])('"%s" in %s is %s', (written, unit, number, otherwise) => {
    const si = { grams: 0.00980665, newtons: 1, kilograms: 9.80665 }[unit] ?? 1;
    const own = { name: unit, dimension: 'force', si } as const;
    // Between one and two kilograms hang there.
    const outcome = { kind: 'reading', expected: 12.1, u: 1, good: { from: 10, to: 22 } } as const;
    expect(
      meaningAt(written, { ...lever, own, outcome: unit === 'newtons' ? lever.outcome : outcome }),
    ).toMatchObject({
      number,
      otherwise,
      told: [{ facts: { used: String(number), otherwise: String(otherwise) } }],
    });
  });

  it('"4/5" is two readings where four fifths are not to be had', () => {
    expect(meaningAt('4/5', placeOf('L2'))).toMatchObject({ number: 4.5, repeats: [4, 5], otherwise: 0.8 });
  });
});

describe('zero', () => {
  it('is the stop where the pointer rests on it, and the number 0 elsewhere', () => {
    for (const written of ['0', '0.0', '0 N', 'about 0']) {
      expect(meaningAt(written, onItsStop)).toEqual({ kind: 'at the stop' });
      expect(meaningAt(written, lever)).toMatchObject({ kind: 'number', number: 0 });
    }
  });
});

describe('a bound', () => {
  it('at the end of the scale is beyond it, and below that stays a bound', () => {
    expect(meaningAt(`>${range}`, lever)).toEqual({ kind: 'off the scale' });
    expect(meaningAt(`more than ${range / 2}`, lever)).toMatchObject({ kind: 'bound', side: 'above' });
  });

  it('below the stop is the stop where the pointer rests on it', () => {
    expect(meaningAt('<0.2', onItsStop)).toEqual({ kind: 'at the stop' });
    expect(meaningAt('<0.2', lever)).toMatchObject({ kind: 'bound', side: 'below', number: 0.2 });
  });
});

describe('the unit in the heading', () => {
  it('is that of a bare number, and gives way to the one in the cell', () => {
    expect(meaningAt('225', { ...lever, unitAbove: 'g' })).toMatchObject({ unit: { name: 'grams' } });
    expect(meaningAt('2.2 N', { ...lever, unitAbove: 'g' })).toMatchObject({ unit: { name: 'newtons' } });
    expect(meaningAt('225', lever)).toMatchObject({ unit: null });
  });

  it('is left aside where it can not be read at the setup', () => {
    expect(meaningAt('2.2', { ...lever, unitAbove: 'cm' })).toMatchObject({ kind: 'number', unit: null });
  });
});
