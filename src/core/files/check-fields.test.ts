import { describe, expect, it } from 'vitest';
import type { Field, Fields } from '../description/fields.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { checkFields } from './check-fields.ts';
import { readYaml } from './yaml-tree.ts';

type Draft = Field extends infer F ? (F extends Field ? Omit<F, 'meaning' | 'example'> : never) : never;
const field = (draft: Draft): Field => ({ ...draft, meaning: 'x', example: 'x' }) as Field;
const length = field({ type: 'quantity', dimensions: ['length'], least: 0, most: 1 });

function check(fields: Fields, text: string, decimal: 'point' | 'comma' = 'point') {
  const { root } = readYaml({ name: 'x', text: `${text}\n` });
  if (root === null) throw new Error('not yaml');
  const found: Diagnostic[] = [];
  const context = { file: 'x', decimal, report: (each: Diagnostic) => found.push(each) };
  const owner = { path: [], idOf: (key: string) => `oak/${key}` };
  return { ...checkFields(root, fields, owner, context), codes: found.map((each) => each.code), found };
}

describe('fields', () => {
  it('fill with a value, its unknown by mark and field, and the unit as written', () => {
    const { filled, codes } = check({ length }, 'length: 14.2 cm ± 0.1 cm');
    expect(codes).toEqual([]);
    expect(filled.length).toMatchObject({
      type: 'quantity',
      written: '14.2 cm ± 0.1 cm',
      dimension: 'length',
      unit: { symbol: 'cm', si: 0.01 },
      measured: {
        value: 0.142,
        parts: [{ unknown: { id: 'oak/length', origin: 'stated', shape: 'normal' } }],
      },
    });
  });

  it('say at once all that is wrong with them, and fill what is sound', () => {
    const fields = {
      length,
      holes: field({ type: 'count', least: 1, most: 20 }),
      at: field({ type: 'position' }),
      hangs: field({ type: 'choice', of: ['level', 'upside down'] }),
      tapped: field({ type: 'yes-no' }),
      note: field({ type: 'text' }),
    };
    const { codes, filled, isSound } = check(
      fields,
      'length: 3 m\nholes: 21\nat: 3\nhangs: levle\ntapped: true\nnote: ok\nnoote: x',
    );
    expect(codes).toEqual([
      'unknown-key',
      'above-most',
      'above-most',
      'not-a-position',
      'unknown-choice',
      'not-yes-or-no',
    ]);
    expect(filled).toEqual({ note: { type: 'text', text: 'ok' } });
    expect(isSound).toBe(false);
  });

  it('suggest the nearest key that is still free', () => {
    const { found } = check({ length, mass: field({ type: 'text' }) }, 'lenght: 3 cm');
    expect(found[0]?.facts).toMatchObject({ nearest: 'length' });
  });

  it('take a hole by its number, a place by its distance, and nothing bare', () => {
    const at = { at: field({ type: 'position' }) };
    expect(check(at, 'at: hole 3').filled.at).toEqual({ type: 'hole', hole: 3 });
    expect(check(at, 'at: 3 1/2 in').filled.at).toMatchObject({
      type: 'quantity',
      measured: { value: 0.0889 },
    });
    expect(check(at, 'at: hole 0').codes).toEqual(['not-a-position']);
    expect(check(at, 'at: 35 g').codes).toEqual(['quantity.wrong-dimension']);
  });

  it('take several quantities as a list or in one line, each with an unknown of its own', () => {
    const heights = { heights: field({ type: 'quantities', dimensions: ['length'] }) };
    const line = check(heights, 'heights: 5 cm, 10 cm').filled.heights;
    const list = check(heights, 'heights:\n  - 5 cm\n  - 10 cm').filled.heights;
    expect(line).toEqual(list);
    expect(line?.type === 'quantities' && line.measured.map((each) => each.parts[0]?.unknown.id)).toEqual([
      'oak/heights 1',
      'oak/heights 2',
    ]);
    expect(check(heights, 'heights: 5,5 cm, 10 cm', 'comma').codes).toEqual([]);
    expect(check(heights, 'heights: 5 cm, 10').codes).toEqual(['quantity.no-unit']);
  });

  it('miss what is required, at the key of what holds them', () => {
    const required = { length: { ...length, required: true as const } };
    expect(check(required, 'other: 1').codes).toEqual(['unknown-key', 'missing-key']);
  });

  it('are not filled from the names that every object has', () => {
    expect(check({ length }, 'constructor: 1\n__proto__: 2\ntoString: 3').codes).toEqual([
      'unknown-key',
      'unknown-key',
      'unknown-key',
    ]);
  });
});
