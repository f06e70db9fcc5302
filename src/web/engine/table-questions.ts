import type { Activity, ActivitySetup, ActivityTable } from '../../core/files/activity.ts';
import { castRoles } from '../../core/files/casting.ts';
import type { Path } from '../../core/files/context.ts';
import { nodeAt } from '../../core/files/edit-text.ts';
import type { Node } from '../../core/files/node.ts';
import { roleWords } from '../../core/files/role-words.ts';
import type { Visit } from '../../core/files/visit-file.ts';
import { machineWords, slotsOf } from '../../core/files/vocabulary.ts';
import type { Kit, KitPart } from '../../core/kit/kit.ts';
import { fitOf, type Role } from '../../core/kit/role.ts';
import { vocabulary } from '../../core/words.ts';
import type { Edit, FileKind } from './prepare-wire.ts';
import type { Question, SetupQuestions, SlotQuestion, TableQuestions } from './question-wire.ts';
import { wordIn } from './questions-asked.ts';

export interface FilesRead {
  readonly language: 'en' | 'es';
  readonly kit: Kit;
  readonly activity: Activity;
  readonly visit: Visit;
  readonly roots: Readonly<Record<FileKind, Node | null>>;
}

type Ask = (path: Path, of: 'table' | 'setup') => readonly Question[];

/** What is asked of one table: its own fields, and of each setup what stands in it and how it is read. */
export function tableQuestions(
  read: FilesRead,
  table: ActivityTable,
  ask: Ask,
  title: string,
): TableQuestions {
  return {
    mark: table.mark,
    machine: table.machine,
    title,
    path: table.path,
    questions: ask(table.path, 'table'),
    setups: table.setups.map(
      (setup): SetupQuestions => ({
        mark: setup.mark,
        path: setup.path,
        slots: slotQuestions(read, table, setup),
        questions: ask(setup.path, 'setup'),
      }),
    ),
    another: anotherSetup(read, table),
  };
}

function slotQuestions(read: FilesRead, table: ActivityTable, setup: ActivitySetup): readonly SlotQuestion[] {
  const machine = machineWords(vocabulary, table.machine);
  if (machine === undefined) return [];
  const cast = castRoles(read.kit, read.activity, read.visit).casting.get(table.mark);
  return Object.entries(slotsOf(vocabulary, machine)).map(([slot, { kinds, optional }]) => {
    const role = setup.roles[slot];
    const fitting = read.kit.parts.filter(({ kind, isFaulty }) => kinds.includes(kind) && !isFaulty);
    return {
      slot,
      words: wordIn(read.language, slot),
      path: [...setup.path, slot],
      isNeeded: optional !== true,
      mark: (role === undefined ? undefined : cast?.get(role)?.mark) ?? '',
      offers: [
        ...(optional === true ? [{ mark: '', words: '', edit: leftEmpty(table, setup, slot) }] : []),
        ...fitting.map((part) => ({
          mark: part.mark,
          words: roleWords({ root: read.roots.kit, decimal: read.kit.decimal }, part, read.kit.decimal),
          edit: putIn(read, table, setup, slot, part),
        })),
      ],
    };
  });
}

const written = (file: FileKind, path: Path, value: string): Edit => ({ file, path, value });

/**
 * Nothing stands in a slot of one setup. Where no other setup needs the role, it goes too; else the setup says
 * that nothing of that name stands there.
 */
function leftEmpty(table: ActivityTable, setup: ActivitySetup, slot: string): Edit {
  const path = [...setup.path, slot];
  const role = setup.roles[slot] ?? slot;
  const isNeeded = usersOf(table, role).some((user) => user !== `${setup.mark} ${slot}`);
  if (isNeeded) return written('activity', path, role === slot ? 'none' : '');
  return {
    ...written('activity', [...table.path, 'roles', role], ''),
    and: [written('activity', path, ''), written('visit', ['roles', table.mark, role], '')],
  };
}

/** Setup and slot of everything at a table that uses a role. */
const usersOf = (table: ActivityTable, role: string): readonly string[] =>
  table.setups.flatMap(({ mark, roles }) =>
    Object.entries(roles).flatMap(([slot, each]) => (each === role ? [`${mark} ${slot}`] : [])),
  );

/**
 * Puts a part into a slot of one setup. Where other setups of the table have another part there, or none, it gets
 * a role of its own, under its mark; where several parts answer the role, the visit says which.
 */
export function putIn(
  read: FilesRead,
  table: ActivityTable,
  setup: ActivitySetup,
  slot: string,
  part: KitPart,
): Edit {
  const isEmptyElsewhere = table.setups.some(
    (each) => each.mark !== setup.mark && each.roles[slot] === undefined,
  );
  const isShared = isEmptyElsewhere || usersOf(table, slot).some((user) => user !== `${setup.mark} ${slot}`);
  const role = isShared ? part.mark : slot;
  const [first, ...more] = [
    ...roleEdits(read, table, role, part),
    written('activity', [...setup.path, slot], role === slot ? '' : role),
  ];
  return { ...(first as Edit), and: more };
}

/** A role of a table for one part of the kit, in the activity and where needed in the visit. */
export function roleEdits(
  { kit, activity, roots }: Pick<FilesRead, 'kit' | 'activity' | 'roots'>,
  table: Pick<ActivityTable, 'mark' | 'path'>,
  role: string,
  part: KitPart,
): readonly Edit[] {
  const text = roleWords({ root: roots.kit, decimal: kit.decimal }, part, activity.decimal);
  const alike = kit.parts.filter((each) => isAlike(each, part));
  const inVisit: Path = ['roles', table.mark, role];
  const isSaid = nodeAt(roots.visit, inVisit) !== null;
  return [
    written('activity', [...table.path, 'roles', role], text),
    ...(alike.length > 1 || isSaid ? [written('visit', inVisit, part.mark)] : []),
  ];
}

/** Whether a role in the words of one part would as well be answered by another. */
function isAlike(other: KitPart, part: KitPart): boolean {
  const size = part.fields.of ?? part.fields.range;
  const asks = part.fields.of === undefined ? 'to' : 'of';
  const role: Role = {
    name: '',
    kind: part.kind,
    text: '',
    size: size?.type === 'quantity' ? { asks, si: size.measured.value, dimension: size.dimension } : null,
  };
  return fitOf(other, role) === 'exact';
}

/** One more setup behind the last, the same but for its mark: what differs is then answered. */
export function anotherSetup(read: FilesRead, table: ActivityTable): Edit {
  const { roots } = read;
  const last = table.setups.at(-1);
  const list = nodeAt(roots.activity, [...table.path, 'setups']);
  const mark = freeMark(read, last?.mark.replace(/\d+$/, '') ?? freeLetter(read, table.title));
  const path = [...table.path, 'setups', list?.kind === 'list' ? list.items.length : 0];
  const node = last === undefined ? null : nodeAt(roots.activity, last.path);
  const same = (node?.kind === 'map' ? node.entries : []).flatMap(({ key, node: value }) =>
    value.kind === 'text' && !['setup', 'partner', 'shows'].includes(key)
      ? [written('activity', [...path, key], value.text)]
      : [],
  );
  const pair =
    last === undefined
      ? []
      : [
          written('activity', [...path, 'partner'], last.mark),
          ...(last.partner === null ? [written('activity', [...last.path, 'partner'], mark)] : []),
        ];
  return { ...written('activity', [...path, 'setup'], mark), and: [...same, ...pair] };
}

/** The first letter of a title that no setup begins with yet: setups of two tables are told apart by it. */
export function freeLetter({ activity }: Pick<FilesRead, 'activity'>, title: string): string {
  const marks = activity.tables.flatMap(({ setups }) => setups.map(({ mark }) => mark));
  const letters = [...title.toUpperCase()].filter((each) => /\p{L}/u.test(each));
  return letters.find((letter) => !marks.some((mark) => mark.startsWith(letter))) ?? letters[0] ?? 'S';
}

/** `L1`, `L2` and so on: the first that no part, table or setup bears. */
export function freeMark(
  { kit, activity: { tables } }: Pick<FilesRead, 'kit' | 'activity'>,
  stem: string,
): string {
  const taken = new Set([
    ...kit.parts.map(({ mark }) => mark),
    ...tables.flatMap(({ mark, setups }) => [mark, ...setups.map((each) => each.mark)]),
  ]);
  for (let n = 1; ; n += 1) if (!taken.has(`${stem}${n}`)) return `${stem}${n}`;
}
