import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../description/drawing.ts';
import type { Filled, FilledValue } from '../../description/fields.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { metresPerSecondSquared, newtons } from '../../quantities/brands.ts';
import { between, exactly, measured, standardUncertainty } from '../../uncertainty/measured.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import { diagnostics as texts } from './diagnostics.en.ts';
import { fields, screwPart } from './fields.ts';
import { screw } from './index.ts';
import { makeScrew } from './make.ts';
import { sentences } from './sentences.en.ts';
import type { Screw } from './station.ts';

const length = (value: number, id = 'x'): FilledValue => ({
  type: 'quantity',
  measured: measured(value, { id, u: value / 1000, shape: 'even', origin: 'bare' }),
  dimension: 'length',
  written: '',
});
const text = (value: string): FilledValue => ({ type: 'text', text: value });
const count = (value: number): FilledValue => ({ type: 'count', count: value });
const steel: FilledValue = {
  type: 'sourced',
  written: '',
  sourced: {
    moving: between('kind:friction/steel on steel', 0.08, 0.5, 'assumed'),
    starting: between('kind:friction/steel on steel/starting', 0.12, 0.6, 'assumed'),
    kind: 'steel on steel',
  },
};
const prepare = (part: Filled, setup: Filled = {}): Preparation => ({
  parts: {
    screw: {
      mark: 's1',
      kind: 'screw',
      fields: { 'thread friction': steel, 'collar friction': steel, ...part },
    },
  },
  fields: setup,
  place: (field) => ({ file: 'activity', path: field === null ? [] : [field], on: 'value' }),
  partPlace: (slot, field) => ({ file: 'kit', path: field === null ? [slot] : [slot, field], on: 'value' }),
});
const codes = (part: Filled, setup: Filled = {}): readonly string[] =>
  makeScrew(prepare(part, setup)).diagnostics.map((each) => each.code);
const made = (part: Filled, setup: Filled = {}): Screw => {
  const { station, diagnostics } = makeScrew(prepare(part, setup));
  if (station === null) throw new Error(JSON.stringify(diagnostics));
  return station;
};

describe('a screw from the kit', () => {
  it('takes everything about a standard thread from its name', () => {
    const station = made({ thread: text('M8') });
    expect(station.inputs.pitch.value).toBeCloseTo(0.00125, 9);
    expect(station.inputs.meanDiameter.value).toBeCloseTo(0.0071881, 7);
    expect(station.inputs.flank.value).toBeCloseTo(Math.PI / 6, 12);
    expect(station.thread).toBe('M8');
  });

  it('knows 13 threads on half an inch as the standard thread they are', () => {
    const station = made({ diameter: length(0.0127), 'threads per inch': count(13) });
    expect(station.inputs.pitch.value).toBeCloseTo(0.0254 / 13, 12);
    expect(station.thread).toBe('1/2-13');
  });

  it('keeps a screw as it was measured, and names the thread that it is nearest to', () => {
    const station = made({ diameter: length(0.0079), pitch: length(0.00125) });
    expect(station.inputs.diameter.value).toBe(0.0079);
    expect(station.thread).toBe('M8');
  });

  it('warns where no standard thread is like it, but builds it', () => {
    const { station, diagnostics } = makeScrew(prepare({ diameter: length(0.02), pitch: length(0.0071) }));
    expect(station?.thread).toBeNull();
    expect(diagnostics).toMatchObject([
      { code: 'screw.not-standard', severity: 'warning', at: { path: ['screw', 'pitch'] } },
    ]);
  });

  it('does not hold a square thread against the table of V threads', () => {
    const square: Filled = {
      diameter: length(0.03),
      pitch: length(0.006),
      form: { type: 'choice', choice: 'square' },
    };
    expect(codes(square)).toEqual([]);
    expect(made(square).inputs.flank.value).toBe(0);
    expect(made(square).inputs.meanDiameter.value).toBeCloseTo(0.027, 12);
  });

  it('assumes a collar between nothing and the whole end where none is measured', () => {
    const { collarDiameter } = made({ thread: text('M8') }).inputs;
    expect(collarDiameter.value).toBeCloseTo(0.004, 9);
    expect(standardUncertainty(collarDiameter)).toBeCloseTo(0.008 / Math.sqrt(12), 9);
    expect(collarDiameter.parts[0]?.unknown).toMatchObject({ id: 's1/collar diameter', origin: 'assumed' });
  });

  it('lets the mean diameter depend on the diameter and the pitch that were measured', () => {
    const { meanDiameter } = made({
      diameter: length(0.008, 's1/diameter'),
      pitch: length(0.00125, 's1/pitch'),
    }).inputs;
    expect(meanDiameter.parts.map((part) => part.unknown.id)).toEqual(['s1/diameter', 's1/pitch']);
  });
});

describe('a screw that is refused', () => {
  it.each<readonly [string, Filled, Filled]>([
    ['screw.no-diameter', { pitch: length(0.001) }, {}],
    ['screw.no-pitch', { diameter: length(0.008) }, {}],
    ['screw.unknown-thread', { thread: text('M7.3') }, {}],
    ['screw.said-twice', { thread: text('M8'), pitch: length(0.0015) }, {}],
    [
      'screw.said-twice',
      { diameter: length(0.0127), pitch: length(0.013), 'threads per inch': count(13) },
      {},
    ],
    ['screw.mean-diameter', { thread: text('M8'), 'mean diameter': length(0.009) }, {}],
    ['screw.mean-diameter', { thread: text('M8'), 'mean diameter': length(0.006) }, {}],
    ['screw.turns-and-travel', { thread: text('M8') }, { turns: count(8), travel: length(0.01) }],
  ])('with %s', (code, part, setup) => {
    expect(codes(part, setup)).toEqual([code]);
    expect(makeScrew(prepare(part, setup)).station).toBeNull();
  });

  it('where threads per inch were taken for a pitch in millimetres, and no core is left', () => {
    expect(codes({ diameter: length(0.0127), pitch: length(0.013) })).toContain('screw.pitch-too-coarse');
  });
});

describe('what the screw prints', () => {
  const station = made({
    thread: text('M8'),
    'lever arm': length(0.1),
    'head mass': { ...length(0.05), dimension: 'mass' } as FilledValue,
  });
  const asked = { load: newtons(50), gravity: metresPerSecondSquared(9.80665), grip: 'moving' } as const;
  const withTurns = made({ thread: text('M8') }, { turns: count(8), 'start gap': length(0.0005) });
  const withTravel = made({ thread: text('M8') }, { travel: length(0.01) });

  it('has a sentence for every key', () => {
    const keys = [station, withTurns, withTravel].flatMap((each) => {
      const lines = (['raise', 'lower'] as const).flatMap((direction) => {
        const balance = screw.balance(each, atBest, { ...asked, direction });
        return isNotDefined(balance)
          ? [balance.because]
          : [...balance.working().map((line) => line.what), ...balance.work.map((term) => term.cause)];
      });
      const counted = screw.tally?.(each, atBest);
      const ideal = screw.idealAdvantage(each, atBest);
      return [
        ...lines,
        ...(counted === undefined
          ? []
          : isNotDefined(counted)
            ? [counted.because]
            : counted.working.map((line) => line.what)),
        ...(isNotDefined(ideal) ? [ideal.because] : ideal.working.map((line) => line.what)),
        ...screw.steps(each).map((step) => step.key),
        ...screw.differences(each, atBest).map((difference) => difference.key),
        ...screw
          .drawing(each, atBest)
          .shapes.flatMap((shape) => (shape.shape === 'label' ? [shape.key] : [])),
      ];
    });
    const own = [
      'machine.screw',
      screwPart.meaning,
      ...Object.values({ ...screwPart.fields, ...fields }).map((field) => field.meaning),
      ...screw.mistakes.map(({ code }) => code.replace('screw.', 'screw.mistake.')),
    ];
    const missing = [...keys, ...own].filter(
      (key) => !(key in sentences) && key !== 'effort' && key !== 'load',
    );
    expect(missing).toEqual([]);
  });

  it('asks for one thing a step, in at most twelve words', () => {
    for (const [key, sentence] of Object.entries(sentences))
      if (key.includes('.step.')) expect(sentence.split(/\s+/).length, key).toBeLessThanOrEqual(12);
  });

  it('explains every diagnostic that it can give', () => {
    const limits = screw.balance(station, atBest, { ...asked, direction: 'raise' });
    if (isNotDefined(limits)) throw new Error(limits.because);
    const notes = screw.limits(station, atBest, limits, prepare({}).place);
    expect(notes.map((each) => each.code)).toEqual(['screw.mostly-friction']);
    const steep = made({
      diameter: length(0.02),
      pitch: length(0.005),
      starts: count(4),
      'thread friction': { ...steel, sourced: { moving: exactly(0), starting: exactly(0) } } as FilledValue,
      'lever arm': length(0.1),
    });
    const balance = screw.balance(steep, atBest, { ...asked, direction: 'raise' });
    if (isNotDefined(balance)) throw new Error(balance.because);
    expect(screw.limits(steep, atBest, balance, prepare({}).place).map((each) => each.code)).toContain(
      'screw.steep',
    );
    for (const { code } of notes) expect(texts).toHaveProperty([code, 'what']);
  });

  it('begins to count before it turns, leaves the number to the last line, and draws no pull', () => {
    const keys = (each: Screw) => screw.steps(each).map(({ key }) => key.replace('screw.step.', ''));
    expect(keys(withTravel)).toEqual(['start-flush', 'mark', 'count', 'turn-until']);
    expect(keys(withTurns)).toEqual(['start-gap', 'mark', 'count', 'turn-count']);
    for (const each of [withTravel, withTurns]) {
      const shapes = screw.drawing(each, atBest).shapes;
      expect(shapes.map(({ shape }) => shape)).not.toContain('effort');
      expect(shapes).toContainEqual(expect.objectContaining({ key: 'screw.label.face' }));
    }
    const between = (from: Screw, to: Screw) => screw.between?.(from, to).map(({ key }) => key);
    expect(between(withTravel, withTurns)).toEqual(['screw.reset.turn-back-gap']);
    expect(between(withTurns, withTravel)).toEqual(['screw.reset.turn-back']);
    expect(between(station, withTurns)).toEqual(['screw.reset.load']);
    expect(between(withTurns, station)).toEqual([]);
  });

  it('is left right down and without its load, lower than at work', () => {
    const topOf = (drawing: Drawing | undefined) =>
      Math.max(
        ...(drawing?.shapes ?? []).flatMap((each) =>
          each.shape === 'body' && each.role !== 'bar' ? each.outline.map(([, y]) => y) : [],
        ),
      );
    const [left] = screw.start?.(station, atBest) ?? [];
    expect(topOf(left)).toBeLessThan(topOf(screw.drawing(station, atBest)));
    expect(left?.shapes.some((each) => each.shape === 'body' && each.role === 'block')).toBe(false);
  });

  it('draws the lever with its pull square to it, and one lead', () => {
    const { shapes } = screw.drawing(station, atBest);
    expect(shapes).toContainEqual(
      expect.objectContaining({ shape: 'effort', from: [0.1, 0], scale: 'level' }),
    );
    expect(shapes).toContainEqual(expect.objectContaining({ shape: 'measure', metres: 0.00125 }));
  });
});
