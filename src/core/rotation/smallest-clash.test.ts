import { describe, expect, test } from 'vitest';
import { randomFrom } from '../uncertainty/random.ts';
import { smallestClash } from './smallest-clash.ts';

const sizeOf = (set: number): number => set.toString(2).replaceAll('0', '').length;

describe('the smallest clash', () => {
  test('is as small as the smallest of all sets, and without any one of it the others can be kept', () => {
    const random = randomFrom(3);
    const wishes = [0, 1, 2, 3, 4, 5, 6];
    for (let trial = 0; trial < 200; trial += 1) {
      const clashes = Array.from({ length: 1 + Math.floor(random.even() * 4) }, () =>
        wishes.filter(() => random.even() < 0.5),
      ).filter((set) => set.length > 0);
      if (clashes.length === 0) continue;
      const canBeKept = (some: readonly number[]): boolean =>
        !clashes.some((set) => set.every((each) => some.includes(each)));
      const { wishes: found, proof } = smallestClash(wishes, canBeKept);
      const sizes = Array.from({ length: 2 ** wishes.length }, (_, set) => set)
        .filter((set) => !canBeKept(wishes.filter((__, n) => Math.floor(set / 2 ** n) % 2 === 1)))
        .map(sizeOf);
      expect([proof, found.length, canBeKept(found)]).toEqual(['smallest', Math.min(...sizes), false]);
      for (const each of found) expect(canBeKept(found.filter((other) => other !== each))).toBe(true);
    }
  });

  test('is not called minimal where a search ended without an answer', () => {
    const canBeKept = (some: readonly string[]): boolean | null =>
      some.length === 3 ? false : some.includes('a') ? null : true;
    expect(smallestClash(['a', 'b', 'c'], canBeKept)).toEqual({ wishes: ['a', 'b', 'c'], proof: 'none' });
  });
});
