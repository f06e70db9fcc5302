import { describe, expect, test } from 'vitest';
import { sentencesEs } from '../../../core/machines/list.ts';
import type { DiagnosticSentence } from '../../text/diagnostic-text.ts';
import { diagnosticSentences as englishMessages } from '../en/diagnostics.ts';
import { english } from '../en/english.ts';
import { unknownName } from '../unknown-name.ts';
import { diagnosticSentences as spanishMessages } from './diagnostics.ts';
import { spanish } from './spanish.ts';

/** Messages as sentences of their own: `scale-range.what`, `scale-range.here` and so on. */
const flat = (messages: Readonly<Record<string, DiagnosticSentence>>): Readonly<Record<string, string>> =>
  Object.fromEntries(
    Object.entries(messages).flatMap(([code, { what, here, why, help }]) => [
      [`${code}.what`, what],
      [`${code}.here`, here],
      [`${code}.why`, why],
      [`${code}.help`, help],
    ]),
  );

const messages = { en: flat(englishMessages), es: flat(spanishMessages) };
const all = {
  en: { ...english.sentences, ...messages.en },
  es: { ...spanish.sentences, ...messages.es },
};

const factsOf = (template: string): readonly string[] =>
  [...new Set([...template.matchAll(/\{([^{}@]+)(?:@[^{}]+)?\}/g)].map(([, name]) => name ?? ''))].sort();

/** What is said to the reader: without facts and without what stands in a file, which is English. */
const spoken = (template: string): string =>
  template
    .replace(/"[^"]*"/g, ' ')
    .replace(/\{[^{}]*\}/g, ' ')
    .toLowerCase();

/** Words that no Spanish sentence has. */
const ENGLISH =
  /(?<!\p{L})(the|of|and|is|it|its|to|with|from|on|in|at|that|this|for|an|are|be|not|by|or)(?!\p{L})/u;
/** Sentences that name what is written in the files, and quote it without marks. */
const QUOTE_FILES = new Set([
  'activity.field.role',
  'carriage.field.faces',
  'incline.field.propped-at',
  'readings.no-heading',
  'setup.field.read',
  'wedge.field.kind',
  'file.field.decimal',
  'screw.field.thread',
  'lever.off-the-bar.help',
  'last-digit-decides.why',
]);

describe('Spanish beside English', () => {
  test('every English sentence and message has a Spanish one, and none is left over', () => {
    const missing = Object.entries(all.en).filter(([key]) => !Object.hasOwn(all.es, key));
    expect(missing.map(([key, text]) => `${key}: ${text}`)).toEqual([]);
    expect(Object.keys(all.es).filter((key) => !Object.hasOwn(all.en, key))).toEqual([]);
  });

  test('both ask for the same facts', () => {
    const differ = Object.entries(all.en).filter(
      ([key, text]) => factsOf(text).join() !== factsOf(all.es[key] ?? text).join(),
    );
    expect(differ.map(([key, text]) => [key, factsOf(text), factsOf(all.es[key] ?? '')])).toEqual([]);
  });

  test('a fact that is said as a word has a list of words', () => {
    const lists = Object.values(all.es).flatMap((text) =>
      [...text.matchAll(/\{[^{}@]+@([^{}]+)\}/g)].map(([, list]) => list ?? ''),
    );
    expect(lists.length).toBeGreaterThan(5);
    for (const list of lists)
      expect(
        Object.keys(spanish.sentences).some((key) => key.startsWith(`${list}.`)),
        list,
      ).toBe(true);
  });

  test('no English is left standing', () => {
    const left = Object.entries(all.es).filter(
      ([key, text]) => !QUOTE_FILES.has(key) && ENGLISH.test(spoken(text)),
    );
    expect(left).toEqual([]);
  });

  test('what reads alike in both languages is a word that both have', () => {
    const alike = Object.entries(all.es).filter(
      ([key, text]) => text === all.en[key] && /\p{L}{3}/u.test(text.replace(/\{[^{}]*\}/g, '')),
    );
    const inBoth = ['1 error', 'Kit', 'Newtons', 'bar; weight of 200 g; spring scale to 2.5 N', 'error'];
    expect([...new Set(alike.map(([, text]) => text.replace(/\s*\{[^{}]*\}/g, '')))].sort()).toEqual(inBoth);
  });
});

/** One doing each: what a hand is told to do, as Spanish tells it to one person. */
const DOINGS =
  'Apoya|Ata|Baja|Borra|Coloca|Cuelga|Cuenta|Deja|Devuelve|Dibuja|Empuja|Engancha|Enlaza|Enrolla|Escribe|Gira|Golpea|Inclina|Junta|Lee|Mantén|Mete|Mide|Monta|Pasa|Pon|Ponte|Quita|Saca|Suelta|Sube|Tensa|Toma|Sujeta|Tira';
const BEGINS_WITH_DOING = new RegExp(`^(${DOINGS})(?!\\p{L})`, 'u');
const DOING = new RegExp(`(?<!\\p{L})(${DOINGS})(?!\\p{L})`, 'giu');

describe('Spanish steps', () => {
  const steps = Object.entries(sentencesEs).filter(([key]) => /\.(step|reset)\./.test(key));

  test('a step begins with what the hand does, has one such word and at most twelve words', () => {
    expect(steps.length).toBeGreaterThan(80);
    for (const [key, text] of steps) {
      expect(text, key).toMatch(BEGINS_WITH_DOING);
      expect(
        [...text.matchAll(DOING)].map(([word]) => word.toLowerCase()),
        key,
      ).toHaveLength(1);
      expect(text.split(/\s+/).length, key).toBeLessThanOrEqual(12);
      expect(text, key).toMatch(/\.$/);
    }
  });

  test('the hand is always spoken to as one person who is known', () => {
    const formal = /\b(usted|ustedes|vosotros|vuestr[oa]s?|cuelgue|tire|ponga|lea|mida|enganche)\b/i;
    expect(steps.filter(([, text]) => formal.test(text))).toEqual([]);
    expect(Object.entries(all.es).filter(([, text]) => /\b(usted|vosotros)\b/i.test(text))).toEqual([]);
  });
});

test('an unknown reads well after "Mide"', () => {
  expect(unknownName('es', 'oak/pin diameter')).toBe('el diámetro del pasador de oak');
  expect(unknownName('es', 'kind:bearing/dry pin')).toBe('el rozamiento de un pasador seco');
  expect(unknownName('es', 'kind:friction/wood on wood/ratio')).toBe(
    'la razón entre el rozamiento al arrancar y al moverse de madera sobre madera',
  );
  expect(unknownName('es', 'D1/stage 2 fulcrum at')).toBe('el lugar del fulcro en la etapa 2 de D1');
  expect(unknownName('es', 'keel/faces at the start')).toBe(
    'el rozamiento bajo keel justo antes de que se mueva',
  );
});
