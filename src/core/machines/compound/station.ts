import type { Measured } from '../../uncertainty/measured.ts';
import type { Station } from '../machine.ts';

/** Machines in a row, from the load to the hand: the pull on one is the load of the next. */
export interface Compound extends Station {
  readonly machine: 'compound';
  readonly stages: readonly Station[];
}

/** A compound of stations; its inputs are those of its stages, each with the number of its stage. */
export const compoundOf = (stages: readonly Station[]): Compound => ({
  machine: 'compound',
  stages,
  inputs: Object.fromEntries(
    stages.flatMap(({ inputs }, k) =>
      Object.entries(inputs).map(([name, value]): [string, Measured] => [`${k + 1}.${name}`, value]),
    ),
  ),
});
