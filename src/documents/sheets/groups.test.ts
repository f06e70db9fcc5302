import fc from 'fast-check';
import { expect, test } from 'vitest';
import { paperLanguages } from '../../core/files/group-words.ts';
import { groupLabels, readersOf } from './groups.ts';

test('a visit that says nothing of groups has one, whose label is written by hand', () => {
  expect(groupLabels(null)).toEqual([null]);
  expect(readersOf(null, 'es')).toEqual([{ language: 'es', groups: [null] }]);
});

test('every group is among the readers of exactly one language, its own or that of the cards', () => {
  const language = fc.constantFrom(...paperLanguages);
  const labels = fc.uniqueArray(fc.constantFrom<string>('A', 'B', 'C', 'D', 'E', 'F'), { minLength: 1 });
  fc.assert(
    fc.property(
      labels,
      fc.dictionary(fc.constantFrom('A', 'B', 'C'), language),
      language,
      (groups, own, cards) => {
        const known = Object.fromEntries(Object.entries(own).filter(([label]) => groups.includes(label)));
        const readers = readersOf({ groupLabels: groups, groupLanguages: known }, cards);
        expect(readers.flatMap((each) => each.groups).toSorted()).toEqual(groups.toSorted());
        for (const each of readers)
          for (const group of each.groups) expect(known[group ?? ''] ?? cards).toBe(each.language);
      },
    ),
    { seed: 51, numRuns: 100 },
  );
});
