import { expect, it } from 'vitest';
import { en } from './en.ts';
import { es } from './es.ts';
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

it('what the page for preparing says is said in both languages, with the same facts', () => {
  const own = Object.keys(prepareEn) as (keyof typeof prepareEn)[];
  expect(Object.keys(prepareEs)).toEqual(own);
  for (const key of own) expect([key, factsIn(prepareEs[key])]).toEqual([key, factsIn(prepareEn[key])]);
});
