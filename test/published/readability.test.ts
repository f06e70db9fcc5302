import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { englishSyllables } from '../../src/documents/reading-level/english-syllables.ts';
import {
  type Counts,
  fernandezHuerta,
  fleschKincaidGrade,
  fleschReadingEase,
  leastScoreForGrade,
  szigrisztPazos,
} from '../../src/documents/reading-level/formulas.ts';
import { type ReadingLevel, readingLevelOf } from '../../src/documents/reading-level/reading-level.ts';
import { record } from './record.ts';

interface Expected {
  readonly value: number;
  readonly tol_abs: number;
}

interface ReadabilityCase {
  readonly id: string;
  readonly gist: string;
  readonly basis: string;
  readonly source: { readonly title: string; readonly section: string };
  readonly inputs: Readonly<Record<string, unknown>>;
  readonly expected: Readonly<Record<string, unknown>>;
}

const TOPIC = 'readability';
const { cases } = JSON.parse(
  readFileSync(new URL(`../reference/${TOPIC}.json`, import.meta.url), 'utf8'),
) as { readonly cases: readonly ReadabilityCase[] };

/** Figures that a case expects, by name, each with what the program gives. */
type Answer = (
  published: ReadabilityCase,
) => readonly (readonly [name: string, expected: Expected, got: number])[];

const figure = (published: ReadabilityCase, name: string): Expected => published.expected[name] as Expected;

const countsIn = ({ inputs }: ReadabilityCase): Counts => ({
  words: inputs.words as number,
  sentences: inputs.sentences as number,
  syllables: inputs.syllables as number,
});

/** Rows of words, sentences and syllables in that order. */
const rows = ({ inputs }: ReadabilityCase): readonly Counts[] =>
  (inputs.cases_words_sentences_syllables as readonly (readonly [number, number, number])[]).map(
    ([words, sentences, syllables]) => ({ words, sentences, syllables }),
  );

/** Several rows that share one list of answers and one tolerance. */
const each = (law: (counts: Counts) => number, name: string): Answer =>
  function answer(published) {
    const { value, tol_abs } = listed(published, name);
    return rows(published).map((counts, n) => [
      `${name}[${n}]`,
      { value: value[n] ?? Number.NaN, tol_abs },
      law(counts),
    ]);
  };

/** The list of answers stands bare with its tolerance beside it, or as the value of a figure. */
function listed(
  { expected }: ReadabilityCase,
  name: string,
): { readonly value: readonly number[]; readonly tol_abs: number } {
  const found = expected[name];
  return Array.isArray(found)
    ? { value: found, tol_abs: expected.tol_abs as number }
    : (found as { readonly value: readonly number[]; readonly tol_abs: number });
}

const counted: Answer = (published) => {
  const counts = countsIn(published);
  const laws: Readonly<Record<string, number>> = {
    grade: fleschKincaidGrade(counts),
    grade_full: fleschKincaidGrade(counts),
    reading_ease: fleschReadingEase(counts),
  };
  return Object.keys(published.expected).map((name) => [
    name,
    figure(published, name),
    laws[name] ?? Number.NaN,
  ]);
};

const text: Answer = (published) => {
  const level: ReadingLevel = readingLevelOf([published.inputs.text as string], 'en');
  if (!('by' in level.score) || level.score.by !== 'grade') throw new Error('no grade');
  const got = { ...level.counted, grade: level.score.grade, reading_ease: level.score.ease };
  return (['words', 'sentences', 'syllables', 'grade', 'reading_ease'] as const).map((name) => [
    name,
    figure(published, name),
    got[name],
  ]);
};

/** The file asks for nine words of ten; the counter is held to all of them, and to the first count of each. */
const dictionary: Answer = (published) => {
  const counts = published.expected.syllables as Readonly<Record<string, number>>;
  const words = published.inputs.words as readonly string[];
  const right = words.filter((word) => englishSyllables(word) === counts[word]);
  return [['words with the right count', { value: words.length, tol_abs: 0 }, right.length]];
};

const spanishText: Answer = (published) => {
  const words = published.inputs.words_per_sentence as number;
  const counts = { sentences: 1, words, syllables: words * (published.inputs.syllables_per_word as number) };
  return [
    ['fernandez_huerta', figure(published, 'fernandez_huerta'), fernandezHuerta(counts)],
    ['szigriszt_pazos', figure(published, 'szigriszt_pazos'), szigrisztPazos(counts)],
  ];
};

const answers: Readonly<Record<string, Answer>> = {
  'fk-formula': each(fleschKincaidGrade, 'grade'),
  'fk-minimum': counted,
  'fk-thirteen-words': counted,
  'fk-library-long': counted,
  'fk-library-easy': counted,
  'text-gettysburg-1': text,
  'text-pangram': text,
  'text-lab-card': text,
  'syllables-lab-words': dictionary,
  'syllables-hard-words': dictionary,
  'es-fernandez-huerta-formula': each(fernandezHuerta, 'scores'),
  'es-szigriszt-pazos-formula': each(szigrisztPazos, 'scores'),
  'es-library-long-text': spanishText,
};

/** The file calls its own constructed text a published input; a text of ours is not. */
const basisOf = ({ basis, source }: ReadabilityCase): string =>
  source.title.startsWith('constructed') ? 'own theory' : basis;

describe('published cases of readability', () => {
  it('are each run', () => {
    expect(Object.keys(answers).sort()).toEqual(cases.map(({ id }) => id).sort());
  });

  it.each(cases)('$id: $gist', (published) => {
    const found = answers[published.id]?.(published) ?? [];
    expect(found.length).toBeGreaterThan(0);
    for (const [quantity, { value, tol_abs }, got] of found) {
      record({
        topic: TOPIC,
        id: published.id,
        basis: basisOf(published),
        source: `${published.source.title}, ${published.source.section}`,
        quantity,
        expected: value,
        got,
        unit: '1',
        tolerance: tol_abs,
      });
      expect(Math.abs(got - value), `${quantity}: ${got} against ${value}`).toBeLessThanOrEqual(tol_abs);
    }
  });

  it('give the grades of the Spanish score where the published table puts them', () => {
    const bands = cases.find(({ id }) => id === 'es-fernandez-huerta-formula')?.expected.grades as {
      readonly value: Readonly<Record<string, string>>;
    };
    expect(bands.value).toMatchObject({
      [`${leastScoreForGrade(4)}-100`]: 'grade 4',
      [`${leastScoreForGrade(5)}-${leastScoreForGrade(4)}`]: 'grade 5',
      [`${leastScoreForGrade(6)}-${leastScoreForGrade(5)}`]: 'grade 6',
      [`${leastScoreForGrade(7)}-${leastScoreForGrade(6)}`]: 'grade 7 or 8',
      [`${leastScoreForGrade(9)}-${leastScoreForGrade(8)}`]: 'before university',
    });
  });
});
