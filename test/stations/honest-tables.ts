import { lever } from '../../src/core/machines/lever/index.ts';
import type { Lever } from '../../src/core/machines/lever/station.ts';
import type { Setup } from '../../src/core/setups/setup.ts';
import { type Measured, measured } from '../../src/core/uncertainty/measured.ts';
import type { HonestLever, Spread } from './honest-lever.ts';
import { leverStation } from './lever.ts';
import { scaleOf, setupOf } from './setup.ts';

const plain: HonestLever = {
  pulls: 'up',
  load: { mean: 0.2, sd: 0.001 },
  pull: { mean: 0.45, sd: 0.001 },
  bar: { mean: 0.1, sd: 0.001 },
  barMass: { mean: 0.12, sd: 0.001 },
  pinRadius: { mean: 0.003, sd: 0.0001 },
  friction: { mean: 0.25, half: 0.1 },
  loadMass: { mean: 0.3, sd: 0.001 },
  shift: { mean: 0, sd: 0 },
  accuracy: { mean: 0, half: 0.05 },
  tubeFriction: 0.03,
  scatter: 0.03,
  step: 0.1,
  sense: 'raise',
};

/** Tables whose honest readings are drawn: what is not known comes from another place at each. */
export const honestTables: Readonly<Record<string, HonestLever>> = {
  'a second-class lever read on coarse marks': plain,
  'the same let back': { ...plain, sense: 'lower' },
  'a pull downward through a scale that hangs upside down': {
    ...plain,
    pulls: 'down',
    load: { mean: 0.3, sd: 0.001 },
    bar: { mean: -0.02, sd: 0.002 },
    shift: { mean: 0.27, sd: 0.01 },
  },
  'a scatter of the hand that outweighs the rest': {
    ...plain,
    accuracy: { mean: 0, half: 0.005 },
    tubeFriction: 0.002,
    step: 0.02,
    scatter: 0.05,
  },
  'a heavy bar whose dry pin is hardly known': {
    ...plain,
    pulls: 'down',
    load: { mean: 0.15, sd: 0.001 },
    pull: { mean: 0.3, sd: 0.001 },
    bar: { mean: 0, sd: 0.001 },
    barMass: { mean: 1.2, sd: 0.002 },
    pinRadius: { mean: 0.004, half: 0.001 },
    accuracy: { mean: 0, half: 0.01 },
    step: 0.02,
  },
};

/** The setup that such a table is, with the same doubts as the program takes them. */
export function honestSetup(table: HonestLever): Setup {
  const doubtful = <Q extends number>(id: string, of: Spread, value: Q): Measured<Q> =>
    measured(value, {
      id,
      u: 'sd' in of ? of.sd : of.half / Math.sqrt(3),
      shape: 'sd' in of ? 'normal' : 'even',
      origin: 'stated',
    });
  const side = table.pulls === 'down' ? -1 : 1;
  const bare = leverStation({
    load: side * table.load.mean,
    pull: table.pull.mean,
    barMass: table.barMass.mean,
    barCentre: side * table.bar.mean,
    pinRadius: table.pinRadius.mean,
    friction: table.friction.mean,
  });
  const { inputs } = bare;
  const station: Lever = {
    ...bare,
    inputs: {
      ...inputs,
      load: doubtful('load', table.load, inputs.load.value),
      pull: doubtful('pull', table.pull, inputs.pull.value),
      barMass: doubtful('bar mass', table.barMass, inputs.barMass.value),
      barCentre: doubtful('bar centre', table.bar, inputs.barCentre.value),
      pinRadius: doubtful('pin radius', table.pinRadius, inputs.pinRadius.value),
      pinFriction: doubtful('pin friction', table.friction, inputs.pinFriction.value),
    },
  };
  const scale = scaleOf({ range: 10, graduation: table.step, tubeFriction: table.tubeFriction });
  return setupOf(lever, station, {
    way: table.sense,
    load: { kind: 'mass', mass: doubtful('load mass', table.loadMass, table.loadMass.mean as never) },
    scale: {
      ...scale,
      inputs: {
        ...scale.inputs,
        moving: null,
        turnOver: doubtful('turn-over', table.shift, table.shift.mean as never),
        accuracy: doubtful('accuracy', table.accuracy, scale.inputs.accuracy.value),
      },
    },
    hang: table.pulls === 'down' ? 'upside down' : 'hook down',
    tapped: false,
    reader: { scatter: table.scatter, handLimit: null },
  });
}
