import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tackleStation } from '../../../../test/stations/tackle.ts';
import { recompute } from '../../../../test/stations/working.ts';
import { isNotDefined } from '../../description/not-defined.ts';
import { metresPerSecondSquared, newtons } from '../../quantities/brands.ts';
import type { Asked, Balance } from '../../statics/balance.ts';
import { measured, standardUncertainty } from '../../uncertainty/measured.ts';
import { atBest, propagate } from '../../uncertainty/propagate.ts';
import { between, differences, drawing, steps } from './paper.ts';
import { sentences } from './sentences.en.ts';
import { blocksAlongTheLine, mostParts, sheavesNeeded, type Tackle } from './station.ts';
import { balanceTackle, idealAdvantage } from './tackle.ts';

const seeded = { seed: 22 };
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const asked = (load: number, more: Partial<Asked> = {}): Asked => ({
  load: newtons(load),
  gravity: metresPerSecondSquared(9.81),
  direction: 'raise',
  grip: 'moving',
  ...more,
});
const block = fc.constantFrom('fixed block', 'moving block');
const said = fc
  .record({
    parts: fc.integer({ min: 1, max: 8 }),
    fallLeaves: block,
    efficiency: real(0.6, 1),
    constant: real(0, 0.02),
    blockMass: real(0, 0.2),
    lean: real(0, 1),
    guides: fc.constantFrom(0, 1, 2),
  })
  .filter(({ parts, fallLeaves }) => parts > 1 || fallLeaves === 'fixed block')
  .map((each) => (each.parts === 1 ? { ...each, lean: 0 } : each));

const balanced = (...args: Parameters<typeof balanceTackle>): Balance => {
  const balance = balanceTackle(...args);
  if (isNotDefined(balance)) throw new Error(balance.because);
  return balance;
};

describe('reeving', () => {
  test('three parts off the fixed block pass two sheaves there and one below', () => {
    expect(sheavesNeeded(3, 'fixed block')).toEqual({ fixed: 2, moving: 1 });
    expect(blocksAlongTheLine(3, 'fixed block')).toEqual(['fixed block', 'moving block', 'fixed block']);
  });

  test('a single movable pulley needs no sheave above it', () => {
    expect(sheavesNeeded(2, 'moving block')).toEqual({ fixed: 0, moving: 1 });
    expect(blocksAlongTheLine(2, 'moving block')).toEqual(['moving block']);
  });

  test('two double blocks carry four parts hauled from above and five hauled from below', () => {
    expect(mostParts({ fixed: 2, moving: 2 }, 'fixed block')).toBe(4);
    expect(mostParts({ fixed: 2, moving: 2 }, 'moving block')).toBe(5);
  });
});

describe('a tackle', () => {
  test('of two parts, 0.9 a sheave, with 200 g on a 40 g block raises with 1.38 N and lowers with 1.00 N', () => {
    const station = tackleStation({ parts: 2, efficiency: 0.9, blockMass: 0.04 });
    // Own theory sheet on pulleys, "held still".
    const load = asked(0.2 * 9.80665, { gravity: metresPerSecondSquared(9.80665) });
    expect(balanced(station, atBest, load).effort).toBeCloseTo(1.38, 2);
    expect(balanced(station, atBest, { ...load, direction: 'lower' }).effort).toBeCloseTo(1.0, 2);
  });

  test('closes its work account, raising and lowering, whatever it is made of', () => {
    fc.assert(
      fc.property(said, real(0.5, 50), fc.constantFrom('raise', 'lower'), (each, load, direction) => {
        const { work } = balanced(tackleStation(each), atBest, asked(load, { direction }));
        const largest = Math.max(...work.map((term) => Math.abs(term.rate)));
        expect(Math.abs(work.reduce((sum, term) => sum + term.rate, 0)) / largest).toBeLessThan(1e-9);
      }),
      seeded,
    );
  });

  test('without friction, dead weight and lean asks for the load over its parts of line', () => {
    fc.assert(
      fc.property(said, real(0.5, 50), (each, load) => {
        const station = tackleStation({ ...each, blockMass: 0, lean: 0 });
        const { effort } = balanced(station, atBest, asked(load, { grip: 'none' }));
        expect((effort * idealAdvantage(station).advantage) / load).toBeCloseTo(1, 12);
      }),
      seeded,
    );
  });

  test('asks for more effort to raise the load than to let it back, and more with every loss', () => {
    fc.assert(
      fc.property(said, real(0.5, 50), (each, load) => {
        const raise = balanced(tackleStation(each), atBest, asked(load)).effort;
        const lower = balanced(tackleStation(each), atBest, asked(load, { direction: 'lower' })).effort;
        expect(lower).toBeLessThanOrEqual(raise * (1 + 1e-12));
        const worse = tackleStation({ ...each, efficiency: each.efficiency * 0.95 });
        expect(balanced(worse, atBest, asked(load)).effort).toBeGreaterThan(raise);
        const heavier = tackleStation({ ...each, blockMass: each.blockMass + 0.01 });
        expect(balanced(heavier, atBest, asked(load)).effort).toBeGreaterThan(raise);
      }),
      seeded,
    );
  });

  test('is known the worse, the worse its sheaves and its block are known', () => {
    const spread = (u: number) => {
      const station = tackleStation({ parts: 4, efficiency: 0.9, blockMass: 0.03 });
      const { movingShare, blockMass } = station.inputs;
      const inputs = {
        ...station.inputs,
        movingShare: measured(movingShare.value, { id: 's', u: 0.02 * u, shape: 'even', origin: 'stated' }),
        blockMass: measured(blockMass.value, { id: 'm', u: 0.002 * u, shape: 'even', origin: 'stated' }),
      };
      const pull = propagate(
        (at) => balanced({ ...station, inputs }, at, asked(2)).effort,
        Object.values(inputs),
      );
      return pull === null ? 0 : standardUncertainty(pull);
    };
    fc.assert(
      fc.property(real(0, 1), real(0, 1), (a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        expect(spread(less)).toBeLessThanOrEqual(spread(more) * (1 + 1e-9));
      }),
      seeded,
    );
    expect(spread(1)).toBeGreaterThan(0);
  });

  test('starts with the pull that keeps it moving, as no sheave has a starting value', () => {
    const station = tackleStation({ parts: 4, efficiency: 0.85 });
    const moving = balanced(station, atBest, asked(2)).effort;
    expect(balanced(station, atBest, asked(2, { grip: 'starting' })).effort).toBe(moving);
  });

  test('is hauled as far as its parts of line say, less where they lean', () => {
    expect(balanced(tackleStation({ parts: 4 }), atBest, asked(2)).velocityRatio).toBe(4);
    const leaning = balanced(tackleStation({ parts: 2, lean: Math.PI / 3 }), atBest, asked(2));
    expect(leaning.velocityRatio).toBeCloseTo(1, 12);
    expect(leaning.effort).toBeCloseTo(2, 12);
  });

  test('goes slack at its dead end where the sheaves drag more than the load pulls', () => {
    const slack = balanceTackle(tackleStation({ parts: 4, constant: 1 }), atBest, asked(0.5));
    expect(slack).toMatchObject({ kind: 'not-defined', because: 'tackle.slack' });
  });

  test('that drags too much does not come back: its lowering pull comes out negative', () => {
    const station = tackleStation({ parts: 1, constant: 1 });
    expect(balanced(station, atBest, asked(0.5, { direction: 'lower' })).effort).toBeCloseTo(-0.5, 12);
  });

  test('prints lines from which each value can be found again, also from six digits', () => {
    fc.assert(
      fc.property(said, real(0.5, 50), fc.constantFrom('raise', 'lower'), (each, load, direction) => {
        const station = tackleStation(each);
        const balance = balanced(station, atBest, asked(load, { direction }));
        const lines = [...balance.working(), ...idealAdvantage(station).working];
        const largest = Math.max(...lines.map((line) => Math.abs(line.value)));
        for (const line of lines) {
          expect(Math.abs(recompute(line) - line.value) / largest).toBeLessThan(1e-12);
          expect(Math.abs(recompute(line, 6) - line.value) / largest).toBeLessThan(1e-4);
          expect(Object.keys(sentences)).toContain(line.what);
        }
        expect(balance.working().at(-1)).toMatchObject({ symbol: 'F', value: balance.effort });
      }),
      seeded,
    );
  });

  test('prints no line that uses a symbol before it is found', () => {
    const station = tackleStation({ parts: 3, efficiency: 0.9, constant: 0.01, blockMass: 0.02, guides: 1 });
    const found = new Set<string>();
    const lines = balanced(station, atBest, asked(2)).working();
    const symbols = new Set(lines.map((line) => line.symbol));
    for (const line of lines) {
      for (const name of Object.keys(line.values)) if (symbols.has(name)) expect(found).toContain(name);
      found.add(line.symbol);
    }
    expect([...found].at(-1)).toBe('F');
  });
});

describe('on paper', () => {
  const toldBy = (station: Tackle): readonly string[] =>
    steps(station).map(({ key }) => key.split('.')[2] ?? '');
  const from = tackleStation({ parts: 2, spareSheaves: 1 });

  test('an even number of parts is tied above, an odd one below, and the first sheave is the other block', () => {
    for (const parts of [2, 3, 4, 5])
      for (const fallLeaves of ['fixed block', 'moving block'] as const) {
        const told = toldBy(tackleStation({ parts, fallLeaves }));
        const tied = told.findIndex((name) => name.startsWith('tie-'));
        expect(told.slice(tied, tied + 2)).toEqual(
          parts % 2 === 0 ? ['tie-above', 'lead-under'] : ['tie-below', 'lead-over'],
        );
        expect(told.includes('hang-fixed')).toBe(sheavesNeeded(parts, fallLeaves).fixed > 0);
      }
  });

  test('blocks are named by their marks, and sheaves that the line passes by are left empty', () => {
    const told = steps({ ...from, blocks: { fixed: 'A', moving: 'B' } });
    expect(told.filter(({ facts }) => 'mark' in facts).map(({ facts }) => facts.mark)).toEqual(['A', 'B']);
    expect(told.find(({ key }) => key === 'tackle.step.empty')?.facts).toEqual({ above: 1, below: 1 });
  });

  test('between two setups the load comes down, and the line comes out as far as it must', () => {
    const undone = (a: Tackle, b: Tackle) => between(a, b).map(({ key }) => key.split('.')[2]);
    const four = tackleStation({ parts: 4 });
    expect(undone(from, from)).toEqual(['load']);
    expect(undone(from, four)).toEqual(['load', 'scale']);
    expect(undone(four, from)).toEqual(['load', 'scale', 'pull-back']);
    expect(undone(four, tackleStation({ parts: 3 }))).toEqual(['load', 'scale', 'take-out']);
  });

  test('every step, difference and cause has its English sentence', () => {
    fc.assert(
      fc.property(said, (each) => {
        const station = tackleStation(each);
        const { work } = balanced(station, atBest, asked(5));
        const keys = [
          ...steps(station).map((step) => step.key),
          ...differences(station, atBest).map((difference) => difference.key),
          ...work.map((term) => term.cause).filter((cause) => cause.startsWith('tackle.')),
        ];
        expect(Object.keys(sentences)).toEqual(expect.arrayContaining(keys));
      }),
      seeded,
    );
  });

  test('the drawing shows a wheel for each sheave that the line passes, and one load', () => {
    fc.assert(
      fc.property(said, (each) => {
        const { shapes } = drawing(tackleStation(each), atBest);
        const needed = sheavesNeeded(each.parts, each.fallLeaves);
        const wheels = shapes.filter((shape) => shape.shape === 'wheel').length;
        expect(wheels).toBe(needed.fixed + needed.moving + each.guides);
        expect(shapes.filter((shape) => shape.shape === 'load')).toHaveLength(1);
        expect(JSON.stringify(shapes)).not.toContain('null');
      }),
      seeded,
    );
  });
});
