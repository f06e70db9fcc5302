import { parse, stringify } from 'yaml';
import { type PreparationFiles, type Prepared, prepare } from '../../src/core/prepare.ts';
import type { ChangeMade } from '../../src/core/setups/alternative.ts';

interface Table {
  table: string;
  roles: Record<string, string>;
  setups: Setup[];
}
type Setup = { setup: string; stages?: Record<string, string>[] } & Record<string, unknown>;

/** The files with an alternative written into them, as a teacher would, and prepared anew. */
export function withChanges(files: PreparationFiles, mark: string, changes: readonly ChangeMade[]): Prepared {
  const activity = parse(files.activity.text, { schema: 'failsafe' }) as { tables: Table[] };
  const visit = parse(files.visit?.text ?? '', { schema: 'failsafe' }) as {
    roles?: Record<string, Record<string, string>>;
  };
  const kit = parse(files.kit.text, { schema: 'failsafe' }) as { parts: Record<string, { part: string }> };
  const table = activity.tables.find((each) => each.table === mark);
  if (table === undefined) throw new Error(`no table ${mark}`);
  for (const change of changes)
    for (const setup of table.setups.filter((each) => change.at.includes(each.setup))) {
      const words = change.stage === null ? setup : setup.stages?.[change.stage - 1];
      if (words === undefined) throw new Error(`no stage ${change.stage}`);
      words[change.field] = change.kind === 'part' ? roleFor(change.to) : change.to;
    }
  return prepare({
    kit: files.kit,
    activity: { name: files.activity.name, text: stringify(activity) },
    visit: { name: files.visit?.name ?? 'visit', text: stringify(visit) },
  });

  /** A part that the table had no role for gets one, and the visit puts it in. */
  function roleFor(part: string): string {
    const role = `other ${part}`;
    if (table !== undefined) table.roles[role] = kit.parts[part]?.part ?? '';
    visit.roles = { ...visit.roles, [mark]: { ...visit.roles?.[mark], [role]: part } };
    return role;
  }
}
