import type { Fields } from '../description/fields.ts';
import type { PartKind } from '../description/part.ts';
import type { Machine, Slot } from '../machines/machine.ts';
import { setupFields } from '../setups/setup-fields.ts';

/** What a machine says about its files; its laws are not asked here. */
export type MachineWords = Pick<Machine, 'name' | 'partKinds' | 'slots' | 'fields'>;

/** Every word that the three files may use: from it follow check, schema and help. */
export interface Vocabulary {
  readonly partKinds: readonly PartKind[];
  readonly machines: readonly MachineWords[];
  /** Slots that every setup has, whatever its machine. */
  readonly setupSlots: Readonly<Record<string, Slot>>;
  readonly setupFields: Fields;
}

/** The machine that is made of stages; its setups have a list of them instead of fields. */
export const COMPOUND = 'compound';

/** What carries the load and what is read: every setup may have them. */
export const setupSlots: Readonly<Record<string, Slot>> = {
  load: { kinds: ['weight'], optional: true },
  scale: { kinds: ['spring scale'], optional: true },
  ruler: { kinds: ['ruler'], optional: true },
  'turn counter': { kinds: ['turn counter'], optional: true },
};

/** The words of some machines and of the parts that several of them use. */
export function vocabularyOf(
  machines: readonly MachineWords[],
  generalParts: readonly PartKind[],
): Vocabulary {
  const partKinds = new Map<string, PartKind>();
  for (const kind of [...generalParts, ...machines.flatMap((machine) => machine.partKinds)])
    if (!partKinds.has(kind.kind)) partKinds.set(kind.kind, kind);
  return { partKinds: [...partKinds.values()], machines, setupSlots, setupFields };
}

export const machineWords = (vocabulary: Vocabulary, name: string): MachineWords | undefined =>
  vocabulary.machines.find((machine) => machine.name === name);

export const partKindNamed = (vocabulary: Vocabulary, kind: string): PartKind | undefined =>
  vocabulary.partKinds.find((each) => each.kind === kind);

/** All slots of a setup on a machine: its own first. */
export const slotsOf = (vocabulary: Vocabulary, machine: MachineWords): Readonly<Record<string, Slot>> => ({
  ...vocabulary.setupSlots,
  ...machine.slots,
});
