import { describe, expect, test } from 'vitest';
import { windlassStation } from '../../../../test/stations/windlass.ts';
import type { Filled, FilledValue } from '../../description/fields.ts';
import { metres, ratio } from '../../quantities/brands.ts';
import { exactly, measured } from '../../uncertainty/measured.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import { diagnostics as texts } from './diagnostics.en.ts';
import { limits } from './limits.ts';
import { makeWindlass } from './make.ts';
import { mistakes } from './mistakes.ts';
import { sentences } from './sentences.en.ts';
import type { Windlass } from './station.ts';

const length = (id: string, value: number): FilledValue => ({
  type: 'quantity',
  measured: measured(metres(value), { id, u: 0.0001, shape: 'even', origin: 'bare' }),
  dimension: 'length',
  written: '',
});
const part = (fields: Filled): Preparation['parts'] => ({
  windlass: {
    mark: 'w',
    kind: 'windlass',
    fields: {
      'axle diameter': length('w/axle diameter', 0.016),
      'bearing friction': {
        type: 'sourced',
        sourced: { moving: exactly(ratio(0.2)), starting: exactly(ratio(0.25)) },
        written: 'dry pin',
      },
      ...fields,
    },
  },
});
const wheel = { 'wheel diameter': length('w/wheel diameter', 0.12) };
const crank = { 'crank length': length('w/crank length', 0.08) };
const prepare = (parts: Preparation['parts'], fields: Filled = {}): Preparation => ({
  parts,
  fields,
  place: (field) => ({ file: 'activity', path: field === null ? [] : [field], on: 'value' }),
  partPlace: (slot, field) => ({ file: 'kit', path: [slot, field ?? ''], on: 'value' }),
});
const codes = (preparation: Preparation): readonly string[] =>
  makeWindlass(preparation).diagnostics.map((each) => each.code);
const made = (preparation: Preparation): Windlass => {
  const { station, diagnostics } = makeWindlass(preparation);
  if (station === null) throw new Error(JSON.stringify(diagnostics));
  return station;
};
const turnedBy = (choice: string): Filled => ({ 'turned by': { type: 'choice', choice } });

describe('a windlass from the kit', () => {
  test('is measured across, and turned by the wheel or crank that it has', () => {
    const { inputs, turnedBy: by, pull } = made(prepare(part(wheel)));
    expect([inputs.wheelRadius.value, inputs.axleRadius.value, by, pull]).toEqual([
      0.06,
      0.008,
      'wheel',
      'down',
    ]);
    expect(made(prepare(part(crank))).inputs.wheelRadius.value).toBe(0.08);
    expect(made(prepare(part(crank))).inputs.wheelLine.value).toBe(0);
  });

  test('with wheel and crank has to be told which of them turns it', () => {
    expect(codes(prepare(part({ ...wheel, ...crank })))).toEqual(['windlass.wheel-or-crank']);
    expect(made(prepare(part({ ...wheel, ...crank }), turnedBy('crank'))).turnedBy).toBe('crank');
  });

  test('refuses to be turned by what it has not got', () => {
    expect(codes(prepare(part(wheel), turnedBy('crank')))).toEqual(['windlass.no-crank']);
    expect(codes(prepare(part(crank), turnedBy('wheel')))).toEqual(['windlass.no-wheel']);
    expect(codes(prepare(part({})))).toEqual(['windlass.nothing-to-turn-it']);
  });

  test('refuses a bearing wider than its axle', () => {
    const wide = { ...wheel, 'bearing diameter': length('w/bearing diameter', 0.02) };
    expect(codes(prepare(part(wide)))).toEqual(['windlass.wide-bearing']);
  });

  test('assumes bearing and line where nothing is said, and keeps the one line for both where it is one', () => {
    const unsaid = made(prepare(part(wheel))).inputs;
    const ids = [unsaid.bearingRadius, unsaid.axleLine, unsaid.wheelLine].map(
      (each) => `${each.parts[0]?.unknown.id} ${each.parts[0]?.unknown.origin}`,
    );
    expect(ids).toEqual([
      'w/bearing diameter assumed',
      'w/axle line/thickness assumed',
      'w/wheel line/thickness assumed',
    ]);
    const string = { mark: 's', kind: 'line', fields: {} };
    const both = made(prepare({ ...part(wheel), 'axle line': string, 'wheel line': string })).inputs;
    expect(both.axleLine.parts[0]?.unknown).toEqual(both.wheelLine.parts[0]?.unknown);
  });

  test('warns of a line too stiff for its axle, and notes a windlass that costs force', () => {
    const place: Preparation['place'] = () => ({ file: 'a', path: [], on: 'value' });
    const found = (station: Windlass) =>
      limits(station, atBest, null as never, place).map((each) => each.code);
    expect(found(windlassStation({ wheel: 0.06, axle: 0.004, axleLine: 0.003 }))).toEqual([
      'windlass.stiff-line',
    ]);
    expect(found(windlassStation({ wheel: 0.01, axle: 0.04, axleLine: 0.001 }))).toEqual([
      'windlass.costs-force',
    ]);
    expect(found(windlassStation({ wheel: 0.06, axle: 0.008, axleLine: 0.002 }))).toEqual([]);
  });
});

describe('usual mistakes', () => {
  const change = (code: string, station: Windlass): Windlass | null =>
    mistakes.find((mistake) => mistake.code === code)?.change(station) ?? null;

  test('a line that winds on itself adds a layer, swapped lines exchange wheel and axle', () => {
    const station = windlassStation({ wheel: 0.06, axle: 0.008, wheelLine: 0.001, axleLine: 0.002 });
    expect(change('windlass.line-winds-on-itself', station)?.layers).toBe(1);
    expect(change('windlass.lines-swapped', station)?.inputs.wheelRadius.value).toBe(0.008);
    expect(change('windlass.lines-swapped', station)?.inputs.wheelLine.value).toBe(0.002);
    expect(change('windlass.lines-swapped', { ...station, turnedBy: 'crank' })).toBeNull();
  });

  test('and faults have their English sentence', () => {
    const keys = mistakes.map(({ code }) => code.replace('windlass.', 'windlass.mistake.'));
    expect(Object.keys(sentences)).toEqual(expect.arrayContaining(keys));
    expect(Object.keys(texts)).toHaveLength(7);
  });
});
