import { choiceIn, countIn, measuredIn, textIn } from '../description/filled.ts';
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Role } from '../kit/role.ts';
import type { Activity, ActivitySetup, ActivityTable, AgeRange } from './activity.ts';
import { activityFields, tableFields } from './activity-fields.ts';
import { checkOrder, readActivityPeriod, stayIn } from './activity-period.ts';
import { checkFields } from './check-fields.ts';
import {
  asMap,
  asText,
  atKey,
  atValue,
  type Context,
  listAt,
  mapAt,
  nearestFact,
  type Path,
} from './context.ts';
import { openFile } from './file-header.ts';
import { entryOf, type MapNode, type Node } from './node.ts';
import { readRole } from './role-text.ts';
import { readMachine, readSetup, type TableRoles } from './setup-words.ts';
import type { SourceFile, SourceText } from './source-text.ts';
import { titledIn } from './titles.ts';
import type { Vocabulary } from './vocabulary.ts';
import type { YamlTree } from './yaml-tree.ts';

export interface ReadActivity {
  readonly source: SourceFile;
  readonly activity: Activity | null;
  readonly diagnostics: readonly Diagnostic[];
}

/** Reads an activity file: tables with their machine, roles and setups. */
export function readActivityFile(file: SourceText, vocabulary: Vocabulary, tree?: YamlTree): ReadActivity {
  const { source, root, context, diagnostics } = openFile(file, 'activity', tree);
  if (root === null) return { source, activity: null, diagnostics };
  const owner = {
    path: [],
    idOf: (field: string) => `activity/${field}`,
    besides: ['handspike', 'tables', 'while waiting'],
  };
  const { filled } = checkFields(root, activityFields, owner, context);
  const items = listAt(root, 'tables', [], context);
  if (entryOf(root, 'tables') === undefined) atKey(context, [], 'missing-key', { key: 'tables' });
  const tables = items.flatMap((item, n) => {
    const table = readTable(item, ['tables', n], vocabulary, context);
    return table === null ? [] : [table];
  });
  refuseMarksTwice(tables, context);
  checkPartners(tables, context);
  checkOrder(tables, context);
  return {
    source,
    activity: {
      file: file.name,
      ...titledIn(filled, ''),
      decimal: choiceIn(filled, 'decimal') === 'comma' ? 'comma' : 'point',
      age: readAge(textIn(filled, 'age'), context),
      level: countIn(filled, 'level') ?? null,
      handLimit: measuredIn(filled, 'hand limit') ?? null,
      handScatter: measuredIn(filled, 'hand scatter') ?? null,
      period: readActivityPeriod(root, filled, context),
      tables,
    },
    diagnostics,
  };
}

function readTable(node: Node, path: Path, vocabulary: Vocabulary, context: Context): ActivityTable | null {
  const map = asMap(node, path, context);
  if (map === null) return null;
  const owner = { path, idOf: (field: string) => `table/${field}`, besides: ['roles', 'setups'] };
  const { filled } = checkFields(map, tableFields, owner, context);
  const { roles, unread } = readRoles(map, path, vocabulary, context);
  const machine = readMachine(map, path, vocabulary, context, true);
  const mark = textIn(filled, 'table');
  if (machine === null || mark === undefined) return null;
  const items = listAt(map, 'setups', path, context);
  if (entryOf(map, 'setups') === undefined) atKey(context, path, 'missing-key', { key: 'setups' });
  const setups = items.flatMap((item, n): readonly ActivitySetup[] => {
    const at = [...path, 'setups', n];
    const setup = asMap(item, at, context);
    if (setup === null) return [];
    const read = readSetup(setup, at, machine, { roles, unread }, vocabulary, context);
    return read === null ? [] : [read];
  });
  if (unread.length === 0 && setups.length === items.length) warnOfIdleRoles(roles, setups, path, context);
  return {
    mark,
    ...titledIn(filled, mark),
    machine: machine.name,
    roles,
    setups,
    stay: stayIn(filled),
    path,
  };
}

function readRoles(map: MapNode, path: Path, vocabulary: Vocabulary, context: Context): TableRoles {
  const written = mapAt(map, 'roles', path, context);
  if (written === null) return { roles: [], unread: [] };
  const roles: Role[] = [];
  const unread: string[] = [];
  for (const { key, node } of written.entries) {
    const at = [...path, 'roles', key];
    const text = asText(node, at, context);
    const role = text === null ? null : readRole(key, text, at, vocabulary, context);
    if (role === null) unread.push(key);
    else roles.push(role);
  }
  return { roles, unread };
}

/** A role that no setup asks for is most likely a slip in a name. */
function warnOfIdleRoles(
  roles: readonly Role[],
  setups: readonly ActivitySetup[],
  path: Path,
  context: Context,
): void {
  const used = new Set(
    setups.flatMap((setup) => [setup, ...setup.stages].flatMap((each) => Object.values(each.roles))),
  );
  for (const { name } of roles)
    if (!used.has(name)) atKey(context, [...path, 'roles', name], 'role-unused', { role: name }, 'warning');
}

/** Readings name a setup only, so a setup's mark stands once in the whole activity. */
function refuseMarksTwice(tables: readonly ActivityTable[], context: Context): void {
  const seen = { table: new Set<string>(), setup: new Set<string>() };
  const check = (what: 'table' | 'setup', mark: string, path: Path): void => {
    if (seen[what].has(mark)) atValue(context, [...path, what], 'mark-twice', { mark, what });
    seen[what].add(mark);
  };
  for (const table of tables) {
    check('table', table.mark, table.path);
    for (const setup of table.setups) check('setup', setup.mark, setup.path);
  }
}

function checkPartners(tables: readonly ActivityTable[], context: Context): void {
  for (const { setups } of tables)
    for (const { mark, partner, path } of setups) {
      const known = setups.map((each) => each.mark).filter((each) => each !== mark);
      if (partner !== null && !known.includes(partner))
        atValue(context, [...path, 'partner'], 'unknown-partner', {
          written: partner,
          known,
          ...nearestFact(partner, known),
        });
    }
}

function readAge(text: string | undefined, context: Context): AgeRange | null {
  if (text === undefined) return null;
  const found = /^(\d{1,2})(?:\s*\.\.\s*(\d{1,2}))?$/.exec(text);
  const from = Number(found?.[1] ?? Number.NaN);
  const to = Number(found?.[2] ?? from);
  if (found !== null && from <= to) return { from, to };
  atValue(context, ['age'], 'not-an-age', { written: text });
  return null;
}
