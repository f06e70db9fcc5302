import { expect, test } from 'vitest';
import type { Field } from '../../core/description/fields.ts';
import { machines } from '../../core/machines/list.ts';
import { bearingKinds } from '../../core/sources/bearing.ts';
import { frictionKinds } from '../../core/sources/friction.ts';
import { rollingKinds } from '../../core/sources/rolling.ts';
import { sheaveKinds } from '../../core/sources/sheave.ts';
import { vocabulary } from '../../core/words.ts';
import { factText, fillIn, hasSentence, sentence } from './sentence.ts';
import { unknownName } from './unknown-name.ts';

test('a key without a sentence is a loud fault', () => {
  expect(() => sentence('en', 'no.such-key')).toThrow('no.such-key');
});

test('a sentence that lacks a fact is a loud fault', () => {
  expect(() => fillIn('en', 'through hole {hole}', {})).toThrow('hole');
});

test('quantities in a sentence take a unit that fits their size', () => {
  const text = (si: number, dimension: 'length' | 'mass' | 'force' | 'angle', u?: number) =>
    factText('en', u === undefined ? { si, dimension } : { si, dimension, u });
  expect(text(0.0015, 'length')).toBe('1.5 mm');
  expect(text(0.3, 'length')).toBe('30 cm');
  expect(text(2.5, 'length')).toBe('2.5 m');
  expect(text(0.118, 'mass')).toBe('118 g');
  expect(text(1.25, 'mass')).toBe('1.25 kg');
  expect(text(Math.PI / 6, 'angle')).toBe('30°');
  expect(text(1.61803, 'force', 0.04)).toBe('1.62 N');
  expect(text(1.61803, 'force', 0.3)).toBe('1.6 N');
});

test('lists are joined as they are spoken', () => {
  expect(factText('en', [])).toBe('nothing');
  expect(factText('en', ['red'])).toBe('red');
  expect(factText('en', ['red', 'blue', 'teal'])).toBe('red, blue and teal');
});

test('an unknown is named by its field and part, its kind, or its own name', () => {
  expect(unknownName('en', 'oak/pin diameter')).toBe('diameter of the pin of oak');
  expect(unknownName('en', 'kind:bearing/dry pin')).toBe('friction of a dry pin');
  expect(unknownName('en', 'kind:friction/wood on wood/ratio')).toBe(
    'ratio of starting to moving friction of wood on wood',
  );
  expect(unknownName('en', 'reading/hand scatter')).toBe('hand scatter');
  expect(unknownName('en', 'slipway/pin heights 3')).toBe('height of pin 3 of slipway');
  expect(unknownName('en', 'D1/stage 2 fulcrum at')).toBe('place of the fulcrum in stage 2 of D1');
  expect(unknownName('en', 'keel/faces at the start')).toBe('friction under keel just before it moves');
});

test('every number that the files can leave in doubt has a name of its own', () => {
  const isNumber = (field: Field): boolean => /^(quantity|quantities|position|sourced)$/.test(field.type);
  const all = [
    ...vocabulary.partKinds.map((kind) => kind.fields),
    ...machines.map((machine) => machine.fields),
    vocabulary.setupFields,
  ].flatMap((fields) =>
    Object.entries(fields)
      .filter(([, field]) => isNumber(field))
      .map(([name]) => name),
  );
  expect(all.length).toBeGreaterThan(70);
  expect([...new Set(all)].filter((name) => !hasSentence('en', `unknown.field.${name}`))).toEqual([]);
});

test('every sourced kind reads well after "measure the"', () => {
  const ids = [
    ...frictionKinds.flatMap(({ name }) => [`friction/${name}`, `friction/${name}/ratio`]),
    ...bearingKinds.map(({ name }) => `bearing/${name}`),
    ...rollingKinds.map(({ name }) => `rolling/${name}`),
    ...sheaveKinds.flatMap(({ name }) => [`sheave/${name}/share`, `sheave/${name}/constant`]),
  ];
  for (const id of ids)
    expect(unknownName('en', `kind:${id}`)).toMatch(/^(friction|ratio|rolling drag|share|drag) of [^:/]+$/);
});
