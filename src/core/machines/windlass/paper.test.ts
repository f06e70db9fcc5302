import { expect, test } from 'vitest';
import { windlassStation } from '../../../../test/stations/windlass.ts';
import { atBest } from '../../uncertainty/propagate.ts';
import { drawing, reading, steps } from './paper.ts';
import type { Windlass } from './station.ts';

const wheel = windlassStation({ wheel: 0.05, axle: 0.01 });
const crank = windlassStation({ wheel: 0.05, axle: 0.01, turnedBy: 'crank' });
const namesOf = (windlass: Windlass) => steps(windlass).map(({ key }) => key.split('.')[2]);

test('the axle line has one turn and the wheel line is wound on before the load hangs', () => {
  expect(namesOf(wheel)).toEqual([
    'tie-axle',
    'wind-once',
    'tie-wheel',
    'wind-wheel',
    'load',
    'hook-wheel',
    'side-by-side',
    'pull-down',
  ]);
});

test('a crank has no second line, in the steps and in the drawing', () => {
  const lines = (windlass: Windlass) =>
    drawing(windlass, atBest).shapes.flatMap((shape) =>
      shape.shape === 'line' ? [shape.dashed === true] : [],
    );
  expect(namesOf(crank).filter((name) => name?.includes('wheel'))).toEqual([]);
  expect(lines(crank)).toEqual([false]);
  expect(lines(wheel)).toEqual([false, true]);
});

test('layers are wound below the turn that carries the load, and lines go by their marks', () => {
  const marked = { ...wheel, layers: 2, lines: { axle: 'cord', wheel: 'twine' } };
  expect(namesOf(marked).slice(0, 4)).toEqual([
    'tie-axle-named',
    'wind-layers',
    'wind-on-top',
    'tie-wheel-named',
  ]);
  expect(steps(marked)[0]?.facts).toEqual({ mark: 'cord' });
});

test('a crank is read where it is square to the scale, a wheel anywhere', () => {
  expect(reading(crank, 'lower').map(({ key }) => key)).toEqual([
    'hung-load.step.creep',
    'windlass.step.read-square',
  ]);
  expect(reading(wheel, 'raise').map(({ key }) => key)).toEqual(['hung-load.step.read-rising']);
});

test('a pull that leans is not called straight', () => {
  expect(namesOf(windlassStation({ wheel: 0.05, axle: 0.01, lean: 0.6 })).at(-1)).toBe('pull-leaning');
});
