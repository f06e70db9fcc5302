import { isNotDefined } from '../../src/core/description/not-defined.ts';
import { idealAdvantage as idealLever } from '../../src/core/machines/lever/lever.ts';
import type { Lever } from '../../src/core/machines/lever/station.ts';
import {
  commonSpeed,
  meanForce,
  meanResistance,
  penetration,
  strikingSpeed,
} from '../../src/core/machines/wedge/blow.ts';
import { liftingForces } from '../../src/core/machines/wedge/lifting-forces.ts';
import { splittingForces } from '../../src/core/machines/wedge/splitting-forces.ts';
import type { Wedge } from '../../src/core/machines/wedge/station.ts';
import {
  balanceWedge,
  holdingMargin,
  idealAdvantage,
  isSelfHolding,
} from '../../src/core/machines/wedge/wedge.ts';
import { kilograms, metres, metresPerSecondSquared, newtons } from '../../src/core/quantities/brands.ts';
import type { Asked } from '../../src/core/statics/balance.ts';
import { exactly } from '../../src/core/uncertainty/measured.ts';
import { atBest } from '../../src/core/uncertainty/propagate.ts';
import { liftingWedge, splittingWedge } from '../stations/wedge.ts';
import { type Answer, inputsOf, type PublishedCase, runTopic } from './topic.ts';

/** Weights come in newtons or pounds: under a gravity of 1 m/s² a wedge's mass is its weight. */
const asked = (load: number, direction: Asked['direction'], grip: Asked['grip'] = 'moving'): Asked => ({
  load: newtons(load),
  gravity: metresPerSecondSquared(1),
  direction,
  grip,
});

function effort(wedge: Wedge, load: number, direction: Asked['direction'], grip?: Asked['grip']): number {
  const balance = balanceWedge(wedge, atBest, asked(load, direction, grip));
  if (isNotDefined(balance)) throw new Error(balance.because);
  return balance.effort;
}

/** Where the case has a wall, or friction everywhere, the stop rubs too. */
function liftingOf(published: PublishedCase): Wedge {
  const input = inputsOf(published);
  const everywhere = published.inputs.friction_angle !== undefined || published.inputs.block !== undefined;
  const mu = input('mu', input('mu_slope', input('mu_top', Math.tan(input('friction_angle', 0)))));
  return liftingWedge({
    angle: input('angle', Math.atan(input('slope', 0))),
    friction: mu,
    base: input('mu_base', mu),
    stop: everywhere ? mu : 0,
    mass: input('wedge', 0),
  });
}

const lifting: Answer = (published) => {
  const input = inputsOf(published);
  const wedge = liftingOf(published);
  const load = input('load', input('block', input('reaction', 0)));
  const normal = liftingForces(wedge, atBest, asked(load, 'raise'))?.faceNormal ?? Number.NaN;
  return {
    push: effort(wedge, load, 'raise'),
    N2: normal,
    N_slope: normal,
    mu_self_lock: frictionThatHolds(input('angle', 0)),
  };
};

/** The least friction, alike above and below, at which a wedge of this angle holds itself: by halving. */
function frictionThatHolds(angle: number): number {
  let low = 0;
  let high = 1;
  for (let step = 0; step < 60; step += 1) {
    const mu = (low + high) / 2;
    if (isSelfHolding(liftingWedge({ angle, friction: mu, base: mu }), atBest)) high = mu;
    else low = mu;
  }
  return high;
}

/** A drive force on cords of one newton, scaled: every force of a splitting wedge grows with its cords. */
const splitting: Answer = (published) => {
  const input = inputsOf(published);
  const wedge = splittingWedge({ angle: input('included_angle') / 2, friction: input('mu'), preTension: 1 });
  const one = (direction: Asked['direction'], grip: Asked['grip']) => {
    const forces = splittingForces(wedge, atBest, asked(0, direction, grip));
    if (forces === null) throw new Error('jams');
    return forces;
  };
  const drive = input('drive');
  const driven = one('raise', 'moving');
  const smooth = one('raise', 'none');
  const back = one('lower', 'moving');
  const normal = (driven.faceNormal * drive) / driven.push;
  const normalSmooth = (smooth.faceNormal * drive) / smooth.push;
  return {
    ideal_side_force: normalSmooth,
    side_force_normal: normal,
    efficiency: normal / normalSmooth,
    stays_in: isSelfHolding(wedge, atBest),
    withdraw: (-back.push * normal) / back.faceNormal,
  };
};

const cutter: Answer = (published) => {
  const input = inputsOf(published);
  const blank = exactly(0) as never;
  const jaws: Lever = {
    machine: 'lever',
    inputs: {
      fulcrum: exactly(metres(0)),
      load: exactly(metres(-input('jaw'))),
      pull: exactly(metres(input('handle'))),
      barLength: blank,
      barMass: exactly(kilograms(0)),
      barCentre: blank,
      pinRadius: blank,
      pinFriction: blank,
      pinStarting: blank,
      holesAbove: blank,
      tilt: blank,
      lean: blank,
    },
    pullKeepsSquare: false,
    holePositions: [],
    holes: {},
  };
  const blade = liftingWedge({ angle: Math.atan(input('wedge_thickness') / input('wedge_length')) });
  const lever = idealLever(jaws, atBest).advantage;
  const wedge = idealAdvantage(blade, atBest).advantage;
  return { lever, wedge, total: lever * wedge };
};

const pile: Answer = (published) => {
  const input = inputsOf(published);
  const drive = {
    striker: kilograms(input('hammer')),
    struck: kilograms(input('pile')),
    drop: metres(input('drop')),
    gravity: metresPerSecondSquared(input('g')),
  };
  const resistance = meanResistance(drive, metres(input('penetration', 1)));
  const depth = penetration(drive, newtons(input('resistance', 1e9)));
  // A resistance in tons is the weight of so many tons, under the gravity of the case.
  const inTons = published.expected.resistance?.unit === 'long ton';
  return {
    V: commonSpeed(drive.striker, drive.struck, strikingSpeed(drive.drop, drive.gravity)),
    resistance: inTons ? resistance / drive.gravity : resistance,
    penetration: isNotDefined(depth) ? Number.NaN : depth,
  };
};

runTopic(
  'wedge-impact',
  {
    wedge_raise: lifting,
    wedge_hold: (published) => ({
      push: effort(liftingOf(published), inputsOf(published)('load'), 'lower'),
      self_locking: isSelfHolding(liftingOf(published), atBest),
    }),
    wedge_lock: (published) => ({
      stays: isSelfHolding(liftingOf(published), atBest),
      margin: holdingMargin(liftingOf(published), atBest),
    }),
    station_wedge: (published) => {
      const load = inputsOf(published)('load');
      const wedge = liftingOf(published);
      const ideal = load / idealAdvantage(wedge, atBest).advantage;
      return { ideal, push: effort(wedge, load, 'raise'), ratio: effort(wedge, load, 'raise') / ideal };
    },
    wedge_split: splitting,
    wedge_ideal: cutter,
    impact_pile: pile,
    station_impact: (published) => {
      const input = inputsOf(published);
      const energy = (input('energy_share') * input('mallet') * input('speed') ** 2) / 2;
      return { energy, mean_force: meanForce(energy, input('advance')) };
    },
  },
  {
    impact_nail: 'withdrawal of nails is a strength of wood; no machine of these stations holds a nail',
  },
);
