import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { type Meaning, readWritten } from './written-reading.ts';

const anything = ['force', 'length', 'ratio'] as const;
const read = (text: string): Meaning => readWritten(text, anything);
const seeded = { seed: 20260512, numRuns: 2000 };

describe('a number is read as people and spreadsheets write it', () => {
  test.each<[string, number, string | null]>([
    ['225 g', 225, 'grams'],
    ['2.4N', 2.4, 'newtons'],
    ['2,4 N', 2.4, 'newtons'],
    ['N 2,4', 2.4, 'newtons'],
    ['2,4 Newton.', 2.4, 'newtons'],
    ['250 gramos fuerza', 250, 'grams'],
    ['3 Unzen', 3, 'ounces'],
    ['1,5 livres', 1.5, 'pounds'],
    ['2 lb 4 oz', 2.25, 'pounds'],
    ['14 1/2 oz', 14.5, 'ounces'],
    ['14-1/2 oz', 14.5, 'ounces'],
    ['14½ oz', 14.5, 'ounces'],
    ['7/16 in', 7 / 16, 'inches'],
    ['3"', 3, 'inches'],
    ['3,5 vueltas', 3.5, 'turns'],
    ['.5', 0.5, null],
    [',5', 0.5, null],
    ['2.', 2, null],
    ['2.4!', 2.4, null],
    ['１．５', 1.5, null],
    ['1.2e0', 1.2, null],
    ['1,2E+00', 1.2, null],
    ['1.234,5', 1234.5, null],
    ['1,234.5', 1234.5, null],
    ['1 234,5', 1234.5, null],
    ['1\u00a0234,5', 1234.5, null],
    ['1\u202f234', 1234, null],
    ["1'234.5", 1234.5, null],
    ['12,345,678', 12345678, null],
    ['0,234', 0.234, null],
    ['−1', -1, null],
    ['-1', -1, null],
    ['"2.4"', 2.4, null],
    ['="2.4"', 2.4, null],
    ["'2.4", 2.4, null],
    ['0', 0, null],
  ])('"%s"', (text, number, unit) => {
    const found = read(text);
    expect(found).toMatchObject({ kind: 'number' });
    if (found.kind !== 'number') return;
    expect(found.number).toBeCloseTo(number, 12);
    expect(found.unit?.name ?? null).toBe(unit);
    expect(found.told).toBeUndefined();
  });

  it('in every style of mark, in threes or not, with a unit or not: it comes back as itself', () => {
    const styles: readonly (readonly [string, string])[] = [
      ['', '.'],
      ['', ','],
      [',', '.'],
      ['.', ','],
      ['\u00a0', ','],
      ['\u202f', ','],
      ["'", '.'],
      [' ', ','],
    ];
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 99_999_999 }),
        fc.integer({ min: 0, max: 4 }),
        fc.constantFrom(...styles),
        fc.constantFrom('', ' N', 'N', ' g', '\u00a0oz'),
        fc.constantFrom('', '-', '\u2212'),
        fc.constantFrom('', 'about ', '~', 'unos ', 'ca. '),
        (digits, places, [thousands, decimal], unit, minus, hedge) => {
          const value = digits / 10 ** places;
          const [whole = '', part = ''] = value.toFixed(places).split('.');
          const grouped = whole.replace(/\B(?=(\d{3})+$)/g, thousands);
          const text = `${hedge}${minus}${grouped}${part === '' ? '' : decimal + part}${unit}`;
          const found = read(text);
          const wanted = minus === '' || value === 0 ? value : -value;
          if (found.kind !== 'number') throw new Error(`${text} is ${found.kind}`);
          // Between threes a single mark has two meanings, and both are said.
          const meant = [found.number, found.otherwise ?? found.number];
          expect(meant, text).toContain(wanted);
          if (found.otherwise !== undefined) expect(found.told?.[0]?.key).toBe('reading.two-meanings');
          expect(found.hedged ?? false).toBe(hedge !== '');
        },
      ),
      seeded,
    );
  });
});

describe('a doubt is kept', () => {
  test.each([
    'about 2',
    'About 2',
    '~2',
    '~ 2',
    'ca. 2',
    'unos 2',
    'approx. 2',
    'aprox 2',
    '2?',
    '2 (?)',
    '2ish',
    'etwa 2',
  ])('"%s" is 2, and not sure', (text) =>
    expect(read(text)).toEqual({ kind: 'number', number: 2, unit: null, hedged: true }),
  );
});

describe('several figures keep their meaning', () => {
  test.each<[string, number, number]>([
    ['2.2-2.4', 2.3, 0.1],
    ['2,2 – 2,4', 2.3, 0.1],
    ['2.2 to 2.4 N', 2.3, 0.1],
    ['de 2,2 a 2,4', 2.3, 0.1],
    ['entre 2 y 3', 2.5, 0.5],
    ['2.3 ± 0.1', 2.3, 0.1],
    ['2.3 +/- 0.1 N', 2.3, 0.1],
  ])('"%s" is a middle with half a width', (text, middle, half) => {
    const found = read(text);
    if (found.kind !== 'number') throw new Error(found.kind);
    expect(found.number).toBeCloseTo(middle, 12);
    expect(found.halfWidth).toBeCloseTo(half, 12);
  });

  test.each<[string, readonly number[], number]>([
    ['2.2 2.3 2.9', [2.2, 2.3, 2.9], 2.3],
    ['2.9 2.2 2.3', [2.9, 2.2, 2.3], 2.3],
    ['2.2/2.3', [2.2, 2.3], 2.25],
    ['2,2, 2,3, 2,2', [2.2, 2.3, 2.2], 2.2],
    ['2,2 2,3 N', [2.2, 2.3], 2.25],
    ['2.2 N 2.3 N', [2.2, 2.3], 2.25],
    ['225 230', [225, 230], 227.5],
    ['225/230/226', [225, 230, 226], 226],
    ['2.2 y 2.3', [2.2, 2.3], 2.25],
    ['2.2\n2.3', [2.2, 2.3], 2.25],
    ['2; 3; 3', [2, 3, 3], 3],
  ])('%j is several readings, and its middle one', (text, repeats, middle) => {
    const found = read(text);
    if (found.kind !== 'number') throw new Error(found.kind);
    expect(found.repeats).toEqual(repeats);
    expect(found.number).toBeCloseTo(middle, 12);
  });

  it('of several readings the one that is none is told and the others stand', () => {
    expect(read('2.2; ; abc; 2.4')).toMatchObject({
      repeats: [2.2, 2.4],
      told: [{ key: 'reading.partly-unread', facts: { written: 'abc' } }],
    });
  });

  it('is refused where it could be several things that nobody can tell apart', () => {
    for (const text of ['abc; 0', '2,2,2,3', '2, 4', '14 1/2 14 3/4 oz', '2.2.2', '2.2 N 230 g', '-1 to 2'])
      expect(read(text), text).toMatchObject({ kind: 'unreadable' });
  });
});

describe('two meanings are said, both of them', () => {
  test.each<[string, number, number]>([
    ['1,234', 1.234, 1234],
    ['1.234', 1.234, 1234],
    ['225,230', 225.23, 225230],
    ['225,230,228', 228, 225230228],
    ['4/5', 0.8, 4.5],
  ])('"%s"', (text, used, otherwise) => {
    expect(read(text)).toMatchObject({
      number: used,
      otherwise,
      told: [{ key: 'reading.two-meanings', facts: { used: String(used), otherwise: String(otherwise) } }],
    });
  });
});

describe('letters for digits', () => {
  test.each([
    ['O.8', 0.8],
    ['l.5', 1.5],
    ['I.5 N', 1.5],
    ['2.O N', 2],
    ['1O', 10],
    ['2l oz', 21],
  ])('"%s" is read, and told', (text, number) => {
    expect(read(text)).toMatchObject({ number, told: [{ key: 'reading.misspelt-digit' }] });
  });

  it('make no number of a word', () => {
    for (const text of ['O', 'lO', 'o.o', 'Il', 'Oslo', 'l']) expect(read(text).kind).toBe('unreadable');
  });
});

describe('what is no figure keeps its meaning too', () => {
  test.each<[string, Meaning]>([
    ['', { kind: 'blank' }],
    ['  ', { kind: 'blank' }],
    ['-', { kind: 'blank' }],
    ['–', { kind: 'blank' }],
    ['n/a', { kind: 'blank' }],
    ['sin lectura', { kind: 'blank' }],
    ['0 at the stop', { kind: 'at the stop' }],
    ['tope', { kind: 'at the stop' }],
    ['off the scale', { kind: 'off the scale' }],
    ['<0.2', { kind: 'bound', side: 'below', number: 0.2, unit: null }],
    ['menos de 0,2', { kind: 'bound', side: 'below', number: 0.2, unit: null }],
    ['> 5', { kind: 'bound', side: 'above', number: 5, unit: null }],
    ['5+', { kind: 'bound', side: 'above', number: 5, unit: null }],
  ])('%j', (text, meaning) => expect(read(text)).toEqual(meaning));

  test.each([
    ['hook slipped', 'reading.not-a-number'],
    ['two', 'reading.not-a-number'],
    ['(2.2)', 'reading.not-a-number'],
    ['1e400', 'reading.not-a-number'],
    ['2,2,2,3', 'reading.unclear-figures'],
    ['2, 4', 'reading.unclear-figures'],
    ['2.4 furlongs', 'reading.unknown-unit'],
    ['50 %', 'reading.percent'],
    ['02-Abr', 'reading.date'],
    ['2-Apr', 'reading.date'],
    ['04. Mai', 'reading.date'],
    ['02/04/2026', 'reading.date'],
    ['2026-04-02 00:00:00', 'reading.date'],
    ['#VALUE!', 'reading.spreadsheet-error'],
    ['#¡VALOR!', 'reading.spreadsheet-error'],
    ['#N/A', 'reading.spreadsheet-error'],
    ['####', 'reading.spreadsheet-error'],
    ['=A1', 'reading.formula'],
    ['=2,2+0,1', 'reading.formula'],
  ])('"%s" is unreadable, and why: %s', (text, why) =>
    expect(read(text)).toMatchObject({ kind: 'unreadable', why }),
  );

  it('a length where a force is read is refused as such', () => {
    expect(readWritten('2 cm', ['force'])).toEqual({ kind: 'unreadable', why: 'reading.wrong-dimension' });
  });
});

/** All figures of a meaning. */
const figuresOf = (found: Meaning): readonly number[] =>
  found.kind === 'number'
    ? [found.number, found.halfWidth ?? 0, found.otherwise ?? 0, ...(found.repeats ?? [])]
    : found.kind === 'bound'
      ? [found.number]
      : [];

describe('whatever stands in a cell', () => {
  const piece = fc.oneof(
    fc.string({ maxLength: 6 }),
    fc.string({ unit: 'grapheme', maxLength: 4 }),
    fc.constantFrom(
      ...'0123456789.,;/-–+ ~<>?OolI|%()=#\'"\u00a0½N'.split(''),
      ' oz',
      ' to ',
      'e',
      '±',
      ' g',
      'lb',
    ),
  );
  const cell = fc.array(piece, { maxLength: 9 }).map((pieces) => pieces.join(''));

  it('it never throws and never gives a number that is none', () => {
    fc.assert(
      fc.property(cell, (text) => {
        for (const figure of figuresOf(read(text))) expect(Number.isFinite(figure), text).toBe(true);
      }),
      { ...seeded, numRuns: 6000 },
    );
  });

  it('text that is not 0 never becomes 0', () => {
    fc.assert(
      fc.property(cell, (text) => {
        const found = read(text);
        if (found.kind !== 'number' || found.number !== 0) return;
        // The middle of several may be 0 where they lie about it; each of them is kept.
        if (found.repeats !== undefined || found.halfWidth !== undefined) return;
        const digits = text
          .normalize('NFKC')
          .replace(/[eE][-+]?\d+/, '')
          .replace(/\([^)]*\)$/, '');
        expect(digits, text).toMatch(/[0０]/);
        expect(digits.replace(/\/.*$/, ''), text).not.toMatch(/[1-9]/);
      }),
      { ...seeded, numRuns: 6000 },
    );
  });
});
