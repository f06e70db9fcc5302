import { expect, test } from 'vitest';
import { leverStation } from '../../../../test/stations/lever.ts';
import { radians } from '../../quantities/brands.ts';
import { exactly } from '../../uncertainty/measured.ts';
import { reading, steps } from './paper.ts';
import type { Lever } from './station.ts';

const bare = leverStation({ load: -0.1, pull: 0.3 });
const tilted = (tilt: number): Lever => ({
  ...bare,
  inputs: { ...bare.inputs, tilt: exactly(radians(tilt)) },
});
const keysOf = (lever: Lever, way: Parameters<typeof reading>[1]) =>
  reading(lever, way).map(({ key }) => key);

test('each way of reading says once where the bar is when it is read', () => {
  expect(keysOf(bare, 'raise')).toEqual(['lever.step.read-level']);
  expect(keysOf(bare, 'lower')).toEqual(['lever.step.creep', 'lever.step.read-level']);
  expect(keysOf(bare, 'held')).toEqual(['lever.step.hold-level', 'hung-load.step.read-rest']);
  expect(keysOf(bare, 'start')).toEqual([
    'lever.step.prop-level',
    'hung-load.step.harder',
    'hung-load.step.read-peak',
  ]);
});

test('a bar that is read tilted is read at that tilt, said without a sign', () => {
  expect(reading(tilted(0.2), 'raise')[0]).toMatchObject({
    key: 'lever.step.read-load-up',
    facts: { angle: { si: 0.2 } },
  });
  expect(reading(tilted(-0.2), 'held')[0]).toMatchObject({
    key: 'lever.step.hold-load-down',
    facts: { angle: { si: 0.2 } },
  });
});

test('only a bar without holes is measured, and no building step says how it is read', () => {
  const holes = leverStation({ load: 0.1, pull: 0.5, fulcrum: 0.3, holes: [0.1, 0.3, 0.5] });
  const keys = [bare, holes].map((lever) => steps(lever).map(({ key }) => key));
  expect(keys.map((each) => each.includes('lever.step.measure'))).toEqual([true, false]);
  expect(keys.flat().filter((key) => key.includes('read'))).toEqual([]);
});
