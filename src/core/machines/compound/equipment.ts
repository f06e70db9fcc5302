import type { Equipment } from '../../description/equipment.ts';
import type { MachineFor } from './compound.ts';
import type { Compound } from './station.ts';

/** One of these serves the whole table, however many stages ask for it. */
const SHARED: readonly Equipment[] = ['tray', 'ruler', 'angle gauge', 'pencil', 'glasses'];

/** What every stage needs, and a line for each link, which stands for the string of the stage that it pulls. */
export function equipment(compound: Compound, machineFor: MachineFor, isFelt = false): readonly Equipment[] {
  const last = compound.stages.length - 1;
  const all = compound.stages.flatMap((station, k) => [
    ...machineFor(station)
      .equipment(station, isFelt)
      .filter((each) => k === last || each !== 'string'),
    ...(k === last ? [] : (['line'] as const)),
  ]);
  return all.filter((each, n) => !SHARED.includes(each) || all.indexOf(each) === n);
}
