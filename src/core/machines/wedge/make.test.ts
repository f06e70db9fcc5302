import { describe, expect, it } from 'vitest';
import { liftingWedge, splittingWedge } from '../../../../test/stations/wedge.ts';
import type { Filled, FilledValue } from '../../description/fields.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { kilograms, metresPerSecondSquared, newtons } from '../../quantities/brands.ts';
import type { Dimension } from '../../quantities/dimension.ts';
import { between, exactly, measured } from '../../uncertainty/measured.ts';
import { atBest, atShifted } from '../../uncertainty/propagate.ts';
import type { Preparation } from '../machine.ts';
import { diagnostics as texts } from './diagnostics.en.ts';
import { cordsPart, fields, malletPart, wedgePart } from './fields.ts';
import { wedge } from './index.ts';
import { makeWedge } from './make.ts';
import { sentences } from './sentences.en.ts';
import { faceAngle, opening, type Wedge } from './station.ts';

const quantity = (value: number, dimension: Dimension = 'length', id = 'x'): FilledValue => ({
  type: 'quantity',
  measured: measured(value, { id, u: value / 1000, shape: 'even', origin: 'bare' }),
  dimension,
  written: '',
});
const choice = (value: string): FilledValue => ({ type: 'choice', choice: value });
const wood: FilledValue = {
  type: 'sourced',
  written: '',
  sourced: {
    moving: between('kind:friction/wood on wood', 0.3, 0.5, 'assumed'),
    starting: between('kind:friction/wood on wood/starting', 0.4, 0.75, 'assumed'),
  },
};
const splitting: Filled = {
  'kind of wedge': choice('splitting'),
  length: quantity(0.12),
  thickness: quantity(0.032),
  mass: quantity(0.085, 'mass'),
  'face friction': wood,
  'base friction': wood,
};
const lifting: Filled = { ...splitting, 'kind of wedge': choice('lifting') };
const cords = {
  mark: 'c1',
  kind: 'cords',
  fields: {
    stiffness: quantity(250, 'stiffness'),
    'pre-tension': quantity(3, 'force'),
    'most opening': quantity(0.02),
  },
};
const mallet = { mark: 'm1', kind: 'mallet', fields: { mass: quantity(0.3, 'mass') } };
const prepare = (part: Filled, setup: Filled = {}, slots: Preparation['parts'] = {}): Preparation => ({
  parts: { wedge: { mark: 'w1', kind: 'wedge', fields: part }, ...slots },
  fields: setup,
  place: (field) => ({ file: 'activity', path: field === null ? [] : [field], on: 'value' }),
  partPlace: (slot, field) => ({ file: 'kit', path: field === null ? [slot] : [slot, field], on: 'value' }),
});
const made = (...said: Parameters<typeof prepare>): Wedge => {
  const { station, diagnostics } = makeWedge(prepare(...said));
  if (station === null) throw new Error(JSON.stringify(diagnostics));
  return station;
};
const without = (key: string): Filled =>
  Object.fromEntries(Object.entries(splitting).filter(([name]) => name !== key));
const angle = (degrees: number) => quantity((degrees * Math.PI) / 180, 'angle', 'w1/whole angle');
const atMark = { 'pushed in': quantity(0.06) };

describe('a wedge from the kit', () => {
  it('has half its angle on either side where it splits, and the whole of it where it lifts', () => {
    expect(Math.tan(faceAngle(made(splitting), atBest))).toBeCloseTo(0.016 / 0.12, 12);
    expect(Math.tan(faceAngle(made(lifting), atBest))).toBeCloseTo(0.032 / 0.12, 12);
  });

  it('takes the whole angle at the edge as well as the thickness', () => {
    const byAngle: Filled = { ...without('thickness'), 'whole angle': angle(15) };
    expect(faceAngle(made(byAngle), atBest)).toBeCloseTo((7.5 * Math.PI) / 180, 12);
    const lifts: Filled = { ...byAngle, 'kind of wedge': choice('lifting') };
    expect(faceAngle(made(lifts), atBest)).toBeCloseTo((15 * Math.PI) / 180, 12);
  });

  it('carries the doubt of the angle into the slope, degree by degree', () => {
    for (const [kind, share] of [
      ['splitting', 0.5],
      ['lifting', 1],
    ] as const) {
      const station = made({
        ...without('thickness'),
        'whole angle': angle(15),
        'kind of wedge': choice(kind),
      });
      const step = 1e-6;
      const moved = faceAngle(station, atShifted('w1/whole angle', step)) - faceAngle(station, atBest);
      expect(moved / step).toBeCloseTo(share, 5);
    }
  });

  it('opens the gap by its thickness at the mark', () => {
    expect(opening(made(splitting, atMark, { cords }), atBest)).toBeCloseTo(0.016, 12);
  });

  it('assumes that three to nine tenths of a blow arrive, where nobody says', () => {
    const { blowShare } = made(
      splitting,
      { ...atMark, 'mallet falls': quantity(0.2) },
      { cords, mallet },
    ).inputs;
    expect(blowShare?.value).toBeCloseTo(0.6, 12);
    expect(blowShare?.parts[0]?.unknown).toMatchObject({ id: 'm1/blow share', origin: 'assumed' });
  });
});

describe('a wedge that is refused', () => {
  it.each<readonly [string, Filled, Filled, Preparation['parts']]>([
    ['wedge.no-angle', without('thickness'), {}, {}],
    ['wedge.angle-twice', { ...splitting, 'whole angle': angle(15) }, {}, {}],
    [
      'wedge.no-edge',
      { ...without('thickness'), 'kind of wedge': choice('lifting'), 'whole angle': angle(95) },
      {},
      {},
    ],
    ['wedge.past-its-back', splitting, { 'pushed in': quantity(0.13) }, {}],
    ['wedge.lifting-goes-level', lifting, { pushed: choice('down') }, {}],
    ['wedge.lifting-has-no-cords', lifting, atMark, { cords }],
    ['wedge.how-far-in', splitting, {}, { cords }],
  ])('with %s', (code, part, setup, slots) => {
    const { station, diagnostics } = makeWedge(prepare(part, setup, slots));
    expect(diagnostics.map((each) => each.code)).toEqual([code]);
    expect(station).toBeNull();
    expect(texts).toHaveProperty([code, 'help']);
  });
});

describe('where the law of the wedge is a poor guide', () => {
  const codes = (station: Wedge, load: number): readonly string[] => {
    const balance = wedge.balance(station, atBest, {
      load: newtons(load),
      gravity: metresPerSecondSquared(9.80665),
      direction: 'raise',
      grip: 'moving',
    });
    if (isNotDefined(balance)) throw new Error(balance.because);
    return wedge.limits(station, atBest, balance, prepare(splitting).place).map((each) => each.code);
  };

  it('says nothing about a thin wedge under a load', () => {
    expect(codes(made({ ...lifting, thickness: quantity(0.012) }), 10)).toEqual([]);
  });

  it('names jamming, cords past their limit, and a push above the side force', () => {
    expect(codes(made({ ...lifting, thickness: quantity(0.17) }), 10)).toEqual(['wedge.near-jam']);
    const wide = made({ ...splitting, thickness: quantity(0.06) }, atMark, { cords });
    expect(codes(wide, 0)).toEqual(['wedge.cords-over-limit', 'wedge.hands-do-better']);
    for (const code of ['wedge.near-jam', 'wedge.cords-over-limit', 'wedge.hands-do-better'])
      expect(texts).toHaveProperty([code, 'help']);
  });
});

describe('usual mistakes at a wedge', () => {
  it('left 5 mm short of the mark, it opens less and is pulled in with less', () => {
    const station = made(splitting, atMark, { cords });
    const short = wedge.mistakes[0]?.change(station);
    expect(short?.inputs.advance.value).toBeCloseTo(0.055, 12);
    expect(wedge.mistakes[0]?.change(made(lifting))).toBeNull();
  });
});

describe('what the wedge prints', () => {
  const stations = [
    made(splitting, { ...atMark, 'mallet falls': quantity(0.2) }, { cords, mallet }),
    made(splitting, { ...atMark, pushed: choice('down') }, { cords }),
    made(lifting, { 'stop friction': wood }),
  ];

  it('has a sentence for every key', () => {
    const keys = stations.flatMap((station) => {
      const lines = (['raise', 'lower'] as const).flatMap((direction) => {
        const asked = {
          load: newtons(5),
          gravity: metresPerSecondSquared(9.80665),
          direction,
          grip: 'moving',
        } as const;
        const balance = wedge.balance(station, atBest, asked);
        return isNotDefined(balance)
          ? [balance.because]
          : [...balance.working().map((line) => line.what), ...balance.work.map((term) => term.cause)];
      });
      const counted = wedge.tally?.(station, atBest);
      const ideal = wedge.idealAdvantage(station, atBest);
      return [
        ...lines,
        ...(counted === undefined
          ? []
          : isNotDefined(counted)
            ? [counted.because]
            : counted.working.map((line) => line.what)),
        ...(isNotDefined(ideal) ? [ideal.because] : ideal.working.map((line) => line.what)),
        ...wedge.steps(station).map((step) => step.key),
        ...wedge.differences(station, atBest).map((difference) => difference.key),
        ...wedge
          .drawing(station, atBest)
          .shapes.flatMap((shape) => (shape.shape === 'label' ? [shape.key] : [])),
      ];
    });
    const parts = [wedgePart, cordsPart, malletPart];
    const described = [...parts.map((part) => part.fields), fields].flatMap((each) => Object.values(each));
    const own = [
      'machine.wedge',
      ...parts.map((part) => part.meaning),
      ...described.map((field) => field.meaning).filter((key) => !key.startsWith('field.')),
      ...wedge.mistakes.map(({ code }) => code.replace('wedge.', 'wedge.mistake.')),
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

  it('warns of mallets only where there is one, and of cords only where there are some', () => {
    const topics = (station: Wedge | undefined) =>
      station ? wedge.cautions(station).map((each) => each.source) : [];
    expect(topics(stations[0])).toEqual([
      'fingers',
      'elastic cords',
      'eye protection',
      'hammers and mallets',
    ]);
    expect(topics(stations[1])).toEqual(['fingers', 'elastic cords', 'eye protection']);
    const bare = liftingWedge({ angle: 0.1 });
    const struck = { ...bare, inputs: { ...bare.inputs, malletMass: exactly(kilograms(0.3)) } };
    expect(topics(struck)).toEqual(['fingers', 'eye protection', 'hammers and mallets']);
    expect(topics(bare)).toEqual(['fingers']);
    expect(topics(stations[2])).toEqual(['fingers']);
  });

  it('is pulled by a scale, pushed by hand without one, and struck where there is a mallet', () => {
    const ways = [splittingWedge({ angle: 0.1, preTension: 2 }), stations[0]].map((station) => {
      if (station === undefined) throw new Error('no station');
      const drive = (isFelt: boolean) => ({
        keys: wedge.steps(station, isFelt).map(({ key }) => key),
        pushes: wedge.drawing(station, atBest, isFelt).shapes.some((each) => 'pushes' in each),
      });
      return [drive(false), drive(true)];
    });
    for (const [pulled, felt] of ways) {
      expect(pulled?.keys).toContain('wedge.step.hook');
      expect(pulled?.pushes).toBe(false);
      expect(felt?.keys).not.toContain('wedge.step.hook');
      expect(felt?.pushes).toBe(true);
      expect(felt?.keys[0]).toBe('wedge.step.glasses');
    }
    expect(ways[0]?.[1]?.keys).toContain('wedge.step.push-to-mark');
    expect(ways[1]?.[1]?.keys).toContain('wedge.step.strike');
  });

  it('draws a wedge that goes down with its scale upside down below it', () => {
    const efforts = stations.map((station) =>
      wedge.drawing(station, atBest).shapes.find((shape) => shape.shape === 'effort'),
    );
    expect(efforts.map((each) => each?.scale)).toEqual(['level', 'upside down', 'level']);
    expect(efforts[1]).toMatchObject({ from: [0, expect.closeTo(-0.192, 9)], direction: -Math.PI / 2 });
  });
});
