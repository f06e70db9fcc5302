import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isNotDefined } from '../../core/description/not-defined.ts';
import { fernandezHuerta, fleschKincaidGrade, infleszBand, leastScoreForGrade } from './formulas.ts';
import { type ReadingScore, readingLevelOf } from './reading-level.ts';
import { isEasyEnough, readingLimit } from './reading-limit.ts';

function score(texts: readonly string[], language: 'en' | 'es' = 'en'): ReadingScore {
  const found = readingLevelOf(texts, language).score;
  if (isNotDefined(found)) throw new Error('no score');
  return found;
}
const grade = (...texts: readonly string[]): number => {
  const found = score(texts);
  if (found.by !== 'grade') throw new Error('no grade');
  return found.grade;
};

test('the grade is the published formula on what was counted', () => {
  expect(readingLevelOf(['Hang the load. Pull the lever down.'], 'en').counted).toEqual({
    sentences: 2,
    words: 7,
    figures: 0,
    syllables: 8,
  });
  expect(grade('Hang the load. Pull the lever down.')).toBe(
    fleschKincaidGrade({ sentences: 2, words: 7, syllables: 8 }),
  );
});

test('Spanish gets the two Spanish scores and the band of the second', () => {
  const found = score(['Cuelga la carga. Tira de la palanca.'], 'es');
  if (found.by !== 'score') throw new Error('no Spanish score');
  expect(found.score).toBe(fernandezHuerta({ sentences: 2, words: 7, syllables: 12 }));
  expect(found.band).toBe('very easy');
});

const WORDS = ['hang', 'lever', 'pull', 'experiment', 'load', 'pulley', 'mechanical'];
const order = fc.array(fc.constantFrom(...WORDS), { minLength: 1, maxLength: 9 });

test('figures put into a sentence never make it easier', () => {
  fc.assert(
    fc.property(
      order,
      fc.array(fc.constantFrom('2.5', 'W500', '60', '7 mm'), { minLength: 1 }),
      (words, figures) => {
        const bare = grade(`${words.join(' ')}.`);
        expect(grade(`${words.join(' ')} ${figures.join(' ')}.`)).toBeGreaterThan(bare);
      },
    ),
  );
});

test('two sentences made one are never easier', () => {
  fc.assert(
    fc.property(order, order, (first, second) => {
      const apart = grade(`${first.join(' ')}.`, `${second.join(' ')}.`);
      expect(grade(`${first.join(' ')} ${second.join(' ')}.`)).toBeGreaterThanOrEqual(apart);
    }),
  );
});

test('a text without words has no level, and says so', () => {
  for (const texts of [[], [''], ['2.5', '3']]) {
    const { score: none } = readingLevelOf(texts, 'en');
    expect(none).toEqual({ kind: 'not-defined', because: 'reading-level.no-words', facts: {} });
  }
});

test('the hardest sentence comes first', () => {
  const { sentences } = readingLevelOf(
    ['Pull it. Mechanical advantage is a ratio. Pull it down. Put it on.'],
    'en',
  );
  expect(sentences.map(({ text }) => text)[0]).toBe('Mechanical advantage is a ratio.');
});

test('the limit is that of the youngest readers, never above 4 at the age of eight', () => {
  expect(readingLimit({ from: 8, to: 10 }, 'en').grade).toBeLessThanOrEqual(4);
  expect(readingLimit({ from: 9, to: 11 }, 'en').grade).toBe(4);
  expect(readingLimit(null, 'en')).toMatchObject({ age: 8, isAssumed: true });
  expect(readingLimit({ from: 10, to: 12 }, 'es').leastScore).toBe(80);
});

test('a hard text is refused to the young and given to the older', () => {
  const hard = readingLevelOf(['Measure the mechanical advantage of every machine carefully.'], 'en');
  expect(isEasyEnough(hard, readingLimit({ from: 8, to: 9 }, 'en'))).toBe(false);
  expect(isEasyEnough(readingLevelOf(['Pull it down.'], 'en'), readingLimit({ from: 8, to: 9 }, 'en'))).toBe(
    true,
  );
});

test('each band of the published Spanish tables begins where they say', () => {
  expect([4, 5, 6, 7, 8, 9].map(leastScoreForGrade)).toEqual([90, 80, 70, 60, 60, 50]);
  expect([3, 0].map(leastScoreForGrade)).toEqual([90, 90]);
  expect([81, 80, 60, 50, 39].map(infleszBand)).toEqual([
    'very easy',
    'quite easy',
    'normal',
    'rather hard',
    'very hard',
  ]);
});
