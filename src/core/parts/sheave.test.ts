import { describe, expect, test } from 'vitest';
import type { Filled } from '../description/fields.ts';
import type { Place } from '../diagnostics/diagnostic.ts';
import { ratio } from '../quantities/brands.ts';
import { easeOver, haulOver } from '../statics/sheave.ts';
import { covariance, measured, standardUncertainty } from '../uncertainty/measured.ts';
import { atBest, atShifted } from '../uncertainty/propagate.ts';
import { guidePulley, sheaveFaults, sheaveOf } from './sheave.ts';

const part = (mark: string, fields: Filled) => ({ mark, kind: 'guide pulley', fields });
const stated = (id: string, value: number, u: number) =>
  ({
    type: 'quantity',
    measured: measured(ratio(value), { id, u, shape: 'normal', origin: 'stated' }),
    dimension: 'ratio',
    written: `${value}`,
  }) as const;

describe('a sheave in the kit', () => {
  test('of which nothing is said is a small pulley on a plain pin, and that is shown as assumed', () => {
    const { share, constant } = sheaveOf(part('a', {}));
    expect([...share.parts, ...constant.parts].map(({ unknown }) => [unknown.id, unknown.origin])).toEqual([
      ['kind:sheave/small pulley on a plain pin/share', 'assumed'],
      ['kind:sheave/small pulley on a plain pin/constant', 'assumed'],
    ]);
  });

  test('of the same kind as another shares its unknown with it', () => {
    const a = sheaveOf(part('a', {}));
    const b = sheaveOf(part('b', { sheave: { type: 'choice', choice: 'small pulley on a plain pin' } }));
    expect(covariance(a.share, b.share)).toBeCloseTo(standardUncertainty(a.share) ** 2, 15);
  });

  test('with a stated efficiency passes on just that, and no constant drag is added', () => {
    const { share, constant } = sheaveOf(part('a', { efficiency: stated('a/efficiency', 0.9, 0.02) }));
    expect(1 / haulOver(1 as never, atBest(share), atBest(constant))).toBeCloseTo(0.9, 12);
    expect(easeOver(1 as never, atBest(share), atBest(constant))).toBeCloseTo(0.9, 12);
    const better = atShifted('a/efficiency', 0.001);
    expect(easeOver(1 as never, better(share), better(constant))).toBeCloseTo(0.901, 5);
  });

  test('with a stated drag share keeps it as it is', () => {
    expect(sheaveOf(part('a', { 'drag share': stated('a/drag share', 0.07, 0.01) })).share.value).toBe(0.07);
  });

  test('can have its drag stated once only', () => {
    const place = (field: string): Place => ({ file: 'kit', path: ['a', field], on: 'value' });
    const both = part('a', { efficiency: stated('e', 0.9, 0), 'drag share': stated('s', 0.07, 0) });
    expect(sheaveFaults(both, place).map((fault) => fault.code)).toEqual(['sheave.stated-twice']);
    expect(sheaveFaults(part('b', {}), place)).toEqual([]);
  });

  test('is offered by the kinds of the sourced table', () => {
    expect(guidePulley.fields.sheave).toMatchObject({ of: expect.arrayContaining(['bronze bush']) });
  });
});
