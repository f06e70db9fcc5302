import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import {
  angle,
  block,
  cart,
  DEGREE,
  guide,
  hole,
  length,
  made,
  type make,
} from '../../../../test/stations/board.ts';
import { prepared, sourced } from '../../../../test/stations/filled.ts';
import { balanceUnder } from '../../../../test/stations/incline.ts';
import { carriageKinds } from '../../parts/carriage.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import { diagnostics as texts } from './diagnostics.en.ts';
import { board as boardKind, fields } from './fields.ts';
import { inclinedPlane } from './index.ts';
import { sentences } from './sentences.en.ts';
import { angleOf, type InclinedPlane } from './station.ts';

describe('limits', () => {
  const limitsOf = (...args: Parameters<typeof make>) => {
    const station = made(...args);
    const place = prepared({}, {}).place;
    return inclinedPlane.limits(station, atBest, balanceUnder(station, 2), place).map(({ code }) => code);
  };
  test('warn of a board that is nearly level or very steep, and of reading close to a high pulley', () => {
    expect(limitsOf({ angle: angle(3) })).toEqual(['incline.nearly-level']);
    expect(limitsOf({ angle: angle(20) })).toEqual([]);
    expect(limitsOf({ angle: angle(70) })).toEqual(['incline.steep']);
    const near = { 'pulley above the hook': length('s/pulley', 0.03), 'read at': length('s/read at', 0.1) };
    expect(limitsOf({ ...hole(3), ...near }, cart, { 'guide pulley': guide })).toEqual([
      'incline.read-too-near',
    ]);
  });
});

describe('usual mistakes', () => {
  const changed = (code: string, station: InclinedPlane) =>
    inclinedPlane.mistakes.find((each) => each.code === code)?.change(station) ?? null;

  test('put the board one pin higher or lower, as far as there are pins', () => {
    const station = made(hole(3));
    const higher = changed('incline.pin-too-high', station);
    expect(higher === null ? null : angleOf(higher, atBest)).toBeCloseTo(Math.asin(0.25 / 0.8), 12);
    expect(changed('incline.pin-too-low', made(hole(1)))).toBeNull();
    expect(changed('incline.pin-too-high', made(hole(6)))).toBeNull();
    expect(changed('incline.pin-too-high', made({ angle: angle(20) }))).toBeNull();
  });

  test('pull ten degrees off the board by hand: 1.5 percent more on wheels, as 1/cos 10 says', () => {
    const station = made({ angle: angle(30) });
    const off = changed('incline.string-not-along', station);
    if (off === null) throw new Error('no change');
    const ideal = (each: InclinedPlane) => balanceUnder(each, 2, 'raise', 'none').effort;
    expect(ideal(off) / ideal(station)).toBeCloseTo(1 / Math.cos(10 * DEGREE), 12);
    expect(changed('incline.string-not-along', made(hole(3), cart, { 'guide pulley': guide }))).toBeNull();
  });

  test('read too near a high pulley, at half the distance', () => {
    const high = { 'pulley above the hook': length('s/pulley', 0.03), 'read at': length('s/read at', 0.4) };
    const near = changed(
      'incline.read-too-near',
      made({ ...hole(3), ...high }, cart, { 'guide pulley': guide }),
    );
    expect(near?.string === 'comes from the pulley' && near.inputs.readAt.value).toBe(0.2);
    expect(changed('incline.read-too-near', made(hole(3)))).toBeNull();
  });
});

describe('the paper of an inclined plane', () => {
  const stations = [
    made(hole(3)),
    made({ angle: angle(20), 'string leans': angle(5) }, block),
    made({ rise: length('s/rise', 0.3) }, cart, { 'guide pulley': guide }),
    made(
      { ...hole(2), 'pulley above the hook': length('s/pulley', 0.03), 'read at': length('s/read at', 0.4) },
      {
        ...cart,
        kind: 'rollers',
        fields: { diameter: length('r/diameter', 0.01), 'arm below': sourced(0.001, 0.001) },
      },
      { 'guide pulley': guide },
    ),
  ];

  test('has a sentence for every key it uses', () => {
    const keys = stations.flatMap((station) => {
      const both = (['raise', 'lower'] as const).map((way) => balanceUnder(station, 2, way));
      return [
        ...inclinedPlane.steps(station).map(({ key }) => key),
        ...inclinedPlane.differences(station, atBest).map(({ key }) => key),
        ...both.flatMap((balance) => [
          ...balance.working().map(({ what }) => what),
          ...balance.work.map(({ cause }) => cause),
        ]),
        ...inclinedPlane
          .drawing(station, atBest)
          .shapes.flatMap((each) => (each.shape === 'label' ? [each.key] : [])),
      ];
    });
    const meanings = [boardKind, ...carriageKinds].flatMap((kind) => [
      kind.meaning,
      ...Object.values(kind.fields).map(({ meaning }) => meaning),
    ]);
    const all = [
      ...keys,
      ...meanings,
      ...Object.values(fields).map(({ meaning }) => meaning),
      ...inclinedPlane.mistakes.map(({ code }) => code.replace('incline.', 'incline.mistake.')),
      `machine.${inclinedPlane.name}`,
      `${inclinedPlane.name}.about`,
      'slope.jams',
      'slope.lifts-off',
      'incline.ideal-advantage',
    ];
    const general = ['effort', 'load', 'field.length', 'field.mass'];
    const known = new Set([...Object.keys(sentences), ...general]);
    expect([...new Set(all)].filter((key) => !known.has(key))).toEqual([]);
  });

  test('pulls along the board, at the angle of a string that leans, or beyond the pulley', () => {
    const last = stations.slice(0, 3).map((station) => inclinedPlane.steps(station).at(-1)?.key);
    expect(last).toEqual(['incline.step.pull-along', 'string.step.pull-leaning', 'string.step.pull-down']);
  });

  test('is read at its place where the string comes from a pulley, and anywhere else where it does not', () => {
    const read = (way: 'raise' | 'lower' | 'held' | 'start') =>
      stations.map((station) => inclinedPlane.reading?.(station, way)?.map(({ key }) => key) ?? null);
    expect(read('raise')).toEqual([null, null, null, ['string.step.read-at-rollers']]);
    expect(read('lower')[3]).toEqual(['carriage.step.creep-rollers', 'string.step.read-at-rollers']);
    for (const way of ['held', 'start'] as const)
      expect(read(way)[3]?.[0]).toBe('string.step.hold-at-rollers');
  });

  test('gives up its load before something else rides', () => {
    const [cart1, block1] = stations;
    if (cart1 === undefined || block1 === undefined) throw new Error('no stations');
    const keys = (to: typeof cart1) => inclinedPlane.between?.(cart1, to).map(({ key }) => key);
    expect(keys(block1)).toEqual(['carriage.step.unload-wheels']);
    expect(keys(cart1)).toEqual([]);
  });

  test('has steps of one action in at most twelve words', () => {
    for (const station of stations)
      for (const { key } of inclinedPlane.steps(station)) {
        const sentence: string = sentences[key as keyof typeof sentences];
        expect(sentence.split(' ').length, sentence).toBeLessThanOrEqual(12);
      }
  });

  test('has a message for each code that its maker, its parts and its limits can give, and no other', () => {
    const emitted = ['make.ts', 'limits.ts', '../../parts/carriage.ts', '../../parts/guided-pull.ts']
      .map((file) => readFileSync(new URL(file, import.meta.url), 'utf8'))
      .flatMap((text) =>
        [...text.matchAll(/'((?:incline|carriage|string)\.[a-z-]+)'/g)].map(([, code]) => code),
      )
      // Meanings of fields are sentence keys with one more dot, so they do not match.
      .filter((code) => code !== undefined);
    expect([...new Set(emitted)].sort()).toEqual(Object.keys(texts).sort());
  });

  test('draws the board to scale, the scale where the hand pulls', () => {
    for (const station of stations) {
      const { shapes } = inclinedPlane.drawing(station, atBest);
      const drawn = shapes.find((each) => each.shape === 'body' && each.role === 'board');
      if (drawn?.shape !== 'body') throw new Error('no board');
      const [lower, upper] = drawn.outline;
      if (lower === undefined || upper === undefined) throw new Error('no outline');
      expect(Math.hypot(upper[0] - lower[0], upper[1] - lower[1])).toBeCloseTo(0.9, 12);
      const effort = shapes.find((each) => each.shape === 'effort');
      if (effort?.shape !== 'effort') throw new Error('no effort');
      expect(effort.direction).toBeCloseTo(inclinedPlane.slope?.(station, atBest) ?? Number.NaN, 12);
      expect(effort.scale).toBe(station.guide === null ? 'along the slope' : 'upside down');
    }
  });
});
