import { describe, expect, test } from 'vitest';
import { prepared, quantity, sourced } from '../../../../test/stations/filled.ts';
import { balanceUnder } from '../../../../test/stations/incline.ts';
import type { Filled } from '../../description/fields.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import type { Part } from '../machine.ts';
import { diagnostics as texts } from './diagnostics.en.ts';
import { fields } from './fields.ts';
import { drag } from './index.ts';
import { makeDrag } from './make.ts';
import { sentences } from './sentences.en.ts';
import type { Drag } from './station.ts';

const block: Part = {
  mark: 'k1',
  kind: 'block',
  fields: { mass: quantity('k1/mass', 0.2, 'mass'), faces: sourced(0.4, 0.5, '', 'wood on wood') },
};
const guide: Part = { mark: 'g1', kind: 'guide pulley', fields: {} };
const degrees = (id: string, value: number) => quantity(id, (value * Math.PI) / 180, 'angle');
const high: Filled = {
  'pulley above the hook': quantity('s/pulley', 0.03, 'length'),
  'read at': quantity('s/read at', 0.4, 'length'),
};
const make = (fieldsOf: Filled, parts: Record<string, Part> = { 'rides on': block }) =>
  makeDrag(prepared(parts, fieldsOf));
const made = (...args: Parameters<typeof make>): Drag => {
  const { station, diagnostics } = make(...args);
  if (station === null) throw new Error(JSON.stringify(diagnostics));
  return station;
};
const guided = { 'rides on': block, 'guide pulley': guide };

describe('a load to drag on the level', () => {
  test('is made from what it rides on; its own mass is dragged along', () => {
    expect(balanceUnder(made({}), 0).effort).toBeCloseTo(0.4 * 0.2 * 9.80665, 12);
  });

  test('is refused with a string that contradicts itself', () => {
    expect(make(high).diagnostics.map(({ code }) => code)).toEqual(['string.no-pulley']);
    expect(make(high, guided).diagnostics).toEqual([]);
    expect(make({ 'string leans': degrees('s/leans', 95) }).station).toBeNull();
  });

  test('warns of a string that lifts nearly as much as it drags', () => {
    const codesAt = (lean: number) => {
      const station = made({ 'string leans': degrees('s/leans', lean) });
      return drag
        .limits(station, atBest, balanceUnder(station, 2), prepared({}, {}).place)
        .map(({ code, at }) => [code, at.path[0]]);
    };
    expect(codesAt(50)).toEqual([['drag.leans-much', 'string leans']]);
    expect(codesAt(10)).toEqual([]);
    expect(Object.keys(texts)).toContain('drag.leans-much');
  });

  test('goes wrong with a hand too high, or read too near a high pulley', () => {
    const changed = (code: string, station: Drag) =>
      drag.mistakes.find((each) => each.code === code)?.change(station) ?? null;
    const pulled = changed('drag.string-not-level', made({}));
    if (pulled === null) throw new Error('no change');
    const lean = Math.PI / 12;
    const [wrong, right] = [balanceUnder(pulled, 2).effort, balanceUnder(made({}), 2).effort];
    expect(wrong / right).toBeCloseTo(1 / (Math.cos(lean) + 0.4 * Math.sin(lean)), 12);
    expect(changed('drag.string-not-level', made({}, guided))).toBeNull();
    const near = changed('drag.read-too-near', made(high, guided));
    expect(near?.string === 'comes from the pulley' && near.inputs.readAt.value).toBe(0.2);
    expect(changed('drag.read-too-near', made({}))).toBeNull();
  });

  test('has a sentence for every key it uses, and steps of at most twelve words', () => {
    const stations = [made({}), made(high, guided)];
    const keys = stations.flatMap((station) => [
      ...drag.steps(station).map(({ key }) => key),
      ...drag.differences(station, atBest).map(({ key }) => key),
      ...(['raise', 'lower'] as const).flatMap((way) => {
        const balance = balanceUnder(station, 2, way);
        return [...balance.working().map(({ what }) => what), ...balance.work.map(({ cause }) => cause)];
      }),
    ]);
    const all = [
      ...keys,
      ...Object.values(fields).map(({ meaning }) => meaning),
      ...drag.mistakes.map(({ code }) => code.replace('drag.', 'drag.mistake.')),
      `machine.${drag.name}`,
      `${drag.name}.about`,
      'drag.no-useful-work',
    ];
    const known = new Set([...Object.keys(sentences), 'effort']);
    expect([...new Set(all)].filter((key) => !known.has(key))).toEqual([]);
    for (const station of stations)
      for (const { key } of drag.steps(station)) {
        const sentence: string = sentences[key as keyof typeof sentences];
        expect(sentence.split(' ').length, sentence).toBeLessThanOrEqual(12);
      }
  });

  test('is drawn on the ground, the string level by hand and down from a guide pulley', () => {
    const scaleOf = (station: Drag) => {
      const effort = drag.drawing(station, atBest).shapes.find((each) => each.shape === 'effort');
      return effort?.shape === 'effort' ? [effort.direction, effort.scale] : null;
    };
    expect(scaleOf(made({}))).toEqual([0, 'level']);
    expect(scaleOf(made({}, guided))).toEqual([-Math.PI / 2, 'upside down']);
    expect(scaleOf(made({ 'string leans': degrees('s/leans', 20) }))).toEqual([
      Math.PI / 9,
      'along the slope',
    ]);
  });
});
