import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { everyStation } from '../../../test/stations/every-machine.ts';
import { dragOf, planeOf } from '../../../test/stations/incline.ts';
import { leverStation } from '../../../test/stations/lever.ts';
import { baseOf, wheelsOf } from '../../../test/stations/ride.ts';
import { scaleOf, setupOf } from '../../../test/stations/setup.ts';
import { tackleStation } from '../../../test/stations/tackle.ts';
import { drag } from '../machines/drag/index.ts';
import { inclinedPlane } from '../machines/incline/index.ts';
import { lever } from '../machines/lever/index.ts';
import { machineNamed } from '../machines/list.ts';
import { tackle } from '../machines/tackle/index.ts';
import { kilograms } from '../quantities/brands.ts';
import { predict } from '../setups/predict.ts';
import type { Setup } from '../setups/setup.ts';
import { exactly } from '../uncertainty/measured.ts';
import { type Cause, causeKey, causesOf, unitsFor } from './causes.ts';
import { doingMistakes } from './doing-mistakes.ts';
import { type Figure, figureOf } from './figure.ts';
import type { ReadingUnit } from './written-reading.ts';

const G = 9.80665;
const NEWTONS = unitOf('newtons');
function unitOf(name: string): ReadingUnit {
  const found = unitsFor(upright()).find((unit) => unit.name === name);
  if (found === undefined) throw new Error(name);
  return found;
}

const mass = (kg: number) => ({ kind: 'mass', mass: exactly(kilograms(kg)) }) as const;

/** 200 g that pull 1.96 N on a scale above. */
function upright(said: Partial<Setup> = {}): Setup {
  return setupOf(lever, leverStation({ fulcrum: 0, load: 0.5, pull: 0.5 }), said);
}

const causeOf = (setup: Setup, code: string, number?: number): Cause => {
  const found = causesOf(setup, NEWTONS, undefined, number === undefined ? {} : { number }).find(
    (cause) => cause.code === code,
  );
  if (found === undefined) throw new Error(`no ${code} here`);
  return found;
};
const middleOf = ({ figure }: Pick<Cause, 'figure'>): number => {
  if (figure === null) throw new Error('on its stop');
  return (figure.low + figure.high) / 2;
};
const times = (setup: Setup, code: string): number =>
  middleOf(causeOf(setup, code)) / middleOf(causeOf(setup, 'good'));

describe('every mistake of doing', () => {
  const setups = everyStation.flatMap((station): readonly Setup[] => {
    const machine = machineNamed(station.machine);
    if (machine === undefined) throw new Error(station.machine);
    const scale = scaleOf({ range: 200, graduation: 0.02, accuracy: 0.02, movingGrams: 15 });
    const read = (said: Partial<Setup>): Setup => setupOf(machine, station, { scale, ...said });
    const around = {
      hung: 'W200',
      weights: [{ mark: 'W300', load: mass(0.3) }],
      partners: [read({ mark: 'partner', load: mass(0.5) })],
    };
    return [
      read({ around }),
      read({ around, hang: 'upside down', zeroed: 'in place' }),
      read({ around, hang: 'level' }),
      read({ around, way: 'lower' }),
      read({ around, way: 'start' }),
      read({ around, watched: 'turns', marks: { step: 0.25, unit: 'turns', unitSi: 1 } }),
    ];
  });

  it('puts the instrument where the key of the changed setup would have it', () => {
    let compared = 0;
    for (const setup of setups) {
      const figures = new Map<string, Figure | null>(
        doingMistakes(setup).map((mistake) => [
          causeKey(mistake),
          figureOf(predict(mistake.changed).outcome),
        ]),
      );
      // A compound can make the same mistake in several stages, under one code.
      const single = doingMistakes(setup).map(causeKey);
      for (const cause of causesOf(setup, NEWTONS)) {
        const key = causeKey(cause);
        if (cause.kind !== 'doing' || single.filter((each) => each === key).length > 1) continue;
        expect(cause.figure, `${setup.machine.name}: ${key}`).toEqual(figures.get(key));
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(300);
  });

  it('leaves the setup that it is a mistake of as it was', () => {
    for (const setup of setups) {
      const before = predict(setup).outcome;
      doingMistakes(setup);
      expect(predict(setup).outcome).toEqual(before);
    }
  });

  it('says what of it is met again, and how often it is made', () => {
    for (const setup of setups)
      for (const { persists, rate, code } of causesOf(setup, NEWTONS, undefined, { number: 2.43 })) {
        expect(['group', 'station', 'reading'], code).toContain(persists);
        expect(rate, code).toBeGreaterThan(0);
        expect(rate, code).toBeLessThanOrEqual(1);
      }
  });
});

describe('a load that still speeds up', () => {
  // Assumed: 0.1 to 0.5 m/s², so 0.3 with u 0.4/√12.
  const a = 0.3;
  const u = 0.4 / Math.sqrt(12);

  it('is heavier by a/g where it hangs', () => {
    expect(times(upright(), 'way.speeding-up')).toBeCloseTo(1 + a / G, 9);
    const four = setupOf(tackle, tackleStation({ parts: 4, blockMass: 0 }), { load: mass(1) });
    expect(times(four, 'way.speeding-up')).toBeCloseTo(1 + a / G, 9);
  });

  it('asks for more by a/(g (sin s + C cos s)) on a slope', () => {
    const s = Math.PI / 6;
    const setup = setupOf(inclinedPlane, planeOf({ angle: s }, baseOf({ mu: 0.3, deadMass: 0.05 })), {
      hang: 'along the slope',
      zeroed: 'in place',
    });
    const more = a / (G * (Math.sin(s) + 0.3 * Math.cos(s)));
    expect(times(setup, 'way.speeding-up')).toBeCloseTo(1 + more, 9);
  });

  it('asks for twice as much where wheels hardly hold it back, and nobody knows quite how much', () => {
    const cart = dragOf(wheelsOf({ share: 0.03 }));
    const setup = setupOf(drag, cart, {
      hang: 'level',
      zeroed: 'in place',
      scale: scaleOf({ graduation: 0.01 }),
    });
    const { figure } = causeOf(setup, 'way.speeding-up');
    expect(times(setup, 'way.speeding-up')).toBeCloseTo(1 + a / (G * 0.03), 9);
    expect(figure?.u).toBeCloseTo(Math.hypot(0.2 * u, 0.01 / Math.sqrt(12)), 9);
  });

  it('is not thought of where the load is let back or held', () => {
    for (const way of ['lower', 'held', 'start'] as const)
      expect(() => causeOf(upright({ way }), 'way.speeding-up')).toThrow();
  });
});

describe('what lies around a setup', () => {
  const weights = [
    { mark: 'W100', load: mass(0.1) },
    { mark: 'W300', load: mass(0.3) },
  ];
  const partner = upright({ mark: 'other', load: mass(0.4) });
  const setup = upright({ around: { hung: 'W200', weights, partners: [partner] } });

  it('may hang there instead: each other weight by its mark, for the next group as well', () => {
    const found = causesOf(setup, NEWTONS).filter(({ code }) => code === 'load.other-weight');
    expect(found.map((cause) => [cause.facts?.hung, cause.persists])).toEqual([
      ['W100', 'station'],
      ['W300', 'station'],
    ]);
    expect(found.map(middleOf)).toEqual([expect.closeTo(0.1 * G, 9), expect.closeTo(0.3 * G, 9)]);
    expect(new Set(found.map(causeKey)).size).toBe(2);
  });

  it('may have been read instead: the partner setup', () => {
    const cause = causeOf(setup, 'setup.swapped');
    expect(middleOf(cause)).toBeCloseTo(0.4 * G, 9);
    expect(cause.facts).toEqual({ setup: 'setup', partner: 'other' });
  });
});

describe('what carries the load', () => {
  it('goes up empty with its own weight alone', () => {
    const plane = planeOf({ angle: Math.PI / 6 }, baseOf({ mu: 0.3, deadMass: 0.05 }));
    const setup = setupOf(inclinedPlane, plane, { hang: 'along the slope', zeroed: 'in place' });
    expect(times(setup, 'incline.left-empty')).toBeCloseTo(0.05 / 0.25, 9);
  });
});

/** What a written number stands for under a cause, in the unit that it was read in. */
const meant = (setup: Setup, code: string, number: number): readonly number[] =>
  causesOf(setup, NEWTONS, undefined, { number })
    .filter((cause) => cause.code === code)
    .map(({ unit }) => Number((number * (unit?.si ?? Number.NaN)).toFixed(9)));

describe('a slip of the pen', () => {
  it.each([
    ['reading.ten-times', 24, [2.4]],
    ['reading.a-tenth', 0.24, [2.4]],
    ['reading.digits-swapped', 4.2, [2.4]],
    ['reading.digits-swapped', 0.45, [0.54]],
    ['reading.digits-swapped', 2.43, [4.23, 2.34]],
    ['reading.digits-swapped', 3.3, []],
    ['reading.digits-swapped', 0.4, []],
  ] as const)('is undone: %s from %d', (code, number, were) => {
    expect(meant(upright(), code, number)).toEqual(were);
  });

  it('of a hundred is made where there are two decimals to lose the point of', () => {
    const fine = upright({ scale: scaleOf({ graduation: 0.05 }) });
    expect(meant(fine, 'reading.a-hundred-times', 245)).toEqual([2.45]);
    expect(meant(upright(), 'reading.a-hundred-times', 245)).toEqual([]);
  });

  it('needs a point: whole grams have none', () => {
    const grams = upright({ scale: scaleOf({ range: 500, graduation: 10, unit: 'gf' }) });
    const codes = causesOf(grams, unitOf('grams')).map(({ code }) => code);
    expect(codes).not.toContain('reading.ten-times');
    expect(codes).toContain('reading.in-newtons');
  });

  it('takes marks of 0.2 for 0.1 above the last numbered mark', () => {
    const coarse = upright({ scale: scaleOf({ range: 10, graduation: 0.2 }) });
    // 2.4: the number 2 and two marks; counted by tenths 2.2.
    expect(meant(coarse, 'reading.marks-of-half', 2.2)).toEqual([2.4]);
    expect(meant(coarse, 'reading.marks-of-half', 2)).toEqual([]);
    expect(meant(coarse, 'reading.marks-of-half', 2.6)).toEqual([]);
    expect(meant(upright(), 'reading.marks-of-half', 2.2)).toEqual([]);
  });

  it('is likelier from the other column where the scale has one', () => {
    const scale = { ...scaleOf(), other: { step: 10 * (G / 1000), unit: 'gf', unitSi: G / 1000 } };
    expect(causeOf(upright({ scale }), 'reading.in-grams').rate).toBeGreaterThan(
      causeOf(upright(), 'reading.in-grams').rate,
    );
  });

  it('of digits that is made is found again, whatever the number', () => {
    fc.assert(
      fc.property(fc.integer({ min: 10, max: 999 }), fc.integer({ min: 0, max: 1 }), (marks, at) => {
        const digits = [...String(marks)];
        const [a, b] = [digits[at] ?? '', digits[at + 1] ?? ''];
        // A nought at the end is not kept by the number.
        fc.pre(a !== b && b !== '' && !(at === 0 && b === '0') && !(at === digits.length - 2 && a === '0'));
        [digits[at], digits[at + 1]] = [b, a];
        const written = Number(digits.join('')) / 10;
        expect(meant(upright(), 'reading.digits-swapped', written)).toContain(marks / 10);
      }),
      { seed: 11, numRuns: 300 },
    );
  });
});

describe('base rates', () => {
  const setup = upright({ hang: 'level' });
  const restOf = (causes: readonly Cause[]) => causes.filter(({ kind }) => kind !== 'good');

  it('can all be tripled or thirded, and good takes what is left, but never less than a half', () => {
    for (const rateFactor of [3, 1 / 3]) {
      const [plain, changed] = [
        causesOf(setup, NEWTONS),
        causesOf(setup, NEWTONS, undefined, { rateFactor }),
      ];
      expect(restOf(changed).map(({ rate }) => rate)).toEqual(
        restOf(plain).map(({ rate }) => rate * rateFactor),
      );
      const rest = restOf(changed).reduce((sum, { rate }) => sum + rate, 0);
      expect(changed[0]?.rate).toBeCloseTo(Math.max(0.5, 1 - rest), 12);
    }
  });

  it('are asked for again without reckoning the figures again', () => {
    const [first, second] = [
      causesOf(setup, NEWTONS, predict(setup)),
      causesOf(setup, NEWTONS, predict(setup)),
    ];
    expect(second).toEqual(first);
    const doing = (causes: readonly Cause[]) => causes.find(({ kind }) => kind === 'doing')?.figure;
    expect(doing(first)).toBe(doing(second));
  });

  it('are the same whatever was asked for before: another number, another unit, another factor', () => {
    const marked = upright({ scale: scaleOf({ graduation: 0.2 }) });
    const prediction = predict(marked);
    const asking = { number: 2.43, rateFactor: 2 };
    const alone = causesOf(upright({ scale: scaleOf({ graduation: 0.2 }) }), NEWTONS, prediction, asking);
    for (const other of [{}, { number: 1.2 }, { rateFactor: 3 }])
      causesOf(marked, NEWTONS, prediction, other);
    causesOf(marked, unitOf('grams'), prediction, asking);
    expect(causesOf(marked, NEWTONS, prediction, asking)).toEqual(alone);
    expect(alone.map(({ code }) => code)).toContain('reading.digits-swapped');
  });
});
