import type { Fields, Filled } from '../description/fields.ts';
import { textIn } from '../description/filled.ts';
import type { Role } from '../kit/role.ts';
import type { Slot } from '../machines/machine.ts';
import type { ActivitySetup, ActivityStage } from './activity.ts';
import { setupHeadFields, stageFields } from './activity-fields.ts';
import { checkFields } from './check-fields.ts';
import { asMap, atKey, atValue, type Context, listAt, nearestFact, type Path, textAt } from './context.ts';
import { entryOf, keysOf, type MapNode } from './node.ts';
import { showsIn } from './titles.ts';
import { COMPOUND, type MachineWords, machineWords, slotsOf, type Vocabulary } from './vocabulary.ts';

/** The roles of a table, and the names of those that could not be read. */
export interface TableRoles {
  readonly roles: readonly Role[];
  readonly unread: readonly string[];
}

/** One setup of a table: which role stands in which slot, the machine's fields, how it is read. */
export function readSetup(
  map: MapNode,
  path: Path,
  machine: MachineWords,
  roles: TableRoles,
  vocabulary: Vocabulary,
  context: Context,
): ActivitySetup | null {
  let isFaulty = false;
  const counting = counted(context, () => {
    isFaulty = true;
  });
  const slots = slotsOf(vocabulary, machine);
  const isCompound = machine.name === COMPOUND;
  const generic = { ...setupHeadFields, ...vocabulary.setupFields };
  const mark = entryOf(map, 'setup') === undefined ? null : textAt(map, 'setup', path, context);
  const owner = {
    path,
    idOf: (field: string) => `${mark ?? '?'}/${field}`,
    besides: [...Object.keys(slots), ...(isCompound ? ['stages'] : [])],
  };
  const { filled } = checkFields(map, { ...generic, ...machine.fields }, owner, counting);
  if (mark === null) return null;
  const setup = {
    mark,
    roles: rolesBySlot(map, path, slots, roles, counting),
    fields: only(filled, machine.fields),
    generic: only(filled, vocabulary.setupFields),
    partner: textIn(filled, 'partner') ?? null,
    shows: showsIn(filled),
    written: keysOf(map),
    path,
    stages: isCompound ? readStages(map, path, mark, roles, vocabulary, counting) : [],
  };
  return { ...setup, isFaulty };
}

/** Stages from the load to the hand: a machine each, with its slots and fields. */
function readStages(
  map: MapNode,
  path: Path,
  mark: string,
  roles: TableRoles,
  vocabulary: Vocabulary,
  context: Context,
): readonly ActivityStage[] {
  const items = listAt(map, 'stages', path, context);
  if (items.length < 2 && (entryOf(map, 'stages')?.node.kind ?? 'list') === 'list')
    atKey(context, entryOf(map, 'stages') ? [...path, 'stages'] : path, 'stages-wanted');
  return items.flatMap((item, n) => {
    const at = [...path, 'stages', n];
    const stage = asMap(item, at, context);
    if (stage === null) return [];
    const machine = readMachine(stage, at, vocabulary, context);
    if (machine === null) return [];
    const owner = {
      path: at,
      idOf: (field: string) => `${mark}/stage ${n + 1} ${field}`,
      besides: Object.keys(machine.slots),
    };
    const { filled, isSound } = checkFields(stage, { ...stageFields, ...machine.fields }, owner, context);
    return [
      {
        machine: machine.name,
        roles: rolesBySlot(stage, at, machine.slots, roles, context),
        fields: only(filled, machine.fields),
        written: keysOf(stage),
        path: at,
        isFaulty: !isSound,
      },
    ];
  });
}

/** The machine that a table or a stage names; a stage is never a compound itself. */
export function readMachine(
  map: MapNode,
  path: Path,
  vocabulary: Vocabulary,
  context: Context,
  isTable = false,
): MachineWords | null {
  if (entryOf(map, 'machine') === undefined) {
    if (!isTable) atKey(context, path, 'missing-key', { key: 'machine', example: 'lever' });
    return null;
  }
  const name = textAt(map, 'machine', path, context);
  if (name === null) return null;
  const machine = machineWords(vocabulary, name);
  if (machine !== undefined && (isTable || machine.name !== COMPOUND)) return machine;
  const known = vocabulary.machines.map((each) => each.name).filter((each) => isTable || each !== COMPOUND);
  atValue(context, [...path, 'machine'], 'unknown-machine', {
    written: name,
    known,
    ...nearestFact(name, known),
  });
  return null;
}

/** Leaves an optional slot empty where the role of the same name would stand in it. */
const NONE = 'none';

/** Which role stands in which slot: as written, else the role with the slot's own name. */
function rolesBySlot(
  map: MapNode,
  path: Path,
  slots: Readonly<Record<string, Slot>>,
  roles: TableRoles,
  context: Context,
): Readonly<Record<string, string>> {
  const found: Record<string, string> = {};
  const names = roles.roles.map((role) => role.name);
  for (const [slot, { kinds, optional }] of Object.entries(slots)) {
    const isWritten = entryOf(map, slot) !== undefined;
    const name = isWritten ? textAt(map, slot, path, context) : slot;
    if (name === null || (name === NONE && optional === true)) continue;
    // Its own fault has been told: a setup with it is not prepared, and nothing more is said.
    if (roles.unread.includes(name)) {
      found[slot] = name;
      continue;
    }
    const role = roles.roles.find((each) => each.name === name);
    if (role === undefined) {
      const fitting = roles.roles.filter((each) => kinds.includes(each.kind)).map((each) => each.name);
      if (isWritten)
        atValue(context, [...path, slot], 'unknown-role', {
          written: name,
          known: names,
          ...nearestFact(name, names),
        });
      else if (optional !== true)
        atKey(context, path, 'slot-without-role', { slot, kinds, ...(fitting.length ? { fitting } : {}) });
      continue;
    }
    if (kinds.includes(role.kind)) found[slot] = name;
    else if (isWritten || optional !== true)
      atValue(context, [...path, isWritten ? slot : 'setup'], 'role-of-other-kind', {
        role: name,
        is: role.kind,
        slot,
        kinds,
      });
  }
  return found;
}

const counted = (context: Context, onError: () => void): Context => ({
  ...context,
  report: (diagnostic) => {
    if (diagnostic.severity === 'error') onError();
    context.report(diagnostic);
  },
});

const only = (filled: Filled, fields: Fields): Filled =>
  Object.fromEntries(Object.entries(filled).filter(([key]) => key in fields));
