import { expect, test } from 'vitest';
import { dragOf, planeOf } from '../../../test/stations/incline.ts';
import { leverStation } from '../../../test/stations/lever.ts';
import { baseOf, rollersOf, wheelsOf } from '../../../test/stations/ride.ts';
import { screwStation } from '../../../test/stations/screw.ts';
import { tackleStation } from '../../../test/stations/tackle.ts';
import { liftingWedge, splittingWedge } from '../../../test/stations/wedge.ts';
import { windlassStation } from '../../../test/stations/windlass.ts';
import { compoundOf } from './compound/station.ts';
import type { InclinedPlane } from './incline/station.ts';
import { machineNamed, machines, sentencesEn } from './list.ts';
import type { Station } from './machine.ts';
import type { Screw } from './screw/station.ts';
import type { Wedge } from './wedge/station.ts';

const bareLever = leverStation({ load: -0.2, pull: 0.3 });
const cords = splittingWedge({ angle: 0.1, preTension: 2 });
const plane = planeOf({ rise: 0.2, length: 0.6 }, wheelsOf({}));

const onPin: InclinedPlane = { ...plane, pin: 2 };
const counted: Screw = { ...screwStation({ pitch: 0.00175 }), turns: 8 };
const loose: Wedge = { ...cords, hasCords: false };

/** One station of every kind of start state that the machines have. */
const stations: readonly Station[] = [
  bareLever,
  leverStation({ load: 0.1, pull: 0.5, fulcrum: 0.3, holes: [0.1, 0.3, 0.5] }),
  plane,
  onPin,
  planeOf({ angle: 0.3 }, baseOf({})),
  dragOf(wheelsOf({})),
  planeOf({ angle: 0.3 }, rollersOf({ diameter: 0.01, below: 0.0005, above: 0.0005 })),
  dragOf(baseOf({})),
  dragOf(rollersOf({ diameter: 0.01, below: 0.0005, above: 0.0005 })),
  tackleStation({ parts: 1 }),
  tackleStation({ parts: 4 }),
  windlassStation({ wheel: 0.05, axle: 0.01 }),
  windlassStation({ wheel: 0.05, axle: 0.01, turnedBy: 'crank' }),
  counted,
  screwStation({ pitch: 0.00175, arm: 0.08 }),
  liftingWedge({ angle: 0.1 }),
  cords,
  loose,
  compoundOf([plane, bareLever]),
];

const resetOf = (station: Station) => {
  const machine = machineNamed(station.machine);
  if (machine === undefined) throw new Error(station.machine);
  return machine.reset(station);
};

test('every machine stands in the list with at least one station', () => {
  expect(new Set(stations.map((station) => station.machine))).toEqual(
    new Set(machines.map(({ name }) => name)),
  );
});

test('three things put a table back to its start, no two of them the same', () => {
  for (const station of stations) expect(new Set(resetOf(station).map(({ key }) => key)).size).toBe(3);
});

test('each of the three is one plain sentence of twelve words at most, with every fact it names', () => {
  for (const { key, facts } of stations.flatMap(resetOf)) {
    const words = sentencesEn[key];
    expect(words, key).toBeDefined();
    expect(words?.split(' ').length, key).toBeLessThanOrEqual(12);
    const named = [...(words ?? '').matchAll(/\{(\w+)\}/g)].map((match) => match[1]);
    expect(named.toSorted(), key).toEqual(Object.keys(facts).toSorted());
  }
});

test('every reset sentence is one that some station says', () => {
  const said = new Set(stations.flatMap(resetOf).map(({ key }) => key));
  for (const key of Object.keys(sentencesEn).filter((each) => each.includes('.reset.')))
    expect(said, key).toContain(key);
});

test('where a load hangs, it comes down before the pull lets go of it', () => {
  for (const station of [
    bareLever,
    tackleStation({ parts: 4 }),
    windlassStation({ wheel: 0.05, axle: 0.01 }),
  ])
    expect(resetOf(station)[0]?.key).toBe(`${station.machine}.reset.load`);
});
