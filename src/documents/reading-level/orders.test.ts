import { expect, test } from 'vitest';
import type { Facts } from '../../core/diagnostics/diagnostic.ts';
import { machines, sentencesEn } from '../../core/machines/list.ts';
import { english } from '../sentences/en/english.ts';
import { fillIn } from '../sentences/sentence.ts';
import { readingLevelOf } from './reading-level.ts';
import { isEasyEnough, MOST_WORDS_IN_A_STEP, readingLimit } from './reading-limit.ts';
import { sentencesOf, tokensOf } from './tokens.ts';

/** As long as each fact gets: two-figure numbers with their units, the longest names of machines. */
const LONG = { si: 0.125, dimension: 'length' } as const;
const TILT = { si: 0.2094, dimension: 'angle' } as const;
const FACTS: Facts = {
  hole: 11,
  stage: 2,
  from: 1,
  to: 2,
  parts: 4,
  above: 1,
  below: 1,
  mark: 'block 1',
  turns: 12,
  layers: 2,
  at: LONG,
  rise: LONG,
  length: LONG,
  gap: LONG,
  travel: LONG,
  arm: LONG,
  advance: LONG,
  falls: LONG,
  angle: TILT,
  lean: TILT,
  machine: 'drag on the level',
  range: '2.5 N',
};

type Said = readonly [key: string, text: string];
const saidBy = (
  sentences: Readonly<Record<string, string>>,
  isWanted: (key: string) => boolean,
): readonly Said[] =>
  Object.entries(sentences)
    .filter(([key]) => isWanted(key))
    .map(([key, template]) => [key, fillIn('en', template, FACTS)]);

const steps = saidBy(sentencesEn, (key) => /\.(?:step|reset)\./.test(key));
const abouts = saidBy(sentencesEn, (key) => machines.some(({ name }) => key === `${name}.about`));
const cautions = saidBy(english.sentences, (key) => /^caution\..*\.pupil$/.test(key));
const readings = saidBy(
  english.sentences,
  (key) => /^(?:way|hangs|zeroed|watched)\..*\.instruction$/.test(key) || key === 'page.scale-ends',
);

/** What a hand does. The first word of each step is one of these; two in one step are two steps. */
const DOINGS = new Set(
  `build close count draw hang hold hook keep lay lead leave let loop lower measure prop pull push put read rest
  roll rub set slide stand strike take thread tie tilt turn wind write`.split(/\s+/),
);

test.each(steps)('%s begins with one verb of doing and asks for nothing else', (_, text) => {
  expect(sentencesOf(text)).toHaveLength(1);
  const [first = '', ...others] = tokensOf(text).map((token) => token.text.toLowerCase());
  expect([...DOINGS], `"${first}" of "${text}"`).toContain(first);
  expect(text).not.toMatch(/;/);
  const joined = others.filter(
    (word, n) => ['and', 'then', 'or'].includes(word) && DOINGS.has(others[n + 1] ?? ''),
  );
  expect(joined).toEqual([]);
});

test.each([...steps, ...abouts, ...cautions, ...readings])(
  '%s has at most twelve words a sentence',
  (_, text) => {
    for (const sentence of sentencesOf(text))
      expect(tokensOf(sentence).length, sentence).toBeLessThanOrEqual(MOST_WORDS_IN_A_STEP);
  },
);

test('all that a machine can ever say on a card is easy enough at the age of eight', () => {
  expect(abouts).toHaveLength(machines.length);
  for (const { name } of machines) {
    const own = name.replace('inclined plane', 'incline').replace(' on the level', '');
    const texts = [...steps, ...abouts]
      .filter(([key]) => key.startsWith(`${own}.`) || key.startsWith(`${name}.`))
      .map(([, text]) => text);
    expect(texts.length, name).toBeGreaterThan(2);
    expect(isEasyEnough(readingLevelOf(texts, 'en'), readingLimit({ from: 8, to: 9 }, 'en')), name).toBe(
      true,
    );
  }
});

test('the cautions of the cards and the words around the scale are easy enough at the age of eight', () => {
  for (const texts of [cautions, readings]) {
    expect(texts.length).toBeGreaterThan(8);
    const level = readingLevelOf(
      texts.map(([, text]) => text),
      'en',
    );
    expect(isEasyEnough(level, readingLimit({ from: 8, to: 9 }, 'en'))).toBe(true);
  }
});

test('no single sentence of a card is above the sixth grade by itself', () => {
  const hard = [...steps, ...abouts, ...cautions, ...readings]
    .flatMap(([, text]) => sentencesOf(text))
    .filter(
      (sentence) => !isEasyEnough(readingLevelOf([sentence], 'en'), readingLimit({ from: 11, to: 12 }, 'en')),
    );
  expect(hard).toEqual([]);
});
