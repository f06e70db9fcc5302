import { describe, expect, it } from 'vitest';
import { lever } from '../../src/core/machines/lever/index.ts';
import { kilograms } from '../../src/core/quantities/brands.ts';
import { predictScale } from '../../src/core/setups/predict-scale.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';
import { solveFor } from '../published/solve-for.ts';
import { leverStation, leverUnder } from '../stations/lever.ts';
import { scaleOf, setupOf } from '../stations/setup.ts';
import { type LeverBodies, letGo } from './lever-bodies.ts';

const G = 9.80665;

const heavy: Readonly<Record<string, LeverBodies>> = {
  'a first-class lever whose bar helps the load': {
    load: -0.3,
    loadMass: 0.4,
    pull: 0.7,
    barMass: 0.6,
    barCentre: -0.1,
  },
  'a first-class lever whose bar helps the pull': {
    load: -0.2,
    loadMass: 1.0,
    pull: 0.7,
    barMass: 0.3,
    barCentre: 0.2,
  },
  'a second-class lever': { load: 0.25, loadMass: 0.8, pull: 0.9, barMass: 0.5, barCentre: 0.45 },
  'a third-class lever': { load: 0.9, loadMass: 0.3, pull: 0.25, barMass: 0.4, barCentre: 0.4 },
  'a bar that outweighs its load': { load: -0.15, loadMass: 0.2, pull: 0.75, barMass: 0.14, barCentre: 0.3 },
};

const lawOf = ({ load, loadMass, pull, barMass, barCentre }: LeverBodies): number =>
  leverUnder(leverStation({ load, pull, barMass, barCentre }), loadMass * G, 'raise', 'none').effort;

describe('a rigid-body engine as a witness of the lever', () => {
  it.each(Object.entries(heavy))('finds the balance point of %s within 1 percent of the law', (_, bodies) => {
    const pullsDown = bodies.load * bodies.pull < 0;
    // Turning against the load counts as positive, whichever side it is on.
    const raised = (effort: number): number =>
      Math.sign(bodies.load) * letGo(bodies, pullsDown ? -effort : effort);
    const law = lawOf(bodies);
    const balance = solveFor(raised, 0, law - 2, law + 2);
    expect(Math.abs(balance - law)).toBeLessThanOrEqual(0.01 * Math.abs(law));
  });
});

describe('a scale that hangs upside down by its hook, as a body', () => {
  const bar: LeverBodies = { load: -0.2, loadMass: 0.2, pull: 0.5, barMass: 0.5, barCentre: 0 };
  const needed = lawOf(bar);
  /** The scale alone pulls; the load starts on the table and can't go lower. */
  const raisedBy = (scaleMass: number): number => -letGo({ ...bar, scaleMass, onTable: true }, 0, 1);

  it('pulls with its weight: lighter than the pull needed it moves nothing', () => {
    expect(Math.abs(raisedBy((0.98 * needed) / G))).toBeLessThan(0.001);
  });

  it('raises the load by itself where it is heavier than the pull needed', () => {
    expect(raisedBy((1.02 * needed) / G)).toBeGreaterThan(0.015);
  });

  it.each([
    [0.98, 'reading'],
    [1.02, 'moves under the scale'],
  ])('and a prediction says so at %f of that weight: %s', (share, kind) => {
    const { loadMass, ...rest } = bar;
    const setup = setupOf(lever, leverStation(rest), {
      load: { kind: 'mass', mass: exactly(kilograms(loadMass)) },
      scale: scaleOf({ grams: ((share * needed) / G) * 1000 }),
      hang: 'upside down',
      zeroed: 'in place',
    });
    expect(predictScale(setup).outcome.kind).toBe(kind);
  });
});
