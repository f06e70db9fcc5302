import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exampleFiles, type Files, keyNumbers, preparedFrom } from './example-files.ts';
import { inEveryFile, inUnits, renamed, shuffled, type Units, withCommas, withTexts } from './rewriting.ts';

const POUND = 0.45359237;
const POUND_FORCE = 4.4482216152605;

const OTHER_UNITS: Readonly<Record<string, Units>> = {
  'other metric units': {
    cm: ['mm', 10],
    mm: ['cm', 0.1],
    m: ['km', 0.001],
    g: ['kg', 0.001],
    N: ['mN', 1000],
    gf: ['kgf', 0.001],
    'N/m': ['N/mm', 0.001],
    deg: ['rad', Math.PI / 180],
  },
  'inches and pounds': {
    cm: ['in', 1 / 2.54],
    mm: ['in', 1 / 25.4],
    m: ['ft', 1 / 0.3048],
    g: ['lb', 0.001 / POUND],
    N: ['lbf', 1 / POUND_FORCE],
    gf: ['lbf', 0.00980665 / POUND_FORCE],
    'N/m': ['lbf/in', 0.0254 / POUND_FORCE],
  },
};

/** Who plays what at the boathouse, with nothing left to be understood. */
const EVERY_ROLE = {
  '1': { bar: 'oar', load: 'W500', scale: 'amber' },
  '2': { board: 'slipway', cart: 'trolley', block: 'keel', load: 'W200', scale: 'teal' },
  '3': { upper: 'block 1', lower: 'block 2', load: 'W1000', scale: 'plum' },
  '4': {
    windlass: 'capstan',
    'axle line': 'cord',
    'wheel line': 'twine',
    load: 'W1500',
    'light load': 'W750',
    scale: 'slate',
  },
  '5': { screw: 'spindle' },
  '6': { slim: 'thole', fat: 'chock', cords: 'shock cord' },
  '7': { board: 'ramp', cart: 'dinghy', bar: 'long oar', load: 'W600', scale: 'sand' },
};

const boathouse = exampleFiles('brackwater');
const keyOf = (files: Files, asWas?: (mark: string) => string) => keyNumbers(preparedFrom(files), asWas);

/** Numbers between 0 and 1 from a seed: Lehmer's generator, modulus 2^31 - 1. */
function chanceFrom(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

describe('the key of the boathouse', () => {
  it('has all of its tables and setups, so that there is something to compare', () => {
    expect(Object.keys(keyOf(boathouse))).toHaveLength(18);
  });

  it('is not the same after one value has changed: the comparison sees it', () => {
    const heavier = inEveryFile(boathouse, (tree) =>
      withTexts(tree, (text) => (text === '118 g ± 1 g' ? '119 g ± 1 g' : text)),
    );
    expect(keyOf(heavier)).not.toEqual(keyOf(boathouse));
    const surer = inEveryFile(boathouse, (tree) =>
      withTexts(tree, (text) => (text === '118 g ± 1 g' ? '118 g ± 2 g' : text)),
    );
    expect(keyOf(surer)).not.toEqual(keyOf(boathouse));
  });

  it.each(Object.entries(OTHER_UNITS))('is the same in %s', (_, units) => {
    const rewritten = inEveryFile(boathouse, (tree) =>
      withTexts(tree, (text, key) => inUnits(text, key, units)),
    );
    expect(rewritten).not.toEqual(boathouse);
    expect(keyOf(rewritten)).toEqual(keyOf(boathouse));
  });

  it('is the same when the visit writes out every role that was understood', () => {
    const written = { ...boathouse, visit: { ...boathouse.visit, roles: EVERY_ROLE } };
    expect(keyOf(written)).toEqual(keyOf(boathouse));
  });
});

describe.each(['brackwater', 'second-kit', 'smallest'])('the key of examples/%s', (name) => {
  const files = exampleFiles(name);
  const key = keyOf(files);

  it('is the same in whatever order parts, tables, setups and keys are written', () => {
    fc.assert(
      fc.property(fc.nat(), (seed) => {
        const chance = chanceFrom(seed);
        expect(keyOf(inEveryFile(files, (tree) => shuffled(tree, chance)))).toEqual(key);
      }),
      { seed: 20260512, numRuns: 12 },
    );
  });

  it('is the same under any other marks', () => {
    const marks = fc.string({ unit: fc.constantFrom('a', 'Z', '7', 'ö', 'щ', '-', '0'), maxLength: 4 });
    fc.assert(
      fc.property(marks, fc.boolean(), (word, before) => {
        const number = new Map<string, string>();
        const markOf = (mark: string): string => {
          const n = number.get(mark) ?? `${number.size + 1}`;
          number.set(mark, n);
          return before ? `${word}x${n}` : `x${n} ${word}.`;
        };
        const back = (mark: string): string =>
          [...number.keys()].find((each) => markOf(each) === mark) ?? `unknown ${mark}`;
        expect(keyOf(renamed(files, markOf), back)).toEqual(key);
      }),
      { seed: 20260512, numRuns: 12 },
    );
  });

  it('is the same with decimal commas', () => {
    const rewritten = inEveryFile(files, withCommas);
    expect(rewritten).not.toEqual(files);
    expect(keyOf(rewritten)).toEqual(key);
  });
});
