import { expect, test } from 'vitest';
import { cautionRows } from '../../../core/sources/cautions.ts';
import { cautions } from './cautions.ts';

test('every sourced caution has its sentence, and no sentence is without a source', () => {
  const adult = Object.keys(cautions).filter((key) => !key.endsWith('.pupil'));
  expect(adult.sort()).toEqual(cautionRows.map((row) => row.key).sort());
});

test('every caution has a form for the card beside the one for adults', () => {
  const pupil = Object.keys(cautions).filter((key) => key.endsWith('.pupil'));
  expect(pupil.sort()).toEqual(cautionRows.map((row) => `${row.key}.pupil`).sort());
});

test('a caution is a sentence or a few, with no gaps left to fill', () => {
  for (const [key, text] of Object.entries(cautions)) expect(text, key).toMatch(/^[A-Z][^{}]*\.$/);
});
