import { describe, expect, test } from 'vitest';
import type { Filled, FilledValue } from '../../description/fields.ts';
import { type Kilograms, kilograms, radians, ratio } from '../../quantities/brands.ts';
import { measured } from '../../uncertainty/measured.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import type { Part, Preparation } from '../machine.ts';
import { diagnostics as texts } from './diagnostics.en.ts';
import { limits } from './limits.ts';
import { makeTackle } from './make.ts';
import { mistakes } from './mistakes.ts';
import { sentences } from './sentences.en.ts';
import type { Tackle } from './station.ts';

const block = (mark: string, sheaves: number, more: Filled = {}): Part => ({
  mark,
  kind: 'pulley block',
  fields: { sheaves: { type: 'count', count: sheaves }, ...more },
});
const guide: Part = { mark: 'g', kind: 'guide pulley', fields: {} };
const angle = (value: number): FilledValue => ({
  type: 'quantity',
  measured: measured(radians(value), { id: 's/parts lean', u: 0, shape: 'even', origin: 'stated' }),
  dimension: 'angle',
  written: '',
});
const prepare = (
  parts: number,
  fall: Tackle['fallLeaves'],
  slots: Preparation['parts'],
  more: Filled = {},
): Preparation => ({
  parts: slots,
  fields: {
    'parts of line': { type: 'count', count: parts },
    'fall leaves': { type: 'choice', choice: fall },
    ...more,
  },
  place: (field) => ({ file: 'activity', path: field === null ? [] : [field], on: 'value' }),
  partPlace: (slot, field) => ({ file: 'kit', path: [slot, field ?? ''], on: 'value' }),
});
const codes = (preparation: Preparation): readonly string[] =>
  makeTackle(preparation).diagnostics.map((each) => each.code);
const made = (preparation: Preparation): Tackle => {
  const { station, diagnostics } = makeTackle(preparation);
  if (station === null) throw new Error(JSON.stringify(diagnostics));
  return station;
};
const double = { 'fixed block': block('a', 2), 'moving block': block('b', 2) };

describe('a tackle from the kit', () => {
  test('takes what its blocks can carry, and leaves sheaves unused where fewer parts are asked for', () => {
    expect(made(prepare(4, 'fixed block', double)).parts).toBe(4);
    expect(made(prepare(2, 'fixed block', double)).sheaves).toEqual({ fixed: 2, moving: 2 });
  });

  test('refuses more parts of line than its blocks can carry, and says how many they can', () => {
    const { diagnostics } = makeTackle(prepare(5, 'fixed block', double));
    expect(diagnostics).toMatchObject([
      { code: 'tackle.too-few-sheaves', facts: { block: 'fixed block', needed: 3, has: 2, most: 4 } },
    ]);
  });

  test('refuses to do without a block that the line has to pass', () => {
    expect(codes(prepare(2, 'fixed block', { 'fixed block': block('a', 1) }))).toEqual([
      'tackle.block-missing',
    ]);
    expect(codes(prepare(1, 'fixed block', {}))).toEqual(['tackle.block-missing']);
  });

  test('refuses a single part off the moving block, and a moving block that nothing uses', () => {
    expect(codes(prepare(1, 'moving block', double))).toEqual(['tackle.no-tackle']);
    expect(codes(prepare(1, 'fixed block', double))).toEqual(['tackle.idle-block']);
  });

  test('refuses a pull that the line would have to be bent for', () => {
    const up: Filled = { pull: { type: 'choice', choice: 'up' } };
    expect(codes(prepare(2, 'fixed block', double, up))).toEqual(['tackle.pull-direction']);
    expect(codes(prepare(2, 'fixed block', { ...double, 'guide pulley': guide }, up))).toEqual([]);
    const down: Filled = { pull: { type: 'choice', choice: 'down' } };
    expect(codes(prepare(2, 'moving block', double, down))).toEqual(['tackle.pull-direction']);
  });

  test('refuses a lean of a single part of line', () => {
    const single = { 'fixed block': guide };
    expect(codes(prepare(1, 'fixed block', single, { 'parts lean': angle(0.2) }))).toEqual([
      'tackle.lean-of-one-part',
    ]);
  });

  test('refuses a sheave whose drag is stated twice', () => {
    const figure: FilledValue = {
      type: 'quantity',
      measured: measured(ratio(0.1), { id: 'x', u: 0, shape: 'even', origin: 'stated' }),
      dimension: 'ratio',
      written: '0.1',
    };
    const twice = { 'fixed block': block('a', 1, { efficiency: figure, 'drag share': figure }) };
    expect(codes(prepare(1, 'fixed block', twice))).toEqual(['sheave.stated-twice']);
  });

  test('assumes the mass of a moving block that nobody weighed', () => {
    const { blockMass } = made(prepare(2, 'fixed block', double)).inputs;
    expect(blockMass.parts[0]?.unknown).toMatchObject({ id: 'b/mass', origin: 'assumed' });
    const weighed: FilledValue = {
      type: 'quantity',
      measured: measured<Kilograms>(kilograms(0.028), { id: 'b/mass', u: 0, shape: 'even', origin: 'bare' }),
      dimension: 'mass',
      written: '28 g',
    };
    const known = { 'fixed block': block('a', 1), 'moving block': block('b', 1, { mass: weighed }) };
    expect(made(prepare(2, 'fixed block', known)).inputs.blockMass.value).toBe(0.028);
  });

  test('is pulled down off the fixed block and up off the moving one, unless a guide pulley turns it', () => {
    expect(made(prepare(2, 'fixed block', double)).pull).toBe('down');
    expect(made(prepare(2, 'moving block', { 'moving block': block('b', 1) })).pull).toBe('up');
    expect(made(prepare(2, 'moving block', { ...double, 'guide pulley': guide })).pull).toBe('down');
  });

  test('warns of parts that lean far', () => {
    const leaning = made(prepare(2, 'fixed block', double, { 'parts lean': angle(0.5) }));
    const place: Preparation['place'] = () => ({ file: 'a', path: [], on: 'value' });
    expect(limits(leaning, atBest, null as never, place).map((each) => each.code)).toEqual([
      'tackle.leaning-parts',
    ]);
    expect(limits(made(prepare(2, 'fixed block', double)), atBest, null as never, place)).toEqual([]);
  });
});

describe('usual mistakes', () => {
  const change = (code: string, station: Tackle): Tackle | null =>
    mistakes.find((mistake) => mistake.code === code)?.change(station) ?? null;

  test('change the parts of line only where the blocks on the table allow it', () => {
    const full = made(prepare(4, 'fixed block', double));
    expect(change('tackle.one-part-fewer', full)?.parts).toBe(3);
    expect(change('tackle.one-part-more', full)).toBeNull();
    expect(change('tackle.fall-off-the-other-block', full)?.fallLeaves).toBe('moving block');
    const two = made(prepare(2, 'fixed block', double));
    expect(change('tackle.one-part-fewer', two)).toBeNull();
  });

  test('and faults have their English sentence', () => {
    const keys = mistakes.map(({ code }) => code.replace('tackle.', 'tackle.mistake.'));
    expect(Object.keys(sentences)).toEqual(expect.arrayContaining(keys));
    expect(Object.keys(texts)).toHaveLength(7);
  });
});
