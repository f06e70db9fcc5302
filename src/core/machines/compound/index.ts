import { radians } from '../../quantities/brands.ts';
import type { Machine, Station, UsualMistake } from '../machine.ts';
import { balanceCompound, type CompoundBalance, idealAdvantage, type MachineFor } from './compound.ts';
import { equipment } from './equipment.ts';
import { drawing, figures, start } from './figures.ts';
import { makeCompound } from './make.ts';
import { cautions, differences, reading, reset, steps } from './paper.ts';
import { type Compound, compoundOf } from './station.ts';

/** More stages than stand on any table. */
export const MOST_STAGES = 6;

/**
 * Machines in a row, each pulling on the next: made from the machines that can be a stage.
 *
 * @example compound([]).name // => 'compound'
 */
export function compound(machines: readonly Machine[]): Machine<Compound> {
  const machineFor: MachineFor = (station) => {
    const machine = machines.find((each) => each.name === station.machine);
    if (machine === undefined) throw new RangeError(`no machine named ${station.machine}`);
    return machine;
  };
  return {
    name: 'compound',
    partKinds: [],
    slots: {},
    fields: {},
    make: (preparation) => makeCompound(preparation, machines),
    balance: (station, at, asked) => balanceCompound(station, at, asked, machineFor),
    idealAdvantage: (station, at) => idealAdvantage(station, at, machineFor),
    limits: (station, at, balance, place) =>
      stagesOf(balance).flatMap((stage, k) => {
        const own = station.stages[k];
        // A stage has no place of its own here: its findings stand at the setup.
        return own === undefined ? [] : machineFor(own).limits(own, at, stage, () => place(null));
      }),
    slope: (station, at) => {
      const last = station.stages.at(-1);
      return last === undefined ? radians(0) : (machineFor(last).slope?.(last, at) ?? radians(0));
    },
    mistakes: machines.flatMap((machine) =>
      Array.from({ length: MOST_STAGES }, (_, k) => k).flatMap((k) =>
        machine.mistakes.map((mistake) => inStage(machine, mistake, k)),
      ),
    ),
    // The load speeds up; what the other stages have in their way speeds up too, and is neglected.
    speedingUp: (station, at, asked, acceleration) => {
      const first = station.stages[0];
      return first === undefined
        ? null
        : (machineFor(first).speedingUp?.(first, at, asked, acceleration) ?? null);
    },
    steps: (station, isFelt) => steps(station, machineFor, isFelt),
    reading: (station, way) => reading(station, way, machineFor),
    reset: (station, isFelt) => reset(station, isFelt),
    cautions: (station, isFelt) => cautions(station, machineFor, isFelt),
    equipment: (station, isFelt) => equipment(station, machineFor, isFelt),
    drawing: (station, at, isFelt) => drawing(station, at, machineFor, isFelt),
    figures: (station, at, isFelt) => figures(station, at, machineFor, isFelt),
    start: (station, at) => start(station, at, machineFor),
    differences: (station, at) => differences(station, at, machineFor),
  };
}

const stagesOf = (balance: Parameters<Machine<Compound>['limits']>[2]) =>
  'stages' in balance ? (balance as CompoundBalance).stages : [];

/** A stage's own mistake, made in the stage of that number. */
const inStage = (machine: Machine, mistake: UsualMistake, k: number): UsualMistake<Compound> => ({
  code: mistake.code,
  baseRate: mistake.baseRate,
  persists: mistake.persists,
  ...(mistake.leavesOff === undefined ? {} : { leavesOff: mistake.leavesOff }),
  change: (station) => {
    const stage: Station | undefined = station.stages[k];
    if (stage === undefined || stage.machine !== machine.name) return null;
    // Only the first stage carries the load itself.
    if (mistake.leavesOff === true && k > 0) return null;
    const changed = mistake.change(stage);
    return changed === null ? null : compoundOf(station.stages.with(k, changed));
  },
});
