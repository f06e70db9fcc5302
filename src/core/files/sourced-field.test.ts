import { describe, expect, it } from 'vitest';
import type { Field } from '../description/fields.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { frictionKind } from '../sources/friction.ts';
import { minus, standardUncertainty } from '../uncertainty/measured.ts';
import { assumedSourced, readSourced } from './sourced-field.ts';

type SourcedField = Extract<Field, { readonly type: 'sourced' }>;
const faces: SourcedField = {
  type: 'sourced',
  table: 'friction',
  dimensions: ['ratio'],
  meaning: 'x',
  example: 'wood on wood',
};

function read(text: string, field: SourcedField = faces, decimal: 'point' | 'comma' = 'point') {
  const found: Diagnostic[] = [];
  const context = { file: 'x', decimal, report: (each: Diagnostic) => found.push(each) };
  const value = readSourced(text, field, 'sled/faces', ['faces'], context);
  return { sourced: value?.type === 'sourced' ? value.sourced : null, found };
}

describe('friction as people write it', () => {
  it('takes the sourced range of a named kind, as one unknown that is shown as assumed', () => {
    const { sourced } = read('wood on wood');
    const [low, high] = frictionKind('wood on wood')?.moving ?? [Number.NaN, Number.NaN];
    expect(sourced?.moving.value).toBeCloseTo((low + high) / 2, 12);
    expect(sourced?.moving.parts[0]?.unknown).toMatchObject({
      id: 'kind:friction/wood on wood',
      origin: 'assumed',
      shape: 'even',
      u: (high - low) / Math.sqrt(12),
    });
  });

  it('makes the same kind one unknown wherever it is named: their difference is exactly nothing', () => {
    const [one, other] = [read('wood on wood').sourced?.moving, read('wood on wood').sourced?.moving];
    if (one === undefined || other === undefined) throw new Error('not read');
    expect(standardUncertainty(minus(one, other))).toBe(0);
  });

  it('takes one number for moving, and the ratio of the named kind for the start', () => {
    const { sourced } = read('0.3, wood on wood');
    const [low, high] = frictionKind('wood on wood')?.ratio ?? [Number.NaN, Number.NaN];
    expect(sourced?.moving.parts[0]?.unknown).toMatchObject({ id: 'sled/faces', origin: 'bare' });
    expect(sourced?.starting.value).toBeCloseTo((0.3 * (low + high)) / 2, 12);
    expect(sourced?.starting.parts.map((part) => part.unknown.id)).toEqual([
      'sled/faces',
      'kind:friction/wood on wood/ratio',
    ]);
  });

  it('starts as it moves where nothing tells the two apart', () => {
    const { sourced } = read('0.25..0.35');
    expect(sourced?.starting).toEqual(sourced?.moving);
    expect(sourced?.moving.parts[0]?.unknown).toMatchObject({ origin: 'stated', shape: 'even' });
  });

  it('takes a stated start as an unknown of its own, before a kind whose name has a comma', () => {
    const { sourced } = read('0.03 ± 0.01, starting 0.05, oiled steel on steel');
    expect(sourced?.kind).toBe('oiled steel on steel');
    expect(sourced?.starting.parts[0]?.unknown.id).toBe('sled/faces at the start');
  });

  it('tells a decimal comma from the comma between', () => {
    const { sourced } = read('0,3, starting 0,4', faces, 'comma');
    expect([sourced?.moving.value, sourced?.starting.value]).toEqual([0.3, 0.4]);
  });

  it('never starts more easily than it moves, for any sourced kind', () => {
    for (const name of ['wood on wood', 'steel on steel', 'steel on ice', 'PTFE on steel']) {
      const { sourced } = read(name);
      expect(sourced?.starting.value).toBeGreaterThanOrEqual(sourced?.moving.value ?? Number.NaN);
    }
  });

  it('takes a rolling arm where a length is wanted, and a share where a ratio is', () => {
    const rolling = (dimension: 'length' | 'ratio'): SourcedField => ({
      ...faces,
      table: 'rolling',
      dimensions: [dimension],
    });
    expect(read('steel wheel on steel', rolling('length')).sourced?.moving.value).toBeCloseTo(0.0005, 12);
    expect(read('steel wheel on steel', rolling('ratio')).found).toMatchObject([{ code: 'unknown-kind' }]);
    expect(read('steel wheel on rail', rolling('ratio')).sourced?.moving.value).toBeCloseTo(0.0025, 12);
  });

  it('points at the part of the text that is wrong', () => {
    expect(read('0.3, starting 0.4 N').found).toMatchObject([
      { code: 'quantity.wrong-dimension', at: { span: [14, 19] } },
    ]);
    expect(read('0.3, wood on wod').found).toMatchObject([
      { code: 'unknown-kind', at: { span: [5, 16] }, facts: { nearest: 'wood on wood' } },
    ]);
  });

  it('fills a field that was left out with the kind that it assumes, and nothing where it assumes none', () => {
    expect(assumedSourced({ ...faces, assumed: 'wood on wood' })).toMatchObject({
      type: 'sourced',
      written: '',
      sourced: { kind: 'wood on wood' },
    });
    expect(assumedSourced(faces)).toBeNull();
  });
});
