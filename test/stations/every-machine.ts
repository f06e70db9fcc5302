import { compoundOf } from '../../src/core/machines/compound/station.ts';
import type { InclinedPlane } from '../../src/core/machines/incline/station.ts';
import type { Station } from '../../src/core/machines/machine.ts';
import type { Screw } from '../../src/core/machines/screw/station.ts';
import type { Wedge } from '../../src/core/machines/wedge/station.ts';
import { dragOf, planeOf } from './incline.ts';
import { leverStation } from './lever.ts';
import { baseOf, rollersOf, stringAt, stringFrom, wheelsOf } from './ride.ts';
import { screwStation } from './screw.ts';
import { tackleStation } from './tackle.ts';
import { liftingWedge, splittingWedge } from './wedge.ts';
import { windlassStation } from './windlass.ts';

export const bareLever = leverStation({ load: -0.2, pull: 0.3 });
const cords = splittingWedge({ angle: 0.1, preTension: 2 });
const plane = planeOf({ rise: 0.2, length: 0.6 }, wheelsOf({}));

const onPin: InclinedPlane = { ...plane, pin: 2 };
const mallet = { mass: 0.3, falls: 0.2, share: 0.5 };
const counted: Screw = { ...screwStation({ pitch: 0.00175 }), turns: 8 };
const loose: Wedge = { ...cords, hasCords: false };

/** One station of every kind of start state, and of every way to be pulled, that the machines have. */
export const everyStation: readonly Station[] = [
  bareLever,
  leverStation({ load: 0.1, pull: 0.5, fulcrum: 0.3, holes: [0.1, 0.3, 0.5] }),
  plane,
  onPin,
  planeOf({ angle: 0.3 }, baseOf({})),
  dragOf(wheelsOf({})),
  dragOf(wheelsOf({}), stringAt(0, { share: 0.05, constant: 0 })),
  planeOf({ angle: 0.3 }, baseOf({}), stringFrom(0.03, 0.4)),
  planeOf({ angle: 0.3 }, wheelsOf({}), stringAt(0.2)),
  planeOf({ angle: 0.3 }, rollersOf({ diameter: 0.01, below: 0.0005, above: 0.0005 })),
  dragOf(baseOf({})),
  dragOf(rollersOf({ diameter: 0.01, below: 0.0005, above: 0.0005 })),
  tackleStation({ parts: 1 }),
  tackleStation({ parts: 4 }),
  windlassStation({ wheel: 0.05, axle: 0.01 }),
  windlassStation({ wheel: 0.05, axle: 0.01, turnedBy: 'crank' }),
  counted,
  screwStation({ pitch: 0.00175, travel: 0.007, startGap: 0.001 }),
  screwStation({ pitch: 0.00175, arm: 0.08 }),
  liftingWedge({ angle: 0.1 }),
  splittingWedge({ angle: 0.1, preTension: 2, pushed: 'down', mallet }),
  cords,
  loose,
  compoundOf([plane, bareLever]),
];
