import fc from 'fast-check';
import { lever } from '../../src/core/machines/lever/index.ts';
import type { Lever } from '../../src/core/machines/lever/station.ts';
import { kilograms, metresPerSecondSquared } from '../../src/core/quantities/brands.ts';
import type { WayOfReading } from '../../src/core/setups/prediction.ts';
import type { Setup } from '../../src/core/setups/setup.ts';
import { exactly, type Measured, measured, times } from '../../src/core/uncertainty/measured.ts';
import { leverStation } from './lever.ts';
import { scaleOf, setupOf } from './setup.ts';

/** A lever setup in plain numbers (SI; grams where said), every doubt a share of its value. */
export interface LeverSetup {
  readonly classIs: 'first' | 'second' | 'third';
  readonly near: number;
  readonly far: number;
  readonly barMass: number;
  readonly barOff: number;
  readonly pinDiameter: number;
  readonly friction: number;
  readonly startingRatio: number;
  readonly loadMass: number;
  readonly doubt: number;
  readonly way: WayOfReading;
  readonly zeroed: 'hook down' | 'in place';
  readonly tapped: boolean;
  readonly handCarries: boolean;
  readonly scatter: number;
  readonly grams: number;
  readonly movingShare: number;
  readonly accuracy: number;
  readonly tubeFriction: number;
  readonly step: number;
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** Lever setups as they stand on tables: loads to a kilogram, arms to half a metre, a scale to 20 N. */
export const anyLeverSetup: fc.Arbitrary<LeverSetup> = fc.record({
  classIs: fc.constantFrom('first', 'second', 'third'),
  near: between(0.04, 0.25),
  far: between(0.26, 0.5),
  barMass: between(0.02, 0.6),
  barOff: between(-0.1, 0.1),
  pinDiameter: between(0.003, 0.008),
  friction: between(0.1, 0.35),
  startingRatio: between(1, 1.4),
  loadMass: between(0.1, 1),
  doubt: between(0.002, 0.05),
  way: fc.constantFrom('raise', 'lower', 'held', 'start'),
  zeroed: fc.constantFrom('hook down', 'in place'),
  tapped: fc.boolean(),
  handCarries: fc.boolean(),
  scatter: between(0, 0.05),
  grams: between(30, 100),
  movingShare: between(0.1, 0.4),
  accuracy: between(0, 0.1),
  tubeFriction: between(0, 0.05),
  step: fc.constantFrom(0.05, 0.1, 0.2),
});

export interface Changes {
  /** Times each doubt, by the unknown's id. */
  readonly factor?: (id: string) => number;
  /** Name of an unknown, in place of its id. */
  readonly name?: (id: string) => string;
}

/** The setup that such numbers describe; first-class pulls go down, so that their scale hangs upside down. */
export function leverSetup(said: LeverSetup, changes: Changes = {}): Setup {
  const { factor = () => 1, name = (id: string) => id } = changes;
  const doubtful = <Q extends number>(id: string, value: Q, u = Math.abs(value) * said.doubt): Measured<Q> =>
    measured(value, { id: name(id), u: u * factor(id), shape: 'normal', origin: 'stated' });
  const load = said.classIs === 'first' ? -said.near : said.classIs === 'second' ? said.near : said.far;
  const bare = leverStation({ load, pull: said.classIs === 'third' ? said.near : said.far });
  const { inputs } = bare;
  const friction = doubtful('bar/pin friction', said.friction);
  const station: Lever = {
    ...bare,
    inputs: {
      ...inputs,
      load: doubtful('bar/load', inputs.load.value, 0.001),
      pull: doubtful('bar/pull', inputs.pull.value, 0.001),
      barMass: doubtful('bar/mass', kilograms(said.barMass)),
      barCentre: doubtful('bar/mass centre', said.barOff as typeof inputs.barCentre.value, 0.001),
      pinRadius: times(doubtful('bar/pin diameter', said.pinDiameter), 0.5),
      pinFriction: friction as typeof inputs.pinFriction,
      pinStarting: times(friction, said.startingRatio),
    },
  };
  const bareScale = scaleOf({ range: 20, graduation: said.step });
  const mass = doubtful('scale/mass', kilograms(said.grams / 1000));
  const scale = {
    ...bareScale,
    inputs: {
      ...bareScale.inputs,
      mass,
      moving: { part: times<typeof mass.value>(mass, said.movingShare), spring: exactly(kilograms(0)) },
      accuracy: doubtful('scale/accuracy', bareScale.inputs.accuracy.value, said.accuracy / Math.sqrt(3)),
      tubeFriction: doubtful('scale/tube friction', said.tubeFriction as typeof bareScale.range),
    },
  };
  return setupOf(lever, station, {
    way: said.way,
    load: { kind: 'mass', mass: doubtful('load/mass', kilograms(said.loadMass)) },
    gravity: doubtful('place/gravity', metresPerSecondSquared(9.81), 0.001),
    scale,
    hang: said.classIs === 'first' ? 'upside down' : 'hook down',
    zeroed: said.zeroed,
    tapped: said.tapped,
    handCarries: said.handCarries,
    reader: { scatter: said.scatter, handLimit: null },
  });
}
