import { expect, test } from 'vitest';
import { demoPrepared } from '../../../test/documents/demo-prepared.ts';
import { sheetsOf, usualWishes } from '../../documents/sheets/sheets-of.ts';
import { readArguments } from '../arguments.ts';
import { wishesOf } from './print.ts';

const visitWith = (lines: string) =>
  demoPrepared((text, file) =>
    file === 'visit'
      ? text.replace(/^(group languages|cards in|key in):.*\n/gm, '').concat(`\n${lines}\n`)
      : text,
  );
const namesOf = (lines: string, only: readonly string[]) => {
  const prepared = visitWith(lines);
  return sheetsOf(prepared, { ...usualWishes(prepared), only }).map(
    ({ name, language }) => `${name} ${language}`,
  );
};

test('paper is in the languages of the visit, and in English where it says nothing', () => {
  expect(usualWishes(visitWith(''))).toMatchObject({ cards: 'en', key: 'en' });
  expect(usualWishes(visitWith('cards in: es\nkey in: en'))).toMatchObject({ cards: 'es', key: 'en' });
  expect(namesOf('key in: es', ['key', 'charts'])).toContain('answer-key es');
  expect(namesOf('key in: es', ['charts'])).toEqual([
    'chart-level-1 en',
    'chart-level-2 en',
    'chart-level-3 en',
  ]);
});

test('a language that is asked for goes before that of the visit', () => {
  const asked = (...args: readonly string[]) =>
    wishesOf(
      readArguments(args, { only: 'text', paper: 'text', 'cards-in': 'text', 'key-in': 'text' }),
      visitWith('cards in: es'),
    );
  expect(asked()).toMatchObject({ cards: 'es', key: 'en' });
  expect(asked('--cards-in', 'en', '--key-in', 'es')).toMatchObject({ cards: 'en', key: 'es' });
});

test('a group that reads Spanish gets cards in Spanish beside those of the others, and the key stays', () => {
  const names = namesOf('group languages: { B: es }', ['cards', 'key']);
  const cards = names.filter((name) => name.startsWith('card-'));
  expect(cards.filter((name) => /^card-\w+ en$/.test(name))).toHaveLength(7);
  expect(cards.filter((name) => /^card-\w+-es es$/.test(name))).toHaveLength(7);
  expect(names.filter((name) => name.startsWith('more-to-find-key'))).toEqual(['more-to-find-key en']);
  expect(names.at(-1)).toBe('answer-key en');
});

test('a card in Spanish is the same card whichever visit asked for it', () => {
  const spanish = (lines: string) => {
    const prepared = visitWith(lines);
    return sheetsOf(prepared, { ...usualWishes(prepared), only: ['cards'] })
      .filter(({ name, language }) => name.startsWith('card-') && language === 'es')
      .map(({ name: _, ...sheet }) => sheet);
  };
  expect(spanish('group languages: { B: es }')).toEqual(spanish('cards in: es'));
});
