import { describe, expect, test } from 'vitest';
import { planeOf } from '../../../../test/stations/incline.ts';
import { leverStation } from '../../../../test/stations/lever.ts';
import { baseOf } from '../../../../test/stations/ride.ts';
import { tackleStation } from '../../../../test/stations/tackle.ts';
import { windlassStation } from '../../../../test/stations/windlass.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import { machineNamed, sentencesEn, simpleMachines } from '../list.ts';
import type { Station } from '../machine.ts';
import { compound } from './index.ts';
import { compoundOf } from './station.ts';

const machine = compound(simpleMachines);
const ramp = planeOf({ angle: 0.4 }, baseOf({ mu: 0.2, deadMass: 0.1 }));
const lever = leverStation({ load: -0.1, pull: 0.3 });
const tackle = tackleStation({ parts: 2 });
const windlass = windlassStation({ wheel: 0.06, axle: 0.01 });
const figuresOf = (stages: readonly Station[]) => machine.figures?.(compoundOf(stages), atBest) ?? [];
const rows = [
  [ramp, lever],
  [tackle, windlass],
  [lever, tackle, windlass],
  [windlass, ramp, tackle],
];

describe('the pictures of a compound machine', () => {
  test('are one for each stage, with everything that its own picture has', () => {
    for (const stages of rows) {
      const drawn = figuresOf(stages);
      expect(drawn.map(({ title }) => title.facts)).toEqual(
        stages.map((station, k) => ({ stage: k + 1, machine: station.machine })),
      );
      for (const [k, { drawing }] of drawn.entries()) {
        const [station] = stages.slice(k);
        const own = station && machineNamed(station.machine)?.drawing(station, atBest);
        expect(drawing.shapes).toHaveLength(own?.shapes.length ?? -1);
      }
    }
  });

  test('have the load on the first only, the pull on the last only, and lines that say where they go', () => {
    for (const stages of rows) {
      const drawn = figuresOf(stages);
      const last = drawn.length - 1;
      for (const [k, { drawing }] of drawn.entries()) {
        const words = drawing.shapes.flatMap((shape) =>
          shape.shape === 'link' || shape.shape === 'label' ? [{ key: shape.key, facts: shape.facts }] : [],
        );
        const has = (kind: string): boolean => drawing.shapes.some(({ shape }) => shape === kind);
        expect(has('effort')).toBe(k === last);
        if (k > 0) {
          expect(has('load')).toBe(false);
          expect(words).toContainEqual({ key: 'compound.label.from', facts: { stage: k } });
        }
        if (k < last) expect(words).toContainEqual({ key: 'compound.label.to', facts: { stage: k + 2 } });
      }
    }
  });

  test('give the whole the way of the hand: that of the last stage', () => {
    for (const stages of rows)
      expect(machine.drawing(compoundOf(stages), atBest)).toEqual(figuresOf(stages).at(-1)?.drawing);
  });

  test('have a sentence for every heading and every line', () => {
    const keys = rows
      .flatMap(figuresOf)
      .flatMap(({ title, drawing }) => [
        title.key,
        ...drawing.shapes.flatMap((shape) => (shape.shape === 'link' ? [shape.key] : [])),
      ]);
    expect(Object.keys(sentencesEn)).toEqual(expect.arrayContaining(keys));
  });
});
