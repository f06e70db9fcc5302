import { type NotDefined, notDefined } from '../description/not-defined.ts';
import type { TableOfTalk } from './table-of-talk.ts';

/** The machines of the day, to be matched with what they do. */
export interface MachinesFound {
  readonly machines: readonly MachineAtTables[];
}

export interface MachineAtTables {
  readonly machine: string;
  /** Marks of its tables. */
  readonly tables: readonly string[];
  /** Where its sentence stands among the sentences, from 0: never beside its own name. */
  readonly place: number;
}

/**
 * One line a machine, in the order of the tables. The sentences stand in another order, turned round by half
 * of them, so that no machine has its own beside it.
 */
export function machinesAtTables(tables: readonly TableOfTalk[]): MachinesFound | NotDefined {
  const names = [...new Set(tables.flatMap(({ machine, setups }) => (setups.length === 0 ? [] : [machine])))];
  if (names.length < 2) return notDefined('discuss.one-machine');
  const turn = Math.floor(names.length / 2);
  return {
    machines: names.map((machine, n) => ({
      machine,
      tables: tables
        .filter((table) => table.machine === machine && table.setups.length > 0)
        .map(({ mark }) => mark),
      place: (n + turn) % names.length,
    })),
  };
}
