import { describe, expect, it } from 'vitest';
import { honestReadings } from '../../../test/stations/honest-lever.ts';
import { honestSetup, honestTables } from '../../../test/stations/honest-tables.ts';
import { leverStation } from '../../../test/stations/lever.ts';
import { type SaidOfScale, scaleOf, setupOf } from '../../../test/stations/setup.ts';
import { lever } from '../machines/lever/index.ts';
import { kilograms } from '../quantities/brands.ts';
import { predict } from '../setups/predict.ts';
import type { Outcome } from '../setups/prediction.ts';
import type { Setup } from '../setups/setup.ts';
import { exactly } from '../uncertainty/measured.ts';
import type { Judgement } from './judgement.ts';
import { judge } from './single-reading.ts';
import type { WrittenReading } from './written-reading.ts';

const G = 9.80665;
const reader = { scatter: 0.03, handLimit: null };

const written = (text: string): WrittenReading => ({
  group: 'Heron',
  setup: 'lever 1',
  written: text,
  note: '',
  line: 4,
});
const judged = (text: string, setup: Setup): Judgement => judge(written(text), setup);
/** Verdict with the most probable cause. */
const verdict = (text: string, setup: Setup): readonly [string, string | undefined] => {
  const { verdict: said, causes } = judged(text, setup);
  return [said, causes[0]?.code];
};
const expectedOf = (setup: Setup): number => {
  const outcome: Outcome = predict(setup).outcome;
  if (outcome.kind !== 'reading') throw new Error(outcome.kind);
  return outcome.expected;
};

const holes = Array.from({ length: 21 }, (_, n) => 0.05 * n);

/** 200 g that pull 1.96 N on a scale above: a bar that passes on its load, with holes each 5 cm. */
const upright = (scale: SaidOfScale = {}, more: Partial<Setup> = {}): Setup =>
  setupOf(lever, leverStation({ fulcrum: 0, load: 0.5, pull: 0.5, holes }), {
    scale: scaleOf({ accuracy: 0.05, ...scale }),
    reader,
    ...more,
  });

/** A pull of 1.96 N downward; the scale hangs upside down. */
const downward = (more: Partial<Setup> = {}): Setup =>
  setupOf(lever, leverStation({ fulcrum: 0.5, load: 0.25, pull: 0.75, holes }), {
    scale: scaleOf({ accuracy: 0.02, graduation: 0.05, movingGrams: 25, grams: 75 }),
    hang: 'upside down',
    zeroed: 'in place',
    reader,
    ...more,
  });

describe('a good reading', () => {
  it.each(['2', '2.0', '2,0', '2.0 N', '1.9 newtons', ' 2.1 N '])('may be written %s', (text) => {
    expect(verdict(text, upright())).toEqual(['good', 'good']);
  });

  it('may say grams where the scale has them: a gram on a scale is a force', () => {
    expect(judged('200 g', upright())).toMatchObject({ verdict: 'good', value: 0.2 * G });
    expect(verdict('200', upright({ range: 500, graduation: 10, unit: 'gf' }))).toEqual(['good', 'good']);
  });

  it('may lie anywhere between the limits of what is held still', () => {
    const station = leverStation({ load: 0.2, pull: 0.4, barMass: 2, pinRadius: 0.006, friction: 0.4 });
    const setup = setupOf(lever, station, { way: 'held', reader });
    const { outcome } = predict(setup);
    if (outcome.kind !== 'band') throw new Error(outcome.kind);
    for (const share of [0, 0.5, 1]) {
      const value = outcome.lower + share * (outcome.upper - outcome.lower);
      expect(judged(value.toFixed(3), setup).verdict).toBe('good');
    }
  });

  it('is the turn-over figure where the machine moves under the scale', () => {
    const station = leverStation({ load: -0.03, pull: 0.3, barMass: 1.2, pinRadius: 0.004, friction: 0.25 });
    const scale = scaleOf({ grams: 75, movingGrams: 14, graduation: 0.05 });
    const setup = setupOf(lever, station, { scale, hang: 'upside down', reader });
    expect(verdict('0.45', setup)).toEqual(['good', 'good']);
    expect(verdict('0.75', setup)).toEqual(['look again', 'scale.zero-set-in-place']);
  });

  it('is "on its stop" where the pointer rests there', () => {
    const scale = scaleOf({ movingGrams: 60, grams: 120 });
    const small = { kind: 'mass', mass: exactly(kilograms(0.01)) } as const;
    const setup = upright({}, { scale, load: small, hang: 'level' });
    expect(judged('on its stop', setup).verdict).toBe('good');
    expect(judged('0', setup).verdict).toBe('good');
    // Zeroed as it lies, it would show its 10 g.
    expect(verdict('0.1', setup)).toEqual(['look again', 'scale.zero-set-in-place']);
    expect(judged('on its stop', upright()).verdict).toBe('look again');
  });
});

describe('a wrong unit', () => {
  it.each([
    ['grams', '200'],
    ['ounces', '7.1'],
    ['kilograms', '0.2'],
    ['pounds', '0.44'],
  ])('is the likely cause where %s stand for newtons', (unit, text) => {
    expect(verdict(text, upright())).toEqual(['look again', `reading.in-${unit}`]);
  });

  it('is found on a scale in grams, too, where newtons were written', () => {
    const grams = upright({ range: 500, graduation: 10, unit: 'gf' });
    expect(verdict('1.96', grams)).toEqual(['look again', 'reading.in-newtons']);
    expect(verdict('7.1', grams)).toEqual(['look again', 'reading.in-ounces']);
  });

  it('is found where the unit is written out', () => {
    expect(verdict('200 N', upright())).toEqual(['look again', 'reading.in-grams']);
    expect(verdict('2 g', upright())).toEqual(['look again', 'reading.in-newtons']);
  });
});

describe('a scale turned upside down with its old zero', () => {
  it('shows its turn-over figure too little', () => {
    expect(verdict((0.2 * G - 0.05 * G).toFixed(2), downward())).toEqual([
      'look again',
      'scale.zero-from-hook-down',
    ]);
  });

  it('shows it too much where it was zeroed in place though the card says not to', () => {
    const setup = downward({ zeroed: 'hook down' });
    expect(expectedOf(setup)).toBeCloseTo(0.15 * G, 9);
    expect(verdict((0.2 * G).toFixed(2), setup)).toEqual(['look again', 'scale.zero-set-in-place']);
  });
});

describe('a doing mistake at the lever', () => {
  // Arms of 10 cm and 40 cm, holes each 5 cm: 400 g ask for a quarter of their weight.
  const quarter = setupOf(lever, leverStation({ fulcrum: 0.5, load: 0.4, pull: 0.9, holes }), {
    load: { kind: 'mass', mass: exactly(kilograms(0.4)) },
    scale: scaleOf({ graduation: 0.02, accuracy: 0.02, grams: 30 }),
    hang: 'upside down',
    reader,
  });

  it.each([
    ['lever.load-hole-left', 15 / 10],
    ['lever.load-hole-right', 5 / 10],
    ['lever.pull-hole-left', 40 / 35],
  ])('is told by the figure that it leads to: %s', (code, times) => {
    expect(verdict((0.1 * G * times).toFixed(2), quarter)).toEqual(['look again', code]);
  });

  it('is a reading taken while the load came back', () => {
    const station = leverStation({ load: 0.2, pull: 0.4, barMass: 2, pinRadius: 0.008, friction: 0.5 });
    const setup = setupOf(lever, station, { scale: scaleOf({ range: 20, graduation: 0.02 }), reader });
    const lower = expectedOf({ ...setup, way: 'lower' });
    expect(verdict(lower.toFixed(2), { ...setup, reader: { ...reader, scatter: 0.005 } })).toEqual([
      'look again',
      'way.lowering-for-raising',
    ]);
  });
});

describe('a reading that no mistake explains', () => {
  it.each(['3.3', '4.6', '0.9', '37'])('is unexplained: %s', (text) => {
    expect(verdict(text, upright())).toEqual(['look again', 'unexplained']);
  });

  it('is only a little off where it lies just outside the range', () => {
    const setup = upright({ graduation: 0.02 });
    const { good } = judged('2.0', setup);
    if (good === null) throw new Error('no range');
    expect(judged((good.to + 0.02).toFixed(2), setup)).toMatchObject({ verdict: 'a little off' });
    expect(judged((good.from - 0.02).toFixed(2), setup)).toMatchObject({ verdict: 'a little off' });
  });

  it('has probabilities that add up to one, the best first', () => {
    for (const text of ['2.0', '200', '3.3', '1.5', '0']) {
      const { causes } = judged(text, downward());
      const all = causes.reduce((sum, each) => sum + each.probability, 0);
      // Explanations below 1 percent each are left out.
      expect(all).toBeGreaterThan(0.9);
      expect(all).toBeLessThanOrEqual(1 + 1e-9);
      const order = causes.map((each) => each.probability);
      expect(order).toEqual([...order].sort((a, b) => b - a));
    }
  });
});

describe('what is no number', () => {
  it.each(['', '   ', '-', '—'])('stays blank and is never 0: "%s"', (text) => {
    expect(judged(text, upright())).toMatchObject({ verdict: 'no reading', value: null, causes: [] });
  });

  it.each([
    ['about two', 'reading.not-a-number'],
    ['2.0.1', 'reading.unclear-figures'],
    ['half', 'reading.not-a-number'],
    ['2 furlongs', 'reading.unknown-unit'],
    ['12 cm', 'reading.wrong-dimension'],
  ])('stays unreadable, as it was written, with the reason: %s', (text, because) => {
    const found = judged(text, upright());
    expect(found).toMatchObject({ verdict: 'unreadable', value: null, because: { because } });
    expect(found.reading).toEqual(written(text));
  });

  it('takes a written nought for a nought, and asks to look again', () => {
    expect(judged('0', upright())).toMatchObject({ verdict: 'look again', value: 0 });
  });

  it('is not judged where the setup gives no figure to judge by', () => {
    const setup = upright({ range: 1, graduation: 0.02 });
    expect(judged('0.9', setup)).toMatchObject({
      verdict: 'not judged',
      value: 0.9,
      because: { because: 'outcome.off-the-scale' },
    });
  });
});

describe('honest readings', () => {
  it.each(Object.entries(honestTables))('of %s are queried at most twice in a hundred', (_, table) => {
    const setup = honestSetup(table);
    const prediction = predict(setup);
    const verdicts = new Map<string, string>();
    const readings = honestReadings(table, 5000, 7).map((value) => value.toFixed(2));
    for (const text of new Set(readings)) verdicts.set(text, judge(written(text), setup, prediction).verdict);
    const queried = readings.filter((text) => verdicts.get(text) === 'look again').length;
    expect(queried / readings.length).toBeLessThanOrEqual(0.02);
  });
});
