import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isNotDefined } from '../../src/core/description/not-defined.ts';
import { prepare } from '../../src/core/prepare.ts';
import { sheetOf } from '../../src/documents/prepare.ts';
import { cardLevelOf } from '../../src/documents/reading-level/card-level.ts';
import { type CardText, cardTextsOf } from '../../src/documents/reading-level/card-texts.ts';
import { readingLevelJson } from '../../src/documents/text/reading-level-json.ts';
import { readingLevelText } from '../../src/documents/text/reading-level-text.ts';
import { boathouse } from './boathouse.ts';

const folder = join(import.meta.dirname, '../../examples');
const file = (name: string) => ({ name, text: readFileSync(join(folder, name), 'utf8') });
const EXAMPLES = {
  brackwater: ['boathouse.kit.yaml', 'harbour-day.activity.yaml', 'harbour-day.visit.yaml'],
  'second-kit': ['ferry.kit.yaml', 'ferry-day.activity.yaml', 'ferry-day.visit.yaml'],
  smallest: ['smallest.kit.yaml', 'smallest.activity.yaml', 'smallest.visit.yaml'],
} as const;

const EIGHT = { from: 8, to: 9 };
const card = (texts: readonly CardText[], age = EIGHT) =>
  cardLevelOf('en', { table: '1', title: 'The boat hook', texts }, age);

describe('the cards of the examples', () => {
  it.each(Object.entries(EXAMPLES))(
    'of %s are easy enough in English at the age of eight',
    (name, [kit, activity, visit]) => {
      const prepared = prepare({
        kit: file(`${name}/${kit}`),
        activity: file(`${name}/${activity}`),
        visit: file(`${name}/${visit}`),
      });
      const sheet = sheetOf(prepared);
      expect(sheet.tables.length).toBeGreaterThan(0);
      for (const table of sheet.tables) {
        const texts = cardTextsOf('en', table);
        const level = cardLevelOf('en', { table: table.mark, title: table.title, texts }, EIGHT);
        expect(level.verdict, table.title).toBe('easy enough');
        if (isNotDefined(level.level.score) || level.level.score.by !== 'grade') throw new Error('no grade');
        expect(level.level.score.grade, table.title).toBeLessThanOrEqual(4);
        expect(level.level.counted.words, table.title).toBeGreaterThan(40);
      }
    },
  );
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
    const [table] = boathouse().tables;
    if (table === undefined) throw new Error('no table');
    const once = cardTextsOf('en', table);
    const twice = cardTextsOf('en', { ...table, setups: [...table.setups, ...table.setups] });
    expect(twice).toEqual(once);
    expect(new Set(once.map(({ text }) => text)).size).toBe(once.length);
    expect(new Set(once.map((each) => each.of))).toEqual(new Set(['about', 'caution', 'step', 'reading']));
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
