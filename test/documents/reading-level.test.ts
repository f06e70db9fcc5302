import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isNotDefined } from '../../src/core/description/not-defined.ts';
import { type Prepared, prepare } from '../../src/core/prepare.ts';
import { preparedForCards } from '../../src/core/prepare-cards.ts';
import { sheetOf } from '../../src/documents/prepare.ts';
import { cardLevelOf, cardLevelsOf } from '../../src/documents/reading-level/card-level.ts';
import { type CardText, cardTextsOf } from '../../src/documents/reading-level/card-texts.ts';
import { isEasyEnough, readingLimit } from '../../src/documents/reading-level/reading-limit.ts';
import type { Language } from '../../src/documents/sentences/language.ts';
import type { PaperJob } from '../../src/documents/sheets/paper-job.ts';
import { cardsOf } from '../../src/documents/sheets/table-card.ts';
import { readingLevelJson } from '../../src/documents/text/reading-level-json.ts';
import { readingLevelText } from '../../src/documents/text/reading-level-text.ts';

const folder = join(import.meta.dirname, '../../examples');
const file = (name: string) => ({ name, text: readFileSync(join(folder, name), 'utf8') });
const EXAMPLES = {
  brackwater: ['boathouse.kit.yaml', 'harbour-day.activity.yaml', 'harbour-day.visit.yaml'],
  'second-kit': ['ferry.kit.yaml', 'ferry-day.activity.yaml', 'ferry-day.visit.yaml'],
  smallest: ['smallest.kit.yaml', 'smallest.activity.yaml', 'smallest.visit.yaml'],
} as const;
type Example = keyof typeof EXAMPLES;
const examples = Object.keys(EXAMPLES) as readonly Example[];

function prepared(name: Example): Prepared {
  const [kit, activity, visit] = EXAMPLES[name];
  return preparedForCards(
    prepare({
      kit: file(`${name}/${kit}`),
      activity: file(`${name}/${activity}`),
      visit: file(`${name}/${visit}`),
    }),
  );
}

const paperOf = (of: Prepared, language: Language = 'en'): PaperJob => ({
  prepared: of,
  sheet: sheetOf(of),
  paper: 'a4',
  period: null,
  languages: { cards: language, key: 'en' },
});

const EIGHT = { from: 8, to: 9 };
const card = (texts: readonly CardText[], age = EIGHT) =>
  cardLevelOf('en', { table: '1', title: 'The boat hook', texts }, age);

describe('the cards of the examples', () => {
  it.each(examples)('of %s are easy enough in English at the age of eight', (name) => {
    const of = prepared(name);
    const cards = cardLevelsOf(paperOf(of));
    expect(cards.length).toBe(of.tables.filter(({ setups }) => setups.length > 0).length);
    expect(cards.length).toBeGreaterThan(0);
    for (const { title, level } of cards) {
      const eight = readingLimit(EIGHT, 'en');
      expect(isEasyEnough(level, eight), title).toBe(true);
      if (isNotDefined(level.score) || level.score.by !== 'grade') throw new Error('no grade');
      expect(level.score.grade, title).toBeLessThanOrEqual(4);
      expect(level.counted.words, title).toBeGreaterThan(40);
    }
    expect(cards.map(({ verdict }) => verdict)).toEqual(cards.map(() => 'easy enough'));
  });
});

describe('the Spanish cards of the examples', () => {
  it.each(examples)('of %s reach the published score for their youngest readers', (name) => {
    const cards = cardLevelsOf(paperOf(prepared(name), 'es'));
    expect(cards.length).toBeGreaterThan(0);
    for (const { title, level, limit, verdict } of cards) {
      if (isNotDefined(level.score) || level.score.by !== 'score') throw new Error('no score');
      expect(limit.leastScore, title).toBeGreaterThanOrEqual(80);
      expect(level.score.score, title).toBeGreaterThanOrEqual(limit.leastScore ?? Number.POSITIVE_INFINITY);
      expect(verdict, title).toBe('easy enough');
    }
  });
});

describe('a card', () => {
  const hard: CardText = {
    of: 'about',
    text: 'Mechanical advantage characterises proportional multiplication of an applied effort.',
  };
  const long: CardText = {
    of: 'step',
    text: 'Put the pin in the hole that is next to the one on the left of it.',
  };

  it('is too hard by its words, or by one long step, and says which', () => {
    const easy: CardText = { of: 'step', text: 'Pull it down.' };
    expect(card([easy]).verdict).toBe('easy enough');
    expect(card([hard]).verdict).toBe('too hard');
    expect(card([long]).verdict).toBe('a step is too long');
    expect(card([hard, long]).verdict).toBe('too hard, and a step is too long');
    expect(card([long]).longestStep).toEqual({ text: long.text, words: 17 });
  });

  it('is not made easier by what two setups say alike', () => {
    const job = paperOf(prepared('smallest'));
    const [first] = cardsOf(job);
    if (first === undefined) throw new Error('no card');
    const { table, card: sheet } = first;
    const once = cardTextsOf('en', table, sheet);
    const twice = cardTextsOf('en', table, { ...sheet, blocks: [...sheet.blocks, ...sheet.blocks] });
    expect(twice).toEqual(once);
    expect(new Set(once.map((each) => each.of))).toEqual(new Set(['about', 'caution', 'step', 'text']));
  });

  it('has its counts, its grade, the limit and its hardest sentences in the text', () => {
    const text = readingLevelText('en', 'Harbour day', [card([hard])]);
    expect(text).toContain('Readers from age 8: grade 3 at most');
    expect(text).toMatch(/1 {2}The boat hook +1 +9 +0 +\d+ +0 +\d+\.\d +3 {2}too hard/);
    expect(text).toContain(hard.text);
    expect(text).not.toContain('assumed');
  });

  it('says so where the age is assumed, and has dashes where there are no words', () => {
    const none = cardLevelOf('en', { table: '1', title: 'Bare', texts: [] }, null);
    const text = readingLevelText('en', 'Harbour day', [none]);
    expect(text).toContain('The activity says no age: 8 is assumed.');
    expect(text).toMatch(/1 {2}Bare +0 +0 +0 +0 +0 +– +3 {2}easy enough/);
  });

  it('has the same counts in the JSON', () => {
    const level = card([hard, long]);
    const json = JSON.parse(readingLevelJson('en', 'Harbour day', [level]));
    expect(json.cards[0]).toMatchObject({ ...level.level.counted, verdict: level.verdict });
    expect(json.cards[0].hardest).toHaveLength(2);
  });
});
