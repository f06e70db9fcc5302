import { expect, test } from 'vitest';
import { cautionRows } from '../../../core/sources/cautions.ts';
import { cautions } from './cautions.ts';

test('every sourced caution has its sentence, and no sentence is without a source', () => {
  expect(Object.keys(cautions).sort()).toEqual(cautionRows.map((row) => row.key).sort());
});

test('a caution is a sentence or a few, with no gaps left to fill', () => {
  for (const [key, text] of Object.entries(cautions)) expect(text, key).toMatch(/^[A-Z][^{}]*\.$/);
});
