import { expect, it } from 'vitest';
import { benchEn } from './bench-en.ts';
import { benchEs } from './bench-es.ts';
import { discussEn } from './discuss-en.ts';
import { discussEs } from './discuss-es.ts';
import { en } from './en.ts';
import { es } from './es.ts';
import { newKitEn } from './new-kit-en.ts';
import { newKitEs } from './new-kit-es.ts';
import { prepareEn } from './prepare-en.ts';
import { prepareEs } from './prepare-es.ts';
import { teacherEn } from './teacher-en.ts';
import { teacherEs } from './teacher-es.ts';
import { sayIn, type WordKey } from './words.ts';

const factsIn = (text: string): readonly string[] => (text.match(/\{\w+\}/g) ?? []).sort();
const keys = Object.keys(en) as WordKey[];

it('everything is said in both languages, with the same facts', () => {
  expect(Object.keys(es)).toEqual(keys);
  for (const key of keys) expect([key, factsIn(es[key])]).toEqual([key, factsIn(en[key])]);
});

it('facts stand where they belong, and English is spoken where a language is unknown', () => {
  expect(sayIn('es')('route.table', { table: '3' })).toBe('Mesa 3');
  expect(sayIn('xx')('route.table', { table: '3' })).toBe('Table 3');
});

it("what the teacher's page alone says is said in both languages too, and under keys of its own", () => {
  const own = Object.keys(teacherEn) as (keyof typeof teacherEn)[];
  expect(Object.keys(teacherEs)).toEqual(own);
  for (const key of own) expect([key, factsIn(teacherEs[key])]).toEqual([key, factsIn(teacherEn[key])]);
  expect(own.filter((key) => key in en)).toEqual([]);
});

it.each([
  ['for preparing', prepareEn, prepareEs],
  ['of the talk', discussEn, discussEs],
  ['for readings on the bench', benchEn, benchEs],
  ['with questions about a new kit', newKitEn, newKitEs],
] as const)(
  'what the page %s says is said in both languages, with the same facts',
  (_page, english, spanish) => {
    const [said, told]: readonly Readonly<Record<string, string>>[] = [english, spanish];
    expect(Object.keys(told ?? {})).toEqual(Object.keys(said ?? {}));
    for (const [key, text] of Object.entries(said ?? {}))
      expect([key, factsIn(told?.[key] ?? '')]).toEqual([key, factsIn(text)]);
  },
);
