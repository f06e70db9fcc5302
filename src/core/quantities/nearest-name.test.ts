import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nearestName } from './nearest-name.ts';

const keys = ['load', 'effort', 'fulcrum', 'pin radius', 'hand limit', 'gravity'];

describe('the nearest known name', () => {
  it.each([
    ['efort', 'effort'],
    ['fulcurm', 'fulcrum'],
    ['Load', 'load'],
    ['pin-radius', 'pin radius'],
    ['graviti', 'gravity'],
  ])('%s was meant as %s', (word, meant) => {
    expect(nearestName(word, keys)).toBe(meant);
  });

  it.each(['colour', 'x', '', 'scale'])('nothing is close to "%s"', (word) => {
    expect(nearestName(word, keys)).toBeUndefined();
  });

  it('a symbol of one letter is found by its case only', () => {
    expect(nearestName('n', ['kg', 'N'])).toBe('N');
    expect(nearestName('x', ['kg', 'N'])).toBeUndefined();
  });

  it('of equals the first wins', () => {
    expect(nearestName('cat', ['bat', 'hat'])).toBe('bat');
  });

  it('a name is nearest to itself, with any one letter left out of a long word', () => {
    fc.assert(
      fc.property(fc.constantFrom('fulcrum', 'pin radius', 'hand limit'), fc.nat(9), (name, place) => {
        const cut = name.slice(0, place) + name.slice(place + 1);
        expect(nearestName(name, keys)).toBe(name);
        expect(nearestName(cut, keys)).toBe(name);
      }),
    );
  });

  it('any words are taken', () => {
    fc.assert(
      fc.property(fc.string(), fc.array(fc.string()), (word, names) => {
        const found = nearestName(word, names);
        expect(found === undefined || names.includes(found)).toBe(true);
      }),
    );
  });
});
