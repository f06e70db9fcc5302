import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { planeOf } from '../../../../test/stations/incline.ts';
import { leverStation } from '../../../../test/stations/lever.ts';
import { baseOf } from '../../../../test/stations/ride.ts';
import { tackleStation } from '../../../../test/stations/tackle.ts';
import { windlassStation } from '../../../../test/stations/windlass.ts';
import { recompute } from '../../../../test/stations/working.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { isError } from '../../diagnostics/diagnostic.ts';
import { metresPerSecondSquared, newtons } from '../../quantities/brands.ts';
import type { Asked, Balance } from '../../statics/balance.ts';
import { exactly, measured } from '../../uncertainty/measured.ts';
import { atBest, propagate } from '../../uncertainty/propagate.ts';
import { machineNamed, sentencesEn, simpleMachines } from '../list.ts';
import type { Preparation, Station } from '../machine.ts';
import { diagnostics as texts } from './diagnostics.en.ts';
import { compound } from './index.ts';
import { compoundOf } from './station.ts';

const machine = compound(simpleMachines);
const seeded = { seed: 24, numRuns: 60 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const asked = (load: number, more: Partial<Asked> = {}): Asked => ({
  load: newtons(load),
  gravity: metresPerSecondSquared(9.81),
  direction: 'raise',
  grip: 'moving',
  ...more,
});
const balanced = (stages: readonly Station[], each: Asked): Balance => {
  const balance = machine.balance(compoundOf(stages), atBest, each);
  if (isNotDefined(balance)) throw new Error(balance.because);
  return balance;
};
/** Stages that come back by themselves, with friction and dead weight of their own. */
const stage: fc.Arbitrary<Station> = fc.oneof(
  fc
    .record({ parts: fc.integer({ min: 1, max: 5 }), efficiency: real(0.85, 1), blockMass: real(0, 0.05) })
    .map(tackleStation),
  fc
    .record({
      wheel: real(0.03, 0.1),
      axle: real(0.008, 0.02),
      axleLine: real(0, 0.002),
      drumMass: real(0, 0.1),
      bearing: real(0, 0.003),
      friction: real(0, 0.3),
    })
    .map(windlassStation),
  fc
    .record({
      pull: real(0.2, 0.5),
      barMass: real(0, 0.1),
      pinRadius: real(0, 0.003),
      friction: real(0, 0.3),
    })
    .map((said) => leverStation({ ...said, load: -0.15 })),
  fc
    .record({ angle: real(0.4, 1.2), mu: real(0, 0.2), deadMass: real(0, 0.1) })
    .map(({ angle, mu, deadMass }) => planeOf({ angle }, baseOf({ mu, deadMass }))),
);
const row = fc.array(stage, { minLength: 2, maxLength: 4 });

describe('a compound machine', () => {
  test('passes the pull on one stage to the next as its load', () => {
    const stages = [tackleStation({ parts: 4 }), windlassStation({ wheel: 0.05, axle: 0.01 })];
    expect(balanced(stages, asked(20))).toMatchObject({ effort: 1, velocityRatio: 20 });
    const ideal = machine.idealAdvantage(compoundOf(stages), atBest);
    expect(ideal).toMatchObject({ advantage: 20 });
  });

  test('has the friction that its own load gives each stage, so a dead block weighs more on a light load', () => {
    const stages = [
      tackleStation({ parts: 2, blockMass: 0.05, efficiency: 0.9 }),
      tackleStation({ parts: 2 }),
    ];
    const efficiency = (load: number) => load / (4 * balanced(stages, asked(load)).effort);
    expect(efficiency(1)).toBeLessThan(efficiency(10));
  });

  test('closes its work account, raising and lowering, over any row of stages', () => {
    fc.assert(
      fc.property(row, real(5, 50), fc.constantFrom('raise', 'lower'), (stages, load, direction) => {
        const { work } = balanced(stages, asked(load, { direction }));
        const largest = Math.max(...work.map((term) => Math.abs(term.rate)));
        expect(Math.abs(work.reduce((sum, term) => sum + term.rate, 0)) / largest).toBeLessThan(1e-9);
        expect(work.filter(({ by }) => by === 'load')).toHaveLength(1);
        expect(work.filter(({ by }) => by === 'effort')).toHaveLength(1);
      }),
      seeded,
    );
  });

  test('asks for more to raise than to let back, over any row of stages', () => {
    fc.assert(
      fc.property(row, real(5, 50), (stages, load) => {
        const raise = balanced(stages, asked(load)).effort;
        expect(balanced(stages, asked(load, { direction: 'lower' })).effort).toBeLessThanOrEqual(
          raise * (1 + 1e-12),
        );
      }),
      seeded,
    );
  });

  test('prints the lines of all stages with symbols that stay apart and follow from each other', () => {
    fc.assert(
      fc.property(row, real(5, 50), fc.constantFrom('raise', 'lower'), (stages, load, direction) => {
        const balance = balanced(stages, asked(load, { direction }));
        const ideal = machine.idealAdvantage(compoundOf(stages), atBest);
        const lines = [...balance.working(), ...(isNotDefined(ideal) ? [] : ideal.working)];
        const known = new Map<string, number>([
          ['W', load],
          ['g', 9.81],
        ]);
        expect(new Set(lines.map((line) => line.symbol)).size).toBe(lines.length);
        for (const line of lines) {
          const size = Math.max(Math.abs(line.value), line.unit === 'N' ? load / 100 : 1e-9);
          expect(Math.abs(recompute(line) - line.value) / size).toBeLessThan(1e-9);
          expect(Object.keys(sentencesEn)).toContain(line.what);
          for (const [name, value] of Object.entries(line.values)) {
            expect(known.get(name) ?? value).toBe(value);
            known.set(name, value);
          }
          expect(known.get(line.symbol) ?? line.value).toBe(line.value);
          known.set(line.symbol, line.value);
        }
        expect(balance.working().at(-1)?.value).toBe(balance.effort);
      }),
      seeded,
    );
  });

  test('goes slack where a stage runs by itself while the load is raised', () => {
    const heavyBar = leverStation({ load: -0.1, pull: 0.3, barMass: 2, barCentre: 0.2 });
    const found = machine.balance(compoundOf([heavyBar, tackleStation({ parts: 2 })]), atBest, asked(1));
    expect(found).toMatchObject({ because: 'compound.slack', facts: { stage: 1 } });
  });

  test('does not come back where one stage stays: its lowering pull is negative and its account closes', () => {
    const steep = planeOf({ angle: 0.2 }, baseOf({ mu: 0.5 }));
    const { effort, work } = balanced([steep, tackleStation({ parts: 2 })], asked(5, { direction: 'lower' }));
    expect(effort).toBeLessThan(0);
    expect(Math.abs(work.reduce((sum, { rate }) => sum + rate, 0))).toBeLessThan(1e-9);
  });

  test('keeps what two stages share: one unknown moves both', () => {
    const mass = measured(0.02 as never, { id: 'b/mass', u: 0.001, shape: 'normal', origin: 'stated' });
    const withMass = (station: ReturnType<typeof tackleStation>) => ({
      ...station,
      inputs: { ...station.inputs, blockMass: mass },
    });
    const chain = compoundOf([withMass(tackleStation({ parts: 2 })), withMass(tackleStation({ parts: 2 }))]);
    const effort = propagate((at) => {
      const balance = machine.balance(chain, at, asked(2));
      return isNotDefined(balance) ? null : balance.effort;
    }, Object.values(chain.inputs));
    // dF/dm = g/4 from the first block and g/2 from the second.
    expect(effort?.parts.map((part) => part.slope)).toEqual([expect.closeTo((9.81 * 3) / 4, 9)]);
  });

  test("carries its stages' mistakes, each in its own stage", () => {
    const chain = compoundOf([
      tackleStation({ parts: 4, spareSheaves: 1 }),
      windlassStation({ wheel: 0.06, axle: 0.01 }),
    ]);
    const codes = machine.mistakes
      .filter((mistake) => mistake.change(chain) !== null)
      .map((mistake) => mistake.code);
    expect(codes).toEqual([
      'tackle.one-part-fewer',
      'tackle.one-part-more',
      'tackle.fall-off-the-other-block',
      'windlass.line-winds-on-itself',
      'windlass.lines-swapped',
    ]);
  });

  test('is built stage by stage, with a link where scale and load would be', () => {
    const chain = compoundOf([leverStation({ load: -0.1, pull: 0.3 }), tackleStation({ parts: 2 })]);
    const keys = machine.steps(chain).map((step) => step.key);
    expect(keys).toEqual([
      'compound.step.stage',
      'lever.step.measure',
      'lever.step.fulcrum-distance',
      'lever.step.load-distance',
      'compound.step.tie-to-at',
      'compound.step.stage',
      'tackle.step.hang-fixed',
      'tackle.step.tie-above',
      'tackle.step.lead-under',
      'tackle.step.lead-over',
      'tackle.step.count',
      'compound.step.tie-from',
      'compound.step.link',
      'tackle.step.hook',
      'tackle.step.pull-down',
    ]);
    expect(Object.keys(sentencesEn)).toEqual(expect.arrayContaining(keys));
  });
});

describe('made from preparations', () => {
  const place: Preparation['place'] = (field) => ({ file: 'a', path: [field ?? ''], on: 'value' });
  const bare = { parts: {}, fields: {}, place, partPlace: (_: string, field: string | null) => place(field) };
  const pulley = {
    machine: 'tackle',
    preparation: {
      ...bare,
      parts: { 'fixed block': { mark: 'p', kind: 'guide pulley', fields: {} } },
      fields: {
        'parts of line': { type: 'count', count: 1 },
        'fall leaves': { type: 'choice', choice: 'fixed block' },
      },
    },
  } as const;
  const codes = (stages: Preparation['stages']) =>
    machine
      .make({ ...bare, ...(stages === undefined ? {} : { stages }) })
      .diagnostics.filter(isError)
      .map(({ code }) => code);

  test('two stages and more make a compound with the inputs of each', () => {
    const { station } = machine.make({ ...bare, stages: [pulley, pulley] });
    expect(Object.keys(station?.inputs ?? {})).toEqual(
      expect.arrayContaining(['1.fixedShare', '2.fixedShare']),
    );
  });

  test('a single stage, an unknown one and one that passes nothing on are refused', () => {
    expect(codes([pulley])).toEqual(['compound.too-few-stages']);
    expect(codes(undefined)).toEqual(['compound.too-few-stages']);
    expect(codes([pulley, { ...pulley, machine: 'crank' }])).toEqual(['compound.unknown-stage']);
    const flat = {
      ...simpleMachines[3],
      name: 'flat',
      make: () => ({ station: flatStation, diagnostics: [] }),
    };
    const flatStation = { machine: 'flat', inputs: { nothing: exactly(0) } };
    const still = { kind: 'not-defined', because: 'drag.no-useful-work', facts: {} } as const;
    const withFlat = compound([...simpleMachines, { ...flat, balance: () => still } as never]);
    const made = withFlat.make({ ...bare, stages: [pulley, { ...pulley, machine: 'flat' }] });
    expect(made.diagnostics.filter(isError).map(({ code }) => code)).toEqual(['compound.passes-nothing-on']);
  });

  test("a stage's own faults are reported with the place of that stage", () => {
    const broken = { ...pulley, preparation: { ...pulley.preparation, parts: {} } };
    expect(codes([pulley, broken])).toEqual(['tackle.block-missing']);
    expect(Object.keys(texts)).toHaveLength(4);
  });
});

describe('the list of machines', () => {
  test('names every machine of a table', () => {
    expect(
      [
        'lever',
        'inclined plane',
        'drag on the level',
        'tackle',
        'windlass',
        'screw',
        'wedge',
        'compound',
      ].map((name) => machineNamed(name)?.name),
    ).not.toContain(undefined);
    expect(machineNamed('crank')).toBeUndefined();
  });
});
