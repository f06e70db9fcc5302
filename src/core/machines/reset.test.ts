import { expect, test } from 'vitest';
import { bareLever, everyStation } from '../../../test/stations/every-machine.ts';
import { tackleStation } from '../../../test/stations/tackle.ts';
import { windlassStation } from '../../../test/stations/windlass.ts';
import { machineNamed, machines, sentencesEn } from './list.ts';
import type { Station } from './machine.ts';

const resetOf = (station: Station, isFelt = false) => {
  const machine = machineNamed(station.machine);
  if (machine === undefined) throw new Error(station.machine);
  return machine.reset(station, isFelt);
};

/** What is put back with a scale, and without one. */
const resets = everyStation.flatMap((station) => [resetOf(station), resetOf(station, true)]);

test('every machine stands in the list with at least one station', () => {
  expect(new Set(everyStation.map((station) => station.machine))).toEqual(
    new Set(machines.map(({ name }) => name)),
  );
});

test('three things put a table back to its start, no two of them the same', () => {
  for (const reset of resets) expect(new Set(reset.map(({ key }) => key)).size).toBe(3);
});

test('each of the three is one plain sentence of twelve words at most, with every fact it names', () => {
  for (const { key, facts } of resets.flat()) {
    const words = sentencesEn[key];
    expect(words, key).toBeDefined();
    expect(words?.split(' ').length, key).toBeLessThanOrEqual(12);
    const named = [...(words ?? '').matchAll(/\{(\w+)\}/g)].map((match) => match[1]);
    expect(named.toSorted(), key).toEqual(Object.keys(facts).toSorted());
  }
});

test('every reset sentence is one that some station says', () => {
  const said = new Set(resets.flat().map(({ key }) => key));
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
